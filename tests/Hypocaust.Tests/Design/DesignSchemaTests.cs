using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Hypocaust.Design;
using Json.Schema;

namespace Hypocaust.Tests.Design;

/// <summary>The published schema, judged by JsonSchema.Net, an independent validator (draft 2020-12).</summary>
public sealed class DesignSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(DesignSchema.Write());

    [Fact]
    public void The_schema_itself_keeps_to_its_draft()
    {
        using var schema = JsonDocument.Parse(DesignSchema.Write());
        MetaSchemas.Draft202012.Evaluate(schema.RootElement).IsValid.ShouldBeTrue();
        schema
            .RootElement.GetProperty("$schema")
            .GetString()
            .ShouldBe("https://json-schema.org/draft/2020-12/schema");
    }

    [Fact]
    public void Good_designs_pass()
    {
        Passes(TestDesigns.Workshop).ShouldBeTrue();
        Passes(DesignFile.New("new")).ShouldBeTrue();
    }

    // every fault here but those a schema cannot see: range of a quantity, dimension, duplicate key, letters of a unit
    [Theory]
    [InlineData("\"spacing\": \"9 in\"", "\"spacng\": \"9 in\"")]
    [InlineData("\"9 in\"", "9")]
    [InlineData("\"9 in\"", "\"9\"")]
    [InlineData("\"9 in\"", "\"2,5 in\"")]
    [InlineData("\"9 in\"", "[9]")]
    [InlineData("\"9 in\"", "null")]
    [InlineData("\"spacing\": \"9 in\", ", "")]
    [InlineData("\"speed\": 2", "\"speed\": 2.5")]
    [InlineData("\"speed\": 2", "\"speed\": 0")]
    [InlineData("\"speed\": 2", "\"speed\": \"2\"")]
    [InlineData("\"version\": 1", "\"version\": 2")]
    [InlineData("\"propyleneGlycol\"", "\"propylenGlycol\"")]
    [InlineData("\"kind\": \"circulator\"", "\"kind\": \"circlator\"")]
    [InlineData("\"kind\": \"circulator\",", "")]
    [InlineData("\"oxygenBarrier\": false", "\"oxygenBarrier\": \"no\"")]
    [InlineData("\"used pump\": {", "\"2nd pump\": {")]
    [InlineData("\"note\": \"Read", "\"Note\": \"Read")]
    [InlineData("\"resistance\": \"R-2\"", "\"resistance\": \"two\"")]
    public void A_planted_fault_fails_in_the_schema_and_in_our_reader(string old, string fault)
    {
        var text = TestDesigns.With(old, fault);
        Passes(text).ShouldBeFalse();
        TestDesigns.ProblemsOf(text).ShouldNotBeEmpty();
    }

    [Theory]
    [InlineData("9 in")]
    [InlineData("12' 6 1/2\"")]
    [InlineData("6½ in")]
    [InlineData("½ ft")]
    [InlineData("0.1..0.3 m")]
    [InlineData("2.5e-1 m")]
    public void A_length_that_we_read_passes_the_pattern(string length) =>
        Passes(TestDesigns.With("\"9 in\"", JsonSerializer.Serialize(length))).ShouldBeTrue();

    [Fact]
    public void Every_value_carries_its_meaning()
    {
        using var schema = JsonDocument.Parse(DesignSchema.Write());
        foreach (var definition in schema.RootElement.GetProperty("$defs").EnumerateObject())
        {
            definition.Value.TryGetProperty("description", out _).ShouldBeTrue(definition.Name);
            if (definition.Value.TryGetProperty("properties", out var properties))
            {
                foreach (
                    var property in properties
                        .EnumerateObject()
                        .Where(one => !one.Value.TryGetProperty("const", out _))
                )
                {
                    property
                        .Value.TryGetProperty("description", out _)
                        .ShouldBeTrue($"{definition.Name}.{property.Name}");
                }
            }
        }
    }

    public enum Verdict
    {
        SoundPlant,
        DeadPlant,
    }

    public sealed record Reading(
        [Meaning("Water temperature.")] double TemperatureC,
        string? Where
    );

    public sealed record Answer(
        [Meaning("What it says.")] Verdict Verdict,
        double? FlowKgPerS,
        int Iterations,
        bool Converged,
        ImmutableArray<Reading> Readings,
        IReadOnlyList<string> Notes,
        Reading? Worst,
        IReadOnlyDictionary<string, Reading> ByName
    )
    {
        public double FlowLPerMin => (FlowKgPerS ?? 0) * 60;
    }

    [Fact]
    public void The_schema_of_an_answer_fits_what_the_library_serialiser_writes()
    {
        var options = new JsonSerializerOptions(JsonSerializerDefaults.Web)
        {
            Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
        };
        var schema = JsonSchema.FromText(
            RecordSchema.For(typeof(Answer), "urn:hypocaust:test:answer")
        );
        var answer = new Answer(
            Verdict.DeadPlant,
            null,
            7,
            true,
            [new(40, null), new(30, "return")],
            ["one"],
            null,
            new Dictionary<string, Reading>(StringComparer.Ordinal) { ["supply"] = new(40, null) }
        );
        var written = JsonSerializer.Serialize(answer, options);
        Passes(schema, written).ShouldBeTrue();
        Passes(
                schema,
                JsonSerializer.Serialize(
                    answer with
                    {
                        FlowKgPerS = 0.1,
                        Worst = new(1, "x"),
                    },
                    options
                )
            )
            .ShouldBeTrue();
        Passes(schema, written.Replace("deadPlant", "deadplant", StringComparison.Ordinal))
            .ShouldBeFalse();
        Passes(
                schema,
                written.Replace("\"iterations\":7", "\"iterations\":null", StringComparison.Ordinal)
            )
            .ShouldBeFalse();
        Passes(schema, written.Replace("\"flowLPerMin\"", "\"flow\"", StringComparison.Ordinal))
            .ShouldBeFalse();
    }

    private static bool Passes(string text) => Passes(Schema, text);

    private static bool Passes(JsonSchema schema, string text)
    {
        using var document = JsonDocument.Parse(text);
        return schema.Evaluate(document.RootElement).IsValid;
    }
}
