using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.Results;

namespace BracketGen.Words.Terminal;

/// <summary>What is said of a bracket that is there already: how it goes on, what it comes to, and what would correct it.</summary>
public static class TrialText
{
    /// <summary>The question that the verdict answers.</summary>
    public const string Question = "this bracket as measured, on this vehicle";

    /// <summary>Heads of the table that compares brackets.</summary>
    public static IReadOnlyList<string> Heads { get; } = ["", "bracket", "verdict", "over-travel", "adjuster", "price", "tightest check", "to correct"];

    /// <summary>Name of the bracket that the program designs for the job.</summary>
    public const string Ours = "our own, to be made";

    /// <summary>Heading of what would correct it.</summary>
    public const string AnyOne = "Any one of these corrects it. Each was tried whole: with it nothing fails.";

    /// <summary>The bracket and what it is tried on.</summary>
    public static string Heading(MeasuredBracket bracket, Job job) => $"{bracket.Name} ({bracket.Source}) on {job.Vehicle.Name} with {job.Body.Name}";

    /// <summary>Said where the mount has a second face.</summary>
    /// <param name="job">The job.</param>
    public static string OnTwoFaces(Job job) => $"The mount of {job.Body.Name} has a second face. A bracket file describes one face with bolt holes, so a bracket on two faces cannot be tried yet. Take [mount.second_face] out of the throttle body's file to try a bracket on the mount face alone; see docs/limits.md.";

    /// <summary>How it is bolted on, and where its other ways went.</summary>
    /// <param name="trial">The trial.</param>
    /// <param name="isDrawn">Whether the bracket was drawn and not measured: then its top is the side that is seen in the drawing.</param>
    public static IEnumerable<string> Fitted(BracketTrial trial, bool isDrawn = false)
    {
        var read = isDrawn ? "drawn" : "measured";
        if (trial.Job.Body.Mount.Second is not null)
        {
            yield return OnTwoFaces(trial.Job);
            yield break;
        }

        if (trial.Way is not { } way)
        {
            yield return $"Its holes do not go onto the {Counted.Of(trial.Job.Body.Mount.Holes.Length, "tapped hole")} of the mount face, as {read} or turned over: a bolt hole would be farther off than the play of its bolt. It does not fit.";
            yield break;
        }

        var holes = Phrases.List([.. way.Matches.Select((name, i) => $"{name} on tapped hole {Counted.Number(i + 1)}")]);
        yield return $"Bolt it on {(way.IsTurnedOver ? $"turned over, the side {read} as the top on the mount face" : $"as {read}")}: {holes}. "
            + (trial.Ways > 1 ? $"It can be bolted on and take the outer in {Counted.Number(trial.Ways)} ways; this is the best." : "It goes on no other way.");
        if (trial.State == TrialState.NoWire)
        {
            yield return "The wire does not reach its stop from the right side in any way it can be bolted on. Do not fit this bracket.";
            yield break;
        }

        yield return isDrawn ? $"The outer bears on the {(way.IsOtherFace ? "side of the stop flange that the drawing does not show" : "side of the stop flange that the drawing shows")}."
            : way.IsOtherFace
            ? "Put the outer in from the other side: it bears on the other face of the stop flange than the one that was measured."
            : "The outer bears on the face of the stop flange that was measured.";
        if (way.Bracket.Holes.Any(h => h.IsSlotted))
        {
            yield return Slotted(trial, way.Bracket);
        }

        var unused = way.Bracket.Flat.Blank.Holes.Length - way.Bracket.Holes.Count(h => !h.IsSlot);
        if (unused > 0)
        {
            yield return $"{Counted.Of(unused, "hole")} of the bracket {Counted.Verb(unused, "stays", "stay")} empty.";
        }
    }

    /// <summary>Where the adjuster must stand; null where the wire does not reach.</summary>
    public static string? Adjuster(BracketTrial trial)
    {
        var (units, range) = (trial.Job.Units, trial.Job.Vehicle.Cable.OuterEnd.AdjusterRange);
        return trial.Adjuster is not { } shift ? null
            : range <= 0 ? "The cable has no adjuster: the free play is what the bracket gives."
            : $"Set the adjuster {ShortAdjuster(trial)}: the free play is then {units.Write(Quantity.Length, trial.Job.Preferences.FreePlay.Value)}. Check it at the pedal before you tighten the locknuts.";
    }

    /// <summary>The same in a few words.</summary>
    public static string ShortAdjuster(BracketTrial trial) => Place(trial.Adjuster, trial.Job);

    private static string Place(double? adjuster, Job job) => adjuster is not { } shift || job.Vehicle.Cable.OuterEnd.AdjusterRange <= 0 ? "-"
        : Math.Abs(shift) < 0.05 ? "at mid range"
        : $"{job.Units.Write(Quantity.Length, Math.Abs(shift))} {(shift > 0 ? "taken up" : "let out")}";

