using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;
using BracketGen.Profiles;
using BracketGen.Profiles.Errors;
using BracketGen.TestSupport;
using BracketGen.Words.Profiles;

namespace BracketGen.Drawing.Tests.Dxf;

/// <summary>A bracket's flat pattern read from DXF: our own files, and those that ezdxf writes as other programs would.</summary>
public class DrawnBracketTests
{
    // A bracket's file has its bolt holes in one flange.
    public static TheoryData<string> Names =>
        [.. Directory.GetFiles(RepositoryRoot.PathOf("profiles", "jobs"), "*.toml").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal).Where(n => ReadJob(n).Body.Mount.Second is null)];

    private static readonly Lazy<Job> Plover = new(() => ReadJob("plover-alder-58"));

    // What make writes for the shop, read back and folded, is the bracket that was designed: the same verdict, the same values.
    [Theory]
    [MemberData(nameof(Names))]
    public void Our_own_cut_file_gives_the_verdict_of_the_design(string name)
    {
        var solution = Designer.Solve(ReadJob(name), SearchEffort.WithoutStrength);
        var (job, bracket) = (solution.Job, solution.Bracket!);
        foreach (var version in new[] { DxfVersion.R2000, DxfVersion.R12 })
        {
            var bytes = new DxfWriter(version).Write(FlatPatternDxf.Compose(bracket, job, []));
            var text = FileOf(bracket, job, version == DxfVersion.R12);
            var result = ProfileReader.ReadBracket("ours.toml", MemoryFileSource.Empty.With("ours.toml", text).With("ours.dxf", bytes), job.Shop);
            Assert.Equal("", string.Join('\n', result.Errors.Select(ProfileErrorText.Format)));
            var measured = result.Value!;
            var trial = BracketTrial.Of(job, MeasuredShape.Of(measured, measured.MetalIn(job.Shop)!).Bracket!, 0, null);
            Assert.Equal(TrialState.Solved, trial.State);
            Assert.True(solution.Verdict.Kind == trial.Kind, $"{trial.Kind}: {string.Join(", ", trial.Solution!.Verdict.Deciding.Select(c => $"{c.Code} {c.Value} {c.Limit}"))}");
            Assert.True(solution.Placement!.Seat.DistanceTo(trial.Solution!.Placement!.Seat) < 1e-5);

            // Folded, both are the same but for the outline in the bends: it is straight in the flat pattern, which a bracket that is read has laid out anew with the allowance of a handbook. Between two bends on the way
            // to the stop that shows.
            var bends = bracket.Flat.Bends.Zip(trial.Solution.Bracket!.Flat.Bends, (one, other) => Math.Abs(one.Allowance - other.Allowance)).ToArray();
            var off = bends.Length > 1 && job.Body.Mount.Second is null ? bends.Sum() / 2 : 0;
            foreach (var check in solution.Checks.Where(c => c.Id != CheckId.ClipNeck && c.Kind is CheckKind.Safety or CheckKind.Function && double.IsFinite(c.Value) && !c.Code.StartsWith("probability", StringComparison.Ordinal)))
            {
                var found = trial.Solution.Checks.First(c => c.Code == check.Code).Value;
                Assert.True(Math.Abs(check.Value - found) <= Math.Max(0.01, 1e-3 * Math.Abs(check.Value)) + off, $"{check.Code}: {check.Value} as drawn, {found} as read");
            }
        }
    }

    // The flat pattern of a measured bracket, drawn by ezdxf in three ways: each folds to the bracket that was measured.
    [Fact]
    public void Files_of_another_program_fold_to_the_same_bracket()
    {
        var (measured, bracket) = Shelf();
        foreach (var (style, bytes) in Drawn.Value)
        {
            var text = ShelfText(style);
            var result = ProfileReader.ReadBracket("b/flat.toml", MemoryFileSource.Empty.With("b/flat.toml", text).With($"b/{style}.dxf", bytes), Plover.Value.Shop);
            Assert.Equal("", string.Join('\n', result.Errors.Select(ProfileErrorText.Format)));
            var folded = MeasuredShape.Of(result.Value!, bracket.Stock.Material).Bracket!;

            // A drawing does not say which face the outer bears on: the seat is given on the top, and both are tried.
            var (seat, normal) = folded.FoldedSeat;
            Assert.True(normal.Dot(bracket.FoldedSeat.Normal) < -1 + 1e-9, style);
            Assert.True((seat - 3 * normal).DistanceTo(bracket.FoldedSeat.Point) < 1e-3, style);
            Assert.Equal(bracket.Flat.Blank.Area, folded.Flat.Blank.Area, 0.1);
            Assert.Equal(bracket.Stop.Diameter, folded.Stop.Diameter, 1e-3);
            Assert.Equal(bracket.Holes.Select(h => h.Diameter), folded.Holes.Select(h => h.Diameter), (a, b) => Math.Abs(a - b) < 1e-3);
            Assert.Equal(style == "inches", result.Value!.Drawn!.IsInch);
            Assert.Contains(result.Value.Drawn.Skipped, s => s.Kind == "TEXT");
            Assert.All(result.Value.Drawn.Allowances, a => Assert.Equal(AllowanceSource.Assumed, a.Source));
            Assert.Equal(measured.Bends.Length, result.Value.Bends.Length);
        }
    }

    // Where the formed part is there its stop is measured: that place counts, not the one that the drawing folds to.
    [Fact]
    public void A_measured_stop_counts_before_the_drawing()
    {
        var drawn = Drawn.Value["old"];
        var text = ShelfText("old").Replace("[stop]", "[stop]\nat = [52, 25.5, 18.8]", StringComparison.Ordinal);
        var read = ProfileReader.ReadBracket("b/flat.toml", MemoryFileSource.Empty.With("b/flat.toml", text).With("b/old.dxf", drawn), Plover.Value.Shop);
        Assert.Equal("", string.Join('\n', read.Errors.Select(ProfileErrorText.Format)));
        Assert.True(read.Value!.Drawn!.IsStopMeasured);
        Assert.Equal(18.8, read.Value.Stop.At.Height, 1e-9);
        Assert.Equal(MeasuredStop.UsualReading, read.Value.Stop.PlusMinus);
    }

    [Theory]
    [InlineData("", "", "0\nSECTION\n2\nHEADER\n0\nENDSEC\n0\nEOF\n", DxfMistake.NoEntities)]
    [InlineData("", "", "0\nSECTION\n2\nENTITIES\n0\nLINE\n10\nabc\n", DxfMistake.BadNumber)]
    [InlineData("", "", "0\nSECTION\n2\nENTITIES\n0\nLINE\n10\n1\n20\n", DxfMistake.NotPairs)]
    [InlineData("", "", "0\nSECTION\n2\nENTITIES\n0\nLINE\n10\n1\n20\n1\n11\n5\n", DxfMistake.NumberMissing)]
    [InlineData("", "", "hello\nworld\n", DxfMistake.NotPairs)]
    [InlineData("flat_pattern_unit = \"mm\"\n", "", null, DxfMistake.NoUnit)]
    [InlineData("cut_layers = [\"Contour\", \"Holes\"]\n", "cut_layers = [\"Kontur\"]\n", null, DxfMistake.NoLayer)]
    [InlineData("bend_layer = \"Biegelinie\"\n", "bend_layer = \"Holes\"\n", null, DxfMistake.BendCount)]
    [InlineData("cut_layers = [\"Contour\", \"Holes\"]\n", "", null, null)]
    [InlineData("cut_layers = [\"Contour\", \"Holes\"]\n", "cut_layers = [\"Holes\"]\n", null, DxfMistake.NoContour)]
    [InlineData("cut_layers = [\"Contour\", \"Holes\"]\n", "cut_layers = [\"Contour\", \"Biegelinie\"]\n", null, DxfMistake.OpenContour)]
    [InlineData("at = [34, 0]", "at = [20, 0]", null, DxfMistake.NoHole)]
    public void Each_mistake_of_a_drawing_is_told(string old, string changed, string? dxf, DxfMistake? mistake)
    {
        var bytes = dxf is null ? Drawn.Value["old"] : Encoding.UTF8.GetBytes(dxf);
        var text = ShelfText("old");
        Assert.Contains(old, text, StringComparison.Ordinal);
        text = old.Length > 0 ? text.Replace(old, changed, StringComparison.Ordinal) : text;
        var read = ProfileReader.ReadBracket("b/flat.toml", MemoryFileSource.Empty.With("b/flat.toml", text).With("b/old.dxf", bytes), Plover.Value.Shop);
        if (mistake is null)
        {
            Assert.Empty(read.Errors);
            return;
        }

        var error = Assert.Single(read.Errors);
        Assert.Equal(mistake, Assert.IsType<DxfWrong>(error.Problem).Mistake);
        Assert.True(ProfileErrorText.Format(error).Length > 60);
    }

    // The shipped drawing, spoilt: what the error says, and of which line.
    [Theory]
    [InlineData("11\n47.5000\n21\n54.7000", "11\n47.5000\n21\n52.7000", typeof(DxfWrong), "OpenContour")]
    [InlineData("0\nENDSEC\n0\nEOF", "0\nLINE\n8\nOUTLINE\n10\n68.0\n20\n51.7\n11\n90\n21\n51.7\n0\nENDSEC\n0\nEOF", typeof(DxfWrong), "Fork")]
    [InlineData("0\nENDSEC\n0\nEOF", "0\nCIRCLE\n8\nHOLES\n10\n200\n20\n0\n40\n3\n0\nENDSEC\n0\nEOF", typeof(DxfWrong), "OutsideOutline")]
    [InlineData("0\nENDSEC\n0\nEOF", "0\nCIRCLE\n8\nHOLES\n10\n30\n20\n40\n40\n3\n0\nENDSEC\n0\nEOF", typeof(DrawnWrong), "HoleElsewhere")]
    [InlineData("0\nENDSEC\n0\nEOF", "0\nLWPOLYLINE\n8\nOUTLINE\n70\n1\n10\n10\n20\n6\n10\n20\n20\n6\n10\n20\n20\n9\n0\nENDSEC\n0\nEOF", typeof(DxfWrong), "NotRound")]
    [InlineData("10\n34.0000\n20\n0.0000", "10\n34.0000\n20\n40.0000", typeof(DxfWrong), "NoHole")]
    [InlineData("21\n22.6000", "21\n222.6000", typeof(DrawnWrong), "BendOffMetal")]
    [InlineData("$INSUNITS\n70\n4", "$INSUNITS\n70\n0", typeof(DxfWrong), "NoUnit")]
    public void Each_fault_of_a_flat_pattern_is_told(string old, string changed, Type problem, string says)
    {
        var folder = RepositoryRoot.PathOf("profiles", "brackets");
        var dxf = File.ReadAllText(Path.Combine(folder, "catalogue-upright-34.dxf"));
        Assert.Contains(old, dxf, StringComparison.Ordinal);
        var files = MemoryFileSource.Empty.With("b/flat.toml", File.ReadAllText(Path.Combine(folder, "catalogue-upright-34.toml")))
            .With("b/catalogue-upright-34.dxf", dxf.Replace(old, changed, StringComparison.Ordinal));
        var error = Assert.Single(ProfileReader.ReadBracket("b/flat.toml", files, Plover.Value.Shop).Errors);
        Assert.IsType(problem, error.Problem);
        Assert.Contains(says, error.Problem.ToString(), StringComparison.Ordinal);
        Assert.True(ProfileErrorText.Format(error).Length > 60);
    }

    // A hole that is not one of those chosen stays on the mount flange and is counted; a drilled one has no circle.
    [Fact]
    public void Other_holes_of_the_mount_flange_follow_and_a_drilled_one_is_given()
    {
        var folder = RepositoryRoot.PathOf("profiles", "brackets");
        var dxf = File.ReadAllText(Path.Combine(folder, "catalogue-upright-34.dxf")).Replace("0\nENDSEC\n0\nEOF", "0\nCIRCLE\n8\nHOLES\n10\n17\n20\n0\n40\n2.5\n0\nENDSEC\n0\nEOF", StringComparison.Ordinal);
        var text = File.ReadAllText(Path.Combine(folder, "catalogue-upright-34.toml")) + "\n[[holes]]\nat = [50, 0]\ndiameter = 5.5\n";
        var read = ProfileReader.ReadBracket("b/flat.toml", MemoryFileSource.Empty.With("b/flat.toml", text).With("b/catalogue-upright-34.dxf", dxf), Plover.Value.Shop);
        Assert.Equal("", string.Join('\n', read.Errors.Select(ProfileErrorText.Format)));
        Assert.Equal([6.6, 6.6, 5.5, 5], read.Value!.Holes.Select(h => h.Diameter), (a, b) => Math.Abs(a - b) < 1e-9);
    }

    private static Job ReadJob(string name) => ProfileReader.ReadJob(RepositoryRoot.PathOf("profiles", "jobs", name + ".toml"), new DiskFileSource()).Value!;

    private static string Number(double value) => value.ToString("0.############", CultureInfo.InvariantCulture);

    private static string Point(Vector2 at) => $"[{Number(at.X)}, {Number(at.Y)}]";

    // What is known of our own bracket beside its cut file.
    private static string FileOf(Bracket bracket, Job job, bool isOld)
    {
        var corner = bracket.Flat.Blank.Outline.Bounds.Min;
        var drilled = HoleMaking.Drilled(bracket, job).ToList();
        var text = new StringBuilder("profile = \"bracket\"\nname = \"ours\"\nsource = \"our own cut file\"\n");
        text.Append(CultureInfo.InvariantCulture, $"material = \"{bracket.Stock.Material.Designation}\"\nthickness = {Number(bracket.Stock.Thickness)}\nflat_pattern = \"ours.dxf\"\noutline_plus_minus = 0\n");
        if (isOld)
        {
            text.Append(CultureInfo.InvariantCulture, $"flat_pattern_unit = \"{(job.Units == BracketGen.Units.UnitSystem.Inch ? "in" : "mm")}\"\n");
        }

        foreach (var hole in bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt))
        {
            text.Append(CultureInfo.InvariantCulture, $"[[holes]]\nat = {Point(hole.Centre.Vector - corner)}\nplus_minus = 0\n");
            text.Append(drilled.Contains(hole) ? $"diameter = {Number(hole.Diameter)}\n" : "");
        }

        foreach (var bend in bracket.Flat.Bends)
        {
            text.Append(CultureInfo.InvariantCulture, $"[[bends]]\nline_plus_minus = 0\nincluded_angle = {{ value = {Number(180 - bend.Turn.Magnitude.Degrees)}, plus_minus = 0 }}\n");
            text.Append(CultureInfo.InvariantCulture, $"goes = \"{(bend.IsUp ? "up" : "down")}\"\ninside_radius = {{ value = {Number(bend.InsideRadius)}, plus_minus = 0 }}\nallowance = {Number(bend.Allowance)}\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"[stop]\non = {Point(bracket.Stop.Centre.Vector - corner)}\nplus_minus = 0\ndirection_plus_minus = 0\n");
        text.Append(drilled.Contains(bracket.Stop) ? $"diameter = {Number(bracket.Stop.Diameter)}\n" : "");
        return text.ToString();
    }

    private static (MeasuredBracket Measured, Bracket Bracket) Shelf()
    {
        var read = ProfileReader.ReadBracket(RepositoryRoot.PathOf("profiles", "brackets", "shelf-upright-34.toml"), new DiskFileSource(), Plover.Value.Shop).Value!;
        return (read, MeasuredShape.Of(read, read.MetalIn(Plover.Value.Shop)!).Bracket!);
    }

    private static string ShelfText(string style)
    {
        var (_, bracket) = Shelf();
        return $"""
            profile = "bracket"
            name = "Upright 34"
            source = "shelf"
            material = "S235JR"
            thickness = 3
            flat_pattern = "{style}.dxf"
            bend_layer = "Biegelinie"
            cut_layers = ["Contour", "Holes"]
            {(style == "old" ? "flat_pattern_unit = \"mm\"" : "")}

            [[holes]]
            at = [0.5, 0.2]

            [[holes]]
            at = [34, 0]

            [[bends]]
            included_angle = 90
            goes = "up"
            inside_radius = 4

            [stop]
            on = {Point(bracket.Stop.Centre.Vector)}

            """;
    }

    private static readonly Lazy<Dictionary<string, byte[]>> Drawn = new(() => DrawnByEzdxf(Shelf().Bracket));

    private static Dictionary<string, byte[]> DrawnByEzdxf(Bracket bracket)
    {
        var python = OutsideTool.RequirePython("ezdxf");
        var flat = bracket.Flat;
        JsonArray Pair(Vector2 at) => new((JsonNode)at.X, (JsonNode)at.Y);
        var json = new JsonObject
        {
            ["segments"] = new JsonArray([.. flat.Blank.Outline.Segments.Select(s => (JsonNode)(s is ArcSegment arc
                ? new JsonObject { ["start"] = Pair(s.Start), ["end"] = Pair(s.End), ["centre"] = Pair(arc.Centre), ["radius"] = arc.Radius, ["from"] = arc.From.Radians, ["sweep"] = arc.Sweep.Radians }
                : new JsonObject { ["start"] = Pair(s.Start), ["end"] = Pair(s.End) }))]),
            ["circles"] = new JsonArray([.. bracket.Holes.Where(h => !h.IsSlot).Select(h => (JsonNode)new JsonArray((JsonNode)h.Centre.X, (JsonNode)h.Centre.Y, (JsonNode)(h.Diameter / 2)))]),
            ["bends"] = new JsonArray([.. flat.Bends.Select(b => (JsonNode)new JsonArray((JsonNode)b.CentreLine.Start.X, (JsonNode)b.CentreLine.Start.Y, (JsonNode)b.CentreLine.End.X, (JsonNode)b.CentreLine.End.Y))]),
        };
        var folder = Directory.CreateTempSubdirectory("bracketgen-flat-").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "flat.json"), json.ToJsonString());
            python.RunOrFail([RepositoryRoot.PathOf("tests", "BracketGen.Drawing.Tests", "Dxf", "draw_flat.py"), folder]);
            return Directory.GetFiles(folder, "*.dxf").ToDictionary(f => Path.GetFileNameWithoutExtension(f), File.ReadAllBytes);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
