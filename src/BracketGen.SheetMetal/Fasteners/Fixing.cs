using BracketGen.SheetMetal.Standards;

namespace BracketGen.SheetMetal.Fasteners;

/// <summary>How the sheet is held at a mount hole.</summary>
public abstract record Fixing
{
    /// <summary>How far off the hole's centre the bolt may lie (mm).</summary>
    /// <param name="thread">Its thread.</param>
    public virtual double Play(FastenerThread thread) => 0;

    /// <summary>How far washer and head, or nut and stud, stand up from the sheet (mm).</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="sheet">Thickness of the sheet (mm).</param>
    public virtual double Above(FastenerThread thread, double sheet) => thread.HeadHeight + thread.WasherThickness;

    /// <summary>Width across flats of what is turned on the sheet's side (mm).</summary>
    public virtual double AcrossFlats(FastenerThread thread) => thread.AcrossFlats;
}

/// <summary>A tapped hole: a screw through the sheet goes into it.</summary>
public sealed record TappedHole : Fixing;

/// <summary>A plain hole in a flange: a bolt goes through sheet and flange, with a washer and a nut behind.</summary>
/// <param name="Diameter">Diameter of the hole (mm).</param>
/// <param name="Flange">Thickness of the flange (mm).</param>
/// <param name="Room">Room behind the flange for washer, nut and the bolt's end (mm); null where nobody measured it.</param>
public sealed record ThroughHole(double Diameter, double Flange, double? Room) : Fixing
{
    /// <inheritdoc/>
    public override double Play(FastenerThread thread) => Math.Max(0, Diameter - thread.Diameter) / 2;
}

/// <summary>A stud that stands out of the face: washer and nut hold the sheet on it.</summary>
/// <param name="StandsOut">How far it stands out of the face (mm).</param>
public sealed record MountStud(double StandsOut) : Fixing
{
    /// <inheritdoc/>
    public override double Above(FastenerThread thread, double sheet) => Math.Max(thread.WasherThickness + thread.NutHeight, StandsOut - sheet);

    /// <inheritdoc/>
    public override double AcrossFlats(FastenerThread thread) => thread.NutAcrossFlats;
}
