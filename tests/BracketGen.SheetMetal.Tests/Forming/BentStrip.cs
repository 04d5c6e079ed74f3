using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.SheetMetal.Tests.Forming;

/// <summary>Strips of 2 mm steel with parallel bends, and shops to bend them.</summary>
internal static class BentStrip
{
    public const double Thickness = 2, Radius = 2.6, Width = 40;

    public static readonly Material Steel = new()
    {
        Designation = "DC01", Density = 7.85e-9, Modulus = 210_000, Poisson = 0.3, Yield = 140, Endurance = 108, MaxTensile = 410,
        MinRadiusAcrossGrain = 0.5, MinRadiusAlongGrain = 1, BendGroup = BendGroup.ColdRolledOrSpringSteel, Source = "for this test",
    };

    public static readonly Stock Stock = new(Steel, Thickness);

    public static readonly PressBrakeDie Die = new(16, Radius) { Angle = Angle.FromDegrees(30), Evidence = Evidence.Given };

    public static readonly Punch Straight = Punch.Straight("straight", 100, Angle.FromDegrees(30), 1, 16);

    public static readonly Punch Gooseneck = Punch.Gooseneck("gooseneck", 120, Angle.FromDegrees(85), 1);

    public static ToolSet Tools(params Punch[] punches) => new() { Press = new() { Evidence = Evidence.Given }, Punches = [.. punches], Clamps = [] };

    /// <summary>A strip whose flanges have these flat lengths (mm) between the bends, with these bend angles (degrees, up if positive).</summary>
    public static FlatPattern Of(double[] flats, double[] turns, double width = Width)
    {
        var rule = new TestBendRule(0.4, "for this test");
        var bends = ImmutableArray.CreateBuilder<Bend>();
        var x = flats[0];
        for (var i = 0; i < turns.Length; i++)
        {
            var turn = Angle.FromDegrees(turns[i]);
            var bend = new Bend
            {
                From = i, To = i + 1, Start = new(x, width), End = new(x, 0), Turn = turn, InsideRadius = Radius,
                Allowance = rule.Allowance(turn, Radius, Thickness), Rule = rule,
            };
            bends.Add(bend);
            x += bend.Allowance + flats[i + 1];
        }

        return new()
        {
            Blank = new(Contour.Polygon([new(0, 0), new(x, 0), new(x, width), new(0, width)]), []),
            Thickness = Thickness,
            Bends = bends.ToImmutable(),
        };
    }
}
