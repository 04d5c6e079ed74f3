namespace BracketGen.Mechanism.Cables;

/// <summary>How the cable's outer ends and pushes on the bracket.</summary>
public abstract record OuterEnd
{
    /// <summary>Total travel of the adjustment at this end (mm); zero if there is none.</summary>
    public virtual double AdjusterRange => 0;

    /// <summary>Diameter (mm) of the part that passes through the bracket.</summary>
    public abstract double BodyDiameter { get; }

    /// <summary>Diameter (mm) of the seat that bears on the bracket.</summary>
    public abstract double SeatDiameter { get; }
}

/// <summary>A threaded end held by two locknuts, one on each side of the bracket.</summary>
/// <param name="Thread">Nominal thread diameter (mm).</param>
/// <param name="Pitch">Thread pitch (mm): one turn moves the stop by this much.</param>
/// <param name="Range">Total travel of the adjustment (mm), half of it each way from mid range.</param>
/// <param name="AcrossFlats">Width across flats of the locknuts (mm).</param>
/// <param name="NutHeight">Height of one locknut (mm).</param>
public sealed record ThreadedAdjuster(double Thread, double Pitch, double Range, double AcrossFlats, double NutHeight) : OuterEnd
{
    /// <inheritdoc/>
    public override double AdjusterRange => Range;

    /// <inheritdoc/>
    public override double BodyDiameter => Thread;

    /// <inheritdoc/>
    public override double SeatDiameter => AcrossFlats;

    /// <summary>Bore of a locknut (mm): the minor diameter D1 = d - 5/4 H of its thread with H = √3/2 P, ISO 724; ISO 965-1's 6H makes no nut narrower.</summary>
    public double NutBore => Thread - 1.25 * Math.Sqrt(3) / 2 * Pitch;

    /// <summary>Width across corners of a locknut (mm): 2/√3 of the width across flats (regular hexagon).</summary>
    public double AcrossCorners => AcrossFlats * 2 / Math.Sqrt(3);
}

/// <summary>A plain ferrule: its nose sits in the hole, its shoulder bears on the bracket.</summary>
/// <param name="NoseDiameter">Diameter of the nose in the hole (mm).</param>
/// <param name="ShoulderDiameter">Diameter of the shoulder (mm), larger than the nose.</param>
/// <param name="Range">Travel of an adjuster elsewhere in the same outer (mm); zero if there is none.</param>
public sealed record PlainFerrule(double NoseDiameter, double ShoulderDiameter, double Range = 0) : OuterEnd
{
    /// <inheritdoc/>
    public override double AdjusterRange => Range;

    /// <inheritdoc/>
    public override double BodyDiameter => NoseDiameter;

    /// <inheritdoc/>
    public override double SeatDiameter => ShoulderDiameter;
}

/// <summary>An outer end with a neck between two collars: it slides sideways into an open slot and is held by its collars or a clip.</summary>
/// <param name="NeckDiameter">Diameter of the neck (mm): it sits in the slot.</param>
/// <param name="CollarDiameter">Diameter of the collars on either side of the neck (mm).</param>
/// <param name="NeckLength">Length of the neck (mm): the sheet must fit in it.</param>
/// <param name="Range">Travel of an adjuster elsewhere in the same outer (mm); zero if there is none.</param>
public sealed record SlottedClip(double NeckDiameter, double CollarDiameter, double NeckLength, double Range = 0) : OuterEnd
{
    /// <inheritdoc/>
    public override double AdjusterRange => Range;

    /// <inheritdoc/>
    public override double BodyDiameter => NeckDiameter;

    /// <inheritdoc/>
    public override double SeatDiameter => CollarDiameter;
}