    /// <summary>What was assumed, and what is not known.</summary>
    public static IEnumerable<string> Assumed(MeasuredBracket bracket, Job job)
    {
        var units = job.Units;
        if (bracket.IsOfClass(job.Shop) && bracket.MetalIn(job.Shop) is { } metal)
        {
            yield return $"Assumed: the sheet is {metal.Designation} of the weakest usual grade ({metal.Source}). If you know the grade, write it: the verdict can only get better.";
        }

        if (bracket.Stop.IsAssumed.Place && bracket.Drawn is null or { IsStopMeasured: true })
        {
            yield return $"Assumed: the place of the stop is read to ±{units.WriteFine(Quantity.Length, bracket.Stop.PlusMinus)}.";
        }

        foreach (var line in bracket.Drawn is { } drawn ? Drawn(bracket, drawn, units) : [])
        {
            yield return line;
        }

        foreach (var line in AssumedShape(bracket, units))
        {
            yield return line;
        }

        if (bracket.Drawn is { IsStopMeasured: false })
        {
            yield return $"Assumed: the stop is where the drawing folds to, within {units.WriteFine(Quantity.Length, bracket.Stop.PlusMinus)} along each axis and {units.Write(Quantity.Angle, bracket.Stop.DirectionPlusMinus.Radians)}. Where the formed part is there, measure the place of its stop and write it.";
        }
        else if (bracket.Stop.Direction is null)
        {
            var off = bracket.Stop.DirectionPlusMinus + MeasuredShape.OfFlange(bracket, bracket.Stop.Flange ?? bracket.Bends.Length);
            yield return $"Assumed: the stop's seat is square to its flange as the bends give it, within {units.Write(Quantity.Angle, off.Radians)}.";
        }
        else if (bracket.Stop.IsAssumed.Direction)
        {
            yield return $"Assumed: the direction of the seat is read to ±{units.Write(Quantity.Angle, bracket.Stop.DirectionPlusMinus.Radians)}.";
        }

        yield return "Look at every bend with a lens: a crack does not show in measurements. Lay the mount flange on a surface plate: it must not rock.";
    }

    // The friction belongs to the two faces that were tried.
    private static string Slotted(BracketTrial trial, Bracket bracket)
    {
        var units = trial.Job.Units;
        var farthest = SlotPositions.Farthest(bracket);
        var along = farthest > 0
            ? $"its slotted holes let it be shifted by up to {units.WriteFine(Quantity.Length, farthest)} from there. The verdict counts every end of them. Set each screw in the middle of its slot, and paint a line across the edge of the bracket and the casting"
            : "its slotted holes do not let it be shifted there";
        var friction = farthest == 0 ? ""
            : trial.Job.Body.Mount.FaceFriction is { } tried ? $" The friction of {Phrases.Plain(tried)} on the bosses counts for this bracket only if it was tried with it, or with the same finish."
            : " Try the friction of this very bracket on the bosses: face_friction in [mount] of the throttle body.";
        return $"It was laid near the middle of its slots; {along}.{friction}";
    }

    private static IEnumerable<string> Drawn(MeasuredBracket bracket, DrawnSource drawn, UnitSystem units)
    {
        var left = drawn.Skipped.IsEmpty ? "" : $" Not read from it: {Phrases.List([.. drawn.Skipped.Select(s => $"{Counted.Number(s.Count)} {s.Kind}")])}.";
        yield return $"Outline, bend lines and {Counted.Of(bracket.Holes.Length, "hole")} of the mount flange are those of {drawn.File}, drawn in {(drawn.IsInch ? "inches" : "mm")}.{left}";
        foreach (var (allowance, i) in drawn.Allowances.Select((a, i) => (a, i)))
        {
            var length = units.WriteFine(Quantity.Length, allowance.Allowance);
            yield return allowance.Source == AllowanceSource.Given
                ? $"Bend {Counted.Number(i + 1)} takes up {length} of the flat pattern, as given."
                : $"Assumed: bend {Counted.Number(i + 1)} takes up {length} of the flat pattern (Machinery's Handbook). The shop that made it knows better: write the allowance, the bend deduction or the K factor.";
        }
    }

