using Hypocaust.Problems;

namespace Hypocaust.Tests.Problems;

public sealed class ResultTests
{
    private static readonly Problem Wrong = new("wrong", "$.a", "it is wrong", "make it right");

    [Fact]
    public void Value_of_a_failure_throws_and_names_the_problem()
    {
        Result<string> result = Wrong;
        result.Succeeded.ShouldBeFalse();
        Should
            .Throw<InvalidOperationException>(() => result.Value)
            .Message.ShouldContain("it is wrong");
    }

    [Fact]
    public void Then_runs_only_after_success()
    {
        Result<string> good = "3";
        good.Then<string>(text => text + "!").Value.ShouldBe("3!");
        Result<string> bad = Wrong;
        bad.Then<string>(text => text + "!").Problems.ShouldBe([Wrong]);
    }

    [Fact]
    public void A_failure_without_a_problem_cannot_be_built() =>
        Should.Throw<ArgumentException>(() => Result<string>.Failed([]));
}
