using System.Text;
using Hypocaust.Answers;
using Hypocaust.Review;

namespace Hypocaust.Tests.Review;

/// <summary>The guide's page about the review is written from the rules, so that it says what they say.</summary>
public sealed class ReviewGuideTests
{
    private const string Rewrite = "HYPOCAUST_REWRITE_GUIDE";

    private static readonly string[] Groups =
    [
        "Relief",
        "Expansion",
        "LowPressure",
        "Circulation",
        "Heating",
        "HeatedFloor",
        "Air",
        "Antifreeze",
        "Piping",
        "Service",
    ];

    [Fact]
    public void The_guide_says_what_the_rules_say()
    {
        var file = Path.Combine(RepositoryRoot(), "docs", "guide", "review.md");
        var page = Page();
        if (Environment.GetEnvironmentVariable(Rewrite) == "1")
        {
            File.WriteAllText(file, page);
        }

        File.ReadAllText(file)
            .ReplaceLineEndings("\n")
            .ShouldBe(page, $"write it again with {Rewrite}=1");
    }

    [Fact]
    public void Every_group_of_rules_has_a_heading() =>
        RuleBook.Rules.Select(GroupOf).Distinct().ShouldBe(Groups, ignoreOrder: true);

    private static string Page()
    {
        var page = new StringBuilder();
        page.Append(
            $"""
            # Review: what would an experienced fitter say?

            <!-- Written from the rules; do not edit. To write it again:
                 {Rewrite}=1 dotnet run --project tests/Hypocaust.Tests -- -class '*ReviewGuideTests*' -->

            Review reads your design and its answers and says what is unsafe, unsuitable or missing, the gravest first:

            - **danger**: someone can be hurt or something destroyed
            - **will not work**: it does not do what it is for
            - **poor**: it works badly or not for long
            - **note**: worth knowing

            Each finding carries the numbers of your design, the reason, the source and what would mend it. Where one fault explains another, only the first is named. {RuleBook.Rules.Length} rules are asked; those whose answer is missing are listed as not asked. Review does not replace an inspection: local codes and licensed trades decide.

            Sources marked "from memory" have not been looked up in the standard; check them there before you rely on a limit.


            """.ReplaceLineEndings("\n")
        );
        foreach (var group in Groups)
        {
            page.Append($"## {Heading(group)}\n\n");
            foreach (var rule in RuleBook.Rules.Where(rule => GroupOf(rule) == group))
            {
                Append(page, rule);
            }
        }

        return page.ToString().TrimEnd('\n') + "\n";
    }

    private static void Append(StringBuilder page, ReviewRule rule)
    {
        var card = rule.Card;
        page.Append($"### {card.Title}\n\n");
        page.Append($"`{card.Id}` · {Words(card.Severity)} · page {card.Page}\n\n");
        page.Append($"{card.Why}\n\n");
        page.Append($"*Looks at:* {card.LooksAt}\n\n");
        if (!card.CausedBy.IsEmpty)
        {
            var causes = card.CausedBy.Select(cause =>
                $"`{RuleBook.Rules.Single(one => one.GetType() == cause).Id}`"
            );
            page.Append($"*Says nothing beside:* {string.Join(", ", causes)}\n\n");
        }

        page.Append($"*Source:* {card.Source}\n\n");
    }

    private static string GroupOf(ReviewRule rule) => rule.GetType().Namespace!.Split('.')[^1];

    private static string Heading(string group) =>
        group switch
        {
            "LowPressure" => "Low pressure",
            "HeatedFloor" => "Heated floor",
            _ => group,
        };

    private static string Words(Severity severity) =>
        severity == Severity.WillNotWork ? "will not work" : severity.ToString().ToLowerInvariant();

    private static string RepositoryRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Hypocaust.slnx")))
        {
            folder = folder.Parent;
        }

        return folder.ShouldNotBeNull().FullName;
    }
}
