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

/// <summary>Finds which parts may serve which combinations: whatever is left out here cannot pass the checks.</summary>
public static class PossibleServices
{
    /// <summary>All that may, the parts' own combinations among them (with no shift).</summary>
    /// <param name="family">The family.</param>
    /// <param name="parts">The parts.</param>
    public static IEnumerable<PossibleService> Of(LoadedFamily family, IReadOnlyList<LinePart> parts)
    {
        var byBody = parts.Select((p, i) => (Part: p, Index: i)).ToLookup(p => p.Part.Combination.Body.Code);
        var seats = new Dictionary<(string Vehicle, string Option, double Thickness, Finish Finish), StopSeat>();
        for (var i = 0; i < parts.Count; i++)
        {
            var part = parts[i];
            foreach (var body in family.Bodies.Where(b => byBody.Contains(b.Code)))
            {
                var places = MountMatch.Of(part.Bracket, body.Value!.Mount)
                    .Select(m => (Mount: m, Reach: GivenBracket.Reach(body.Value, part.Bracket, m)))
                    .Where(p => p.Reach is not null).ToArray();
                foreach (var (served, j) in byBody[body.Code])
                {
                    if (j == i)
                    {
                        yield return new(i, i, part.Bracket.Folded.Flanges[0], 0);
                        continue;
                    }

                    var finish = part.Bracket.Stock.Material.Finish;
                    var key = (served.Combination.Vehicle.Code, served.Combination.Option.Option.Code, part.Bracket.Stock.Thickness, finish);
                    if (!seats.TryGetValue(key, out var seat))
                    {
                        seats[key] = seat = StopSeat.For(served.Job.Vehicle.Cable, served.Job.Preferences.StopOpening, part.Bracket.Stock.Thickness, finish);
                    }

                    if (places.Length == 0 || !MayBeAsked(part.Bracket, served.Job, seat))
                    {
                        continue;
                    }

                    PossibleService? best = null;
                    foreach (var (mount, reach) in places)
                    {
                        if (ShiftOf(served.Job, reach!.Value) is { } shift && (best is null || shift < best.Value.Shift))
                        {
                            best = new(i, j, mount, shift);
                        }
                    }

                    if (best is { } found)
                    {
                        yield return found;
                    }
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

    private static double? ShiftOf(Job job, (double Length, Angle Askew) reach)
    {
        var cable = job.Vehicle.Cable;
        var shift = Math.Abs(cable.FreeInnerLength.Value - job.Preferences.FreePlay.Value - reach.Length);
        var half = cable.OuterEnd.AdjusterRange / 2;
        var most = half > 0 ? half * (1 - job.Preferences.AdjusterReserve) : SlotChecks.WithoutAdjuster;
        return shift <= most + Tolerance.Point && reach.Askew.Radians <= cable.WanderLimit.Radians + Tolerance.Direction ? shift / Math.Max(half, 1) : null;
    }
}
