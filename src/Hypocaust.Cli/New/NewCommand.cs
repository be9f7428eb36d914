using System.ComponentModel;
using Hypocaust.Cli.Terminal;
using Hypocaust.Design;
using Spectre.Console.Cli;

namespace Hypocaust.Cli.New;

/// <summary>What <c>new</c> takes.</summary>
internal sealed class NewSettings : CommandSettings
{
    /// <summary>Name of the design.</summary>
    [CommandArgument(0, "<NAME>")]
    [Description("What you call the design; the file is NAME.hypocaust.json.")]
    public string Name { get; init; } = "";
}

/// <summary><c>hypocaust new NAME</c>: a small valid design to start from.</summary>
internal sealed class NewCommand : Command<NewSettings>
{
    /// <inheritdoc/>
    public override int Execute(
        CommandContext context,
        NewSettings settings,
        CancellationToken cancellationToken
    )
    {
        var path = FileNameOf(settings.Name);
        if (File.Exists(path))
        {
            Console.Error.WriteLine(
                $"{path} is already there; take another name, or open it: hypocaust open {path}"
            );
            return ExitCode.CannotRead;
        }

        var document = DesignFile.Read(DesignFile.New(settings.Name)).Value;
        var saved = DesignOnDisk.Save(path, document);
        if (!saved.Succeeded)
        {
            ProblemPrinter.Print(Console.Error, path, null, saved.Problems);
            return ExitCode.CannotRead;
        }

        Console.Out.WriteLine(
            $"{path} is a small complete design with figures to replace by your own."
        );
        Console.Out.WriteLine(
            $"Next: hypocaust open \"{path}\", or edit it and run hypocaust solve \"{path}\"."
        );
        return ExitCode.Clean;
    }

    private static string FileNameOf(string name)
    {
        var bare = name.EndsWith(DesignFile.Extension, StringComparison.OrdinalIgnoreCase)
            ? name[..^DesignFile.Extension.Length]
            : name;
        var safe = string.Concat(
            bare.Select(c =>
                Path.GetInvalidFileNameChars().Contains(c) || c is '/' or '\\' ? '-' : c
            )
        );
        return (safe.Trim() is "" or "." or ".." ? "design" : safe.Trim()) + DesignFile.Extension;
    }
}
