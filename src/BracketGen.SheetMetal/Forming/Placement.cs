using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Forming;

/// <summary>Where something stands in the section at one moment: turned by <see cref="Turn"/>, then moved by <see cref="At"/> (mm).</summary>
internal readonly record struct Placement(Vector2 At, double Cos, double Sin, double Turn)
{
    public static readonly Placement Rest = new(Vector2.Zero, 1, 0, 0);

    public static Placement Of(Vector2 at, double turn)
    {
        var (sin, cos) = Math.SinCos(turn);
        return new(at, cos, sin, turn);
    }

    public Vector2 Direction(Vector2 v) => new(Cos * v.X - Sin * v.Y, Sin * v.X + Cos * v.Y);

    public Vector2 Point(Vector2 p) => At + Direction(p);
}

/// <summary>What a thing moves with while a bend is made.</summary>
internal enum Carrier
{
    /// <summary>Stands still: die, bed, clamp, gauge.</summary>
    Machine,

    /// <summary>The beam with the punch.</summary>
    Beam,

    /// <summary>The part on the side of the gauge.</summary>
    Back,

    /// <summary>The part on the front.</summary>
    Front,
}
