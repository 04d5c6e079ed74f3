using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Kit;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;
using BracketGen.Words.Results;
using BracketGen.Words.Terminal;

namespace BracketGen.Words.Kit;

/// <summary>The kit round the bracket: what is needed, what is taken, what it costs, what is to be measured.</summary>
public static class KitText
{
    /// <summary>Title of the sheet.</summary>
    public const string Title = "Kit";

    /// <summary>Heads of the table of what is taken.</summary>
    public static IReadOnlyList<string> SetHeads { get; } = ["for", "count", "part", "from", "price"];

    /// <summary>Heads of the table of everything else that was looked at.</summary>
    public static IReadOnlyList<string> OtherHeads { get; } = ["for", "part", "from", "price", "fits", "why"];

    /// <summary>Heading of what is taken, and of the others.</summary>
    public const string Set = "The cheapest set that fits", Others = "Looked at and not taken", ToMeasure = "To measure";

    /// <summary>Below the table.</summary>
    public const string ByMeasurements = "Fits means: by the measurements in the files. Try every part on the throttle body before you pay for it.";

    /// <summary>Where a job names no list of parts.</summary>
    public const string NoLists = "The job names no list of parts at hand. Add to it: [kit] with parts = [\"../parts/my-parts.toml\"]; docs/kit.md says what a list holds.";

    /// <summary>"Kit for Plover on Alder 58".</summary>
    public static string Heading(Job job) => $"Kit for {TerminalWords.Heading(job.Vehicle.Name, job.Body.Name)}";

    /// <summary>Name of a need.</summary>
    public static string Need(KitNeedKind kind) => kind switch
    {
        KitNeedKind.Cable => "cable",
        KitNeedKind.ReturnSprings => "return springs",
        KitNeedKind.Bracket => "bracket",
        KitNeedKind.BracketBolts => "bracket bolts",
        KitNeedKind.PedalStop => "pedal stop",
        KitNeedKind.PositionSensor => "position sensor",
        KitNeedKind.SensorScrews => "sensor screws",
        KitNeedKind.IdleValve => "idle valve",
        KitNeedKind.IdleGasket => "idle gasket",
        KitNeedKind.IdleScrews => "idle screws",
        KitNeedKind.PressureSensor => "pressure sensor",
        KitNeedKind.PressureScrews => "pressure screws",
        _ => "flange gasket",
    };

    /// <summary>Name of a part.</summary>
    public static string Name(KitOption option) => option.Part?.Name ?? option.Own switch
    {
        OwnPart.VehicleCable => "the vehicle's own cable",
        OwnPart.BodySprings => "the throttle body's own springs",
        OwnPart.MadeBracket => TrialText.Ours,
        OwnPart.BodySensor => "the sensor on the throttle body",
        OwnPart.BodySensorScrews => "the screws of that sensor",
        _ => option.Screw is { } screw ? ScrewText.Order(screw) : "as the set-up sheet orders them",
    };

    /// <summary>Where a part comes from, in one word.</summary>
    public static string Source(PartSource source) => source switch
    {
        PartSource.Kept => "kept",
        PartSource.Donor => "donor",
        PartSource.Bought => "bought",
        _ => "made",
    };

    /// <summary>Where a part comes from: "donor, breaker's yard".</summary>
    public static string From(KitOption option)
    {
        var said = Said(option);
        return said is null ? Source(option.Source) : $"{Source(option.Source)}, {said}";
    }

    /// <summary>Seller, shelf or number, as the list says it; null where it does not.</summary>
    public static string? Said(KitOption option) => option.Part?.From ?? option.Part?.Bundle?.From ?? (option.Part?.Measures as BracketMeasures)?.Bracket.Source;

    /// <summary>Said of a part on a list that the job does not need.</summary>
    public const string Unwanted = "This job needs no such part, or not in this size.";

    /// <summary>A price: of a part of a bundle what it comes with.</summary>
    public static string Price(KitOption option, ShopRates rates) => option.Part?.Bundle is { } bundle ? $"with {bundle.Name}" : Amount(option.Price, rates);

    /// <summary>An amount of money, or that nobody knows it.</summary>
    public static string Amount(double? money, ShopRates rates) => money is not { } known ? "not known"
        : rates.Currency is null ? UnitSystems.Decimals(known, "0.00") : CostText.Amount(known, rates);

