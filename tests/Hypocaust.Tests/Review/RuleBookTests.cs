using Hypocaust.Answers;
using Hypocaust.Design;
using Hypocaust.Review;

namespace Hypocaust.Tests.Review;

/// <summary>One battery over all rules: whoever adds one has to meet it.</summary>
public sealed class RuleBookTests
{
    private static readonly string[] KnownSources =
    [
        "(from memory)",
        "(seen)",
        "(seen in",
        "common practice, no source",
        "common knowledge",
        "ASHRAE",
        "IAPWS",
    ];

    public static TheoryData<string> Rules => [.. RuleBook.Rules.Select(rule => rule.Id)];

    [Fact]
    public void No_rule_of_the_library_is_forgotten()
    {
        var written = typeof(ReviewRule)
            .Assembly.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(ReviewRule)))
            .Select(type => type.Name);
        RuleBook.Rules.Select(rule => rule.GetType().Name).ShouldBe(written, ignoreOrder: true);
    }

    [Fact]
    public void Names_are_unique() => RuleBook.Rules.Select(rule => rule.Id).ShouldBeUnique();

    [Fact]
    public void Every_rule_has_fixtures_and_only_one_pair() =>
        RuleFixtures
            .All.Select(fixture => fixture.Rule.Name)
            .ShouldBe(RuleBook.Rules.Select(rule => rule.GetType().Name), ignoreOrder: true);

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_has_its_words_and_its_source(string id)
    {
        var card = CardOf(id);
        card.Id.ShouldMatch("^[a-z0-9]+(-[a-z0-9]+)*$");
        ShouldBeTitle(card.Title);
        ShouldBeSentences(card.Why);
        ShouldBeSentences(card.LooksAt);
        ShouldBeTitle(card.Source, mayStartSmall: true);
        KnownSources.ShouldContain(
            source => card.Source.Contains(source, StringComparison.Ordinal),
            card.Source
        );
        new[] { Pages.Space, Pages.Floor, Pages.Plant }.ShouldContain(card.Page);
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_follows_only_from_other_rules_and_never_from_itself(string id)
    {
        var waiting = new Queue<Type>(CardOf(id).CausedBy);
        var own = RuleBook.Rules.Single(rule => rule.Id == id).GetType();
        var seen = new HashSet<Type>();
        while (waiting.TryDequeue(out var cause))
        {
            cause.ShouldNotBe(own);
            var rule = RuleBook.Rules.SingleOrDefault(one => one.GetType() == cause);
            rule.ShouldNotBeNull($"{cause.Name} is no rule");
            foreach (var next in rule.Card.CausedBy.Where(seen.Add))
            {
                waiting.Enqueue(next);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_objects_to_its_fixture_at_a_place_that_is_there(string id)
    {
        var document = FixtureOf(id).Triggers().Read();
        var answer = Study.Solve(document.Design);
        var findings = answer.Review.Findings.Where(finding => finding.Rule == id).ToList();
        findings.ShouldNotBeEmpty(Found(answer));
        foreach (var finding in findings)
        {
            ShouldBeWellSaid(finding);
            ShouldBeThere(document, finding.Place);
        }
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_lets_pass_what_is_just_right(string id)
    {
        var answer = Study.Solve(FixtureOf(id).Spares().Read().Design);
        answer.Review.Findings.ShouldNotContain(finding => finding.Rule == id, Found(answer));
        answer.Review.NotAsked.ShouldNotContain(id);
    }

    [Fact]
    public void A_danger_is_not_hushed_up_by_a_lesser_cause()
    {
        var rules = RuleBook.Rules.ToDictionary(rule => rule.GetType());
        foreach (var fixture in RuleFixtures.All)
        {
            var findings = Study.Solve(fixture.Triggers().Read().Design).Review.Findings;
            foreach (var finding in findings)
            {
                var causes = rules.Values.Single(rule => rule.Id == finding.Rule).Card.CausedBy;
                findings
                    .Where(other => causes.Any(cause => rules[cause].Id == other.Rule))
                    .ShouldAllBe(other => other.Severity > finding.Severity);
            }
        }

        var studio = RuleFixtures
            .All.Single(one => one.Id == "circuit-without-heater")
            .Triggers()
            .PutBehind("heater.out", "heater valve", "ball valve 3/4");
        Study
            .Solve(studio.Read().Design)
            .Review.Findings.ShouldContain(finding =>
                finding.Rule == "relief-valve-can-be-cut-off"
            );
    }

    internal static void ShouldBeWellSaid(Finding finding)
    {
        ShouldBeSentences(finding.What, mayStartWithName: true);
        ShouldBeSentences(finding.Remedy, mayStartWithName: true);
        foreach (var nonsense in new[] { "NaN", "∞", "Infinity", "null", "  ", "\"\"" })
        {
            $"{finding.What} {finding.Remedy}".ShouldNotContain(nonsense);
        }
    }

    private static void ShouldBeTitle(string text, bool mayStartSmall = false)
    {
        text.ShouldNotBeNullOrWhiteSpace();
        text.Trim().ShouldBe(text);
        ".!?:;,".ShouldNotContain(text[^1]);
        (mayStartSmall || char.IsUpper(text[0])).ShouldBeTrue(text);
    }

    private static void ShouldBeSentences(string text, bool mayStartWithName = false)
    {
        text.ShouldNotBeNullOrWhiteSpace();
        text.ShouldEndWith(".");
        text.ShouldNotContain("!");
        text.ShouldNotContain("..");
        (
            char.IsUpper(text[0]) || (mayStartWithName && (text[0] == '"' || char.IsDigit(text[0])))
        ).ShouldBeTrue(text);
    }

    // a value that is left out has no place in the text, but its parent has
    private static void ShouldBeThere(DesignDocument document, string place)
    {
        var parent = place[..Math.Max(1, place.LastIndexOf('.'))];
        document.Places.Keys.ShouldContain(
            known => known == place || known == parent,
            $"{place} is nowhere in the design"
        );
    }

    private static RuleCard CardOf(string id) => RuleBook.Rules.Single(rule => rule.Id == id).Card;

    private static RuleFixture FixtureOf(string id) =>
        RuleFixtures.All.Single(fixture => fixture.Id == id);

    private static string Found(Answer answer) =>
        string.Join(
            "\n",
            answer
                .Review.Findings.Select(finding => $"{finding.Rule}: {finding.What}")
                .Concat(answer.Problems.Select(problem => problem.ToString()))
        );
}
