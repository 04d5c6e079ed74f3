using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Rods;

namespace BracketGen.Design.Checks;

/// <summary>What the engine's movement does to the outer and to the free play, at the worst corner.</summary>
public sealed record MovementStudy
{
    /// <summary>
    /// Change of the outer's bends where its line is not known: about what a nearly straight outer of 600 mm gains when its ends come 10 mm nearer to each
    /// other, 8 √(10/600) rad on a line that bulges as a cosine, 59° (common practice, no source).
    /// </summary>
    public static readonly Angle UsualChange = Angle.FromDegrees(60);

    /// <summary>How the movement is known.</summary>
    public required EngineMovement Movement { get; init; }

    /// <summary>Part of the corners that the outer reaches with its bends, 0 to 1; null where job or profile do not give the outer's line.</summary>
    public required double? Reached { get; init; }

    /// <summary>Largest bends of the outer at a corner; null where they are not known.</summary>
    public required Angle? MaxBend { get; init; }

    /// <summary>Minimum radius of the outer at a corner (mm); null where its line is not known.</summary>
    public required double? MinRadius { get; init; }

    /// <summary>Maximum change of the bends against rest, from any stable line to any; null where they are not known.</summary>
    public required Angle? Change { get; init; }

    /// <summary>Free play as the fitter may set it, at its minimum (mm).</summary>
    public required double FreePlay { get; init; }

    /// <summary>What is left of it at the worst corner (mm); an outer whose bore was not measured counts as usual.</summary>
    public required double Left { get; init; }

    /// <summary>The same with the outer's bore as wide as it may be (mm); equal where it was measured.</summary>
    public required double LeftAtWorst { get; init; }

    /// <summary>Whether what is left rests on something assumed.</summary>
    public bool IsAssumed => Movement.IsAssumed || Change is null || LeftAtWorst != Left;

    /// <summary>The study of a job.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="placement">Where the stop is; null where that is not known.</param>
    /// <param name="outer">How the outer lies at rest; null where the job gives no bulkhead.</param>
    public static MovementStudy Of(Job job, StopPlacement? placement, OuterFit? outer)
    {
        var (cable, movement) = (job.Vehicle.Cable, job.Movement);
        Bulkhead[] corners = job.Bulkhead is { } bulkhead && placement is not null ? [.. movement.Corners(bulkhead)] : [];
        var (laidAt, reaches) = (new ElasticLines?[corners.Length], new bool[corners.Length]);
        var rest = outer?.AtLengths.FirstOrDefault();
        Parallel.For(0, corners.Length, i =>
        {
            laidAt[i] = OuterWay.At(cable, placement!, corners[i], rest);
            reaches[i] = OuterWay.Tightest(job with { Bulkhead = corners[i] }, placement!) is { } route
                && (laidAt[i] is not { } line || (route.Length <= cable.OuterLength!.Value.Min && !line.IsTooShort));
        });
        ElasticLines[] lines = [.. laidAt.OfType<ElasticLines>()];
        var laid = lines.Where(l => !l.IsTooShort).ToArray();
        var isKnown = outer is { IsLaid: true } && laid.Length > 0;
        Angle? change = isKnown ? ChangeOf(outer!.AtLengths[0], laid) : null;
        var wanted = job.Preferences.FreePlay;
        var set = Math.Max(job.Preferences.MinFreePlay, wanted.Value - wanted.PlusMinus);
        double Left(double play) => set - WireLay.Slack(
            WireLay.Clearance(cable.OuterBore ?? cable.WireDiameter + play, cable.WireDiameter), change ?? UsualChange);
        return new()
        {
            Movement = movement,
            Reached = corners.Length == 0 ? null : (double)reaches.Count(r => r) / corners.Length,
            MaxBend = isKnown ? laid.Max(l => l.MaxBend) : null,
            MinRadius = isKnown ? laid.Min(l => l.MinRadius) : null,
            Change = change,
            FreePlay = set,
            Left = Left(Cable.UsualBorePlay),
            LeftAtWorst = Left(Cable.BorePlayAtWorst),
        };
    }

    // A line may snap into another stable one as the engine rocks.
    private static Angle ChangeOf(ElasticLines rest, ElasticLines[] moved) =>
        new(moved.Max(l => Math.Max(l.MaxBend.Radians - rest.MinBend.Radians, rest.MaxBend.Radians - l.MinBend.Radians)));
}
