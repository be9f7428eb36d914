using Hypocaust.Web.Entries;

namespace Hypocaust.Web.Tests.Entries;

public class FieldTreeTests
{
    [Fact]
    public void Every_value_that_the_reader_found_in_the_file_has_a_field_with_its_very_text()
    {
        // the reader of design files is the outside check here: it knows what is written where
        var written = Designs
            .Small.Places.Keys.Select(path => (Path: path, Text: Designs.Small.Written(path)))
            .Where(value => value.Text is not null)
            .ToList();
        var fields = FieldTree.Of(Designs.Small.Design);

        written.Count.ShouldBeGreaterThan(80);
        foreach (var (path, text) in written)
        {
            fields.At(path).ShouldNotBeNull(path).Text.ShouldBe(text, path);
        }
    }

    [Fact]
    public void Every_field_of_every_section_has_a_meaning_and_can_be_written()
    {
        foreach (var field in FieldTree.Of(Designs.Small.Design).Root.All())
        {
            if (field.Text.Length > 0 && !field.Assumed)
            {
                Designs.Small.Edit(field.Path, field.Text).Succeeded.ShouldBeTrue(field.Path);
            }

            if (!field.Path.EndsWith(']'))
            {
                field.Meaning.ShouldNotBeEmpty(field.Path);
            }
        }
    }

    [Fact]
    public void An_assumed_value_is_marked_and_shown()
    {
        var field = FieldTree.Of(Designs.Small.Design).At("$.plant.fluid.share")!;

        field.Assumed.ShouldBeTrue();
        field.Text.ShouldBe("0 %");
    }

    [Fact]
    public void A_choice_is_offered_in_words()
    {
        var field = FieldTree.Of(Designs.Small.Design).At("$.plant.fluid.kind")!;

        field.Choices.ShouldContain(new Choice("propyleneGlycol", "propylene glycol"));
    }

    [Fact]
    public void A_name_with_a_blank_stands_in_quotes_as_the_reader_writes_it()
    {
        var fields = FieldTree.Of(Designs.Small.Design);

        fields.At("$.plant.items['valve before pump'].part")!.Text.ShouldBe("ball valve 3/4");
    }

    [Theory]
    [InlineData("$.plant.items.pump.speed", "pump, speed")]
    [InlineData("$.floor.loops[1].spacing", "2 middle, spacing")]
    [InlineData("$.plant.runs[0].pipe", "runs 1, pipe")]
    [InlineData("$.plant.items", "Items")]
    [InlineData("$.plant", "Plant")]
    [InlineData("$.name", "name")]
    [InlineData("$.plant.nowhere", "$.plant.nowhere")]
    public void A_path_is_told_in_the_words_of_the_design(string path, string words) =>
        FieldTree.Of(Designs.Small.Design).NameOf(path).ShouldBe(words);
}
