using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Life;
using BracketGen.Strength.Parts;

namespace BracketGen.Design.Checks;

/// <summary>The strength of one bracket on one mesh, step by step: each step is made once, when it is first asked for. One thread at a time.</summary>
/// <param name="tension">How hard the wire pulls at its stop.</param>
/// <param name="bracket">The bracket.</param>
/// <param name="prepared">The bracket meshed and factorised.</param>
/// <param name="rule">How the first natural frequency is judged.</param>
internal sealed class StrengthStages(StopTension tension, Bracket bracket, PreparedPart prepared, FrequencyRule rule)
{
    /// <summary>The bracket meshed and factorised.</summary>
    public PreparedPart Prepared => prepared;

    /// <summary>Part by which the judged stresses may still be wrong; null where nobody knows, because there was but one mesh.</summary>
    public double? MeshError { get; set; }

    /// <summary>Whether a finer mesh follows: then a check fails here only where it would fail there too.</summary>
    public bool IsFirst { get; init; }

    /// <summary>The same on another mesh.</summary>
    public StrengthStages On(PreparedPart other) => new(tension, bracket, other, rule);

    /// <summary>
    /// Stresses that decide, a number a node (MPa): of an opening, of 1 N with the valve wide open, and of an opening as on a surface without cut edges.
    /// </summary>
    public IEnumerable<double[]> JudgedStresses()
    {
        yield return [.. Opening.Response.Solution.Stresses.Select(s => s.Largest)];
        yield return [.. AtWideOpen.Solution.Stresses.Select(s => s.Largest)];
        yield return [.. Opening.Response.Solution.Stresses.Select((s, n) => s.Largest / (prepared.OnEdge[n] ? _metal.EdgeFactor : 1))];
    }

    private double StressAtLeast => IsFirst ? 1 - JudgeTolerance.FirstStress : 1;

    private double StiffnessAtMost => IsFirst ? 1 + JudgeTolerance.FirstStiffness : 1;

    private readonly StrengthMetal _metal = StrengthMetal.Of(tension.Stop.Job, bracket.Stock.Material);
    private SeatResponse? _atWideOpen;
    private LifeFinding? _lifeAtMost;
    private LoadCase? _opening;
    private ShakingStudy? _shaking;
    private ImmutableArray<Mode>? _modes;
    private LoadedMechanism? _mechanism;
    private (LoadCase Case, double? Foot)? _stamped;

    /// <summary>Acceleration of bracket and outer end with the mount's shaking (g), for the screws.</summary>
    private double Acceleration => Job.Body.Shaking is { Evidence: not Evidence.Assumed } known ? known.Peak / Inputs.Shaking.Gravity : BoltedJoint.AssumedShaking;

    private Job Job => tension.Stop.Job;

    // 1 N with the valve wide open: in proportion to it all that pulls the same way.
    private SeatResponse AtWideOpen => _atWideOpen ??= prepared.Under(tension.UnitForce);

    /// <summary>Give of the stop along the wire for 1 N of tension, valve wide open (mm/N).</summary>
    public double Give => LoadCase.SixFigures(Math.Max(0, AtWideOpen.AlongForce));

    /// <summary>The stop under the largest tension of an ordinary opening.</summary>
    public LoadCase Opening => _opening ??= LoadCase.Of(prepared, tension.IsLargestWideOpen
        ? AtWideOpen.Times(tension.Largest)
        : prepared.Under(tension.Largest * tension.UnitForceAtLargest));

    /// <summary>The checks that the largest stress and the give fail for certain, the first of them; null where none does.</summary>
    /// <remarks>The proof load is its lower bound (<see cref="StopTension.ProofAtLeast"/>), so the yield factor is an upper bound; the others are as in the report.</remarks>
    public Check? WeakInStress()
    {
        var preferences = tension.Stop.Job.Preferences;
        var proof = LoadCase.SixFigures(StressAtLeast * (1 - JudgeTolerance.RoundOff) * tension.ProofAtLeast(Give, tension.SpreadAtLeast(bracket)) * AtWideOpen.Solution.LargestStress);
        Check[] checks =
        [
            new(CheckId.StampedYield, _metal.Yield / proof, preferences.MinYieldFactor),
            new(CheckId.Endurance, LifeAtMost.Factor / StressAtLeast, preferences.MinEnduranceFactor),
            new(CheckId.StopGive, Opening.Give / StiffnessAtMost, preferences.MaxGive),
        ];
        return Array.Find(checks, c => c.Fails);
    }

