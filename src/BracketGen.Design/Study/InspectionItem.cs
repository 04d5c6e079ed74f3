namespace BracketGen.Design.Study;

/// <summary>What is measured on a finished bracket.</summary>
public enum InspectedThing
{
    /// <summary>Diameter of a hole, side of a square one, or width of a slot (mm).</summary>
    Size,

    /// <summary>Length of a slotted hole over all (mm).</summary>
    SlotLength,

    /// <summary>Distance from one hole's centre to another's on the mount flange (mm).</summary>
    Distance,

    /// <summary>Included angle of a bend (rad).</summary>
    IncludedAngle,

    /// <summary>A hole of the second mount flange on its underside, from H1 towards H2 (mm).</summary>
    HoleAlong,

    /// <summary>The same, square to that on the mount face, to the left as seen from above the face (mm).</summary>
    HoleAcross,

    /// <summary>The same, from the mount face (mm).</summary>
    HoleHeight,

    /// <summary>The stop's hole at the seat, from H1 towards H2 (mm).</summary>
    StopAlong,

    /// <summary>The stop's hole at the seat, square to that on the mount face, to the left as seen from above the face (mm).</summary>
    StopAcross,

    /// <summary>The stop's hole at the seat, from the mount face (mm).</summary>
    StopHeight,
}

/// <summary>One dimension of the inspection sheet.</summary>
/// <param name="Name">Name on the sheet: D1, D2.</param>
/// <param name="Thing">What is measured.</param>
/// <param name="Of">The hole or the bend that is measured.</param>
/// <param name="From">The hole that is measured from; null where there is none.</param>
/// <param name="Index">Number of the hole or bend, from 0.</param>
/// <param name="Nominal">As drawn (mm, rad).</param>
/// <param name="PlusMinus">Limit deviation either way (mm, rad).</param>
public sealed record InspectionItem(string Name, InspectedThing Thing, string Of, string? From, int Index, double Nominal, double PlusMinus)
{
    /// <summary>The bolt hole that the x axis runs to from H1; null on a single bolt, where it is that of the flat pattern.</summary>
    public string? Towards { get; init; }

    /// <summary>Whether the hole is a slot.</summary>
    public bool IsSlot { get; init; }

    /// <summary>Whether the hole is a slotted mount hole.</summary>
    public bool IsSlotted { get; init; }

    /// <summary>Whether the hole is square.</summary>
    public bool IsSquare { get; init; }

    /// <summary>Whether a reading is within the drawing's limits.</summary>
    /// <param name="value">The reading (mm, rad).</param>
    public bool Holds(double value) => Math.Abs(value - Nominal) <= PlusMinus + Geometry.Tolerance.LimitSlack;
}
