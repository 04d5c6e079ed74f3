using BracketGen.Design.Inputs;
using BracketGen.Line.Solving;
using BracketGen.Storage;
using BracketGen.TestSupport;

namespace BracketGen.Cli.Tests;

/// <summary>A folder of its own with a copy of the profiles that ship with the program; gone after the test.</summary>
internal sealed class Workplace : IDisposable
{
    public const string CutFile = "flat-pattern.dxf", KerfFile = "flat-pattern-kerf.dxf", DrawingFile = "drawing.pdf", SetupFile = "setup-sheet.pdf", InspectionFile = "inspection-sheet.pdf",
        ResultFile = "result.json", ReportFile = "report.html";

    public const string StepFile = "solid.step", GlbFile = "solid.glb", StlFile = "solid.stl";

    /// <summary>Every file of a job that has a bracket, by name.</summary>
    public static readonly string[] Files = [DrawingFile, CutFile, InspectionFile, ReportFile, ResultFile, SetupFile, GlbFile, StepFile, StlFile];

    /// <summary>The files of one job: one more where an adapter ring belongs to it.</summary>
    public static string[] FilesOf(string job) => job.EndsWith("-ring", StringComparison.Ordinal) ? [.. Files.Append("adapter-ring.dxf").Order(StringComparer.Ordinal)] : Files;

    private readonly string _folder = Directory.CreateTempSubdirectory("bracketgen-cli-").FullName;

    public Workplace()
    {
        var from = RepositoryRoot.PathOf("profiles");
        foreach (var file in Directory.EnumerateFiles(from, "*.toml", SearchOption.AllDirectories))
        {
            var to = Path.Combine(_folder, "profiles", Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }
    }

    /// <summary>Names of the jobs that ship with the program.</summary>
    public static IReadOnlyList<string> Jobs { get; } =
        [.. Directory.GetFiles(RepositoryRoot.PathOf("profiles", "jobs"), "*.toml").Select(f => Path.GetFileNameWithoutExtension(f)).Order()];

    /// <summary>Folder given to the program for its files.</summary>
    public string Output => PathOf("output");

    /// <summary>Full path of a file or folder in it.</summary>
    public string PathOf(params string[] parts) => Path.Combine([_folder, .. parts]);

    /// <summary>Full path of a job.</summary>
    public string Job(string name) => PathOf("profiles", "jobs", name + ".toml");

    /// <summary>Full path of a file that the program makes for a job.</summary>
    public string Made(string job, string file) => PathOf("output", job, file);

    /// <summary>Runs <c>make</c> on a job, strength left out: most tests look at something else, and are the quicker for it.</summary>
    public ToolResult Make(string job, params string[] options) => MakeStrong(job, ["--skip-strength", .. options]);

    /// <summary>The same in a process of its own.</summary>
    public ToolResult MakeAlone(string job, params string[] options) => BracketGenProgram.RunAlone(["make", Job(job), "--into", Output, "--skip-strength", .. options]);

    /// <summary>Runs <c>make</c> on a job as a user does.</summary>
    public ToolResult MakeStrong(string job, params string[] options) => BracketGenProgram.Run(["make", Job(job), "--into", Output, .. options]);

    /// <summary>Leaves the throttle body of the first example one return spring, as strong as both.</summary>
    public void TakeASpring()
    {
        const string file = "throttle-bodies/alder-58.toml", first = "[[return_springs.each]]", after = "# Two bosses";
        var text = File.ReadAllText(PathOf("profiles", file));
        Edit(file, text[text.IndexOf(first, StringComparison.Ordinal)..text.IndexOf(after, StringComparison.Ordinal)], "count = 1\n\n");
    }

    /// <summary>Replaces a text that must be there in one of the copied profiles.</summary>
    public void Edit(string profile, string old, string replacement)
    {
        var path = PathOf("profiles", profile);
        var text = File.ReadAllText(path);
        Assert.Contains(old, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(old, replacement, StringComparison.Ordinal));
    }

    /// <summary>Every file under the output folder but the locks', hidden ones too, relative to it.</summary>
    public string[] OutputFiles() => !Directory.Exists(Output)
        ? []
        : [.. Directory.EnumerateFiles(Output, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 })
            .Where(f => Path.GetFileName(f) != FolderLock.FileName)
            .Select(f => Path.GetRelativePath(Output, f).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
