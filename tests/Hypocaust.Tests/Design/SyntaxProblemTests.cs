using System.Text;
using Hypocaust.Design;
using Hypocaust.Problems;

namespace Hypocaust.Tests.Design;

/// <summary>Text that is not JSON is refused in plain words, at the right place, whatever it is.</summary>
public sealed class SyntaxProblemTests
{
    public static TheoryData<string, string, int, int, string> Broken =>
        new()
        {
            { "", "empty-file", 1, 1, "hypocaust new" },
            { " \n ", "empty-file", 1, 1, "hypocaust new" },
            { "{", "truncated", 1, 2, "}" },
            { "{\n  \"a\": [1, {\"b\": 2}", "truncated", 2, 20, "]}" },
            { "{\n  \"a\": \"9 k", "truncated", 2, 12, "}" },
            { "{\n  \"a\": NaN }", "not-finite", 2, 8, "in quotes" },
            { "{\n  \"a\": Infinity }", "not-finite", 2, 8, "in quotes" },
            { "{\n  \"a\": True }", "bare-word", 2, 8, "write true" },
            { "{\n  \"a\": warm }", "bare-word", 2, 8, "double quotes" },
            { "{\n  a: 1 }", "bare-word", 2, 3, "double quotes" },
            { "{\n  'a': 1 }", "single-quotes", 2, 3, "double quotes" },
            { "{\n  \"a\": 'x' }", "single-quotes", 2, 8, "double quotes" },
            { "{\n  “a”: 1 }", "curly-quotes", 2, 3, "double quote" },
            { "{ \"a\": 1\n  \"b\": 2 }", "missing-comma", 2, 3, "comma" },
            { "{ \"a\": [1 2] }", "missing-comma", 1, 11, "comma" },
            { "{ \"a\" 1 }", "missing-colon", 1, 7, "colon" },
            { "{ \"a\": [1, 2 }", "wrong-bracket", 1, 14, "]" },
            { "{ \"a\": 1 ]", "wrong-bracket", 1, 10, "}" },
            { "{ \"a\": }", "missing-value", 1, 8, "value" },
            { "{ \"a\": 1, , \"b\": 2 }", "stray-comma", 1, 11, "take it out" },
            { "{ \"a\": 01 }", "bad-number", 1, 9, "leading" },
            { "{ \"a\": +1 }", "bad-number", 1, 8, "leading" },
            { "{ \"a\": .5 }", "bad-number", 1, 8, "0.5" },
            { "{ \"a\": \"x\\q\" }", "bad-escape", 1, 11, "backslash" },
            { "{ \"a\": \"x\ny\" }", "open-text", 1, 10, "close" },
            { "{ \"a\": \"x\ty\" }", "control-character", 1, 10, "tab" },
            { "{ \"a\": \"\\ud800\" }", "bad-escape", 1, 8, "character" },
            { "{ } x", "text-after-end", 1, 5, "take out" },
            { "{ } { }", "text-after-end", 1, 5, "take out" },
            { "9 kW", "text-after-end", 1, 3, "take out" },
            { "# hello", "comment", 1, 1, "note" },
        };

    [Theory]
    [MemberData(nameof(Broken))]
    public void Broken_text_is_told_in_plain_words(
        string text,
        string code,
        int line,
        int column,
        string remedy
    )
    {
        var problem = DesignFile.Read(text).Problems.ShouldHaveSingleItem();
        problem.ShouldSatisfyAllConditions(
            one => one.Code.ShouldBe(code),
            one => one.Position.ShouldBe(new TextPosition(line, column)),
            one => one.Remedy.ShouldContain(remedy)
        );
    }

    [Fact]
    public void Comments_and_trailing_commas_are_all_told_and_the_rest_is_still_checked()
    {
        var text = TestDesigns
            .Workshop.Replace(
                "\"units\": \"us\",",
                "\"units\": \"uk\", // ours",
                StringComparison.Ordinal
            )
            .Replace("\"4 ft\" }", "\"4 ft\", }", StringComparison.Ordinal)
            .Replace("again\"", "again\", /* end */", StringComparison.Ordinal)
            .Replace(
                "\"width\": \"4 ft\", \"odd\"",
                "\"width\": [\"4 ft\", ], \"odd\"",
                StringComparison.Ordinal
            );
        TestDesigns
            .ProblemsOf(text)
            .Select(problem => (problem.Code, problem.Position!.Value.Line))
            .ShouldBe([
                ("bad-choice", 5),
                ("comment", 5),
                ("trailing-comma", LineOf(text, "\"4 ft\", }")),
                ("trailing-comma", LineOf(text, "[\"4 ft\", ]")),
                ("comment", LineOf(text, "/* end */")),
            ]);
    }

    [Fact]
    public void A_byte_order_mark_is_tolerated()
    {
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(TestDesigns.Workshop)];
        DesignFile.Read(new MemoryStream(bytes)).Succeeded.ShouldBeTrue();
        byte[] broken = [0xEF, 0xBB, 0xBF, .. "{ 'a"u8];
        DesignFile
            .Read(new MemoryStream(broken))
            .Problems[0]
            .Position.ShouldBe(new TextPosition(1, 3));
    }

    [Fact]
    public void Bytes_that_are_not_utf8_are_told_with_their_place()
    {
        byte[] latin1 = [.. "{\n \"a\": \"40 "u8, 0xB0, .. "C\" }"u8];
        var problem = DesignFile.Read(new MemoryStream(latin1)).Problems.ShouldHaveSingleItem();
        problem.Code.ShouldBe("not-utf8");
        problem.Position.ShouldBe(new TextPosition(2, 11));
        var utf16 = Encoding
            .Unicode.GetPreamble()
            .Concat(Encoding.Unicode.GetBytes("{}"))
            .ToArray();
        DesignFile.Read(new MemoryStream(utf16)).Problems[0].Code.ShouldBe("not-utf8");
        DesignFile.Read("{ \"a\": \"\ud800\" }").Problems[0].Code.ShouldBe("not-utf8");
    }

    private static int LineOf(string text, string piece) =>
        TestDesigns.PositionOf(text, piece).Line;
}
