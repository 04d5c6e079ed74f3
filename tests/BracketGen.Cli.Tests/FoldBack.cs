using System.Text.Json;
using BracketGen.Geometry;
using BracketGen.TestSupport;

namespace BracketGen.Cli.Tests;

/// <summary>What scripts/fold_back.py, which shares nothing with the program, found in the files of one job. Lengths in mm.</summary>
/// <param name="Problems">What ezdxf complains about.</param>
/// <param name="Gap">Largest gap in a contour.</param>
/// <param name="Area">Area of the blank.</param>
/// <param name="Perimeter">Length of all cuts.</param>
/// <param name="FoldLines">Fold lines less bends.</param>
/// <param name="OffTable">How far the worst hole in the file is from the table's, in place or diameter.</param>
/// <param name="OffFold">How far the worst fold line's end is from the middle of its strip.</param>
/// <param name="OffRule">How far the worst bend allowance is from its published rule.</param>
/// <param name="RightHanded">How far the mount frame is from a right-handed one.</param>
/// <param name="Seat">Folded stop from where the cable wants it.</param>
/// <param name="Direction">Angle (degrees) of the stop's face from where the cable wants it.</param>
/// <param name="Bolts">Folded bolt holes on the mount face, throttle frame.</param>
internal sealed record FoldBack(
    string[] Problems, double Gap, double Area, double Perimeter, int FoldLines, double OffTable, double OffFold, double OffRule,
    double RightHanded, double Seat, double Direction, double[][] Bolts)
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web);

    /// <summary>Reads every job's folder in <paramref name="folder"/>.</summary>
    public static IReadOnlyDictionary<string, FoldBack> Of(string folder) => JsonSerializer.Deserialize<Dictionary<string, FoldBack>>(
        OutsideTool.RequirePython("ezdxf").RunOrFail(
            [RepositoryRoot.PathOf("tests", "BracketGen.Cli.Tests", "scripts", "fold_back.py"), folder]),
        Options)!;
}
