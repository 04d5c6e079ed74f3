using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Part;

/// <summary>Metal that a bracket has for the sake of its bends: beside each bend for the shoulders of the die, and at its ends a straight edge for the back gauge.</summary>
/// <remarks>None of it reaches into another bend: there it ends sooner, and the checks of the bends say whether that is enough.</remarks>
internal static class BendMetal
{
    /// <summary>Radius (mm) of its corners: what a hand does not cut itself on, and what a cutter goes round without slowing down (common practice, no source).</summary>
    public const double Corner = 3;

    // The straight edge lies so far (mm) beyond what it runs past, so that it is one edge.
    private const double Beyond = 0.1;

    // Longer than the finger by so much at either end (mm).
    private const double BesideFinger = 0.5;

    // Beside the mouth of a slot: its rounded corner, and a piece of edge for a finger (mm).
    private const double BesideSlot = 3.3;

    /// <summary>Adds the metal for a chain of bends from the mount flange to the stop flange, and for the second mount flange.</summary>
    /// <param name="discs">What must have metal on each flange (mm).</param>
    /// <param name="bends">The bends: in the chain bend i joins flange i to flange i + 1; then, where there is one, that of the second mount flange.</param>
    /// <param name="chain">How many bends the chain has.</param>
    /// <param name="choice">What was chosen before.</param>
    public static void Add(IReadOnlyList<Disc>[] discs, Bend[] bends, int chain, BracketShape.Choice choice)
    {
        // Over a bar or clamp a bend is set to its scribed line and needs neither.
        if (bends.Length == 0 || choice.Die is null)
        {
            return;
        }

        var slot = choice.Sheet.Seat.IsSlot ? choice.Sheet.Seat.Opening / 2 + BesideSlot : 0;
        for (var i = 0; i < bends.Length; i++)
        {
            AddShoulders(discs, bends, i, choice);
        }

        // The mount flange for one bend; for two, which may run any way, also the stop flange.
        AddEdge(discs, bends, 0, 0, choice, 0);
        if (chain > 1)
        {
            AddEdge(discs, bends, chain - 1, chain, choice, slot);
        }

        if (bends.Length > chain)
        {
            AddEdge(discs, bends, chain, chain + 1, choice, 0);
        }
    }

    /// <summary>Adds the metal for the shoulders of the die on both sides of one bend; none where it is not bent on a die.</summary>
    /// <param name="discs">What must have metal on each flange (mm).</param>
    /// <param name="bends">All bends.</param>
    /// <param name="bend">Number of the bend.</param>
    /// <param name="choice">What was chosen before.</param>
    public static void AddShoulders(IReadOnlyList<Disc>[] discs, IReadOnlyList<Bend> bends, int bend, BracketShape.Choice choice)
    {
        if (choice.Die is not { } die)
        {
            return;
        }

        var one = bends[bend];
        var (from, to) = ShoulderMetal.Of(one, die, choice.Stock.Thickness, choice.Sheet.Straight, Corner);
        discs[one.From] = [.. discs[one.From], .. Clear(from, bends, bend, one.From, choice.Sheet.Straight)];
        discs[one.To] = [.. discs[one.To], .. Clear(to, bends, bend, one.To, choice.Sheet.Straight)];
    }

    // A straight edge parallel to a bend at the far side of a flange, as long as a finger of the gauge, where the flange has none; half as long as half a slot asks for.
    private static void AddEdge(IReadOnlyList<Disc>[] discs, Bend[] bends, int bend, int flange, BracketShape.Choice choice, double slot)
    {
        var one = bends[bend];
        var outwards = flange == one.To ? one.Across : -one.Across;
        var near = flange == one.To ? one.Start.Vector.Dot(outwards) + one.Allowance : one.Start.Vector.Dot(outwards);
        double far = double.NegativeInfinity, low = 0, high = 0;
        foreach (var disc in discs[flange])
        {
            double reach = disc.Centre.Dot(outwards) + disc.Radius, along = disc.Centre.Dot(one.Along);
            if (reach > far + Tolerance.OnLimit)
            {
                (far, low, high) = (reach, along, along);
            }
            else if (reach > far - Tolerance.OnLimit)
            {
                (low, high) = (Math.Min(low, along), Math.Max(high, along));
            }
        }

        // Behind the body of the die, which the finger reaches down beside.
        var least = Math.Max(choice.Press.GaugeMin, choice.Die!.BodyWidth / 2) - one.Allowance / 2 + Beyond;
        var half = Math.Max(choice.Press.FingerWidth / 2 + BesideFinger, slot);
        if (far - near >= least - Tolerance.OnLimit && high - low >= 2 * half - Tolerance.OnLimit)
        {
            return;
        }

        var edge = Math.Max(far + Beyond, near + least);
        var middle = (low + high) / 2;
        Disc At(double along) => new((edge - Corner) * outwards + along * one.Along, Corner);
        Disc[] added = [At(middle - half), At(middle + half)];
        if (added.All(d => Back(d, outwards, bends, bend, flange, choice.Sheet.Straight) == 0))
        {
            discs[flange] = [.. discs[flange], .. added];
        }
    }

    // Those discs beside a bend that stay clear of all others, drawn back towards their own bend where that is needed.
    private static IEnumerable<Disc> Clear(Disc[] discs, IReadOnlyList<Bend> bends, int bend, int flange, double straight)
    {
        var one = bends[bend];
        var outwards = flange == one.To ? one.Across : -one.Across;
        foreach (var disc in discs)
        {
            var back = Back(disc, outwards, bends, bend, flange, straight);
            var moved = new Disc(disc.Centre - back * outwards, disc.Radius);
            var depth = one.Depth(new(moved.Centre));
            if ((flange == one.To ? depth - one.Allowance : -depth) >= straight + disc.Radius)
            {
                yield return moved;
            }
        }
    }

    // How far a disc must be drawn back to stay clear of every other bend; without end where that does not help.
    private static double Back(Disc disc, Vector2 outwards, IReadOnlyList<Bend> bends, int own, int flange, double straight)
    {
        double back = 0;
        for (var k = 0; k < bends.Count; k++)
        {
            var other = bends[k];
            var isFrom = other.From == flange;
            if (k == own || !isFrom && !BlankOutline.HangsOn(bends, flange, other))
            {
                continue;
            }

            var depth = other.Depth(new(disc.Centre));
            var over = isFrom ? depth + disc.Radius + straight : other.Allowance + straight - depth + disc.Radius;
            var pace = isFrom ? outwards.Dot(other.Across) : -outwards.Dot(other.Across);
            if (over > 0)
            {
                back = pace > DesignTolerance.StandsStill ? Math.Max(back, over / pace) : double.PositiveInfinity;
            }
        }

        return back;
    }
}
