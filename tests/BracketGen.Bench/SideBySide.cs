using BracketGen.Fuzz.Tests;
using BracketGen.Strength.Tests;
using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Solid;
using BracketGen.Drawing.Solid.Brep;
using BracketGen.Drawing.Solid.Step;
using BracketGen.Geometry;
using BracketGen.Profiles;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Words.Worksheet;

namespace BracketGen.Bench;

/// <summary>The same work done by this program and by others, one after the other on the same machine.</summary>
internal static class SideBySide
{
    private const int Runs = 20;

    /// <summary>Prints a table of medians and ratios; what is not on the machine is left out and said.</summary>
    /// <param name="output">Where the table goes.</param>
    /// <param name="program">A published program to time the start of; null to leave that out.</param>
    public static int Run(TextWriter output, string? program)
    {
        var folder = Directory.CreateTempSubdirectory("bracketgen-beside-").FullName;
        try
        {
            var job = ProfileReader.ReadJob(RepositoryRoot.PathOf("profiles", "jobs", "plover-alder-58.toml"), new DiskFileSource()).Value!;
            var solution = Designer.Solve(job);
            Print(output, $"load average {Load()} at the start, {Environment.ProcessorCount} processors, {Runs} runs each after 3 not counted, medians");
            output.WriteLine();
            output.WriteLine("| work | ours | the other | the other's | theirs / ours |");
            output.WriteLine("|---|---|---|---|---|");
            Row(output, "cut file from the same contours", () => Dxf(solution, folder), "ezdxf");
            Row(output, "solid and STEP of the same bracket", () => Solid(solution, folder), "Open CASCADE (WebAssembly, Node.js)");
            Row(output, "L-bracket: deflection and three frequencies", () => Shell(folder), "CalculiX, solid wedges on the same plan");
            if (program is not null)
            {
                Row(output, "start and end of the process", () => Start(program, folder), "an empty native C# program");
            }

            output.WriteLine();
            Print(output, $"load average {Load()} at the end");
            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Row(TextWriter output, string work, Func<(double Ours, double Theirs)> measure, string other)
    {
        try
        {
            var (ours, theirs) = measure();
            Print(output, $"| {work} | {ours:0.00} ms | {other} | {theirs:0.00} ms | {theirs / ours:0.0} |");
        }
        catch (Exception problem) when (problem is Xunit.SkipException or Xunit.Sdk.XunitException or TimeoutException)
        {
            Print(output, $"| {work} | | {other} | not measured: {problem.Message.ReplaceLineEndings(" ")[..Math.Min(400, problem.Message.Length)]} | |");
        }
    }

    private static (double, double) Dxf(Solution solution, string folder)
    {
        var flat = solution.Bracket!.Flat;
        object Points(Contour contour) => contour.Segments.Select(s => new[]
        {
            s.Start.X, s.Start.Y, s is ArcSegment arc ? Math.Tan(arc.Sweep.Radians / 4) : 0,
        }).ToArray();
        double[] At(FlatPoint p) => [p.X, p.Y];
        var circles = solution.Bracket.Holes.Where(h => !h.IsSlot).Select(h => new object[] { At(h.Centre), h.Diameter / 2 }).ToArray();
        var folds = flat.Bends.Select(b => new[] { At(b.Start), At(b.End) }).ToArray();
        var file = Path.Combine(folder, "contours.json");
        File.WriteAllText(file, JsonSerializer.Serialize(new { circles, polylines = new[] { Points(flat.Blank.Outline) }, folds }));
        var python = OutsideTool.RequirePython("ezdxf");
        var theirs = Median(python.RunOrFail([RepositoryRoot.PathOf("tests", "BracketGen.Bench", "beside", "dxf.py"), file, Path.Combine(folder, "theirs.dxf"), Text(Runs)]));

        // What is written was composed before, here as there; ours has the part number's strokes as well.
        var drawing = FlatPatternDxf.Compose(solution.Bracket, solution.Job, []);
        return (Time(() => new DxfWriter().Write(drawing)), theirs);
    }

    private static (double, double) Solid(Solution solution, string folder)
    {
        var brep = FoldedBrep.Of(solution.Bracket!.Folded);
        double[] Of(Vector3 v) => [v.X, v.Y, v.Z];
        object Edge(BrepEdge e) => e.Curve is BrepCircle c
            ? new { kind = "circle", start = e.Start, end = e.End, centre = Of(c.Centre), axis = Of(c.Axis), towards = Of(c.Towards), radius = c.Radius }
            : new { kind = "line", start = e.Start, end = e.End };
        object Face(BrepFace f)
        {
            var loops = f.Loops.Select(l => l.Select(u => new { edge = u.Edge, forward = u.IsForward }).ToArray()).ToArray();
            return f.Surface switch
            {
                BrepCylinder c => new { kind = "cylinder", point = Of(c.Point), axis = Of(c.Axis), towards = Of(c.Towards), radius = c.Radius, loops },
                BrepPlane p => new { kind = "plane", point = Of(p.Point), normal = Of(p.Normal), x = Of(p.X), loops },
                _ => throw new InvalidOperationException("A surface of another kind."),
            };
        }

        var file = Path.Combine(folder, "boundary.json");
        File.WriteAllText(file, JsonSerializer.Serialize<object>(new { corners = brep.Corners.Select(Of), edges = brep.Edges.Select(Edge), faces = brep.Faces.Select(Face) }));
        var node = OutsideTool.RequireNode("opencascade.js");
        var said = node.RunOrFail([RepositoryRoot.PathOf("tests", "BracketGen.Bench", "beside", "occt.mjs"), file, Path.Combine(folder, "theirs.step"), Text(Runs)]);

        // The other's solid must be the same one, or the times say nothing.
        var volume = JsonDocument.Parse(said).RootElement.GetProperty("volume").GetDouble();
        var mass = solution.Bracket.Mass / solution.Bracket.Stock.Material.Density;
        if (!(Math.Abs(volume / mass - 1) < 0.02))
        {
            throw new InvalidOperationException($"Open CASCADE's solid has {volume} mm³, ours {mass}.");
        }

        var info = SolidInfo.Of(solution);
        return (Time(() => StepWriter.Write(FoldedBrep.Of(solution.Bracket.Folded), info)), Median(said));
    }

    private static (double, double) Shell(string folder)
    {
        var flat = LBracket.Part.Prepare(4, 2).Flat;
        File.WriteAllText(Path.Combine(folder, "beside.inp"), CalculixDeck.Write(flat));
        var calculix = OutsideTool.Require("ccx");
        var theirs = Enumerable.Range(0, 5).Select(_ =>
        {
            var began = Stopwatch.GetTimestamp();
            calculix.RunOrFail(["beside"], folder: folder);
            return Stopwatch.GetElapsedTime(began).TotalMilliseconds;
        }).Order().ElementAt(2);
        return (Time(() =>
        {
            var part = LBracket.Part.Prepare(flat);
            _ = part.Under(LBracket.Force);
            return part.LowestModes(3);
        }), theirs);
    }

    private static (double, double) Start(string program, string folder)
    {
        var source = Path.Combine(folder, "empty");
        Directory.CreateDirectory(source);
        File.WriteAllText(Path.Combine(source, "empty.csproj"), """
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup><OutputType>Exe</OutputType><TargetFramework>net10.0</TargetFramework><PublishAot>true</PublishAot><InvariantGlobalization>true</InvariantGlobalization></PropertyGroup>
            </Project>
            """);
        File.WriteAllText(Path.Combine(source, "Program.cs"), "return 0;\n");
        OutsideTool.Require("dotnet").RunOrFail(["publish", source, "-c", "Release", "--use-current-runtime", "-o", Path.Combine(source, "out"), "-v", "quiet"]);
        double Process(string file, string[] arguments) => Time(() => OutsideTool.Require(file).RunOrFail(arguments));
        return (Process(program, ["--version"]), Process(Path.Combine(source, "out", "empty"), []));
    }

    private static double Time<T>(Func<T> work)
    {
        var times = Enumerable.Range(0, Runs + 3).Select(_ =>
        {
            var began = Stopwatch.GetTimestamp();
            work();
            return Stopwatch.GetElapsedTime(began).TotalMilliseconds;
        }).Skip(3).Order().ToArray();
        return times[Runs / 2];
    }

    private static double Median(string said) => JsonDocument.Parse(said).RootElement.GetProperty("median").GetDouble();

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static void Print(TextWriter output, FormattableString text) => output.WriteLine(text.ToString(CultureInfo.InvariantCulture));

    private static string Load() => File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "unknown";
}