    private static IEnumerable<string> AssumedShape(MeasuredBracket bracket, UnitSystem units)
    {
        List<string> read = [];
        void Add(bool isAssumed, string what, Quantity quantity, double plusMinus)
        {
            if (isAssumed)
            {
                read.Add($"{what} to ±{(quantity == Quantity.Angle ? units.Write(quantity, plusMinus) : units.WriteFine(quantity, plusMinus))}");
            }
        }

        var bend = bracket.Bends;
        Add(bracket.Holes.Any(h => h.IsAssumed), "places of the bolt holes", Quantity.Length, MeasuredStop.UsualReading);
        Add(bracket.IsOutlineAssumed || bend.Any(b => b.IsAssumed.Outline), "corners of the flanges", Quantity.Length, MeasuredStop.UsualReading);
        Add(bend.Any(b => b.IsAssumed.Line), "corner lines", Quantity.Length, bend.Where(b => b.IsAssumed.Line).Select(b => b.LinePlusMinus).DefaultIfEmpty(0).Max());
        Add(bend.Any(b => b.IsAssumed.Angle), "angles of the bends", Quantity.Angle, MeasuredBracket.UsualDirection.Radians);
        Add(bend.Any(b => b.IsAssumed.Radius), "inside radii", Quantity.Length, MeasuredBracket.UsualRadius);
        if (read.Count > 0)
        {
            yield return $"Assumed, because the file gives no ±: {Phrases.List(read)}.";
        }
    }

    /// <summary>A remedy as one or two sentences.</summary>
    public static string Remedy(BracketRemedy remedy, UnitSystem units)
    {
        var steps = remedy.Changes.Select(c => Step(c, remedy, units)).ToArray();
        var verdict = remedy.Trial.Kind == VerdictKind.Passes
            ? "Then every check passes"
            : $"Then nothing fails; not known stays {string.Join(", ", remedy.Trial.Solution!.Verdict.Deciding.Select(c => c.Code))}";
        return $"{string.Join(' ', steps)} {verdict}; adjuster {ShortAdjuster(remedy.Trial)}.";
    }

    /// <summary>A remedy in a table.</summary>
    public static string Short(BracketRemedy remedy, UnitSystem units) => string.Join(" + ", remedy.Changes.Select(c => c switch
    {
        SetFreePlay f => $"free play {units.Write(Quantity.Length, f.To)}",
        OpenBoltHoles o => $"bolt holes to {units.Write(Quantity.Length, o.To)}",
        OpenStop o => $"stop to {units.Write(Quantity.Length, o.To)}",
        PlateUnder s => $"spacer {units.Write(Quantity.Length, s.Thickness)}",
        BendFurther b => $"bend {Counted.Number(b.Bend + 1)} to {units.Write(Quantity.Angle, b.To.Radians)}",
        _ => "new stop hole",
    }));

    /// <summary>Said where nothing was found that corrects it.</summary>
    public static string NoneFound(BracketTrial trial, bool isCutShort) =>
        BracketRemedies.BeyondWork(trial).ToArray() is { Length: > 0 } beyond
            ? $"No work on the bracket corrects {Phrases.List([.. beyond.Select(c => c.Code)])}. "
                + (beyond.Any(TravelChecks.IsBeyondTheBracket) ? "Cable, pedal and throttle body decide that: the command travel says what would. " : "Take another bracket. ") + "Do not fit this one."
            : "Nothing was found that corrects it. Tried, alone and two together: free play, wider holes, spacers up to 10 mm under the mount flange, bending up to 15° either way, a new hole for the stop in its flange. "
                + (isCutShort ? "The search ended at its limit: others may exist. " : "") + "Do not fit this bracket.";

    /// <summary>Said after remedies.</summary>
    public const string AfterWork = "Measure the bracket again after the work, correct its file and run check again. A flange that is bent again can crack: aluminium and hard sheet at once, any sheet when bent more than once.";

    /// <summary>What corrects a bracket, in the order in which it is told; null where nothing fails or nobody looked.</summary>
    /// <param name="tried">The bracket.</param>
    public static (string Before, IReadOnlyList<string> Remedies, string? After)? Correction(TriedBracket tried) =>
        tried.Trial.NothingFails || tried.Found is not { } found ? null
        : found.Remedies.IsEmpty ? (NoneFound(tried.Trial, found.IsCutShort), [], null)
        : (AnyOne, [.. found.Remedies.Select(r => Remedy(r, tried.Trial.Job.Units))], AfterWork);

    /// <summary>A row of the table that compares brackets.</summary>
    /// <param name="number">Its number, from 1.</param>
    /// <param name="tried">The bracket.</param>
    public static string[] Row(int number, TriedBracket tried)
    {
        var (bracket, trial, found) = tried;
        var correct = trial.Kind == VerdictKind.Passes ? Nothing
            : trial.NothingFails ? Measure
            : found is not { Remedies.IsEmpty: false } some ? NotFound
            : Short(some.Remedies[0], trial.Job.Units);
        return Row(number, bracket.Name, trial.Solution, trial.Kind, trial.Job, bracket.Price, correct);
    }

