namespace BracketGen.SheetMetal.Forming;

/// <summary>Whether slabs and bodies stay clear of each other over a whole stroke, not only at some angles of it.</summary>
/// <remarks>
/// Over a range of bend angles nothing comes nearer than it is in the middle of the range less the farthest that anything moves from there. Where that is
/// not enough, the range is halved. Clear is proven; met means nearer than <see cref="Resolution"/> over what is asked for.
/// </remarks>
internal sealed class StrokeClearance(BendStroke stroke, double mostTurn, SlabMeeting meeting)
{
    /// <summary>Ranges in which nothing moves more than this (mm) are halved no further.</summary>
    public const double Resolution = 0.1;

    // The origin of a carrier moves along a curve; between the ends of a range it may stray from its chord by this part of the way at most.
    private const double Curved = 1.1;

    private const int Deepest = 16;

    /// <summary>The bend angle (rad) at which they come nearer than <paramref name="clearance"/> (mm; negative: they may overlap by as much); null if they never do.</summary>
    public double? Met(Slab slab, ConvexBody body, double clearance)
    {
        slab = body.IsEndless ? slab.Profile : slab;
        if (Touch(slab, body, 0, clearance))
        {
            return 0;
        }

        if (slab.Carrier == body.Carrier)
        {
            return null;
        }

        return Met(slab, body, clearance, 0, mostTurn, 0) ?? (Touch(slab, body, mostTurn, clearance) ? mostTurn : null);
    }

    /// <summary>The same before the stroke begins.</summary>
    public double? MetAtStart(Slab slab, ConvexBody body, double clearance) => Touch(slab, body, 0, clearance) ? 0 : null;

    /// <summary>The same before and after the stroke.</summary>
    public double? MetAtEnds(Slab slab, ConvexBody body, double clearance) =>
        Touch(slab, body, 0, clearance) ? 0 : Touch(slab, body, mostTurn, clearance) ? mostTurn : null;

    private bool Touch(Slab slab, ConvexBody body, double turn, double clearance) =>
        meeting.Meets(slab, stroke.At(slab.Carrier, turn), body, stroke.At(body.Carrier, turn), clearance);

    private double? Met(Slab slab, ConvexBody body, double clearance, double from, double to, int depth)
    {
        var middle = (from + to) / 2;
        Placement slabAt = stroke.At(slab.Carrier, middle), bodyAt = stroke.At(body.Carrier, middle);
        var movement = Movement(slab, body, slabAt, bodyAt, from, to, clearance);
        if (!meeting.Meets(slab, slabAt, body, bodyAt, clearance + movement))
        {
            return null;
        }

        return movement <= Resolution || depth == Deepest || meeting.Meets(slab, slabAt, body, bodyAt, clearance)
            ? middle
            : Met(slab, body, clearance, from, middle, depth + 1) ?? Met(slab, body, clearance, middle, to, depth + 1);
    }

    private double Movement(Slab slab, ConvexBody body, Placement slabAt, Placement bodyAt, double from, double to, double clearance)
    {
        double shift = 0, slabTurn = 0, bodyTurn = 0;
        foreach (var end in (ReadOnlySpan<double>)[from, to])
        {
            Placement slabEnd = stroke.At(slab.Carrier, end), bodyEnd = stroke.At(body.Carrier, end);
            shift = Math.Max(shift, (slabEnd.At - bodyEnd.At - (slabAt.At - bodyAt.At)).Length);
            slabTurn = Math.Max(slabTurn, Math.Abs(slabEnd.Turn - slabAt.Turn));
            bodyTurn = Math.Max(bodyTurn, Math.Abs(bodyEnd.Turn - bodyAt.Turn));
        }

        // Only what is as near to the slab's origin as the body is can ever meet it.
        var reach = slab.Reach;
        if (bodyTurn == 0)
        {
            double near = 0;
            foreach (var corner in body.Corners)
            {
                near = Math.Max(near, (bodyAt.Point(corner) - slabAt.At).Length);
            }

            reach = Math.Min(reach, near + Curved * shift + Math.Max(0, clearance));
        }

        return Curved * shift + reach * slabTurn + body.Reach * bodyTurn;
    }
}
