using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Throttles;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Standards;
using BracketGen.Units;
using CsCheck;

namespace BracketGen.TestSupport;

/// <summary>Generators of jobs as a workshop may bring them: most have a bracket, not all of them a good one.</summary>
/// <remarks>
/// Mount faces square to the shaft, on top, beside, or leaning; bodies that open either way; every kind of outer end; one to four
/// bolts in a line or not; both units, projections and bend rules.
/// </remarks>
public static class RandomJobs
{
    private static readonly Gen<Cable> Cable = Gen.Select(Gen.Int[0, 6], Gen.Int[0, 2], Gen.Double[90, 190], (end, fitting, length) => new Cable
    {
        Fitting = fitting switch
        {
            0 => new(EndFittingKind.Barrel, 8, 8),
            1 => new(EndFittingKind.Ball, 6, 6),
            _ => new(EndFittingKind.Nipple, 5, 7),
        },
        WireDiameter = 1.5,
        OuterEnd = end switch
        {
            0 => new ThreadedAdjuster(8, 1, 14, 13, 5),
            1 => new ThreadedAdjuster(6, 1, 20, 10, 4),
            2 => new PlainFerrule(7.5, 11, 10),
            3 => new BulkheadFerrule(8, 1, 16, 13, 5, 8),
            4 => new ClippedFerrule(7.5, 11, 5.2, 8, 13, 10),
            5 => new PushInEnd(9, 13, 0.8, 3.2, 7, 12),
            _ => new SlottedClip(8, 14, 4.2, 8),
        },
        OuterDiameter = 6,
        FreeInnerLength = new(length, 1),
        FleetLimit = Angle.FromDegrees(2),
        MinBendRadius = 60,
    });

    private static readonly Gen<Quadrant> Quadrant = Gen.Select(Gen.Double[18, 40], Gen.Double[70, 90], Gen.Double[-110, 20], (radius, rotation, pocket) => new Quadrant
    {
        Groove = new CircularGroove(radius),
        Rotation = Angle.FromDegrees(rotation),
        Pocket = Angle.FromDegrees(pocket),
        GrooveExtent = Angle.FromDegrees(rotation + 65),
        GrooveWidth = 3,
        SlotWidth = 2.2,
        OuterRadius = radius + 3.5,
        Thickness = 9,
        HubRadius = 12,
    });

