using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Result;
using BracketGen.Line.Solving;

namespace BracketGen.Line.Sharing;

/// <summary>The files of the shared parts, as those of combinations have theirs.</summary>
public static class SharedFiles
{
    /// <summary>Name from the line's folder and bytes: cut file, result on the first combination that it serves, and what else is asked for.</summary>
    /// <param name="selection">The selection, numbers given.</param>
    /// <param name="strength">How finely brackets are meshed for their strength; null where that is not looked at.</param>
    /// <param name="more">Makes more files; null for none.</param>
    /// <param name="threads">How many parts at once.</param>
    public static IEnumerable<(string Name, byte[] Bytes)> Of(PartSelection selection, StrengthDetail? strength, MoreFiles? more, int threads) =>
        selection.Parts.Where(p => !p.IsOwn).AsParallel().AsOrdered().WithDegreeOfParallelism(Math.Clamp(threads, 1, 512)).SelectMany(part =>
        {
            var solution = GivenBracket.On(part.Job, part.Bracket, part.Bracket.Folded.Flanges[0], strength)!;
            (string Name, byte[] Bytes)[] files =
            [
                (CombinationSolver.CutFile, new DxfWriter().Write(FlatPatternDxf.Compose(solution.Bracket!, solution.Job, []))),
                .. more?.Invoke(solution) ?? [],
                (CombinationSolver.ResultFile, ResultJson.Write(solution, [])),
            ];
            return files.Select(f => (part.Folder + "/" + f.Name, f.Bytes));
        });
}
