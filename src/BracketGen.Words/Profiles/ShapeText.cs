using BracketGen.Design.Part;
using BracketGen.Units;

namespace BracketGen.Words.Profiles;

/// <summary>Measurements that give no bracket: what is allowed, and what to do.</summary>
internal static class ShapeText
{
    public static string Allowed(ShapeMistake mistake, UnitSystem units) => mistake.Fault switch
    {
        ShapeFault.NoEdgeOnBend => "two points on one straight edge of the flange that the bend starts from",
        ShapeFault.NoEdgeAtZero => "corners with one straight edge on v = 0, over the whole bend",
        ShapeFault.FlangeTooShort => $"flanges that reach more than {Length(units, mistake.Limit)} from the corner line",
        ShapeFault.NoRelief => "a bend over the whole line that both flanges have in common, or relief with the width of the cuts beside it",
        ShapeFault.EdgesCross => "corners in order round the flange, no two edges crossing",
        ShapeFault.CornerRadius => $"a rounding that fits its edges, here up to {Length(units, mistake.Limit)}",
        ShapeFault.HoleOffMetal => "a hole whose whole edge lies in the metal of its flange",
        ShapeFault.StopOffFlange => $"a point within {Length(units, mistake.Limit)} of a face of the stop flange",
        ShapeFault.SlotNotOpen => "a slot that runs out over the edge of its flange",
        _ => "the mount flange, 0, or the flange of a bend before this one",
    };

    public static string Advice(ShapeMistake mistake, UnitSystem units) => mistake.Fault switch
    {
        ShapeFault.NoEdgeOnBend => "Draw the flange up to the corner line, where the outsides of the two flanges would meet, and give the ends of the bend on that edge, the new flange on the left.",
        ShapeFault.NoEdgeAtZero => "Measure the new flange from the corner line: u from the first end of the bend, v = 0 on the line.",
        ShapeFault.FlangeTooShort => $"Inside radius and thickness take {Length(units, mistake.Limit)} beside the corner line, and the flange reaches {Length(units, mistake.Value)}. Measure the radius, the angle and the flange again.",
        ShapeFault.NoRelief => "Correct the ends of the bend, or measure the cuts beside it: then the new flange is no wider than the bend.",
        ShapeFault.EdgesCross => "Sketch the flange and number its corners on the way round.",
        ShapeFault.CornerRadius => $"The radius {Length(units, mistake.Value)} does not fit between the corners. Measure it again.",
        ShapeFault.HoleOffMetal => "Measure the hole from the same edges as the corners.",
        ShapeFault.StopOffFlange => $"The point lies {Length(units, mistake.Value)} off the nearer face of the stop flange as bends and corners put it. Measure the point, the bend angles and the flanges again; where the face is in doubt, give direction.",
        ShapeFault.SlotNotOpen => "Correct slot_towards, or give diameter where the hole is round.",
        _ => "Number the bends in the order in which they follow each other from the mount flange.",
    };

    private static string Length(UnitSystem units, double length) => units.WriteLimit(Quantity.Length, length);
}