    private static readonly Gen<Vector3> Normal = Gen.Select(Gen.Int[0, 5], Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], (kind, x, y, z) => kind switch
    {
        0 or 1 => new Vector3(0, 0, 1),
        2 => new(0, 1, 0),
        3 => new(x < 0 ? -1 : 1, 0, 0),
        4 => new(0, Math.Sin(x), Math.Cos(x)),
        _ => new Vector3(x, y, z).Length > 0.1 ? new(x, y, z) : new(0, 1, 1),
    });

    private static readonly Gen<Vector2[]> Pattern = Gen.Select(Gen.Int[1, 4], Gen.Double[22, 70], Gen.Double[-0.6, 0.6], Gen.Double[18, 40], (count, apart, lean, deep) => new Vector2[]
    {
        Vector2.Zero, new(apart, 0), new(apart * (0.5 + lean), deep), new(-0.2 * apart, 1.3 * deep),
    }[..count]);

    private static readonly Gen<Preferences> Preferences = Gen.Select(Gen.Int[0, 4], Gen.Double[2, 8], (opening, corner) => new Preferences
    {
        StopOpening = opening switch { 0 => StopOpening.OpenSlot, 1 => StopOpening.Hole, _ => StopOpening.AsNeeded },
        CornerRadius = corner,
    });

    /// <summary>Where the mount face lies from the wire's likely end: along the wire, beside it, and in depth.</summary>
    private static readonly Gen<Vector3> Offset = Gen.Select(Gen.Double[18, 60], Gen.Bool, Gen.Double[-40, 40], Gen.Double[-50, -12], (along, before, beside, deep) =>
        new Vector3(before ? -along : along, beside, deep));

    private static readonly Gen<(bool Clockwise, UnitSystem Units, Projection Projection, PublishedBendRule Rule, CuttingProcess Process)> Ways =
        Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool, Gen.Bool, Gen.Int[0, 2], (clockwise, inch, third, handbook, process) => (
            clockwise,
            inch ? UnitSystem.Inch : UnitSystem.Metric,
            third ? Projection.ThirdAngle : Projection.FirstAngle,
            handbook ? PublishedBendRule.MachinerysHandbook : PublishedBendRule.Din6935,
            (CuttingProcess)process));

    private static readonly Gen<FastenerThread> Thread = Gen.Int[0, 3].Select(i => FastenerThread.All[i]);

    /// <summary>Any job.</summary>
    public static readonly Gen<Job> Job = Gen.Select(
        Gen.Select(Cable, Quadrant, Preferences),
        Gen.Select(Normal, Pattern, Offset, Thread, Gen.Double[0, 6.28]),
        Ways,
        (inputs, mount, ways) => Make(inputs.Item1, inputs.Item2, inputs.Item3, MountOf(inputs.Item1, inputs.Item2, mount), ways));

    /// <summary>The shop of the examples, with sheet from thin to thick.</summary>
    public static Shop ShopWith(PublishedBendRule rule, CuttingProcess process) => new()
    {
        Name = "Saltmarsh Fabrication",
        Process = process,
        Kerf = 0.2,
        Stock = [new(Steel, 2), new(Steel, 3), new(Aluminium, 3), new(Aluminium, 4)],
        Dies = [new(16, 2.5), new(24, 4), new(32, 5)],
        TestBends = [],
        BendRule = rule,
    };

    /// <summary>Aluminium sheet; EN 485-2, from memory.</summary>
    public static Material Aluminium { get; } = new()
    {
        Designation = "EN AW-5754 H22",
        Density = 2.67e-9,
        Modulus = 70000,
        Poisson = 0.33,
        Yield = 130,
        Endurance = 60,
        MinRadiusAcrossGrain = 1,
        MinRadiusAlongGrain = 1.5,
        BendGroup = BendGroup.SoftSteelOrAluminium,
        Source = "EN 485-2",
    };

    /// <summary>Steel sheet; EN 10025-2, from memory.</summary>
    public static Material Steel { get; } = Aluminium with
    {
        Designation = "S235JR",
        Density = 7.85e-9,
        Modulus = 210000,
        Poisson = 0.3,
        Yield = 235,
        Endurance = 120,
        Source = "EN 10025-2",
    };

    private static MountFace MountOf(
        Cable cable, Quadrant quadrant, (Vector3 Normal, Vector2[] Pattern, Vector3 Offset, FastenerThread Thread, double Turn) mount)
    {
        // The wire leaves somewhere in the middle of what the groove allows; the mount face lies off to the side of where it ends.
        var middle = quadrant.Pocket.Value.Radians + quadrant.Rotation.Value.Radians + Angle.FromDegrees(35).Radians;
        var radius = ((CircularGroove)quadrant.Groove).PitchRadius.Value;
        var straight = Math.Max(25, cable.FreeInnerLength.Value - radius * (middle - quadrant.Pocket.Value.Radians));
        var stop = Vector2.FromPolar(radius, new(middle)) + straight * Vector2.FromPolar(1, new(middle)).Left;
        var along = Vector2.FromPolar(1, new(middle)).Left;
        var at = Vector3.From(stop + mount.Offset.X * along + mount.Offset.Y * along.Left, mount.Offset.Z);
        var helper = Math.Abs(mount.Normal.Unit.Z) > 0.9 ? new Vector3(1, 0, 0) : new(0, 0, 1);
        var frame = Frame.FromZX(at, mount.Normal, helper);
        return new(
            new(at, mount.Normal),
            [.. mount.Pattern.Select(p => new MountHole(new(frame.ToWorld(p.Rotate(new(mount.Turn)))), mount.Thread, 2.4 * mount.Thread.Diameter))]);
    }

    private static Job Make(
        Cable cable, Quadrant quadrant, Preferences preferences, MountFace mount,
        (bool Clockwise, UnitSystem Units, Projection Projection, PublishedBendRule Rule, CuttingProcess Process) ways)
    {
        var body = new ThrottleBody
        {
            Name = "Alder 58",
            Opens = OpeningSense.CounterClockwise,
            Bore = 58,
            ShaftDiameter = 10,
            Quadrant = quadrant,
            Springs = new(800, 1500, 2),
            Mount = mount,
            KeepOuts = [new KeepOutBox("bore", new(-40, -40, -60), new(40, 40, -34))],
        };
        if (ways.Clockwise)
        {
            body = body with
            {
                Opens = OpeningSense.Clockwise,
                Quadrant = body.Quadrant.Mirrored(),
                Mount = body.Mount.Mirrored(),
                KeepOuts = [.. body.KeepOuts.Select(k => k.Mirrored())],
            };
        }

        return new()
        {
            Body = body,
            Vehicle = new("Plover", cable, new(new(52, 1), 4)),
            Shop = ShopWith(ways.Rule, ways.Process),
            Preferences = preferences,
            Units = ways.Units,
            Document = new("SF-PLO-A58-01", "A", "Throttle cable bracket", new DateOnly(2026, 3, 14), "R. Teal", "M. Knot", ways.Projection),
        };
    }
}
