using BracketGen.Drawing.Fitted;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Geometry;
using BracketGen.TestSupport;

namespace BracketGen.Drawing.Tests.ShopDrawing;

/// <summary>The pictures on the first page of the documentation are of the shipped example: the bracket in its place, and its drawing.</summary>
public class ReadmePictureTests
{
    // Written anew by: BRACKETGEN_PICTURES=<folder> dotnet test tests/BracketGen.Drawing.Tests --filter ReadmePictureTests
    [Fact]
    public void The_pictures_in_the_documentation_are_of_this_bracket()
    {
        var solution = ExampleSolutions.All.Single(s => s.Name == "plover-alder-58").Solution;
        foreach (var (name, svg) in new[]
        {
            ("bracket.svg", SvgWriter.Write(FittedPicture.Of(solution).Draw(new(160, 110), 1)!)),
            ("drawing.svg", SvgWriter.Write(BracketDrawing.Compose(solution, DrawingOptions.Standard)[0])),
        })
        {
            var text = OnPaper(svg);
            if (Environment.GetEnvironmentVariable("BRACKETGEN_PICTURES") is { Length: > 0 } folder)
            {
                File.WriteAllText(Path.Combine(folder, name), text);
            }
            else
            {
                Assert.Equal(text, File.ReadAllText(RepositoryRoot.PathOf("docs", "pictures", name)));
            }
        }
    }

    // White under the black lines, for pages with a dark ground.
    private static string OnPaper(string svg) => svg.Insert(svg.IndexOf(">\n", StringComparison.Ordinal) + 2, "<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
}
