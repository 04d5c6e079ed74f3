using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Profiles;
using BracketGen.SheetMetal.Patterns;
using BracketGen.Strength.Parts;
using BracketGen.TestSupport;

namespace BracketGen.Bench.Solids;

/// <summary>A bracket that is calculated as shells and as a solid: one of the search's own, under the largest tension of an ordinary opening.</summary>
internal sealed class SolidCase
{
    private static readonly double[] Thicknesses = [1.5, 2, 2.5, 3, 4, 5];

    // Named, so that a job more changes none of the brackets that were compared.
    private static readonly string[] Jobs = ["dunlin-hornbeam-70", "dunlin-rowan-64", "plover-alder-58", "whimbrel-hornbeam-70"];

    private SolidCase(string name, Job job, Candidate candidate)
    {
        (Name, Bracket) = (name, candidate.Bracket);
        var stop = candidate.StopOf(job);
        var tension = new StopTension(stop);
        Part = BracketModel.Of(Bracket, stop.EndIn(Bracket.Stock.Thickness));
        Force = tension.Largest * tension.UnitForceAtLargest;
        _first = new(() => new(tension, Bracket, StrengthDetail.Usual.Prepare(Part), FrequencyRule.Separation));
    }

    private readonly Lazy<StrengthStages> _first;

    /// <summary>The mesh on which it is judged.</summary>
    public PreparedPart Settled() => SettledStrength.Of(_first.Value, StrengthDetail.Usual).Prepared;

    /// <summary>Job, thickness and number of bends.</summary>
    public string Name { get; }

    public Bracket Bracket { get; }

    public FoldedPart Part { get; }

    /// <summary>Force on the seat (N), in the throttle frame.</summary>
    public Vector3 Force { get; }

    public FoldedSheet Folded => Bracket.Folded;

    public double Thickness => Bracket.Flat.Thickness;

    /// <summary>One with one bend and one with two for each thickness, from the shipped jobs in turn with the shop's whole stock.</summary>
    public static IEnumerable<SolidCase> All()
    {
        var jobs = Jobs.Select(name =>
        {
            var job = ProfileReader.ReadJob(RepositoryRoot.PathOf("profiles", "jobs", name + ".toml"), new DiskFileSource()).Value!.OpeningCounterClockwise();
            job = job with { Preferences = job.Preferences with { Materials = [], MinThickness = 1.5, MaxThickness = 5 } };
            return (Name: name, Job: job, Pool: CandidateSearch.All(job).Where(CandidateSearch.Promising).ToArray());
        }).ToArray();
        var next = 0;
        foreach (var bends in new[] { 1, 2 })
        {
            foreach (var thickness in Thicknesses)
            {
                for (var turn = 0; turn < jobs.Length; turn++)
                {
                    var (name, job, pool) = jobs[next++ % jobs.Length];
                    var some = pool.Where(c => c.Bracket.Flat.Thickness == thickness && c.Bracket.Flat.Bends.Length == bends).ToArray();
                    if (some.Length > 0)
                    {
                        yield return new(string.Create(CultureInfo.InvariantCulture, $"{name}, {thickness} mm, {bends} bend{(bends == 1 ? "" : "s")}"), job, some[some.Length / 2]);
                        break;
                    }
                }
            }
        }
    }

    /// <summary>Where a point of the folded sheet counts: in a bend, in a flange, or nowhere, less than a thickness from the rim of a washer or of the seat.</summary>
    public SolidZone ZoneOf(Vector3 point)
    {
        var half = Thickness / 2;
        if (Part.Washers.Append(Part.Seat).Any(d => Folded.Fold(new(d.Centre), half).Vector.DistanceTo(point) < d.Radius + Thickness))
        {
            return SolidZone.None;
        }

        foreach (var bend in Folded.Flat.Bends)
        {
            var (at, axis) = Folded.AxisOf(bend);
            var edge = Across(Folded.Flanges[bend.From].ToThrottle(bend.Start, half) - at, axis);
            var here = Across(point - at.Vector, axis);
            var turn = Math.Atan2(axis.Dot(edge.Cross(here)), edge.Dot(here)) * Math.Sign(bend.Turn.Radians);
            if (turn >= 0 && turn <= Math.Abs(bend.Turn.Radians) && here.Length > bend.InsideRadius - 0.1 && here.Length < bend.InsideRadius + Thickness + 0.1)
            {
                return here.Length < bend.InsideRadius + 0.01 ? SolidZone.InsideOfBend : SolidZone.Bend;
            }
        }

        return SolidZone.Flange;
    }

    private static Vector3 Across(Vector3 v, Vector3 axis) => v - v.Dot(axis) * axis;
}

/// <summary>Where a stress is compared.</summary>
internal enum SolidZone
{
    /// <summary>Less than a thickness from the rim of a washer or the seat: nowhere.</summary>
    None,

    /// <summary>A flange.</summary>
    Flange,

    /// <summary>A bend, but for its inside.</summary>
    Bend,

    /// <summary>The inside of a bend.</summary>
    InsideOfBend,
}
