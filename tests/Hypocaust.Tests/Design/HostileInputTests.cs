using System.Diagnostics;
using System.Text;
using Hypocaust.Design;

namespace Hypocaust.Tests.Design;

/// <summary>Whatever bytes come, reading neither throws nor takes long.</summary>
public sealed class HostileInputTests
{
    private const int Mutations = 20_000;

    [Fact]
    public void A_stream_of_fifty_megabytes_is_refused_without_being_read()
    {
        using var stream = new CountingStream(50 * 1024 * 1024);
        DesignFile.Read(stream).Problems.ShouldHaveSingleItem().Code.ShouldBe("too-large");
        stream.BytesRead.ShouldBeLessThan(2L * DesignFile.LargestFile);
        DesignFile
            .Read(new string(' ', 50 * 1024 * 1024))
            .Problems.ShouldHaveSingleItem()
            .Code.ShouldBe("too-large");
    }

    [Theory]
    [InlineData("[", "]")]
    [InlineData("{\"a\":", "}")]
    public void Deep_nesting_is_a_problem_at_its_place(string open, string close)
    {
        var text = Repeat(open, 100_000) + "1" + Repeat(close, 100_000);
        var problem = DesignFile.Read(text).Problems.ShouldHaveSingleItem();
        problem.Code.ShouldBe("too-deep");
        problem.Position!.Value.Column.ShouldBe((64 * open.Length) + 1);
        var allowed = "{\"board\":" + Repeat("{\"a\":", 62) + "{}" + Repeat("}", 63);
        DesignFile.Read(allowed).Problems.ShouldNotContain(one => one.Code == "too-deep");
    }

    [Fact]
    public void A_file_cut_off_at_any_byte_gives_a_problem_and_never_throws()
    {
        var bytes = Encoding.UTF8.GetBytes(TestDesigns.Workshop.TrimEnd());
        for (var length = 0; length < bytes.Length; length++)
        {
            DesignFile
                .Read(new MemoryStream(bytes, 0, length))
                .Problems.ShouldNotBeEmpty($"cut at {length}");
        }
    }

    [Fact]
    public void Random_bytes_in_a_file_never_make_reading_throw()
    {
        var random = new Random(20260117);
        var original = Encoding.UTF8.GetBytes(DesignFile.New("mutant"));
        var ascii = "{}[]\",:0123456789.-+eE'\\/ truefalsnul\n\0"u8.ToArray();
        var refused = 0;
        for (var i = 0; i < Mutations; i++)
        {
            var bytes = (byte[])original.Clone();
            for (var k = random.Next(1, 4); k > 0; k--)
            {
                bytes[random.Next(bytes.Length)] =
                    random.Next(4) == 0 ? (byte)random.Next(256) : ascii[random.Next(ascii.Length)];
            }

            var read = DesignFile.Read(new MemoryStream(bytes));
            refused += read.Succeeded ? 0 : 1;
            read.Problems.All(problem => problem is { What.Length: > 0, Position: not null })
                .ShouldBeTrue();
        }

        refused.ShouldBeGreaterThan(Mutations / 2);
    }

    [Fact]
    public void Swapped_pieces_of_a_file_never_make_reading_throw()
    {
        var random = new Random(7);
        var words = TestDesigns.Workshop.Split(' ');
        for (var i = 0; i < 3000; i++)
        {
            var mixed = (string[])words.Clone();
            for (var k = random.Next(1, 6); k > 0; k--)
            {
                mixed[random.Next(mixed.Length)] = words[random.Next(words.Length)];
            }

            _ = DesignFile.Read(string.Join(' ', mixed)).Succeeded;
        }
    }

    [Fact]
    public void Four_megabytes_of_faults_are_answered_in_a_few_seconds()
    {
        var runs = string.Join(",", Enumerable.Range(0, 60_000).Select(i => $"\"nowhere {i}.in\""));
        var text = TestDesigns.With(
            "\"run\": [\"branch.c\", \"6 in\", \"spare.in\"]",
            $"\"run\": [{runs}]"
        );
        var clock = Stopwatch.StartNew();
        TestDesigns.ProblemsOf(text).Count.ShouldBe(201);
        // a bound on the order of growth, not a benchmark: quadratic work would take minutes
        clock.Elapsed.ShouldBeLessThan(TimeSpan.FromSeconds(20));
    }

    private static string Repeat(string text, int count) =>
        new StringBuilder().Insert(0, text, count).ToString();

    /// <summary>A stream of blanks that cannot tell its length.</summary>
    private sealed class CountingStream(long length) : Stream
    {
        public long BytesRead { get; private set; }

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => BytesRead;
            set => throw new NotSupportedException();
        }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var taken = (int)Math.Min(count, length - BytesRead);
            Array.Fill(buffer, (byte)' ', offset, taken);
            BytesRead += taken;
            return taken;
        }

        public override void Flush() { }

        public override long Seek(long offset, SeekOrigin origin) =>
            throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) =>
            throw new NotSupportedException();
    }
}
