using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.Design.Part;

/// <summary>
/// Which chains of two bends from one sheet to one place may cost less than a limit: told from the middle flange's direction and the sections
/// square to the bends, before anything hangs on them.
/// </summary>
/// <remarks>
/// Never turns down a chain of which a bracket comes that costs less than the limit (<see cref="BracketCost"/>). To what
/// <see cref="CostBound.OfAny"/> knows of any bracket of the sheet it adds what bends that are not square cost, and what each bend's length costs
/// at least: the longer it is, the more it weighs and the less it gives; the sum has its least where both grow alike. A return lip may take away what the second gives, a
/// return flange what the first does, but for the price of a bend.
/// </remarks>
internal sealed class TwoBendBound
{
    // Half a degree is what the cost forgives; a little more, so that rounding never makes the bound the stricter of the two.
    internal static readonly double Odd = Math.Sin(Angle.FromDegrees(0.51).Radians);

    private readonly SheetOnMount _sheet;
    private readonly double _room, _areaCost, _giveCost, _angleCost, _bendCost, _least, _stop, _straight;

    /// <summary>The bound for a sheet and a place.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="tension">Largest tension in the wire (N).</param>
    /// <param name="limit">What a bracket must cost less than.</param>
    public TwoBendBound(SheetOnMount sheet, double tension, double limit)
    {
        var stock = sheet.Stock;
        _sheet = sheet;
        _room = limit - CostBound.OfAny(sheet, 2);
        _areaCost = BracketCost.OfSheet(stock.Thickness * stock.Material.Density, stock.Material, sheet.Rates);
        _giveCost = BracketCost.OfGive(tension, sheet.Rates) * StopGive.OfSection(1, 1, stock);
        _angleCost = BracketCost.OfAngle(sheet.Rates);
        _bendCost = BracketCost.OfBend(sheet.Rates);
        (_stop, _straight, _least) = (sheet.StopMetalRadius, sheet.Straight, CostBound.LeastBendLength(sheet));
    }

    private TwoBendBound(TwoBendBound bound, double cost)
    {
        (_sheet, _room, _areaCost, _giveCost, _angleCost) = (bound._sheet, bound._room - cost, bound._areaCost, bound._giveCost, bound._angleCost);
        (_bendCost, _stop, _straight, _least) = (bound._bendCost, bound._stop, bound._straight, bound._least);
    }

    /// <summary>The bound for bends by one rule: where nobody tried it, a test strip comes on top.</summary>
    public TwoBendBound For(BendRule rule) => rule.IsTested ? this : new(this, BracketCost.OfTestStrip(_sheet.Rates));

    /// <summary>What the bends' angles cost where the middle flange faces along <paramref name="facing"/>, either way.</summary>
    /// <param name="mount">Normal of the mount face, length one.</param>
    /// <param name="facing">Normal of the middle flange, length one.</param>
    /// <param name="stop">Normal of the stop's face, length one.</param>
    public double Angles(Vector3 mount, Vector3 facing, Vector3 stop) =>
        _angleCost * ((Math.Abs(mount.Dot(facing)) > Odd ? 1 : 0) + (Math.Abs(facing.Dot(stop)) > Odd ? 1 : 0));

    /// <summary>Whether a chain may cost little enough.</summary>
    /// <param name="angles">What <see cref="Angles"/> says.</param>
    /// <param name="free">From the bolts' metal to the first bend (mm), at least the straight edge beside a bend.</param>
    /// <param name="lever">From the first bend's line to the seat (mm), or less.</param>
    /// <param name="past">From the second bend to the stop's centre (mm), at least the straight edge and the stop's metal.</param>
    public bool Allows(double angles, double free, double lever, double past) =>
        // A return lip takes away give of the stop flange, a return flange that of the mount flange, but it is another bend.
        angles + Math.Min(_bendCost, FirstBend(free, lever)) + Math.Min(_bendCost, SecondBend(past)) < _room;

    // Metal: the strip of the bend and of the edges beside it, and the triangle from the bolts' metal to it. Give: the mount flange turned by F times lever.
    private double FirstBend(double free, double lever)
    {
        double weight = _areaCost * (2 * _straight + (free - _straight) / 2), give = _giveCost * lever * lever * free;
        var length = weight > 0 ? Math.Max(_least, Math.Sqrt(give / weight)) : double.PositiveInfinity;
        if (double.IsPositiveInfinity(length))
        {
            return 0; // Metal for nothing: as long as one likes, and nothing gives.
        }

        return weight * length - _areaCost * 2 * _straight * _least + give / length;
    }

    // By the flange's mean width w, (bend + stop's metal) / 2, the bend being no shorter than the stop's metal is wide. Metal: the strip, and a
    // trapezoid from it to the stop's centre in the place of half the stop's disc. Give: the cantilever.
    private double SecondBend(double past)
    {
        double weight = _areaCost * (4 * _straight + past - _straight), give = _giveCost * past * past * past / 3;
        if (!(weight > 0))
        {
            return 0;
        }

        var width = Math.Max(2 * _stop, Math.Sqrt(give / weight));
        var known = _areaCost * (2 * _straight * (2 * _stop + _least) + Math.PI / 2 * _stop * _stop);
        return Math.Max(0, weight * width - known + give / width);
    }
}
