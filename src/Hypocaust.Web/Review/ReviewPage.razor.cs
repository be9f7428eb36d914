using System.Collections.Immutable;
using Hypocaust.Answers;
using Hypocaust.Verdicts;
using Hypocaust.Web.Session;
using Hypocaust.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Review;

/// <summary>What is unsafe or missing?</summary>
public partial class ReviewPage
{
    [CascadingParameter]
    private Moment Moment { get; set; } = null!;

    private Verdict Verdict => VerdictBook.Review(Moment.Answer, Moment.Units);

    private IEnumerable<(Severity Severity, ImmutableArray<Finding> Findings)> Groups =>
        SeverityMark
            .All.Select(severity =>
                (
                    severity,
                    Moment
                        .Answer.Review.Findings.Where(finding => finding.Severity == severity)
                        .ToImmutableArray()
                )
            )
            .Where(group => !group.Item2.IsEmpty);
}