    /// <summary>What is known of the whole.</summary>
    public static string Verdict(KitStudy study)
    {
        string Names(FitState state) => Phrases.List([.. study.Answers.Where(a => a.State == state).Select(a => Need(a.Need.Kind)).Distinct()]);
        var open = study.Answers.Any(a => a.State == FitState.NotKnown) ? $" Whether what is there or on the list fits is not known for: {Names(FitState.NotKnown)}." : "";
        var unsaid = study.NotSaid.IsEmpty ? "" : $" Whether it takes one is not known for: {Phrases.List([.. study.NotSaid.Select(Need)])}.";
        return study.State switch
        {
            FitState.Fits => "COMPLETE. Everything that is needed is there or on the list, and fits by its measurements.",
            FitState.NotKnown => $"NOT PROVEN.{open}{unsaid}",
            _ => $"NOT COMPLETE. Nothing that is there or on the list fits for: {Names(FitState.DoesNotFit)}.{open}{unsaid}",
        };
    }

    /// <summary>The rows of what is taken, needs that nothing meets among them, bundles last.</summary>
    public static ImmutableArray<ImmutableArray<string>> SetRows(KitStudy study)
    {
        var rates = study.Kit.Job.Shop.Rates;
        return
        [
            .. study.Answers.Select(a => a.Taken is { } taken
                ? (ImmutableArray<string>)[Need(a.Need.Kind), Counted.Number(a.Need.Count), Name(taken), From(taken), Price(taken, rates)]
                : [Need(a.Need.Kind), Counted.Number(a.Need.Count), a.State == FitState.NotKnown ? "not known: see below" : "NOTHING FITS", "", ""]),
            .. study.Bundles.Select(b => (ImmutableArray<string>)["bundle", "1", b.Name, b.From is null ? Source(b.Source) : $"{Source(b.Source)}, {b.From}", Amount(b.Cost, rates)]),
        ];
    }

    /// <summary>What the set costs, and what it would cost if what is not known proved to fit.</summary>
    public static IEnumerable<string> Costs(KitStudy study)
    {
        var rates = study.Kit.Job.Shop.Rates;
        yield return $"The set costs {Sum(study.Cost, rates)}.";
        if (study.MayBeBetter)
        {
            string[] more = [.. study.Answers.SelectMany(a => a.Options.Where(o => o.WouldBeTaken && !o.IsTaken).Select(o => $"{Name(o)} as {Need(a.Need.Kind)}"))];
            yield return $"If what is not known proves to fit, the set costs {Sum(study.CostIfKnown, rates)}{(more.Length > 0 ? $", with {Phrases.List(more)}" : "")}. Measure what is listed below first.";
        }
    }

    /// <summary>Whether to make the bracket or to buy it.</summary>
    public static string MakeOrBuy(KitStudy study)
    {
        var rates = study.Kit.Job.Shop.Rates;
        var options = study.Answers.First(a => a.Need.Kind == KitNeedKind.Bracket).Options;
        var ours = options.First(o => o.Own == OwnPart.MadeBracket);
        var listed = options.Where(o => o.Part is not null && o.State == FitState.Fits).ToArray();
        var bought = listed.Where(o => o.Price is not null && o.Part!.Bundle is null).MinBy(o => o.Price);
        var making = ours.State == FitState.DoesNotFit ? "Make or buy: no bracket that we make passes."
            : $"Make or buy: our own costs {Amount(ours.Price, rates)} to make"
                + (ours.Price is null ? " (the shop has no [rates] with a currency)" : rates.Batch == 1 ? ", one alone" : $", in a batch of {Counted.Number(rates.Batch)}")
                + (ours.State == FitState.NotKnown ? ", and is not proven." : ".");
        return $"{making} "
            + (options.All(o => o.Part is null) ? "No bracket is on the list."
                : listed.Length == 0 ? "No bracket on the list fits as it is."
                : bought is null ? $"{Phrases.List([.. listed.Select(Name)])} fits; its price is not known, or that of its bundle."
                : $"The cheapest on the list that fits is {Name(bought)}, {Amount(bought.Price, rates)}.");
    }

    /// <summary>The rows of everything else that was looked at.</summary>
    public static ImmutableArray<ImmutableArray<string>> OtherRows(KitStudy study)
    {
        var (rates, units) = (study.Kit.Job.Shop.Rates, study.Kit.Job.Units);
        return
        [
            .. study.Answers.SelectMany(a => a.Options.Where(o => !o.IsTaken).Select(o => (ImmutableArray<string>)
                [Need(a.Need.Kind), Name(o), From(o), Price(o, rates), FitText.Of(o.State), string.Join(' ', FitText.Why(o, units))])),
            .. study.Unwanted.Select(p => (ImmutableArray<string>)
                ["-", p.Name, From(new(p, null)), Price(new(p, null) { Price = p.Price }, rates), "-", Unwanted]),
        ];
    }

