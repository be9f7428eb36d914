using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Tests.Review;

/// <summary>Spoils every part of the sound examples in turn; Review has to object.</summary>
public sealed class MutationTests(ITestOutputHelper output)
{
    private const double LeastShare = 0.95;

    private enum Outcome
    {
        Graver,
        NoteOnly,
        Silent,
        DoesNotRead,
    }

    [Fact]
    public void Review_objects_to_nearly_every_spoilt_design()
    {
        var results = Tried("pottery-studio").Concat(Tried("ridge-cabin")).ToList();
        var read = results.Where(result => result.Outcome != Outcome.DoesNotRead).ToList();
        var objected = read.Count(result => result.Outcome != Outcome.Silent);
        output.WriteLine(
            $"{results.Count} mutants; {results.Count - read.Count} do not read and are refused; of {read.Count} Review objects to {objected} ({100.0 * objected / read.Count:F1} %), to {read.Count(result => result.Outcome == Outcome.Graver)} with more than a note."
        );
        foreach (var result in results.Where(result => result.Outcome is not Outcome.Graver))
        {
            output.WriteLine($"{result.Outcome}: {result.Name} {result.Why}");
        }

        read.Count.ShouldBeGreaterThan(150);
        ((double)objected / read.Count).ShouldBeGreaterThanOrEqualTo(LeastShare);
    }

    private static IEnumerable<(string Name, Outcome Outcome, string Why)> Tried(string example)
    {
        var sound = Findings(Examples.Named(example).Read());
        foreach (var mutant in MutantCatalogue.Of(Examples.Named(example)))
        {
            var design = Examples.Named(example);
            mutant.Change(design);
            var name = $"{example}: {mutant.Name}";
            if (!DesignFile.Read(design.Text).TryGet(out var document))
            {
                var problems = DesignFile.Read(design.Text).Problems;
                yield return (name, Outcome.DoesNotRead, problems[0].ToString());
                continue;
            }

            var fresh = Findings(document)
                .Where(finding =>
                    !sound.Any(old => old.Rule == finding.Rule && old.Place == finding.Place)
                )
                .ToList();
            var outcome =
                fresh.Count == 0 ? Outcome.Silent
                : fresh.Any(finding => finding.Severity < Severity.Note) ? Outcome.Graver
                : Outcome.NoteOnly;
            yield return (name, outcome, string.Join(", ", fresh.Select(finding => finding.Rule)));
        }
    }

    private static ImmutableArray<Finding> Findings(DesignDocument document) =>
        Study.Solve(document.Design).Review.Findings;
}
