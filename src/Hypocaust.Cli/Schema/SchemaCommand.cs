using System.ComponentModel;
using Hypocaust.Answers;
using Hypocaust.Cli.Terminal;
using Hypocaust.Design;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Hypocaust.Cli.Schema;

/// <summary>What <c>schema</c> takes.</summary>
internal sealed class SchemaSettings : CommandSettings
{
    /// <summary>Which schema.</summary>
    [CommandArgument(0, "[WHICH]")]
    [Description("design (as left out) or answer.")]
    public string Which { get; init; } = "design";

    /// <inheritdoc/>
    public override ValidationResult Validate() =>
        Which is "design" or "answer"
            ? ValidationResult.Success()
            : ValidationResult.Error($"There is no schema \"{Which}\"; write design or answer.");
}

/// <summary><c>hypocaust schema</c>: the JSON Schema of the design file, or of the answer.</summary>
internal sealed class SchemaCommand : Command<SchemaSettings>
{
    /// <inheritdoc/>
    public override int Execute(
        CommandContext context,
        SchemaSettings settings,
        CancellationToken cancellationToken
    )
    {
        Console.Out.WriteLine(
            (settings.Which == "answer" ? AnswerJson.Schema() : DesignSchema.Write()).TrimEnd()
        );
        return ExitCode.Clean;
    }
}
