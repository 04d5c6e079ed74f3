using BracketGen.Profiles.Editing;
using BracketGen.Profiles.Errors;
using BracketGen.Words.Profiles;

namespace BracketGen.Profiles.Tests;

/// <summary>The file of a bracket that is there already: what it says, and what is said of its mistakes.</summary>
public class BracketFileTests
{
    private const string File = "brackets/shelf-upright-34.toml";

    public static TheoryData<string> Files => [.. Examples.Of("brackets")];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_shipped_bracket_reads_and_is_written_as_it_was_read(string file)
    {
        var shop = ProfileReader.ReadShop(Samples.Shop, Samples.Files).Value!;
        var read = ProfileReader.ReadBracket(file, Examples.Files, shop);
        Assert.Equal("", string.Join('\n', read.Errors.Select(ProfileErrorText.Format)));
        var text = BracketFileText.Of(read.Value!);
        var again = ProfileReader.ReadBracket("again.toml", MemoryFileSource.Empty.With("again.toml", text));
        Assert.Equal("", string.Join('\n', again.Errors.Select(ProfileErrorText.Format)));
        Assert.Equal(text, BracketFileText.Of(again.Value!));
        if (read.Value!.Drawn is not null)
        {
            return; // What a drawing gives is written rounded.
        }

        Assert.True(read.Value.MountFlange.SequenceEqual(again.Value!.MountFlange));
        Assert.True(read.Value.Bends.SelectMany(b => b.Outline).SequenceEqual(again.Value.Bends.SelectMany(b => b.Outline)));
    }

    [Theory]
    [InlineData("material = \"S235JR\"", "material = \"C45\"", "material", "Where the sheet is not known, write its class")]
    [InlineData("[68, -10.5, 3], [68, 25.5], [-10.5, 25.5]]", "[68, -10.5, 3], [68, 35.5], [-10.5, 35.5]]", "bends[1].line", "Draw the flange up to the corner line")]
    [InlineData("[[0, 0], [78.5, 0], [78.5, 33, 3]", "[[0, 9], [78.5, 9], [78.5, 33, 3]", "bends[1].outline", "v = 0")]
    [InlineData("[78.5, 33, 3], [46, 33, 3], [0, 22, 3]]", "[78.5, 5], [0, 5]]", "bends[1].outline", "more than 7 mm from the corner line")]
    [InlineData("outline = [[-10.5, -10.5, 3], [68, -10.5, 3]", "outline = [[68, -10.5], [-10.5, -10.5]", "outline", "no two edges crossing")]
    [InlineData("[-10.5, -10.5, 3]", "[-10.5, -10.5, 60]", "outline", "does not fit between the corners")]
    [InlineData("at = [34, 0]", "at = [66, 0]", "holes[2].at", "Measure the hole from the same edges")]
    [InlineData("at = [52, 25.5, 18.5]", "at = [52, 24, 18.5]", "stop", "give direction")]
    [InlineData("at = [52, 25.5, 18.5]", "at = [52, 25.5, 45]", "stop", "Measure the hole from the same edges")]
    [InlineData("slot_width = {", "diameter = 9\nslot_width = {", "stop.slot_width", "not both")]
    [InlineData("slot_width = { value = 9, plus_minus = 0.05 }", "", "stop.diameter", "Add one of the two")]
    [InlineData("line = [[-10.5, 25.5], [68, 25.5]]", "line = [[-10.5, 25.5], [-10.5, 25.5]]", "bends[1].line", "two ends of the bend")]
    [InlineData("line = [[-10.5, 25.5], [68, 25.5]]", "line = [[-10.5, 25.5]]", "bends[1].line", "Add what is missing")]
    [InlineData("line = [[-10.5, 25.5], [68, 25.5]]", "line = [[-10.5, 25.5], [7, 25.5]]", "bends[1].line", "Correct the ends of the bend")]
    [InlineData("\nline = [[-10.5", "\nfrom = 2\nline = [[-10.5", "bends[1].from", "Number the bends")]
    [InlineData("at = [34, 0]", "at = [34, 0, 0]", "holes[2].at", "Give two numbers in brackets.")]
    [InlineData("[68, -10.5, 3]", "[68]", "outline[2]", "the third is the radius")]
    [InlineData("{ value = 90, plus_minus = 0.5 }", "{ value = 90, plus_minus = 30 }", "bends[1].included_angle.plus_minus", "from 0 to 20")]
    [InlineData("line_plus_minus = 0.1", "line_plus_minus = 6", "bends[1].line_plus_minus", "from 0 to 5")]
    [InlineData("plus_minus = 0.05\ndiameter = 6.6\n\n[[holes]]", "plus_minus = -1\ndiameter = 6.6\n\n[[holes]]", "holes[1].plus_minus", "from 0 to 5")]
    [InlineData("goes = \"up\"", "goes = \"left\"", "bends[1].goes", "\"up\" or \"down\"")]
    [InlineData("value = 90,", "value = 190,", "bends[1].included_angle.value", "from 30 to 175")]
    [InlineData("profile = \"bracket\"", "profile = \"job\"", "profile", "a bracket is needed here")]
    public void Each_mistake_is_told_at_its_place(string old, string changed, string key, string says)
    {
        var files = Samples.Edit(Examples.Files, File, Examples.Texts[File], old, changed);
        var shop = ProfileReader.ReadShop(Samples.Shop, Samples.Files).Value!;
        var error = Assert.Single(ProfileReader.ReadBracket(File, files, shop).Errors);
        Assert.Equal(key, error.Key);
        Assert.Contains(says, ProfileErrorText.Format(error), StringComparison.Ordinal);
    }

    // Beside a bend the flange may run on only where cuts set it apart.
    [Fact]
    public void Wings_beside_a_bend_need_cuts()
    {
        const string outline = "outline = [[-10.5, -10.5, 3], [68, -10.5, 3], [68, 25.5], [-10.5, 25.5]]";
        const string winged = "outline = [[-10.5, -10.5, 3], [90, -10.5, 3], [90, 35], [72.5, 35], [72.5, 15], [68, 15], [68, 25.5], [-10.5, 25.5]]";
        var files = Samples.Edit(Examples.Files, File, Examples.Texts[File], outline, winged);
        var error = Assert.Single(ProfileReader.ReadBracket(File, files).Errors);
        Assert.IsType<BracketShapeWrong>(error.Problem);
        Assert.Contains("measure the cuts beside it", ProfileErrorText.Format(error), StringComparison.Ordinal);
        files = Samples.Edit(files, File, Examples.Texts[File].Replace(outline, winged, StringComparison.Ordinal), "goes = \"up\"", "goes = \"up\"\nrelief = 4.5");
        Assert.Empty(ProfileReader.ReadBracket(File, files).Errors);
    }
}
