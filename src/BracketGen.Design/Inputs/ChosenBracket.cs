using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Design.Inputs;

/// <summary>A bend of a chosen bracket.</summary>
/// <param name="Turn">Bend angle, positive towards the top of the sheet.</param>
/// <param name="Length">Length of the bend (mm).</param>
public readonly record struct ChosenBend(Angle Turn, double Length);

/// <summary>The bracket that somebody chose for a job, by what was chosen and not by its number in a list: it is made again for the job as it now is.</summary>
/// <param name="Material">Designation of the sheet's material.</param>
/// <param name="Thickness">Its thickness (mm).</param>
/// <param name="Leaving">Leaving angle at the closed stop, counted from the pocket the way the groove runs.</param>
/// <param name="AdjusterShift">How far the adjuster stands off mid range (mm).</param>
/// <param name="InsideRadius">Inside radius of the bends (mm); zero for a flat plate.</param>
/// <param name="SeatOnTop">Whether the seat is on the side of the sheet that faces away from the mount face.</param>
/// <param name="Bends">Its bends, from the mount flange on.</param>
public sealed record ChosenBracket(
    string Material, double Thickness, Angle Leaving, double AdjusterShift, double InsideRadius, bool SeatOnTop, ImmutableArray<ChosenBend> Bends)
{
    /// <inheritdoc/>
    public bool Equals(ChosenBracket? other) => other is not null && Material == other.Material && Thickness == other.Thickness && Leaving == other.Leaving
        && AdjusterShift == other.AdjusterShift && InsideRadius == other.InsideRadius && SeatOnTop == other.SeatOnTop && Bends.SequenceEqual(other.Bends);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Material, Thickness, Leaving, AdjusterShift, Bends.Length);
}
