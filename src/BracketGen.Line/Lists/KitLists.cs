using System.Collections.Immutable;
using BracketGen.Design.Kit;
using BracketGen.Words.Kit;

namespace BracketGen.Line.Lists;

/// <summary>The lists of a kit: what is taken, all that was looked at, what to look at on used parts.</summary>
public static class KitLists
{
    /// <summary>Every part that was looked at, taken or not, one a row, and the needs that nothing meets.</summary>
    public static ListTable Parts(KitStudy study)
    {
        var (rates, units) = (study.Kit.Job.Shop.Rates, study.Kit.Job.Units);
        var currency = rates.Currency ?? "";
        ImmutableArray<ListCell> Row(KitNeedKind kind, int count, KitOption option) =>
        [
            KitText.Need(kind), count, KitText.Name(option), KitText.Source(option.Source), KitText.Said(option) ?? "", option.Part?.Bundle?.Name ?? "",
            option.Part?.Bundle is null && option.Price is { } price ? ListCell.Of(price, 2) : "", currency, FitText.Of(option.State), option.IsTaken ? "yes" : "no",
            string.Join(' ', FitText.Why(option, units)), KitText.IsUsed(option) ? string.Join(' ', UsedText.Of(kind)) : "",
        ];
        return new(
            "kit",
            ["need", "count", "part", "source", "from", "bundle", "price", "currency", "fits", "taken", "why", "look_at_before_buying_used"],
            [
                .. study.Answers.SelectMany(a => a.Options.IsEmpty
                    ? [[KitText.Need(a.Need.Kind), a.Need.Count, "", "", "", "", "", currency, FitText.Of(FitState.DoesNotFit), "no", "", ""]]
                    : a.Options.Select(o => Row(a.Need.Kind, a.Need.Count, o))),
                .. study.AllBundles.Select(b => (ImmutableArray<ListCell>)
                [
                    "bundle", 1, b.Name, KitText.Source(b.Source), b.From ?? "", b.Name, b.Cost is { } price ? ListCell.Of(price, 2) : "", currency, "", study.Bundles.Contains(b) ? "yes" : "no", "",
                    b.Source == PartSource.Donor ? UsedText.Bundle : "",
                ]),
                .. study.Unwanted.Select(p => (ImmutableArray<ListCell>)
                [
                    "", p.Quantity ?? 1, p.Name, KitText.Source(p.Source), KitText.Said(new(p, null)) ?? "", p.Bundle?.Name ?? "", p.Price is { } price ? ListCell.Of(price, 2) : "", currency, "", "no", KitText.Unwanted, "",
                ]),
            ]);
    }

    /// <summary>What is taken.</summary>
    public static ListTable Set(KitStudy study) => new(
        "set", ["need", "count", "part", "from", "price"], [.. KitText.SetRows(study).Select(r => (ImmutableArray<ListCell>)[.. r.Select(c => (ListCell)c)])]);

    /// <summary>What to measure before the set is sure.</summary>
    public static ListTable Measures(KitStudy study) => new("to measure", ["what"], [.. KitText.Measures(study).Select(m => (ImmutableArray<ListCell>)[m])]);
}
