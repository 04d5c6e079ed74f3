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

    /// <summary>Least sheet (mm, finish included) that the end holds on to.</summary>
    public virtual double MinSheet => 0;

    /// <summary>Thickest sheet (mm, finish included) that it goes over; infinite where it has no limit.</summary>
    public virtual double MaxSheet => double.PositiveInfinity;
}

/// <summary>A threaded end with two nuts, one on each side of the bracket.</summary>
/// <param name="Thread">Nominal thread diameter (mm).</param>
/// <param name="Pitch">Thread pitch (mm).</param>
/// <param name="AcrossFlats">Width across flats of the nuts (mm).</param>
/// <param name="NutHeight">Height of one nut (mm).</param>
public abstract record NuttedEnd(double Thread, double Pitch, double AcrossFlats, double NutHeight) : OuterEnd
{
    /// <inheritdoc/>
    public override double BodyDiameter => Thread;

    /// <inheritdoc/>
    public override double SeatDiameter => AcrossFlats;

    /// <summary>Width (mm) across two flats along the thread, which keep it from turning in its stop; null where it has none.</summary>
    public double? ThreadFlats { get; init; }

    /// <summary>Bore of a nut (mm): the minor diameter D1 = d - 5/4 H of its thread with H = √3/2 P, ISO 724; ISO 965-1's 6H makes no nut narrower.</summary>
    public double NutBore => Thread - 1.25 * Math.Sqrt(3) / 2 * Pitch;

    /// <summary>Width across corners of a nut (mm): 2/√3 of the width across flats (regular hexagon).</summary>
    public double AcrossCorners => AcrossFlats * 2 / Math.Sqrt(3);

    /// <summary>Thread (mm) that stands out beyond the nut on the quadrant's side, at the most.</summary>
    /// <param name="thickness">Thickness of the sheet (mm).</param>
    public abstract double StandsOut(double thickness);
}

/// <summary>A threaded end held by two locknuts, one on each side of the bracket.</summary>
/// <param name="Thread">Nominal thread diameter (mm).</param>
/// <param name="Pitch">Thread pitch (mm): one turn moves the stop by this much.</param>
/// <param name="Range">Total travel of the adjustment (mm), half of it each way from mid range.</param>
/// <param name="AcrossFlats">Width across flats of the locknuts (mm).</param>
/// <param name="NutHeight">Height of one locknut (mm).</param>
public sealed record ThreadedAdjuster(double Thread, double Pitch, double Range, double AcrossFlats, double NutHeight) : NuttedEnd(Thread, Pitch, AcrossFlats, NutHeight)
{
    /// <inheritdoc/>
    public override double AdjusterRange => Range;

    /// <inheritdoc/>
    public override double StandsOut(double thickness) => Range;
}

/// <summary>A ferrule with a short thread and two nuts that clamp the sheet between them: it holds, and sets nothing.</summary>
/// <param name="Thread">Nominal thread diameter (mm).</param>
/// <param name="Pitch">Thread pitch (mm).</param>
/// <param name="ThreadLength">Length of the thread (mm): both nuts and the sheet must find room on it.</param>
/// <param name="AcrossFlats">Width across flats of the nuts (mm).</param>
/// <param name="NutHeight">Height of one nut (mm).</param>
/// <param name="Range">Travel of an adjuster elsewhere in the same outer (mm); zero if there is none.</param>
public sealed record BulkheadFerrule(double Thread, double Pitch, double ThreadLength, double AcrossFlats, double NutHeight, double Range = 0) : NuttedEnd(Thread, Pitch, AcrossFlats, NutHeight)
{
    /// <inheritdoc/>
    public override double AdjusterRange => Range;

    /// <inheritdoc/>
    public override double MaxSheet => ThreadLength - 2 * NutHeight;

    /// <inheritdoc/>
    public override double StandsOut(double thickness) => Math.Max(0, MaxSheet - thickness);
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

/// <summary>A ferrule whose nose is held by a clip in a groove, on the quadrant's side of the bracket.</summary>
/// <param name="NoseDiameter">Diameter of the nose in the hole or slot (mm).</param>
/// <param name="ShoulderDiameter">Diameter of the shoulder (mm), larger than the nose.</param>
/// <param name="Grip">Length of nose from the shoulder to the clip (mm): the sheet must fit in it.</param>
/// <param name="NoseLength">Length of the whole nose from the shoulder on (mm).</param>
/// <param name="ClipDiameter">Diameter over the clip (mm).</param>
/// <param name="Range">Travel of an adjuster elsewhere in the same outer (mm); zero if there is none.</param>
public sealed record ClippedFerrule(double NoseDiameter, double ShoulderDiameter, double Grip, double NoseLength, double ClipDiameter, double Range = 0) : OuterEnd
{
    /// <inheritdoc/>
    public override double AdjusterRange => Range;

    /// <inheritdoc/>
    public override double BodyDiameter => NoseDiameter;

    /// <inheritdoc/>
    public override double SeatDiameter => ShoulderDiameter;

    /// <inheritdoc/>
    public override double MaxSheet => Grip;
}

/// <summary>An end with a collar and barbs that is pushed into a round or square hole from the outer's side and springs open behind the sheet.</summary>
/// <param name="HoleDiameter">Diameter of the hole that it is made for, or its side (mm).</param>
/// <param name="ShoulderDiameter">Diameter of the collar that bears on the bracket (mm).</param>
/// <param name="LeastSheet">Thinnest sheet that it holds on to (mm).</param>
/// <param name="MostSheet">Thickest sheet that it snaps over (mm).</param>
/// <param name="Reach">How far it stands in and beyond the sheet, from the collar on (mm).</param>
/// <param name="Range">Travel of an adjuster elsewhere in the same outer (mm); zero if there is none.</param>
public sealed record PushInEnd(double HoleDiameter, double ShoulderDiameter, double LeastSheet, double MostSheet, double Reach, double Range = 0) : OuterEnd
{
    /// <inheritdoc/>
    public override double AdjusterRange => Range;

    /// <summary>Radius of the corners of the square hole that it is made for (mm); null for a round hole.</summary>
    public double? Corner { get; init; }

    /// <inheritdoc/>
    /// <remarks>Of a square one the circle round its corners, taken as sharp.</remarks>
    public override double BodyDiameter => Corner is null ? HoleDiameter : Math.Sqrt(2) * HoleDiameter;

    /// <inheritdoc/>
    public override double SeatDiameter => ShoulderDiameter;

    /// <inheritdoc/>
    public override double MinSheet => LeastSheet;

    /// <inheritdoc/>
    public override double MaxSheet => MostSheet;
}
