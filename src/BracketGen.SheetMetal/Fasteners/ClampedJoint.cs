namespace BracketGen.SheetMetal.Fasteners;

/// <summary>Sheet clamped on a boss by one screw, with all that spreads: how hard it is clamped, and what it then holds (VDI 2230 Blatt 1).</summary>
/// <remarks>
/// Written from memory of the guideline. Every spread is taken at its bad end: the most preload where the screw or its thread may give
/// way, the least where the sheet may slip or lift.
/// </remarks>
/// <param name="Screw">The screw.</param>
/// <param name="SheetThickness">Thickness of the sheet under the washer, with its spacer (mm).</param>
/// <param name="ContactRadius">Outer radius of the face on which sheet and boss meet (mm): the smaller of washer and boss.</param>
public sealed record ClampedJoint(MountScrew Screw, double SheetThickness, double ContactRadius)
{
    /// <summary>How far a hand torque wrench is off, as a part: ISO 6789 allows 4 %, a hand adds 2 (common practice, no source).</summary>
    public const double WrenchError = 0.06;

    /// <summary>
    /// How much the joint embeds (mm): 3 µm in the thread, 3 under the head and 2 at each inner face (washer on sheet, sheet on boss), for a
    /// roughness Rz below 10 µm and a load across (VDI 2230, table 5.4/1).
    /// </summary>
    public const double Embedding = 0.010;

    /// <summary>
    /// Friction coefficient of sheet on boss that holds without slip (our judgement, no source: the lower end of what VDI 2230, table A6, gives
    /// for steel on cast aluminium, dry).
    /// </summary>
    public const double JointFriction = 0.10;

    /// <summary>Friction coefficient that counts at the most, whatever was tried: EN 1993-1-8, table 3.7, class D, surfaces as rolled (from memory).</summary>
    public const double MostFriction = 0.20;

    /// <summary>
    /// What a slotted hole leaves of the friction of a round one, along the slot: k_s of EN 1993-1-8, table 3.6, long slotted holes, load along the slot (from memory).
    /// </summary>
    public const double SlotFactor = 0.63;

    /// <summary>The slot of a slotted hole, along which nothing but friction holds the sheet: its width, and from the screw to the centres of its ends (mm); null for a round hole.</summary>
    public (double Width, double Ahead, double Behind)? Slot { get; init; }

    /// <summary>Friction coefficient of sheet on boss as it was tried; null where nobody tried.</summary>
    public double? FaceFriction { get; init; }

    /// <summary>Young's modulus of the screw (MPa).</summary>
    private const double Steel = 205_000;

    private double Diameter => Screw.Thread.Diameter;

    /// <summary>Diameter of the clearance hole in the sheet (mm); null for ISO 273 medium.</summary>
    public double? ClearanceHole { get; init; }

    private double Hole => ClearanceHole ?? Screw.Thread.ClearanceMedium;

    // Sheet and face meet round the larger of both holes.
    private double FaceHole => Math.Max(Slot?.Width ?? 0, Screw.Fixing is ThroughHole through ? Math.Max(Hole, through.Diameter) : Hole);

    // What bears within a radius, where the hole is slotted.
    private SlotContact? Contact(double radius) => Slot is var (_, ahead, behind) ? new(radius, FaceHole, ahead, behind) : null;

    private double Bearing(double outside) => Contact(outside / 2)?.Area ?? Circle(outside) - Circle(FaceHole);

    /// <summary>Length between head or nut and boss, or between head and nut (mm).</summary>
    public double Grip => SheetThickness + Screw.Washers * Screw.Thread.WasherThickness + Screw.Flange;

    /// <summary>How much this joint embeds (mm).</summary>
    /// <remarks>As <see cref="Embedding"/>; with a nut 3 µm under it too, and 2 at each face more: between flange and second washer, and at a spacer. A stud has two threads.</remarks>
    private double Embeds => (Screw.Spacer is null ? Embedding : Embedding + 0.002) + Screw.Fixing switch
    {
        ThroughHole => 0.005,
        MountStud => 0.003,
        _ => 0,
    };

