using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;

namespace BracketGen.Line.Nesting;

/// <summary>A shape in its place on a sheet.</summary>
/// <param name="Piece">Which piece.</param>
/// <param name="Turn">By what it is turned about its own origin.</param>
/// <param name="Shift">And then shifted (mm).</param>
public sealed record LaidPiece(NestPiece Piece, Angle Turn, Vector2 Shift)
{
    /// <summary>Its outline on the sheet (mm).</summary>
    public Contour Outline => Piece.Outline.Rotate(Turn).Shift(Shift);
}

/// <summary>A sheet with what is cut out of it; lower left corner at the origin, length and grain along x.</summary>
/// <param name="Length">Length (mm).</param>
/// <param name="Width">Width (mm).</param>
/// <param name="Laid">What lies on it.</param>
public sealed record LaidSheet(double Length, double Width, ImmutableArray<LaidPiece> Laid)
{
    /// <summary>The offcut that it is; null for a new sheet.</summary>
    public Offcut? Offcut { get; init; }

    /// <summary>How far along its length it is used, border on the far side included (mm).</summary>
    public double Used(double border) => Laid.IsEmpty ? 0 : Math.Min(Length, Laid.Max(l => l.Outline.Bounds.Max.X) + border);

    /// <summary>Net area of what lies on it, holes not counted off (mm²).</summary>
    public double Area => Laid.Sum(l => l.Piece.Outline.SignedArea);

    /// <summary>Its own area, without what was cut out of it before (mm²).</summary>
    public double WholeArea => Offcut?.Outline?.Area ?? Length * Width;

    /// <summary>Length (mm) of the rectangle across its whole width that is left when it is cut off; 0 where the offcut is no rectangle.</summary>
    public double Left(double border) => Offcut?.Outline is null ? Math.Max(0, Length - Used(border)) : 0;
}

/// <summary>All sheets of one kind.</summary>
/// <param name="Sheets">The new sheets.</param>
/// <param name="Unlaid">Pieces that do not fit on a sheet at all.</param>
/// <param name="Border">Metal left along the edges (mm).</param>
public sealed record SheetNest(ImmutableArray<LaidSheet> Sheets, ImmutableArray<NestPiece> Unlaid, double Border)
{
    /// <summary>The offcuts that something is cut from, before any new sheet; they count in no area.</summary>
    public ImmutableArray<LaidSheet> Offcuts { get; init; } = [];

    /// <summary>Offcuts and sheets in the order in which they are cut.</summary>
    public IEnumerable<LaidSheet> All => Offcuts.Concat(Sheets);

    /// <summary>Area used (mm²): whole sheets, but the last only as far as it is used; the rest goes back into the rack.</summary>
    public double UsedArea => Sheets.IsEmpty ? 0 : Sheets.SkipLast(1).Sum(s => s.Length * s.Width) + Sheets[^1].Used(Border) * Sheets[^1].Width;

    /// <summary>Net area over area used, 0 to 1; 1 is the area bound, which nothing can pass.</summary>
    public double Utilisation => UsedArea > 0 ? Sheets.Sum(s => s.Area) / UsedArea : 0;

    /// <summary>Sheets that the net area alone would need.</summary>
    public int FewestSheets => Sheets.IsEmpty ? 0 : (int)Math.Ceiling(Sheets.Sum(s => s.Area) / (Sheets[0].Length * Sheets[0].Width) - Tolerance.LimitSlack);
}
