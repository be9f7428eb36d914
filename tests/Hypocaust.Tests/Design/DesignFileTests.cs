using System.Text;
using Hypocaust.Design;

namespace Hypocaust.Tests.Design;

public sealed class DesignFileTests
{
    [Fact]
    public void New_gives_a_design_that_reads_without_problems()
    {
        var read = DesignFile.Read(DesignFile.New("Test \"house\" №1"));
        read.Problems.Select(problem => $"{problem.Position} {problem}").ShouldBeEmpty();
        read.Value.Design.Name.ShouldBe("Test \"house\" №1");
    }

    [Fact]
    public void Catalogue_reads_without_problems()
    {
        Catalogue.Parts.Count.ShouldBeGreaterThan(100);
    }
}