    /// <summary>How far the screw gives for 1 N (mm/N).</summary>
    /// <remarks>
    /// δ_S = 0.5 d/(E A_N) for a hexagon head, l/(E A_d3) for the free thread, 0.5 d/(E A_d3) for the thread that is screwed in, 0.33 d/(E_boss A_N) for the boss's own thread, 0.4 d/(E A_N) for a nut's.
    /// A stud has a thread screwed in at both ends and no head.
    /// </remarks>
    public double ScrewGive
    {
        get
        {
            double whole = Circle(Diameter), core = Circle(Screw.Sizes.CoreDiameter);
            double head = 0.5 * Diameter / (Steel * whole), nut = 0.4 * Diameter / (Steel * whole), boss = 0.33 * Diameter / (Screw.Boss.Modulus * whole);
            return Screw.Fixing switch
            {
                ThroughHole => head + (Grip + 0.5 * Diameter) / (Steel * core) + nut,
                MountStud => nut + (Grip + Diameter) / (Steel * core) + boss,
                _ => head + (Grip + 0.5 * Diameter) / (Steel * core) + boss,
            };
        }
    }

    /// <summary>How far what is clamped gives for 1 N (mm/N), or more: only the ring under the head carries, and it is as soft as aluminium.</summary>
    public double SheetGive => Grip / (SoftestSheet * Bearing(Screw.Sizes.HeadBearing));

    private const double SoftestSheet = 70_000;

    /// <summary>The part of a pull at the joint that the screw feels, or more: the pull is taken to enter right under the head.</summary>
    public double LoadFactor => SheetGive / (ScrewGive + SheetGive);

    /// <summary>Preload lost as the faces embed (N), or more: what is clamped is taken to be as stiff as steel over the whole contact face.</summary>
    public double EmbeddingLoss => Embeds / (ScrewGive + Grip / (Steel * (Circle(2 * ContactRadius) - Circle(Hole))));

    /// <summary>Maximum preload (N): least friction, wrench high.</summary>
    public double MaxPreload => Screw.PreloadWith(Screw.Friction.Min, 1 + WrenchError);

    /// <summary>Minimum clamp force (N): most friction, wrench low, all faces embedded; zero where nothing is left.</summary>
    public double MinClamp => Math.Max(0, Screw.PreloadWith(Screw.Friction.Max, 1 - WrenchError) - EmbeddingLoss);

    /// <summary>Pull (N) that a load of the joint puts on its screw: the tilting moment leans on the rim of the contact face.</summary>
    /// <remarks>Prying by statics, as on a T-stub (EN 1993-1-8, 6.2.4): lever from the screw's axis to the line of contact.</remarks>
    public double PullOf(JointLoad load) => Math.Max(0, load.Pull) + load.Tilt / ContactRadius;

    /// <summary>Maximum force in the screw (N): preload and its part of the pull, or the whole pull where that lifts the joint.</summary>
    public double MaxScrewForce(JointLoad load) => Math.Max(MaxPreload + LoadFactor * PullOf(load), PullOf(load));

    /// <summary>Yield strength over the stress in the screw.</summary>
    /// <remarks>σ² + 3 (τ/2)²: half of the torsion of tightening stays (VDI 2230, step R8).</remarks>
    public double ScrewFactor(JointLoad load)
    {
        var (sizes, friction) = (Screw.Sizes, Screw.Friction.Min);
        var torsion = MaxPreload * (0.16 * sizes.Pitch + 0.58 * sizes.PitchDiameter * friction);
        double tension = MaxScrewForce(load) / sizes.StressArea, shear = torsion / (Math.PI / 16 * Math.Pow(sizes.StressDiameter, 3));
        return Screw.Class.Yield / Math.Sqrt(tension * tension + 0.75 * shear * shear);
    }

    /// <summary>Stripping load of the boss's thread over the force in the screw (VDI 2230, step R11; FED-STD-H28/2).</summary>
    public double StrippingFactor(JointLoad load) => Screw.StrippingLoad / MaxScrewForce(load);

    /// <summary>Proof load of the nut over the force in the screw.</summary>
    public double NutFactor(JointLoad load) => Screw.NutLoad / MaxScrewForce(load);

    /// <summary>
    /// Friction that is there over friction that is needed, against force across and moment about the screw together (VDI 2230, step R12); the screw's shank is not counted on.
    /// </summary>
    public double SlipFactor(JointLoad load) => SlipFactor(load, Math.Min(JointFriction, FaceFriction ?? JointFriction));

    /// <summary>
    /// The same along a slotted hole, where no shank comes to bear when the joint slips: with the friction that was tried, or that of <see cref="JointFriction"/>, and what a slot leaves of it
    /// (<see cref="SlotFactor"/>). The whole force across counts, whichever way it acts: a joint that works to and fro across its slot creeps along it.
    /// </summary>
    public double SlotSlipFactor(JointLoad load) => SlipFactor(load, SlotFactor * Math.Min(FaceFriction ?? JointFriction, MostFriction));

