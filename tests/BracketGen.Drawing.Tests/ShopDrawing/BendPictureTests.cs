using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.TestSupport;

namespace BracketGen.Drawing.Tests.ShopDrawing;

/// <summary>The pictures of the main example's bends in the documentation are those of its drawing.</summary>
public class BendPictureTests
{
    // Written anew by: BRACKETGEN_PICTURES=<folder> dotnet test tests/BracketGen.Drawing.Tests --filter BendPictureTests
    [Fact]
    public void The_pictures_in_the_documentation_are_of_this_plan()
    {
        var plan = ExampleSolutions.All.Single(s => s.Name == "plover-alder-58").Solution.Bracket!.Plan!;
        var folder = Environment.GetEnvironmentVariable("BRACKETGEN_PICTURES") is { Length: > 0 } given ? given : null;
        for (var step = 0; step < plan.Steps.Length; step++)
        {
            var (name, text) = ($"bend-step-{step + 1}.svg", SvgWriter.Write(BendPicture.Draw(plan, step, 1)));
            if (folder is not null)
            {
                File.WriteAllText(Path.Combine(folder, name), text);
            }
            else
            {
                Assert.Equal(text, File.ReadAllText(RepositoryRoot.PathOf("docs", "pictures", name)));
            }
        }

        Assert.Equal(plan.Steps.Length, Directory.GetFiles(RepositoryRoot.PathOf("docs", "pictures"), "bend-step-*.svg").Length);
    }
}
