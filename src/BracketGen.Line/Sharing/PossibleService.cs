using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Line.Sharing;

/// <summary>A part that may serve a combination, by the quick tests alone.</summary>
/// <param name="Part">Index of the part.</param>
/// <param name="Served">Index of the combination.</param>
/// <param name="Mount">Where the part's mount flange comes to lie.</param>
/// <param name="Shift">Part of the adjuster's half range that is used, 0 to 1.</param>
public readonly record struct PossibleService(int Part, int Served, Frame Mount, double Shift);

/// <summary>Where a part's seat comes to lie on a combination that it goes onto, however far that is off.</summary>
/// <param name="Served">Index of the combination.</param>
/// <param name="Mount">Where the part's mount flange comes to lie.</param>
/// <param name="Off">What the adjuster must take up (mm): how much farther out the seat would have to be for it to stand at mid range.</param>
/// <param name="Most">The most that it may (mm).</param>
/// <param name="IsAllowed">Whether sheet, opening and holes are such as the combination allows.</param>
/// <param name="Shift">Part of the adjuster's half range that is used.</param>
internal readonly record struct SeatedOn(int Served, Frame Mount, double Off, double Most, bool IsAllowed, double Shift)
{
    /// <summary>Whether the part may serve the combination.</summary>
    public bool MayServe => IsAllowed && Math.Abs(Off) <= Most + Tolerance.Point;
}

/// <summary>Finds which parts may serve which combinations: whatever is left out here cannot pass the checks. One thread at a time.</summary>
/// <param name="family">The family.</param>
/// <param name="parts">The combinations with their own parts.</param>
internal sealed class PossibleServices(LoadedFamily family, IReadOnlyList<LinePart> parts)
{
    private readonly ILookup<string, (LinePart Part, int Index)> _byBody = parts.Select((p, i) => (Part: p, Index: i)).ToLookup(p => p.Part.Combination.Body.Code);

    private readonly Dictionary<(string Vehicle, string Option, double Thickness, Finish Finish), StopSeat> _seats = [];

    /// <summary>Those of a part; of an own part its own combination among them (with no shift).</summary>
    /// <param name="part">Index of the part: those beyond the combinations are shared candidates.</param>
    /// <param name="bracket">Its bracket.</param>
    public IEnumerable<PossibleService> Of(int part, Bracket bracket)
    {
        if (part < parts.Count)
        {
            yield return new(part, part, bracket.Folded.Flanges[0], 0);
        }

        foreach (var at in Near(bracket))
        {
            if (at.Served != part && at.MayServe)
            {
                yield return new(part, at.Served, at.Mount, at.Shift);
            }
        }
    }

    /// <summary>Every combination that a bracket goes onto with its wire straight enough; of several ways the one that moves the adjuster least.</summary>
    public IEnumerable<SeatedOn> Near(Bracket bracket)
    {
        var finish = bracket.Stock.Material.Finish;
        foreach (var body in family.Bodies.Where(b => _byBody.Contains(b.Code)))
        {
            var places = MountMatch.Of(bracket, body.Value!.Mount)
                .Select(m => (Mount: m, Reach: GivenBracket.Reach(body.Value, bracket, m)))
                .Where(p => p.Reach is not null).ToArray();
            foreach (var (served, j) in places.Length > 0 ? _byBody[body.Code] : [])
            {
                var key = (served.Combination.Vehicle.Code, served.Combination.Option.Option.Code, bracket.Stock.Thickness, finish);
                if (!_seats.TryGetValue(key, out var seat))
                {
                    _seats[key] = seat = StopSeat.For(served.Job.Vehicle.Cable, served.Job.Preferences.StopOpening, bracket.Stock.Thickness, finish);
                }

                SeatedOn? best = null;
                foreach (var (mount, reach) in places)
                {
                    if (On(served.Job, j, mount, reach!.Value) is { } on && (best is null || Math.Abs(on.Off) < Math.Abs(best.Value.Off)))
                    {
                        best = on;
                    }
                }

                if (best is { } found)
                {
                    yield return found with { IsAllowed = MayBeAsked(bracket, served.Job, seat) };
                }
            }
        }
    }

    // The same limits as the checks': sheet, opening, slot, metal.
    private static bool MayBeAsked(Bracket bracket, Job job, StopSeat seat)
    {
        var (stock, preferences) = (bracket.Stock, job.Preferences);
        var play = bracket.Stop.Diameter - seat.Opening;
        return stock.Thickness >= preferences.MinThickness && stock.Thickness <= preferences.MaxThickness
            && (preferences.Materials.IsEmpty || preferences.Materials.Contains(stock.Material.Designation))
            && play >= -Tolerance.Point && play <= StopSeat.MaxPlay(job.Vehicle.Cable.OuterEnd) + Tolerance.Point
            && (bracket.Stop.IsSlot || !seat.IsSlot)
            && StopSeat.SameShape(bracket.Stop.Outline, seat.Outline)
            && bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt).All(h => HasSlot(h, bracket, preferences.MountSlots))
            && bracket.Stop.MetalRadius >= seat.MetalRadius(stock.Thickness) - Tolerance.Point;
    }

    // As long as wanted, and along what is wanted as the part lies on its own job; where it is turned on another the solve tells.
    private static bool HasSlot(BracketHole hole, Bracket bracket, MountSlots? wanted) => wanted is null
        ? !hole.IsSlotted
        : hole.Outline is SlottedHole slot && Math.Abs(slot.Travel - wanted.Travel) <= Tolerance.SameSize
            && Math.Abs(slot.Along.Cross(wanted.On(bracket.Folded.Flanges[0]).Along)) <= Tolerance.SameSize;

    private static SeatedOn? On(Job job, int served, Frame mount, (double Length, Angle Askew) reach)
    {
        var cable = job.Vehicle.Cable;
        var off = cable.FreeInnerLength.Value - job.Preferences.FreePlay.Value - reach.Length;
        var half = cable.OuterEnd.AdjusterRange / 2;
        var most = half > 0 ? half * (1 - job.Preferences.AdjusterReserve) : SlotChecks.WithoutAdjuster;
        return reach.Askew.Radians <= cable.WanderLimit.Radians + Tolerance.Direction
            ? new(served, mount, off, most, false, Math.Abs(off) / Math.Max(half, 1)) : null;
    }
}