    /// <summary>The same under a load that comes seldom: what acts along the slot counts alone, because across it the shank bears after its play.</summary>
    public double SlotSlipFactorAlong(JointLoad load) => SlotSlipFactor(load with { Across = load.Along });

    private double SlipFactor(JointLoad load, double friction)
    {
        double r = ContactRadius, hole = FaceHole / 2;
        var arm = Contact(r) is { } slotted ? slotted.MeanRadius : 2.0 / 3 * (r * r * r - hole * hole * hole) / (r * r - hole * hole);
        return friction * Math.Max(0, MinClamp - Math.Max(0, load.Pull)) / (load.Across + load.Twist / arm);
    }

    /// <summary>Clamp force that is there over that which keeps the whole contact face closed under pull and tilting moment.</summary>
    /// <remarks>
    /// The pressure (F - F_A)/A - M r/I at the edge of a ring stays above zero: F ≥ F_A + M r A/I, A r/I = 4 r/(r² + r_hole²). VDI 2230, the clamp load at the opening limit.
    /// </remarks>
    public double OpeningFactor(JointLoad load)
    {
        double r = ContactRadius, hole = FaceHole / 2;
        var perTilt = Contact(r) is { } slotted ? r * slotted.Area / slotted.Inertia : 4 * r / (r * r + hole * hole);
        return MinClamp / (Math.Max(0, load.Pull) + perTilt * load.Tilt);
    }

    /// <summary>Pressure of the washer on the sheet (MPa), and no less than that of the sheet on the boss.</summary>
    /// <remarks>The washer spreads the force of the head by 1.6 times its thickness (VDI 2230, step R10), no farther than it reaches. Over a slotted hole what the slot leaves of that face bears.</remarks>
    public double Pressure(JointLoad load)
    {
        var outside = Math.Min(Math.Min(Screw.Thread.WasherDiameter, Screw.Sizes.HeadBearing + 1.6 * Screw.Thread.WasherThickness), 2 * ContactRadius);
        return MaxScrewForce(load) / Bearing(outside);
    }

    /// <summary>Pressure of the sheet on the boss round a slotted hole (MPa), which is less than that of the washer on the sheet.</summary>
    /// <remarks>The sheet spreads the force as the washer does, no farther than washer and boss reach; the boss's own hole is the smaller.</remarks>
    public double BossPressure(JointLoad load)
    {
        var outside = Math.Min(Screw.Sizes.HeadBearing + 1.6 * (Screw.Thread.WasherThickness + SheetThickness), 2 * ContactRadius);
        return MaxScrewForce(load) / Bearing(outside);
    }

    /// <summary>Stress of compression in the spacer (MPa): the force of the screw, and the tilting moment as over the rim of the contact face. Zero where there is none.</summary>
    public double SpacerStress(JointLoad load) => Screw.Spacer is { } spacer ? (MaxScrewForce(load) + load.Tilt / ContactRadius) / spacer.Area : 0;

    private static double Circle(double diameter) => Math.PI / 4 * diameter * diameter;
}

/// <summary>What the sheet puts on one screw's joint, at the face of the boss.</summary>
/// <param name="Pull">Force off the boss (N); negative where it presses on it.</param>
/// <param name="Across">Force along the face (N), zero or more.</param>
/// <param name="Tilt">Moment that tilts the sheet under the washer (N·mm), zero or more.</param>
/// <param name="Twist">Moment about the screw's axis (N·mm), zero or more.</param>
public readonly record struct JointLoad(double Pull, double Across, double Tilt, double Twist)
{
    /// <summary>Part of <see cref="Across"/> along the slot of a slotted hole (N), zero or more; zero in a round hole.</summary>
    public double Along { get; init; }

    /// <summary>The same load at the lower face of a spacer: the force along the face has its length for an arm.</summary>
    /// <param name="length">Length of the spacer (mm).</param>
    public JointLoad Below(double length) => this with { Tilt = Tilt + Across * length };

    /// <summary>No less than both together.</summary>
    public JointLoad Plus(JointLoad other) => new(Math.Max(0, Pull) + Math.Max(0, other.Pull), Across + other.Across, Tilt + other.Tilt, Twist + other.Twist) { Along = Along + other.Along };

    /// <summary>The load <paramref name="factor"/> times as large.</summary>
    /// <param name="factor">Zero or more.</param>
    public JointLoad Times(double factor) => new(factor * Pull, factor * Across, factor * Tilt, factor * Twist) { Along = factor * Along };
}
