using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Fasteners;

namespace BracketGen.Design.Kit;

/// <summary>What makes a bare throttle body complete: every need with what may meet it, and the cheapest set that fits.</summary>
/// <param name="Kit">The job with its parts.</param>
/// <param name="Answers">The needs.</param>
/// <param name="Cost">What the set of what fits costs.</param>
/// <param name="CostIfKnown">What the set would cost if what is not known proved to fit.</param>
/// <param name="Base">The job with its own cable, springs and bracket.</param>
public sealed record KitStudy(KitJob Kit, ImmutableArray<KitAnswer> Answers, KitCost Cost, KitCost CostIfKnown, MechanismTrial Base)
{
    /// <summary>Parts on the lists that meet no need of this job.</summary>
    public ImmutableArray<KitPart> Unwanted { get; init; } = [];

    /// <summary>Bundles of the set.</summary>
    public ImmutableArray<PartBundle> Bundles { get; init; } = [];

    /// <summary>Every bundle on the lists of which a part was looked at or is not wanted.</summary>
    public IEnumerable<PartBundle> AllBundles => Kit.Parts.Select(p => p.Bundle).OfType<PartBundle>().Distinct();

    /// <summary>What is known of the whole: complete, not proven, or something that nothing on the list meets.</summary>
    public FitState State => Answers.Select(a => a.State).Append(NotSaid.IsEmpty ? FitState.Fits : FitState.NotKnown).Min();

    /// <summary>Parts of which nobody said whether this throttle body takes them: neither an opening for them, nor a part on a list, nor that they are not needed.</summary>
    public ImmutableArray<KitNeedKind> NotSaid { get; init; } = [];

    /// <summary>Whether something that is not known could make the set complete or cheaper.</summary>
    public bool MayBeBetter => CostIfKnown.CompareTo(Cost) < 0;

    /// <summary>The study.</summary>
    /// <param name="kit">The job with its parts.</param>
    /// <param name="strength">How finely brackets are meshed; null where their strength is not looked at, and no bracket is then proven.</param>
    public static KitStudy Of(KitJob kit, StrengthDetail? strength) => new KitSolver(kit, strength).Solve();
}

/// <summary>Finds the set. Not thread-safe: it remembers what it solved.</summary>
internal sealed class KitSolver
{
    private readonly KitJob _kit;
    private readonly StrengthDetail? _strength;
    private readonly ImmutableArray<PartBundle> _bundles;
    private readonly Dictionary<(KitPart? Cable, KitPart? Spring, KitPart? Bracket), MechanismTrial?> _trials = [];
    private readonly List<KitAnswer> _answers = [];
    private readonly MechanismTrial _base;

    public KitSolver(KitJob kit, StrengthDetail? strength)
    {
        (_kit, _strength) = (kit, strength);
        _bundles = [.. kit.Parts.Select(p => p.Bundle).OfType<PartBundle>().Distinct()];
        _base = Trial(null, null, null)!;
    }

    private Job Job => _kit.Job;

    public KitStudy Solve()
    {
        AddNeeds();
        var (sure, cost) = Cheapest(FitState.Fits);
        var (hoped, costIfKnown) = Cheapest(FitState.NotKnown);
        var unwanted = _kit.Parts.Where(p => !_answers.Any(a => a.Options.Any(o => o.Part == p))).ToImmutableArray();
        for (var i = 0; i < _answers.Count; i++)
        {
            _answers[i] = Marked(i, sure, hoped);
        }

        return new(_kit, [.. _answers], cost, costIfKnown, _base)
        {
            Unwanted = unwanted,
            NotSaid =
            [
                .. ((KitNeedKind[])[KitNeedKind.PositionSensor, KitNeedKind.IdleValve, KitNeedKind.PressureSensor, KitNeedKind.FlangeGasket])
                    .Where(k => !_kit.Without.Contains(k) && _answers.All(a => a.Need.Kind != k)),
            ],
            Bundles = [.. _bundles.Where(b => _answers.Any(a => a.Taken?.Part?.Bundle == b))],
        };
    }

    private MechanismTrial? Trial(KitPart? cable, KitPart? spring, KitPart? bracket)
    {
        if (_trials.TryGetValue((cable, spring, bracket), out var known))
        {
            return known;
        }

        var trial = MechanismTrial.With(Job, cable?.Measures as CableMeasures, spring?.Measures as SpringMeasures) is not { } job ? null
            : bracket?.Measures is BracketMeasures there ? MechanismTrial.Of(job, there.Bracket, _strength)
            : MechanismTrial.OfOurs(job, _strength);
        return _trials[(cable, spring, bracket)] = trial;
    }