    /// <summary>The row of the bracket that the program designs for the job.</summary>
    /// <param name="number">Its number, from 1.</param>
    /// <param name="own">The job solved.</param>
    public static string[] RowOfOurs(int number, Solution own) => Row(
        number, Ours, own.Bracket is null ? null : own, own.Verdict.Kind, own.Job, PriceOfOurs(own), own.Passes ? Nothing : own.NothingFails ? Measure : NotFound);

    /// <summary>A row of the table that compares brackets.</summary>
    /// <param name="number">Its number, from 1.</param>
    /// <param name="name">Its name.</param>
    /// <param name="solution">The job solved with it; null where it does not go on.</param>
    /// <param name="kind">The verdict.</param>
    /// <param name="job">The job.</param>
    /// <param name="price">What it costs; null where nobody said.</param>
    /// <param name="correct">What to correct; empty where nothing fails.</param>
    public static string[] Row(int number, string name, Solution? solution, VerdictKind kind, Job job, double? price, string correct)
    {
        var tightest = solution?.Checks
            .Where(c => c.Kind is not (CheckKind.Advice or CheckKind.Making) && double.IsFinite(c.Spare) && (c.Fails || c.Spare > Geometry.Tolerance.LimitSlack))
            .MinBy(c => c.Spare);
        return
        [
            Counted.Number(number), name, VerdictText.Banner(kind),
            solution is null ? "-" : job.Units.Write(Quantity.Length, solution.Travel.OverTravel),
            Place(solution?.Placement?.AdjusterShift, job),
            price is { } money ? CostText.Amount(money, job.Shop.Rates) : "not known",
            tightest is null ? "-" : $"{tightest.Code}, {(tightest.Fails ? "fails" : $"{job.Units.Write(Quantity.Fraction, tightest.Spare)} spare")}",
            correct,
        ];
    }

    /// <summary>Words for the last column.</summary>
    public const string Nothing = "nothing", NotFound = "cannot be helped", Measure = "see what is not known";

    private static string Step(BracketChange change, BracketRemedy remedy, UnitSystem units)
    {
        string Length(double value) => units.Write(Quantity.Length, value);
        string Degrees(double radians) => units.Write(Quantity.Angle, radians);
        return change switch
        {
            SetFreePlay f => $"Set the free play to {Length(f.To)} with the adjuster, not {Length(f.From)}.",
            OpenBoltHoles o => $"Drill the bolt holes to {Length(o.To)}, from {Length(o.From)}.",
            OpenStop { IsSlot: true } o => $"File the slot to {Length(o.To)}, from {Length(o.From)}.",
            OpenStop o => $"Drill the stop's hole to {Length(o.To)}, from {Length(o.From)}.",
            PlateUnder s => $"Put a spacer of {Length(s.Thickness)} under the mount flange at every bolt, a steel washer or plate as large as the boss, and take screws longer by as much.",
            BendFurther b => $"{(b.To.Radians < b.From.Radians ? "Close" : "Open")} bend {Counted.Number(b.Bend + 1)} by {Degrees(Math.Abs(b.To.Radians - b.From.Radians))}: included angle {Degrees(b.To.Radians)}, not {Degrees(b.From.Radians)}.",
            RedrillStop r => $"Drill a new hole of {Length(r.Diameter)} for the stop, {Moved(r, Length)} the old one: its middle at x {Length(r.At.On.X)}, y {Length(r.At.On.Y)}, z {Length(r.At.Height)} from the mount face.",
            _ => throw new ArgumentException($"No words for {change}.", nameof(remedy)),
        };
    }

    private static string Moved(RedrillStop r, Func<double, string> length)
    {
        List<string> ways = [];
        if (Math.Abs(r.Up) > 0)
        {
            ways.Add(r.IsPlate ? $"{length(Math.Abs(r.Up))} {(r.Up > 0 ? "along y" : "against y")}" : $"{length(Math.Abs(r.Up))} {(r.Up > 0 ? "farther from the bend" : "nearer to the bend")}");
        }

        if (Math.Abs(r.Along) > 0)
        {
            ways.Add(r.IsPlate ? $"{length(Math.Abs(r.Along))} {(r.Along > 0 ? "along x" : "against x")}" : $"{length(Math.Abs(r.Along))} towards the {(r.Along > 0 ? "second" : "first")} end of the bend");
        }

        return $"{Phrases.List(ways)} {(ways.Count > 0 ? "from" : "at")}";
    }

    /// <summary>What the price of our own is: what it costs to make.</summary>
    public static double? PriceOfOurs(Solution solution) => solution.Offers.IsEmpty ? null : CostText.Of(solution.Offers[0], solution.Job).Bill;
}
