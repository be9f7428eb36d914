using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Hypocaust.Cli.Open;

/// <summary>What <c>open</c> takes.</summary>
internal sealed class OpenSettings : CommandSettings
{
    /// <summary>The design file.</summary>
    [CommandArgument(0, "[FILE]")]
    [Description("The design file; left out, the demo as a working copy.")]
    public string? File { get; init; }

    /// <summary>The port.</summary>
    [CommandOption("--port <PORT>")]
    [Description("Port on this machine; left out, a free one.")]
    public int Port { get; init; }

    /// <summary>Whether the browser is left alone.</summary>
    [CommandOption("--no-browser")]
    [Description("Print the address and leave the browser alone.")]
    public bool NoBrowser { get; init; }

    /// <summary>Where unsaved edits of a working copy are kept.</summary>
    [CommandOption("--data <FOLDER>")]
    [Description("Folder for unsaved edits of the demo; left out, your own data folder.")]
    public string? DataFolder { get; init; }

    /// <inheritdoc/>
    public override ValidationResult Validate() =>
        Port is >= 0 and <= 65535
            ? ValidationResult.Success()
            : ValidationResult.Error("A port is a number from 1 to 65535.");
}
