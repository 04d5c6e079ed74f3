using System.Globalization;
using System.Text;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;
using BracketGen.Profiles;
using BracketGen.TestSupport;

namespace BracketGen.Drawing.Tests.Dxf;

/// <summary>What a shop bends from the cut file of a bracket on two faces.</summary>
public class SecondFlangeDxfTests
{
    // The file's own circles and bend lines, read by hand and folded by hand with the bend table's numbers: inside radius 3.8, allowance 7.95, thickness 3, 90° up. The hole then lies where it was measured on the
    // rib: 26 from H1 away from H2, and 24 over the mount face.
    [Fact]
    public void The_cut_file_alone_folds_the_third_hole_onto_the_rib()
    {
        var job = ProfileReader.ReadJob(RepositoryRoot.PathOf("profiles", "jobs", "dunlin-rowan-64-rib.toml"), new DiskFileSource()).Value!;
        var bracket = Designer.Solve(job, SearchEffort.WithoutStrength).Bracket!;
        var bytes = new DxfWriter(DxfVersion.R2000).Write(FlatPatternDxf.Compose(bracket, job, []));
        var (circles, folds) = Read(Encoding.ASCII.GetString(bytes));
        var (h1, h2, h3) = (circles.First(c => c.Radius == 3.3 && c.Centre.X > 60).Centre, circles.First(c => c.Radius == 3.3 && c.Centre.X < 60).Centre, circles.Single(c => c.Radius == 3.5).Centre);
        Assert.Equal(40, h1.DistanceTo(h2), 1e-6);
        var away = (h1 - h2).Unit;
        var middle = folds.Single(f => away.Dot(f - h1) > 0);

        double radius = 3.8, thickness = 3, allowance = bracket.SecondBend!.Allowance, near = away.Dot(middle - h1) - allowance / 2;
        var past = away.Dot(h3 - h1) - near - allowance;
        Assert.Equal(7.95, allowance, 0.005);
        Assert.Equal(26, near + radius + thickness, 1e-6);
        Assert.Equal(24, radius + thickness + past, 1e-6);
        Assert.Equal(0, away.Cross(h3 - h1), 1e-6);
    }

    // Group codes and values in pairs: circles of the cut, and the middles of the bend lines.
    private static (List<(Vector2 Centre, double Radius)> Circles, List<Vector2> Folds) Read(string text)
    {
        var lines = text.Split('\n').Select(l => l.Trim()).ToArray();
        List<(Vector2, double)> circles = [];
        List<Vector2> folds = [];
        for (var i = 0; i + 1 < lines.Length; i += 2)
        {
            if (lines[i] != "0" || lines[i + 1] is not ("CIRCLE" or "LINE"))
            {
                continue;
            }

            Dictionary<string, string> values = [];
            for (var k = i + 2; k + 1 < lines.Length && lines[k] != "0"; k += 2)
            {
                values[lines[k]] = lines[k + 1];
            }

            double Of(string code) => double.Parse(values[code], CultureInfo.InvariantCulture);
            if (lines[i + 1] == "CIRCLE" && values["8"] == "CUT_THROUGH")
            {
                circles.Add((new(Of("10"), Of("20")), Of("40")));
            }
            else if (lines[i + 1] == "LINE" && values["8"] == "FOLD_LINE")
            {
                folds.Add(new((Of("10") + Of("11")) / 2, (Of("20") + Of("21")) / 2));
            }
        }

        return (circles, folds);
    }
}