    // The first three are solved together; what holds something comes before its screws.
    private void AddNeeds()
    {
        var (body, openings) = (Job.Body, Job.Body.Openings);
        Add(new(KitNeedKind.Cable), Parts<CableMeasures>(), OwnPart.VehicleCable, 0, (_, _) => []);
        Add(new(KitNeedKind.ReturnSprings), Parts<SpringMeasures>(), OwnPart.BodySprings, 0, (_, _) => []);
        Add(new(KitNeedKind.Bracket), Parts<BracketMeasures>(), OwnPart.MadeBracket, 0, (_, _) => []);
        foreach (var thread in body.Mount.Holes.Where(h => h.Fixing is not MountStud).GroupBy(h => h.Thread))
        {
            Add(new(KitNeedKind.BracketBolts, thread.Count(), thread.Key), Screws(thread.Key), OwnPart.OrderedScrews, null, (_, _) => [new(FitAspect.ScrewLength, FitState.Fits)], () => [new(FitAspect.ScrewLength, FitState.Fits)]);
        }

        if (PedalStopFit.Wanted(Job, _base.Solution!.Travel.OverTravel) is { } wanted)
        {
            Add(new(KitNeedKind.PedalStop), Parts<PedalStopMeasures>(), null, null, (p, _) => PedalStopFit.Of((PedalStopMeasures)p, wanted));
        }

        if (openings.Sensor is not null || body.Sensor is not null || HasAny<SensorMeasures>())
        {
            Add(
                new(KitNeedKind.PositionSensor), Parts<SensorMeasures>(), body.Sensor is null ? null : OwnPart.BodySensor, 0, (p, _) => SensorFit.Of((SensorMeasures)p, body, Job.Vehicle.Controller),
                () => SensorFit.OnBody(body.Sensor!, Job.Vehicle.Controller));
            AddScrews(KitNeedKind.SensorScrews, openings.Sensor?.Screws, body.Sensor is null ? null : OwnPart.BodySensorScrews);
        }

        if (openings.Idle is not null || HasAny<IdleMeasures>())
        {
            Add(new(KitNeedKind.IdleValve), Parts<IdleMeasures>(), null, null, (p, _) => IdleFit.Of((IdleMeasures)p, openings.Idle, _kit.Water));
            if (openings.Idle is { HasGasket: true })
            {
                Add(new(KitNeedKind.IdleGasket), Gaskets(KitNeedKind.IdleGasket), null, null, (p, _) => GasketFit.OfIdle((GasketMeasures)p, openings.Idle, _kit.Water));
            }

            AddScrews(KitNeedKind.IdleScrews, openings.Idle?.Screws, null);
        }

        if (openings.Pressure is not null || HasAny<PressureMeasures>())
        {
            Add(new(KitNeedKind.PressureSensor), Parts<PressureMeasures>(), null, null, (p, _) => PressureFit.Of((PressureMeasures)p, openings.Pressure));
            AddScrews(KitNeedKind.PressureScrews, openings.Pressure?.Screws, null);
        }

        if (openings.Flange is not null || Gaskets(KitNeedKind.FlangeGasket).Any())
        {
            Add(new(KitNeedKind.FlangeGasket), Gaskets(KitNeedKind.FlangeGasket), null, null, (p, _) => GasketFit.OfFlange((GasketMeasures)p, body));
        }
    }

    private IEnumerable<KitPart> Parts<T>()
        where T : PartMeasures => _kit.Parts.Where(p => p.Measures is T);

    private bool HasAny<T>()
        where T : PartMeasures => Parts<T>().Any();

    private IEnumerable<KitPart> Gaskets(KitNeedKind seals) => _kit.Parts.Where(p => p.Measures is GasketMeasures g && g.Seals == seals);

    private IEnumerable<KitPart> Screws(SheetMetal.Standards.FastenerThread thread) => _kit.Parts.Where(p => p.Measures is ScrewMeasures s && s.Thread == thread);

    // Their fit is that on the part they hold, which is not chosen yet.
    private void AddScrews(KitNeedKind kind, ScrewPattern? holes, OwnPart? own)
    {
        if (holes is { Thread: { } thread, Holes.IsEmpty: false })
        {
            Add(new(kind, holes.Holes.Length, thread), Screws(thread), own, 0, (_, _) => [new(FitAspect.ScrewEngagement, FitState.Fits)], () => [new(FitAspect.OnBody, FitState.Fits)]);
        }
    }

