using System.Text.Json;
using Hypocaust.Answers;
using Json.Schema;

namespace Hypocaust.Tests.Answers;

public sealed class AnswerJsonTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(AnswerJson.Schema());

    public static TheoryData<string> ExampleNames => [.. Examples.Names];

    // Checked with JsonSchema.Net, an independent implementation of JSON Schema.
    [Theory]
    [MemberData(nameof(ExampleNames))]
    public void An_answer_validates_by_the_published_schema(string example)
    {
        using var json = JsonDocument.Parse(AnswerJson.Write(Examples.Answer(example)));
        var result = Schema.Evaluate(
            json.RootElement,
            new EvaluationOptions { OutputFormat = OutputFormat.List }
        );
        result.IsValid.ShouldBeTrue(
            string.Join(
                '\n',
                (result.Details ?? [])
                    .Where(detail => detail.Errors is { Count: > 0 })
                    .Select(detail =>
                        $"{detail.InstanceLocation}: {string.Join(", ", detail.Errors!.Values)}"
                    )
            )
        );
    }

    [Fact]
    public void The_stable_names_are_there()
    {
        using var json = JsonDocument.Parse(AnswerJson.Write(Examples.Answer("pottery-studio")));
        var root = json.RootElement;
        root.GetProperty("space").GetProperty("designLossW").GetDouble().ShouldBeGreaterThan(0);
        root.GetProperty("floor")
            .GetProperty("loops")[0]
            .GetProperty("lengthM")
            .GetDouble()
            .ShouldBeGreaterThan(0);
        var item = root.GetProperty("plant").GetProperty("items")[0];
        item.GetProperty("temperatureC").ValueKind.ShouldBe(JsonValueKind.Number);
        item.GetProperty("pressurePa").ValueKind.ShouldBe(JsonValueKind.Number);
        item.GetProperty("flowKgPerS").ValueKind.ShouldBe(JsonValueKind.Number);
        root.GetProperty("plant")
            .GetProperty("heater")
            .GetProperty("deliveredW")
            .GetDouble()
            .ShouldBeGreaterThan(0);
        root.GetProperty("plant")
            .GetProperty("convergence")
            .GetProperty("residual")
            .GetDouble()
            .ShouldBeLessThan(1e-9);
        root.GetProperty("review").GetProperty("findings").ValueKind.ShouldBe(JsonValueKind.Array);
        root.GetProperty("plant")
            .GetProperty("heater")
            .GetProperty("state")
            .GetString()
            .ShouldBe("holdsSetPoint");
    }
}