    /// <summary>The check of the first frequency where an upper bound of it shows that it fails; null where none does, and where the engine is not known.</summary>
    /// <remarks>Rayleigh's quotient on the same mesh is never below the frequency found on it.</remarks>
    public Check? WeakInFrequency()
    {
        if (rule == FrequencyRule.Response || StrengthChecks.LowestFrequency(tension.Stop.Job) is not { } limit)
        {
            return null;
        }

        Check AtMost(double bound) => new(CheckId.Resonance, LoadCase.SixFigures(StiffnessAtMost * (1 + JudgeTolerance.RoundOff) * bound), limit);
        return AtMost(prepared.FirstFrequencyAtMost()) is { Fails: true } low ? low
            : AtMost(prepared.FirstFrequencyCloselyAtMost()) is { Fails: true } closer ? closer
            : null;
    }

    private ImmutableArray<Mode> Modes => _modes ??= prepared.LowestModes(StrengthReport.ModeCount);

    /// <summary>The stop with the pedal stamped to the floor, and the foot force (N) that makes this load where the foot is what limits it.</summary>
    private (LoadCase Case, double? Foot) Stamped
    {
        get
        {
            if (_stamped is null)
            {
                var (proof, foot) = tension.ProofOf(Mechanism);
                _stamped = (LoadCase.Of(prepared, AtWideOpen.Times(proof)), foot);
            }

            return _stamped.Value;
        }
    }

    private LoadedMechanism Mechanism => _mechanism ??= LoadedMechanism.Of(tension.Stop, bracket, MechanismReport.UsualSamples, Give);

    private double OuterStiffnessAtLimit => LoadCase.SixFigures(tension.StiffnessFor(
        Mechanism, Give, _metal.Yield / Job.Preferences.MinYieldFactor / AtWideOpen.Solution.LargestStress));

    private double YieldFactor => _metal.Yield / Stamped.Case.LargestStress;

    /// <summary>How it lasts with the pedal's openings alone: shaking and a stress that is always there only lower the factor.</summary>
    private LifeFinding LifeAtMost => _lifeAtMost ??= Life(null, null, null);

    /// <summary>How it lasts.</summary>
    /// <param name="flatness">Flatness of the mount's bosses (mm); null for a mount that bends nothing.</param>
    /// <param name="shaken">What shaking adds.</param>
    /// <param name="worse">What heat leaves more; null for all.</param>
    private LifeFinding Life(double? flatness, ShakenStress? shaken, HotStrength? worse) => LifeFinding.Of(
        prepared.Flat, prepared.OnEdge, Opening.Response.Solution.Stresses, Job.Life.Openings, _metal,
        flatness is { } uneven ? Always(uneven) : [], shaken,
        worse is { } hot ? (_metal.Line with { Endurance = hot.Yield * _metal.Line.Endurance }, hot.Yield * _metal.Yield) : null);

    /// <summary>Stress (MPa) at each node as the screws draw bosses level that lie 1 mm out of one plane, or more.</summary>
    /// <remarks>
    /// Each boss is at most half a millimetre from the middle of the two planes, and moving all together bends nothing: so the stress is no more than half the sum of what each washer does alone, moved by 1 mm.
    /// </remarks>
    private ImmutableArray<double> Level
    {
        get
        {
            if (_level.IsDefault)
            {
                var level = new double[prepared.Flat.Nodes.Length];
                var washers = prepared.WasherNodes();

                if (bracket.SecondBend is null)
                {
                    // Of two washers either one does the same.
                    var each = washers.Length == 2 ? washers[..1] : washers.Length < 2 ? [] : washers;
                    AddMoved(level, each, Job.Body.Mount.Plane.Normal, washers.Length == 2 ? 1 : 0.5);
                }
                else
                {
                    // Each face has its own bosses; one alone is level.
                    foreach (var (own, normal) in WashersByFace(washers).Where(f => f.Washers.Length > 1))
                    {
                        AddMoved(level, own, normal, 0.5);
                    }
                }

                _level = [.. level];
            }

            return _level;
        }
    }

    private ImmutableArray<double> _level;

    private void AddMoved(double[] level, ImmutableArray<ImmutableArray<int>> washers, Vector3 normal, double share)
    {
        foreach (var nodes in washers)
        {
            var stresses = prepared.Moved(nodes, normal).Stresses;
            for (var n = 0; n < level.Length; n++)
            {
                level[n] += share * stresses[n].Largest;
            }
        }
    }

