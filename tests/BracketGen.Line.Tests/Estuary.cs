using System.Collections.Immutable;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;
using BracketGen.Profiles;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Storage;
using BracketGen.TestSupport;
using BracketGen.Words.Line;
using BracketGen.Words.Profiles;

namespace BracketGen.Line.Tests;

/// <summary>The family that ships with the program, in memory, to be changed at will.</summary>
internal static class Estuary
{
    public const string Path = "families/estuary.toml";

    private static readonly Dictionary<string, string> Texts = Directory
        .GetFiles(RepositoryRoot.PathOf("profiles"), "*.toml", SearchOption.AllDirectories)
        .ToDictionary(f => System.IO.Path.GetRelativePath(RepositoryRoot.PathOf("profiles"), f).Replace('\\', '/'), f => File.ReadAllText(f).ReplaceLineEndings("\n"));

    public static MemoryFileSource Files { get; } = Texts.Aggregate(MemoryFileSource.Empty, (f, t) => f.With(t.Key, t.Value));

    /// <summary>A small line of it: three vehicles, two bodies, one material.</summary>
    public const string Small =
        """
        profile = "family"
        name = "Creek line"
        shop = "../shops/saltmarsh-fabrication.toml"

        [[vehicles]]
        code = "PLV"
        file = "../vehicles/plover.toml"

        [[vehicles]]
        code = "PLE"
        file = "../vehicles/plover-estate.toml"

        [[vehicles]]
        code = "WHI"
        file = "../vehicles/whimbrel.toml"

        [[throttle_bodies]]
        code = "A58"
        file = "../throttle-bodies/alder-58.toml"

        [[throttle_bodies]]
        code = "R64"
        file = "../throttle-bodies/rowan-64.toml"

        [[materials]]
        code = "S"
        name = "steel"
        designations = ["S235JR"]

        [numbers]
        rule = "SF-{vehicle}-{throttle_body}-{material}"

        """;

    public static MemoryFileSource WithSmall { get; } = Files.With(Path, Small);

    /// <summary>The small line, solved once for all tests that only look at it.</summary>
    public static (LineRig Rig, LineRig.Run Run, ImmutableArray<LinePart> Parts) Solved => Once.Value;

    private static readonly Lazy<(LineRig, LineRig.Run, ImmutableArray<LinePart>)> Once = new(() =>
    {
        var rig = new LineRig();
        AppDomain.CurrentDomain.ProcessExit += (_, _) => rig.Dispose();
        var run = rig.Make(WithSmall);
        return (rig, run, LineParts.Of(run.Family, run.Offered, [.. run.Made.Select(m => m!)]));
    });

    /// <summary>The files with a stretch of one replaced; it must be there once.</summary>
    public static MemoryFileSource Edit(MemoryFileSource files, string file, string old, string changed)
    {
        var text = System.Text.Encoding.UTF8.GetString(files.Read(file, 1 << 20).Bytes.Span);
        Assert.Equal(2, text.Split(old).Length);
        return files.With(file, text.Replace(old, changed));
    }

    public static LoadedFamily Read(IFileSource? files = null)
    {
        var result = FamilyReader.Read(Path, files ?? Files);
        Assert.True(result.IsRead, string.Join('\n', result.Errors.Select(ProfileErrorText.Format)));
        return result.Value;
    }
}

/// <summary>A line made in a folder of its own, as the command makes it; gone after the test.</summary>
internal sealed class LineRig : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("bracketgen-line-").FullName;

    public LineRig(Register? register = null) => (Lock, Register) = (FolderLock.Take(_folder), register ?? Register.Empty("Creek line"));

    public string Folder => _folder;

    public FolderLock Lock { get; }

    public CombinationFolder Combinations => new(System.IO.Path.Combine(_folder, "combinations"), Lock);

    public Register Register { get; private set; }

    public sealed record Run(LoadedFamily Family, ImmutableArray<Combination> Offered, ImmutableArray<Made?> Made, int Kept);

    /// <summary>Solves whatever is not there yet, and puts what is new into the register where all is done.</summary>
    public Run Make(IFileSource files, string program = "1", CancellationToken stop = default, Action<LineProgress>? tell = null, int threads = 2, params string[] redraw)
    {
        var family = Estuary.Read(files);
        var combinations = FamilyCombinations.Of(family).Offered;
        var (numbers, conflicts) = NumberPlan.Of(family.Family.Name, family.Family.Numbers, combinations, Register);
        Assert.Empty(conflicts);
        var inputs = new CombinationInputs(family, program);
        var kept = 0;
        var made = LineRun.Run(
            combinations, new(family, inputs, numbers!, null, null) { Redrawn = redraw.ToHashSet() }, Combinations, threads,
            p =>
            {
                kept = Math.Max(kept, p.Kept);
                tell?.Invoke(p);
            },
            stop);
        if (made.All(m => m is not null))
        {
            ImmutableArray<Made> all = [.. made.Select(m => m!)];
            Register = NewRevisions.Add(Register, combinations, all, inputs, LineParts.Of(family, combinations, all), family.Family.Units);
            Register = NewRecalls.Add(Register, family.Family.Numbers, combinations, all);
        }

        return new(family, combinations, made, kept);
    }

    /// <summary>Chooses the parts as the command does, and puts whom they serve into the register.</summary>
    public PartSelection Choose(Run run, bool anew = false)
    {
        ImmutableArray<Made> made = [.. run.Made.Select(m => m!)];
        var selection = FewestParts.Of(
            run.Family, LineParts.Of(run.Family, run.Offered, made), null, 2, ServicesBefore.Of(Register, run.Family.Family.Numbers, anew));
        Register = new NewServices(run.Family, FamilyCombinations.Of(run.Family), made, null, anew ? IssuedText.AskedAnew : null).Add(Register, selection);
        return selection;
    }

    /// <summary>Every file with its bytes as text, by path.</summary>
    public SortedDictionary<string, string> Contents() => new(
        Directory.GetFiles(_folder, "*", SearchOption.AllDirectories).Where(f => System.IO.Path.GetFileName(f) != FolderLock.FileName)
            .ToDictionary(f => System.IO.Path.GetRelativePath(_folder, f), f => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(f)))),
        StringComparer.Ordinal);

    public void Dispose()
    {
        Lock.Dispose();
        Directory.Delete(_folder, recursive: true);
    }
}