    /// <summary>The same, one paragraph for each.</summary>
    public static IEnumerable<string> OtherLines(KitStudy study) =>
        OtherRows(study).Select(r => $"{(r[0] == "-" ? "" : r[0] + ": ")}{r[1]} ({r[2]}; {r[3]}){(r[4] == "-" ? ". " : $" {r[4].ToUpperInvariant()}. ")}{r[5]}".TrimEnd());

    /// <summary>Notes on what is taken.</summary>
    public static IEnumerable<string> SetNotes(KitStudy study) => study.Answers.Where(a => a.Taken is { } taken && a.Need.Kind is not (KitNeedKind.Cable or KitNeedKind.ReturnSprings or KitNeedKind.Bracket))
        .Select(a => (a.Need.Kind, Why: string.Join(' ', FitText.Why(a.Taken!, study.Kit.Job.Units)))).Where(n => n.Why.Length > 0).Select(n => $"{Phrases.Capital(Need(n.Kind))}: {n.Why}");

    /// <summary>What to measure, part by part.</summary>
    public static IEnumerable<string> Measures(KitStudy study) => study.Answers
        .SelectMany(a => a.Options.Where(o => o.State == FitState.NotKnown).Select(o => (Who: $"{Name(o)}, for {Need(a.Need.Kind)}", What: string.Join(' ', FitText.Why(o, study.Kit.Job.Units)))))
        .GroupBy(m => m.What).Select(g => $"{string.Join("; ", g.Select(m => m.Who))}: {g.Key}")
        .Concat(study.NotSaid.Select(k => $"{Phrases.Capital(Need(k))}: if the throttle body takes one, measure {Opening(k)} in its file; if this vehicle does not need one, write it into without of [kit]."))
        .Concat(study.Answers.Where(a => a.Options.IsEmpty).Select(a => $"{Phrases.Capital(Need(a.Need.Kind))}: none is on the list. Add one, or leave it out with without of [kit]."));

    private static string Opening(KitNeedKind kind) => kind switch
    {
        KitNeedKind.PositionSensor => "[sensor_mount]",
        KitNeedKind.IdleValve => "[idle_mount]",
        KitNeedKind.PressureSensor => "[pressure_port]",
        _ => "[flange]",
    };

    /// <summary>What to look at on used parts that are taken or may be, kind by kind.</summary>
    public static IEnumerable<(string Need, IReadOnlyList<string> Looks)> Used(KitStudy study) =>
    [
        .. study.Answers.Where(a => a.Options.Any(o => (o.IsTaken || o.WouldBeTaken || o.State == FitState.NotKnown) && IsUsed(o)) && UsedText.Of(a.Need.Kind).Count > 0)
            .Select(a => (Phrases.Capital(Need(a.Need.Kind)), UsedText.Of(a.Need.Kind))),
        .. study.Bundles.Any(b => b.Source == PartSource.Donor) ? [("Donor", (IReadOnlyList<string>)[UsedText.Bundle])] : Array.Empty<(string, IReadOnlyList<string>)>(),
    ];

    /// <summary>What is said below the table of what is taken, a paragraph each.</summary>
    public static IReadOnlyList<string> Account(KitStudy study) => [.. Costs(study), MakeOrBuy(study), Job(study), .. SetNotes(study), ByMeasurements];

    /// <summary>The lists under that, each with its heading; an empty one is left out.</summary>
    public static IReadOnlyList<(string Heading, IReadOnlyList<string> Lines)> Lists(KitStudy study)
    {
        (string Heading, IReadOnlyList<string> Lines)[] lists =
            [(Others, [.. OtherLines(study)]), (ToMeasure, [.. Measures(study)]), (UsedText.Heading, [.. Used(study).Select(u => $"{u.Need}: {string.Join(' ', u.Looks)}")])];
        return [.. lists.Where(l => l.Lines.Count > 0)];
    }

    /// <summary>Whether a part may be worn: all that is not new, and what is there already.</summary>
    public static bool IsUsed(KitOption option) => option.Part is { } part ? !part.IsNew && part.Source != PartSource.Made : option.Own is not (OwnPart.MadeBracket or OwnPart.OrderedScrews);

    /// <summary>The verdict on the job with its own cable, springs and bracket, in a word.</summary>
    public static string Job(KitStudy study) => $"The job as it stands: {Checks.VerdictText.Name(study.Base.Kind)}{(study.Base.Kind == VerdictKind.Passes ? "" : $" ({string.Join(", ", study.Base.Codes)})")}, without its position sensor.";

    private static string Sum(KitCost cost, ShopRates rates) => Amount(cost.Money, rates)
        + (cost.Unpriced > 0 ? $" and {Counted.Of(cost.Unpriced, "price")} that nobody gave" : "")
        + (cost.Open > 0 ? $", with {Counted.Of(cost.Open, "part")} still missing" : "");
}
