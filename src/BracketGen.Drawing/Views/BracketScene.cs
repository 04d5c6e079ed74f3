using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;
using BracketGen.Units;
using BracketGen.Words;

namespace BracketGen.Drawing.Views;

/// <summary>What every sheet of a bracket's drawing is made from.</summary>
internal sealed class BracketScene
{
    public BracketScene(Solution solution, Bracket bracket)
    {
        Solution = solution;
        Bracket = bracket;
        Units = solution.Job.Units;
        Value = ValueFormat.Of(Units);
        Mesh = FoldedMesh.Of(bracket.Folded);

        // The formed views stand square to the first bend, so that one of them shows its profile true.
        var mount = bracket.Folded.Flanges[0];
        Turn = Flat.Bends.IsEmpty ? Angle.Zero : QuarterRest(Flat.Bends[0].Along.Polar);
        var right = mount.ToWorldDirection(Vector3.From(Vector2.FromPolar(1, Turn)));
        Front = Frame.FromZX(mount.ToWorld(DatumHole.Centre.Vector), mount.Z, right);
        ProfileFromSide = !Flat.Bends.IsEmpty && Math.Abs(Flat.Bends[0].Along.Rotate(-Turn).X) > 0.5;
    }

    public Solution Solution { get; }

    public Bracket Bracket { get; }

    public FlatPattern Flat => Bracket.Flat;

    public double Thickness => Flat.Thickness;

    public UnitSystem Units { get; }

    public ValueFormat Value { get; }

    public FoldedMesh Mesh { get; }

    /// <summary>Positions in the formed views are counted from this hole.</summary>
    public BracketHole DatumHole => Bracket.Holes[0];

    /// <summary>Positions in the flat pattern are counted from the first hole, datum B; its x axis runs through the second.</summary>
    public Vector2 FlatDatum => DatumHole.Centre.Vector;

    /// <summary>From the flat pattern's x axis to the front view's.</summary>
    public Angle Turn { get; }

    /// <summary>The front view, square on the mount flange: origin in the datum hole on the mount face, z towards the eye.</summary>
    public Frame Front { get; }

    /// <summary>Whether the first bend is seen end-on from the side; from the top otherwise.</summary>
    public bool ProfileFromSide { get; }

    /// <summary>The seat of the outer, in front view coordinates (mm).</summary>
    public Vector3 Seat => Front.ToLocal(Bracket.FoldedSeat.Point.Vector);

    public Frame FromTop => Frame.FromZX(Front.Origin, Front.Y, Front.X);

    public Frame FromSide(bool left) => left
        ? Frame.FromZX(Front.Origin, -Front.X, Front.Z)
        : Frame.FromZX(Front.Origin, Front.X, -Front.Z);

    /// <summary>The isometric view over one of the upper or lower corners of the front.</summary>
    public Frame Isometric(int x, int y)
    {
        var towards = Front.ToWorldDirection(new(x, y, 1));
        return Frame.FromZX(Front.Origin, towards, Front.Y.Cross(towards));
    }

    /// <summary>Name of a bend on the drawing.</summary>
    public static string NameOf(int bend) => Counted.Number(bend + 1);

    private static Angle QuarterRest(Angle angle)
    {
        var rest = Math.IEEERemainder(angle.Radians, Math.PI / 2);
        return new(Math.Abs(rest) < Tolerance.Direction ? 0 : rest);
    }
}
