using BracketGen.Line.Combinations;
using BracketGen.Line.Lists;
using BracketGen.Line.Running;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Words.Line;
using BracketGen.Words.Page;
using BracketGen.Words.Profiles;

namespace BracketGen.Web.Desk;

/// <summary>A variant in the matrix.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Title">Vehicle, throttle body, material, option.</param>
/// <param name="State">Its state, for colours: passes, not-proven, fails, unsafe, open.</param>
/// <param name="Word">Its state in words.</param>
/// <param name="Why">Why it has no bracket.</param>
/// <param name="IsOpen">Whether it can be opened as a job.</param>
public sealed record LineCell(string Key, string Title, string State, string Word, IReadOnlyList<string> Why, bool IsOpen);

/// <summary>A line as its folder has it: vehicles down, throttle bodies with materials and options across.</summary>
/// <param name="Columns">Heads of the columns.</param>
/// <param name="Rows">A row for each vehicle.</param>
/// <param name="Summary">How many variants have a bracket, as the command says; null before every variant is made.</param>
public sealed record LineMatrix(IReadOnlyList<string> Columns, IReadOnlyList<(string Name, IReadOnlyList<LineCell> Cells)> Rows, string? Summary)
{
    /// <summary>That of a family.</summary>
    /// <param name="family">The family.</param>
    /// <param name="place">Where its files are.</param>
    public static LineMatrix Of(LoadedFamily family, LinePlace place)
    {
        var combinations = FamilyCombinations.Of(family);
        var inputs = new CombinationInputs(family, LineWork.ProgramVersion);
        var made = combinations.Offered.ToDictionary(c => c.Key, c => CombinationFolder.Kept(place.Variants, c.Key));
        bool IsNow(Combination c) => made[c.Key] is { } there && there.Inputs == inputs.HashOf(c);
        var excluded = combinations.Excluded.ToDictionary(e => e.Combination.Key, e => e.Reason);
        var all = combinations.Offered.Concat(combinations.Excluded.Select(e => e.Combination)).OrderBy(c => c.Order).ToArray();
        LineCell Cell(Combination c) => excluded.TryGetValue(c.Key, out var reason)
            ? new(c.Key, c.Title, "open", LinePageWords.NotSold, [LineText.NotSoldBecause(reason)], c.IsReadable)
            : !c.IsReadable ? new(c.Key, c.Title, "fails", LinePageWords.NotRead, [.. c.Vehicle.Errors.Concat(c.Body.Errors).Select(ProfileErrorText.Format)], false)
            : made[c.Key] is not { } there ? new(c.Key, c.Title, "open", LinePageWords.NotMade, [], true)
            : !IsNow(c) ? new(c.Key, c.Title, "open", LinePageWords.Outdated, [], true)
            : new(c.Key, c.Title, StateOf(there.Outcome), LineLists.Answer(there.Outcome), there.Reasons, true);
        var isWhole = combinations.Offered.All(IsNow);
        var done = made.Values.OfType<Made>().ToArray();
        return new(
            [.. all.Where(c => c.Vehicle.Code == family.Vehicles[0].Code).Select(c => string.Join(", ", new[] { c.BodyName, c.Material.Name, c.Option.Option.Name }.Where(n => n.Length > 0)))],
            [.. family.Vehicles.Select(v => (v.Value?.Name ?? v.Code, (IReadOnlyList<LineCell>)[.. all.Where(c => c.Vehicle.Code == v.Code).Select(Cell)]))],
            isWhole ? LineText.Outcome(done.Count(m => m.HasPart), done.Count(m => m.Outcome == Outcome.NotProven), done.Length, combinations.Excluded.Length) : null);
    }

    private static string StateOf(Outcome outcome) => outcome switch
    {
        Outcome.Passes => "passes",
        Outcome.NotProven => "not-proven",
        Outcome.Unsafe => "unsafe",
        _ => "fails",
    };
}
