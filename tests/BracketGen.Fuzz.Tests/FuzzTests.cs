using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Fuzz.Tests;

/// <summary>Hostile input of every kind: refused with words or put through, never an exception, a hang, a NaN or half an output.</summary>
/// <remarks>Two thousand in CI; a run of many more is <c>dotnet run -c Release --project tests/BracketGen.Bench -- fuzz 100000</c>; docs/verification.md keeps its outcome.</remarks>
public class FuzzTests
{
    // Generous, because machines differ: the long run holds the second of processor time.
    private static readonly TimeSpan Hang = TimeSpan.FromMinutes(1);

    // Known to take minutes, and to end: a mount face that stands on edge, where no bracket passes (docs/verification.md).
    private static readonly int[] Slow = [1418];

    [Fact]
    public void The_seeds_themselves_are_taken_and_put_through()
    {
        var run = new FuzzRun().Over(Corpus.Seeds, 1, Hang);
        NoHarm(run);
        Assert.Equal(Enum.GetValues<InputKind>(), run.Tallies.Keys);
        Assert.All(run.Tallies, t => Assert.Equal((t.Key, t.Value.Cases), (t.Key, t.Value.Through)));
    }

    [Fact]
    public void What_once_broke_the_program_does_not_any_more() =>
        NoHarm(new FuzzRun().Over(Corpus.Found, 1, Hang));

    [Fact]
    public void Mutations_do_no_harm()
    {
        var run = new FuzzRun().Over(Enumerable.Range(0, LongRun.Of(2000)).Except(Slow).Select(n => Mutator.Make(1, n)), LongRun.IsOn ? 8 : 2, Hang);
        NoHarm(run);

        // The mutator must neither break everything nor nothing: of a short run all told, of a long one in each kind.
        Assert.True(run.Tallies.Values.Any(t => t.Refused > 0) && run.Tallies.Values.Any(t => t.Through > 0));
        Assert.All(LongRun.IsOn ? Enum.GetValues<InputKind>() : [], kind => Assert.True(run.Tallies[kind] is { Refused: > 0, Through: > 0 }, $"{kind}: {run.Tallies[kind]}"));
    }

    // One seed among many gets few of the mutations: drawings get some of their own.
    [Fact]
    public void Mutated_drawings_do_no_harm()
    {
        var seed = Corpus.Seeds.Single(s => s.Kind == InputKind.Drawing);
        var run = new FuzzRun().Over(Enumerable.Range(0, LongRun.Of(1000)).Select(n => seed with { Name = $"drawing {n}", Bytes = Mutator.Make(seed.Bytes, 2, n) }), 8, Hang);
        NoHarm(run);
        Assert.True(run.Tallies[InputKind.Drawing] is { Refused: > 0, Through: > 0 });
    }

    [Fact]
    public void A_mutation_is_the_same_every_time() =>
        Assert.Equal(Mutator.Make(3, 14).Bytes, Mutator.Make(3, 14).Bytes);

    private static void NoHarm(FuzzRun run) => Assert.True(run.Failures.Count == 0, string.Join("\n\n", run.Failures.Take(10)));
}
