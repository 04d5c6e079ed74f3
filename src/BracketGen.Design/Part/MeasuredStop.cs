using BracketGen.Geometry;

namespace BracketGen.Design.Part;

/// <summary>Where the stop of a finished bracket was found.</summary>
/// <param name="Seat">Middle of its hole at the seat, above the mount flange in the flat pattern's coordinates (mm).</param>
/// <param name="Height">How far it lies above the mount face (mm).</param>
/// <param name="Normal">The way the seat faces, in the frame of the mount flange, length one.</param>
/// <param name="PlusMinus">How exactly each coordinate was read (mm, either way).</param>
public sealed record MeasuredStop(FlatPoint Seat, double Height, Vector3 Normal, double PlusMinus) : IMirrored<MeasuredStop>
{
    /// <summary>Caliper and height gauge in a workshop (mm; common practice, no source).</summary>
    public const double UsualReading = 0.1;

    /// <summary>How far the seat's direction may be off; zero where it is that of the folded part.</summary>
    public Angle NormalPlusMinus { get; init; }

    /// <inheritdoc/>
    /// <remarks>As the flat pattern: in its own y axis.</remarks>
    public MeasuredStop Mirrored() => this with { Seat = Seat.MirroredInX, Normal = new(-Normal.X, Normal.Y, Normal.Z) };
}
