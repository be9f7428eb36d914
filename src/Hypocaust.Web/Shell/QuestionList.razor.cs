using Hypocaust.Answers;
using Hypocaust.Web.Session;
using Microsoft.AspNetCore.Components;

namespace Hypocaust.Web.Shell;

/// <summary>The questions in the order of the job, marked where the review has something to say.</summary>
public partial class QuestionList
{
    [CascadingParameter]
    private Moment Moment { get; set; } = null!;

    // A question shows its gravest kind of finding; the review itself shows them all
    private IEnumerable<(Severity Severity, int Count)> MarksOf(Question question)
    {
        var isReview = question == Questions.Review;
        return Moment
            .Answer.Review.Findings.Where(finding => isReview || finding.Page == question.Page)
            .GroupBy(finding => finding.Severity)
            .OrderBy(group => group.Key)
            .Take(isReview ? int.MaxValue : 1)
            .Select(group => (group.Key, group.Count()));
    }
}