    private void Add(
        KitNeed need, IEnumerable<KitPart> parts, OwnPart? own, double? ownPrice, Func<PartMeasures, KitNeed, ImmutableArray<FitFinding>> fit, Func<ImmutableArray<FitFinding>>? ownFit = null)
    {
        // What belongs to a part that is not needed is not needed either.
        if (_kit.Without.Any(w => w == need.Kind || w == Holder(need.Kind)))
        {
            return;
        }

        List<KitOption> options = own is null ? [] : [new(null, own) { Price = ownPrice, Findings = ownFit?.Invoke() ?? [] }];
        options.AddRange(parts.Select(p => new KitOption(p, null)
        {
            Price = p.Bundle is not null ? 0 : p.Price * need.Count ?? (p.Source == PartSource.Kept ? 0 : null),
            Findings = [.. fit(p.Measures, need), .. p.Quantity < need.Count ? [new FitFinding(FitAspect.Pieces, FitState.DoesNotFit) { Value = p.Quantity, Min = need.Count }] : Array.Empty<FitFinding>()],
        }));
        _answers.Add(new(need, [.. options]));
    }

    private static KitNeedKind? Holder(KitNeedKind kind) => kind switch
    {
        KitNeedKind.SensorScrews => KitNeedKind.PositionSensor,
        KitNeedKind.IdleGasket or KitNeedKind.IdleScrews => KitNeedKind.IdleValve,
        KitNeedKind.PressureScrews => KitNeedKind.PressureSensor,
        _ => null,
    };

    // Cable, springs and bracket are judged by the whole job; screws with what they hold.
    private static bool IsTried(KitNeedKind kind) => kind is KitNeedKind.Cable or KitNeedKind.ReturnSprings or KitNeedKind.Bracket;

    private (ImmutableArray<int> Taken, KitCost Cost) Cheapest(FitState least)
    {
        KitPart[] items = [.. _kit.Parts];

        // What is there without a list has an item of its own at the end, of which there is enough.
        var free = items.Length;
        ImmutableArray<ImmutableArray<SetOption>> needs =
        [
            .. _answers.Select(a => a.Options.Where(o => IsTried(a.Need.Kind) ? o.Findings.All(f => f.Aspect != FitAspect.Pieces) : o.State >= least).Select(o => new SetOption(
                o.Price, a.Need.Count, o.Part is null ? free : Array.IndexOf(items, o.Part), o.Part?.Bundle is { } bundle ? _bundles.IndexOf(bundle) : null)).ToImmutableArray()),
        ];
        KitOption[][] options = [.. _answers.Select(a => a.Options.Where(o => IsTried(a.Need.Kind) ? o.Findings.All(f => f.Aspect != FitAspect.Pieces) : o.State >= least).ToArray())];
        var (taken, cost) = CheapestSet.Of(
            needs, [.. _bundles.Select(b => b.Cost)], [.. items.Select(p => p.Quantity), null], chosen => Goes(chosen, options, least));
        return ([.. taken.Select((t, i) => t < 0 ? t : _answers[i].Options.IndexOf(options[i][t]))], cost);
    }

    private KitCost? Goes(IReadOnlyList<int> chosen, KitOption[][] options, FitState least)
    {
        var last = chosen.Count - 1;
        var (need, option) = (_answers[last].Need, chosen[last] < 0 ? null : options[last][chosen[last]]);
        KitOption? Of(KitNeedKind kind)
        {
            var i = _answers.FindIndex(a => a.Need.Kind == kind);
            return i < 0 || i > last || chosen[i] < 0 ? null : options[i][chosen[i]];
        }

        if (need.Kind == KitNeedKind.Bracket)
        {
            // The three are judged together, or none of them is: a cable alone fits nothing.
            var (cable, springs) = (Of(KitNeedKind.Cable), Of(KitNeedKind.ReturnSprings));
            if (cable is null || springs is null || option is null)
            {
                return cable is null && springs is null && option is null ? default(KitCost) : null;
            }

            var trial = Trial(cable.Part, springs.Part, option.Part);
            return trial is null || trial.State < least ? null : option.Own == OwnPart.MadeBracket ? Making(trial) : default(KitCost);
        }

        return option is null || Held(need, option, Of).State >= least ? default(KitCost) : null;
    }

    // The price of ours is known once it is designed; its option counts nothing.
    private static KitCost Making(MechanismTrial trial) => KitCost.Of(trial.MakingPrice);

    // Whether screws go with what they hold; fits for all other needs.
    private FitVerdict Held(KitNeed need, KitOption option, Func<KitNeedKind, KitOption?> chosen)
    {
        var openings = Job.Body.Openings;
        return need.Kind switch
        {
            KitNeedKind.BracketBolts => BracketBolts(need, option, chosen),
            KitNeedKind.SensorScrews when option.Own is not null => new([new(FitAspect.OnBody, chosen(KitNeedKind.PositionSensor)?.Own == OwnPart.BodySensor ? FitState.Fits : FitState.DoesNotFit)]),
            KitNeedKind.SensorScrews => Screws(KitNeedKind.PositionSensor, openings.Sensor?.Screws, false),
            KitNeedKind.IdleScrews => Screws(KitNeedKind.IdleValve, openings.Idle?.Screws, openings.Idle?.HasGasket == true),
            KitNeedKind.PressureScrews => Screws(KitNeedKind.PressureSensor, openings.Pressure?.Screws, false),
            _ => new([]),
        };

        FitVerdict Screws(KitNeedKind held, ScrewPattern? holes, bool hasGasket)
        {
            var thickness = chosen(held)?.Part?.Measures switch
            {
                SensorMeasures s => s.Thickness,
                IdleMeasures i => i.Thickness,
                PressureMeasures p => p.Thickness,
                _ => null,
            };
            return new(ScrewFit.Of((ScrewMeasures)option.Part!.Measures, holes!, thickness, hasGasket));
        }
    }

