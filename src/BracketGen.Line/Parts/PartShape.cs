using System.Collections.Immutable;
using System.Text.Json.Serialization;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Line.Parts;

/// <summary>A bracket as it is kept on the disk between two runs: every number in full, so that what comes back is the same to the last bit.</summary>
/// <remarks>Flat coordinates in mm, angles in rad, frame in the throttle frame as measured.</remarks>
/// <param name="Material">Designation.</param>
/// <param name="Thickness">Thickness.</param>
/// <param name="Die">Opening of the die; null for a flat plate.</param>
/// <param name="SeatOnTop">Side of the seat.</param>
/// <param name="Outline">Four numbers for a line (from, to), five for an arc (centre, radius, polar angle of the start, sweep).</param>
/// <param name="Holes">Bolts first, the stop last.</param>
/// <param name="Bends">The bends.</param>
/// <param name="Mount">Origin, x and z of the mount flange's frame.</param>
public sealed record PartShape(
    string Material, double Thickness, double? Die, bool SeatOnTop, double[][] Outline, PartHole[] Holes, PartBend[] Bends, double[] Mount)
{
    /// <summary>Whether it has all numbers that a bracket needs: a register can be changed by hand.</summary>
    [JsonIgnore]
    public bool IsWhole =>
        Material is not null && double.IsFinite(Thickness) && Outline is { Length: > 2 } && Outline.All(s => s is { Length: 4 or 5 } && s.All(double.IsFinite))
        && Mount is { Length: 9 } && Mount.All(double.IsFinite) && Bends is not null && Holes is { Length: > 1 } && !Holes[^1].IsBolt && Holes[..^1].All(h => h.IsBolt)
        && Bends.All(b => b.From >= 0 && b.From <= Bends.Length && b.To >= 0 && b.To <= Bends.Length)
        && Holes.All(h => h.Flange >= 0 && h.Flange <= Bends.Length && h.Towards is null or { Length: 2 } && double.IsFinite(h.X + h.Y + h.Diameter));

    /// <summary>A bracket as it is kept.</summary>
    public static PartShape Of(Bracket bracket)
    {
        var frame = bracket.Folded.Flanges[0];
        return new(
            bracket.Stock.Material.Designation, bracket.Stock.Thickness, bracket.Die?.Opening, bracket.SeatOnTop,
            [
                .. bracket.Flat.Blank.Outline.Segments.Select(s => s is ArcSegment arc
                    ? (double[])[arc.Centre.X, arc.Centre.Y, arc.Radius, arc.From.Radians, arc.Sweep.Radians]
                    : [s.Start.X, s.Start.Y, s.End.X, s.End.Y]),
            ],
            [
                .. bracket.Holes.Select(h => new PartHole(
                    h.Name, h.Purpose == HolePurpose.Bolt, h.Flange, h.Centre.X, h.Centre.Y, h.Diameter,
                    h.Towards is { } t ? [t.X, t.Y] : null, h.Thread?.Name, h.MetalRadius)
                    {
                        Through = h.Fixing is ThroughHole through ? [through.Diameter, through.Flange, .. through.Room is { } room ? (double[])[room] : []] : null,
                        Stud = (h.Fixing as MountStud)?.StandsOut,
                        Spacer = h.SpacerLength,
                        Outline = h.Outline switch
                        {
                            SquareHole s => [s.Along.X, s.Along.Y, s.Corner],
                            FlatSidedHole f => [f.Along.X, f.Along.Y, f.AcrossFlats, 0],
                            SlottedHole s => [s.Along.X, s.Along.Y, s.Travel, 0, 0],
                            _ => null,
                        },
                    }),
            ],
            [
                .. bracket.Flat.Bends.Select(b => new PartBend(
                    b.From, b.To, b.Start.X, b.Start.Y, b.End.X, b.End.Y, b.Turn.Radians, b.InsideRadius, b.Allowance, b.Relief)),
            ],
            [
                frame.Origin.X, frame.Origin.Y, frame.Origin.Z, frame.X.X, frame.X.Y, frame.X.Z, frame.Z.X, frame.Z.Y, frame.Z.Z,
            ]);
    }

    /// <summary>The bracket again.</summary>
    /// <param name="family">The family: its shop has the sheet, the die and the bend rule.</param>
    /// <param name="cable">The cable it was made for.</param>
    /// <param name="opening">How that cable's outer is let in.</param>
    /// <returns>The bracket; null where the shop no longer has the sheet or the die.</returns>
    public Bracket? ToBracket(LoadedFamily family, Cable cable, StopOpening opening)
    {
        var stock = family.Shop.Stock.FirstOrDefault(s => s.Material.Designation == Material && s.Thickness == Thickness);
        var die = Die is { } width ? family.Shop.Dies.FirstOrDefault(d => d.Opening == width) : null;
        if (stock is null || (Die is not null && die is null))
        {
            return null;
        }

        // Names are what they are now, whatever they were when the part was made.
        var holes = Holes.Select((h, i) => new BracketHole(
            MountFace.HoleName(i), h.IsBolt ? HolePurpose.Bolt : HolePurpose.Stop, h.Flange, new(h.X, h.Y), h.Diameter,
            h.Towards is [var x, var y] ? new Vector2(x, y) : null, h.Thread is { } thread ? FastenerThread.Find(thread) : null, h.MetalRadius)
        {
            Fixing = h.Through is [var diameter, var flange, ..] ? new ThroughHole(diameter, flange, h.Through.Length > 2 ? h.Through[2] : null)
                : h.Stud is { } standsOut ? new MountStud(standsOut) : new TappedHole(),
            SpacerLength = h.Spacer,
            Outline = h.Outline switch
            {
                [var alongX, var alongY, var corner] => new SquareHole(new(alongX, alongY), corner),
                [var alongX, var alongY, var flats, _] => new FlatSidedHole(new(alongX, alongY), flats),
                [var alongX, var alongY, var travel, _, _] => new SlottedHole(new(alongX, alongY), travel),
                _ => null,
            },
        }).ToImmutableArray();
        var outline = new Contour(Outline.Select(s => s is [var x, var y, var radius, var from, var sweep]
            ? new ArcSegment(new(x, y), radius, new(from), new(sweep))
            : (Segment)new LineSegment(new(s[0], s[1]), new(s[2], s[3]))));
        var flat = new FlatPattern
        {
            Blank = new(outline, holes.Where(h => !h.IsSlot).Select(h => h.Cut())),
            Thickness = Thickness,
            Bends =
            [
                .. Bends.Select(b => new Bend
                {
                    From = b.From,
                    To = b.To,
                    Start = new(b.StartX, b.StartY),
                    End = new(b.EndX, b.EndY),
                    Turn = new(b.Turn),
                    InsideRadius = b.InsideRadius,
                    Allowance = b.Allowance,
                    Relief = b.Relief,
                    Rule = family.Shop.RuleFor(stock, b.InsideRadius),
                }),
            ],
        };
        var m = Mount;
        return new()
        {
            Stock = stock,
            Die = die,
            Folded = new(flat, Frame.FromZX(new(m[0], m[1], m[2]), new(m[6], m[7], m[8]), new(m[3], m[4], m[5]))),
            Holes = holes,
            Seat = StopSeat.For(cable, opening, Thickness, stock.Material.Finish),
            SeatOnTop = SeatOnTop,
        };
    }
}

/// <summary>A hole of a part.</summary>
public sealed record PartHole(
    string Name, bool IsBolt, int Flange, double X, double Y, double Diameter, double[]? Towards, string? Thread, double MetalRadius)
{
    /// <summary>Diameter, thickness of the flange and room behind it, where that is known, of a through hole in the casting; null where it is none.</summary>
    public double[]? Through { get; init; }

    /// <summary>Length of the spacer under it (mm); zero where there is none.</summary>
    public double Spacer { get; init; }

    /// <summary>Its outline where it is not round: direction, then corner radius of a square; the width across the flats with a zero behind, the travel of a slotted hole with two.</summary>
    public double[]? Outline { get; init; }

    /// <summary>How far the stud under it stands out of the mount face (mm); null where there is none.</summary>
    public double? Stud { get; init; }
}

/// <summary>A bend of a part.</summary>
public sealed record PartBend(
    int From, int To, double StartX, double StartY, double EndX, double EndY, double Turn, double InsideRadius, double Allowance, double Relief);