    private IEnumerable<(ImmutableArray<ImmutableArray<int>> Washers, Vector3 Normal)> WashersByFace(ImmutableArray<ImmutableArray<int>> washers)
    {
        BracketHole[] bolts = [.. bracket.Holes.Where(h => h.Thread is not null)];
        yield return ([.. washers.Where((_, i) => bolts[i].Flange == 0)], Job.Body.Mount.Plane.Normal);
        if (Job.Body.Mount.Second is { } second)
        {
            yield return ([.. washers.Where((_, i) => bolts[i].Flange > 0)], second.Plane.Normal);
        }
    }

    // The second mount flange turned about its bend until it lies flush on its face, from where a feeler gauge does not go under it any more. What it is off along the mount face the bracket
    // slides in the play of its bolts before they are tight.
    private StaticSolution? Drawn
    {
        get
        {
            if (_drawn is null && bracket.SecondBend is { } bend)
            {
                var (point, axis) = bracket.Folded.AxisOf(bend);
                var washer = bracket.Holes.Where(h => h.Flange == bend.To && h.Thread is not null).Min(h => h.Thread!.WasherDiameter);
                _drawn = prepared.Turned(WashersByFace(prepared.WasherNodes()).Last().Washers.SelectMany(w => w), point, SecondFace.LeftGap / washer * axis);
            }

            return _drawn;
        }
    }

    private StaticSolution? _drawn;

    // Stress (MPa) at each node that is always there, or more: bosses drawn level, and the second mount flange drawn down.
    private ImmutableArray<double> Always(double flatness) => flatness > 0 || Drawn is not null
        ? [.. Level.Select((s, n) => flatness * s + (Drawn?.Stresses[n].Largest ?? 0))]
        : [];

    /// <summary>Largest stress (MPa) as the second mount flange is drawn down; null where there is none.</summary>
    private double? DrawnStress => Drawn is { } drawn ? LoadCase.SixFigures(drawn.LargestStress) : null;

    /// <summary>The check of the proof load with all that the spread of the measurements adds, where it fails; null where it does not.</summary>
    public Check? WeakInProof() =>
        new Check(CheckId.StampedYield, YieldFactor / StressAtLeast, tension.Stop.Job.Preferences.MinYieldFactor) is { Fails: true } weak ? weak : null;

    // On a ring, which shakes with it, nothing is known of it.
    private ShakingStudy? Shaking => Ring is null && ShakingStudy.IsKnown(Job.Body)
        ? _shaking ??= new(Job.Body, prepared, Job.Life.EngineHours, FactorWith)
        : null;

    private double FactorWith(ShakenStress shaken, bool atWorst) => atWorst
        ? _metal.Worst is { } hot && double.IsNaN(hot.Yield) ? double.NaN : Life(Job.Body.Mount.Flatness ?? MountFace.FlatnessAtWorst, shaken, _metal.Worst).Factor
        : Life(Job.Body.Mount.Flatness ?? MountFace.UsualFlatness, shaken, null).Factor;

    /// <summary>The check of shaking where it decides and fails; null where it does not.</summary>
    public Check? WeakInShaking() => ShakingStudy.Decides(Job.Body, rule) && Shaking is { } shaking
        && new Check(CheckId.ShakingEndurance, shaking.EnduranceFactor / StressAtLeast, Job.Preferences.MinEnduranceFactor) is { Fails: true } weak ? weak : null;

    private ImmutableArray<BoltedJoint> Joints => _joints ??=
    [
        .. BoltedJoint.Of(Job.Body.Mount, bracket, prepared, Opening.Response.Solution, Stamped.Case.Response.Solution, Acceleration, Drawn),
        .. Ring is { } ring ? ring.Joints(RingUnder(Opening.Response), RingUnder(Stamped.Case.Response), Shaken().Select(RingUnder)) : [],
    ];

    private RingBase? Ring => JobFacts.Of(Job).Ring;

    private StaticSolution RingUnder(SeatResponse response) => Ring!.Base.Moved(response.BaseMotions);