    private FitVerdict BracketBolts(KitNeed need, KitOption option, Func<KitNeedKind, KitOption?> chosen)
    {
        var bracket = chosen(KitNeedKind.Bracket);
        if (option.Part?.Measures is not ScrewMeasures part)
        {
            return new([bracket is null ? new(FitAspect.ScrewLength, FitState.NotKnown) { Missing = MissingOn.Held } : new(FitAspect.ScrewLength, FitState.Fits)]);
        }

        var wanted = Ordered(need, bracket is null ? null : Trial(chosen(KitNeedKind.Cable)?.Part, chosen(KitNeedKind.ReturnSprings)?.Part, bracket.Part));
        return new([wanted is null
            ? new(FitAspect.ScrewLength, FitState.NotKnown) { Missing = MissingOn.Held }
            : FitFinding.Within(FitAspect.ScrewLength, (part.Length, part.Length, part.Length), wanted.Length - Tolerance.SameSize, wanted.Length + Tolerance.SameSize)]);
    }

    // The screw that the bracket wants in this thread; null where it wants several lengths, or where there is no bracket.
    private static MountScrew? Ordered(KitNeed need, MechanismTrial? trial) =>
        trial?.Screws.Where(s => s.Thread == need.Thread).DistinctBy(s => s.Length).ToArray() is [var one] ? one : null;

    private readonly record struct FitVerdict(ImmutableArray<FitFinding> Findings)
    {
        public FitState State => Findings.Select(f => f.State).DefaultIfEmpty(FitState.Fits).Min();
    }

    // Each option judged with the rest of the set that was found, or with what is there.
    private KitAnswer Marked(int number, ImmutableArray<int> sure, ImmutableArray<int> hoped)
    {
        var answer = _answers[number];
        KitOption? Taken(ImmutableArray<int> set, KitNeedKind kind)
        {
            var i = _answers.FindIndex(a => a.Need.Kind == kind);
            return i < 0 || set[i] < 0 ? null : _answers[i].Options[set[i]];
        }

        // A part that may be taken is judged with the set it would be in.
        var isHoped = sure[number] < 0;
        KitOption? Chosen(KitNeedKind kind) => Taken(isHoped ? hoped : sure, kind) ?? Taken(hoped, kind);
        ImmutableArray<FitFinding> Findings(KitOption option) => IsTried(answer.Need.Kind) ? [.. Whole(answer.Need.Kind, option, Chosen), .. option.Findings]
            : Held(answer.Need, option, Chosen).Findings is { Length: > 0 } held ? [.. held, .. option.Findings.Where(f => f.Aspect == FitAspect.Pieces)]
            : option.Findings;
        return answer with
        {
            Options =
            [
                .. answer.Options.Select((o, i) => o with
                {
                    Findings = Findings(o),
                    IsTaken = sure[number] == i,
                    WouldBeTaken = hoped[number] == i,
                    Price = o.Own == OwnPart.MadeBracket ? Trial(Chosen(KitNeedKind.Cable)?.Part, Chosen(KitNeedKind.ReturnSprings)?.Part, null)?.MakingPrice : o.Price,
                    Screw = o.Own == OwnPart.OrderedScrews ? Ordered(answer.Need, Trial(Chosen(KitNeedKind.Cable)?.Part, Chosen(KitNeedKind.ReturnSprings)?.Part, Chosen(KitNeedKind.Bracket)?.Part)) : null,
                }),
            ],
        };
    }

    private IEnumerable<FitFinding> Whole(KitNeedKind kind, KitOption option, Func<KitNeedKind, KitOption?> chosen)
    {
        KitPart? With(KitNeedKind other) => other == kind ? option.Part : chosen(other)?.Part;
        var trial = Trial(With(KitNeedKind.Cable), With(KitNeedKind.ReturnSprings), With(KitNeedKind.Bracket));
        yield return trial is null
            ? FitFinding.NotMeasured(FitAspect.SpringsAlone, part: false, body: true)
            : new(FitAspect.WholeJob, trial.State) { Codes = trial.Codes, Missing = MissingOn.Job };
    }
}