    private IEnumerable<SeatResponse> Shaken()
    {
        var swinging = BoltedJoint.Swinging(bracket, prepared, Acceleration);
        return ((Vector3[])[new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)]).Select(a => prepared.Under(swinging * a));
    }

    /// <summary>The adapter ring under the bracket; null where there is none.</summary>
    private RingReport? OfRing => Ring is { } ring ? _ofRing ??= Look(ring) : null;

    private RingReport? _ofRing;

    private RingReport Look(RingBase ring)
    {
        var (opening, stamped, metal) = (RingUnder(Opening.Response), RingUnder(Stamped.Case.Response), ring.Metal);
        double Endurance(double flatness, HotStrength? worse) => LifeFinding.Of(
            ring.Base.Sheet.Flat, ring.Base.Sheet.OnEdge, opening.Stresses, Job.Life.Openings, metal,
            flatness > 0 ? [.. ring.LevelStress.Select(s => flatness * s)] : [], null,
            worse is { } hot ? (metal.Line with { Endurance = hot.Yield * metal.Line.Endurance }, hot.Yield * metal.Yield) : null).Factor;
        var flatness = Job.Body.Mount.Flatness;
        return new(
            LoadCase.SixFigures(metal.Yield / stamped.LargestStress), Endurance(flatness ?? MountFace.UsualFlatness, null),
            flatness is not null && metal.Worst is null ? null
                : metal.Worst is { } hot && double.IsNaN(hot.Yield) ? double.NaN
                : Endurance(flatness ?? MountFace.FlatnessAtWorst, metal.Worst),
            LoadCase.SixFigures(stamped.LargestStress), LoadCase.SixFigures(opening.LargestStress), LoadCase.SixFigures(ring.OwnFrequency), metal);
    }

    private ImmutableArray<BoltedJoint>? _joints;

    // With the bosses drawn level.
    private LifeFinding WholeLife => _life ??= Life(Job.Body.Mount.Flatness ?? MountFace.UsualFlatness, null, null);

    private LifeFinding? _life;

    /// <summary>The check of how the bracket lasts with all that counts, or of the screws, that fails; null where none does.</summary>
    public Check? WeakAtMount()
    {
        var life = new Check(CheckId.Endurance, WholeLife.Factor / StressAtLeast, Job.Preferences.MinEnduranceFactor);
        return life.Fails ? life
            : OfRing is { } ring && StrengthChecks.OfRing(Job, ring).FirstOrDefault(c => (c with { Value = c.Value / StressAtLeast }).Fails) is { } weakRing ? weakRing
            : DrawnStress is { } drawn && new Check(CheckId.SecondFaceDrawn, _metal.Yield / drawn / StressAtLeast, StrengthChecks.LeastDrawnFactor) is { Fails: true } overdrawn ? overdrawn
            : JointChecks.Of(Joints, _metal)
            .Select(c => c with { Value = c.Bound == Bound.AtLeast ? StiffnessAtMost * c.Value : c.Value / StiffnessAtMost })
            .FirstOrDefault(c => c.Fails && c.Kind != CheckKind.Advice);
    }

    /// <summary>The whole report.</summary>
    public StrengthReport Report()
    {
        var (stamped, foot) = Stamped;
        var flatness = Job.Body.Mount.Flatness;
        var report = new StrengthReport
        {
            Flat = prepared.Flat,
            MeshError = MeshError is { } error ? LoadCase.SixFigures(error) : null,
            Folded = prepared.Model.Mesh,
            GivePerTension = Give,
            Opening = Opening,
            Stamped = stamped,
            LimitingFootForce = foot,
            OuterStiffness = tension.Stop.Job.Vehicle.Cable.OuterAxialStiffness,
            OuterStiffnessAtLimit = OuterStiffnessAtLimit,
            End = tension.Stop.EndIn(bracket.Stock.Thickness),
            Modes = Modes,
            Frequencies = [.. Modes.Select(m => LoadCase.SixFigures(m.Frequency))],
            FiringFrequency = tension.Stop.Job.Body.Engine?.FiringFrequency,
            FrequencyRule = rule,
            Shaking = Shaking?.Report(),
            YieldFactor = YieldFactor,
            Life = WholeLife,
            DrawnFactor = _metal.Yield / DrawnStress,
            EnduranceAtWorst = flatness is not null && _metal.Worst is null ? null
                : _metal.Worst is { } hot && double.IsNaN(hot.Yield) ? double.NaN
                : Life(flatness ?? MountFace.FlatnessAtWorst, null, _metal.Worst).Factor,
            Metal = _metal,
            Joints = Joints,
            Ring = OfRing,
        };
        return report with { Checks = [.. StrengthChecks.Of(tension.Stop.Job, report)] };
    }
}
