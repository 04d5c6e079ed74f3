using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Design.Study;

/// <summary>A change that is made or not: a preference, or a sheet to be bought.</summary>
/// <param name="Changes">What it changes.</param>
/// <param name="Apply">The job with it.</param>
/// <param name="Only">The job with no sheet but the one that it brings in: enough to see whether it can serve. Null where it brings in none.</param>
internal sealed record JobEdit(ImmutableArray<InputChange> Changes, Func<Job, Job> Apply, Job? Only)
{
    /// <summary>Thicknesses that are sold everywhere (mm).</summary>
    internal static readonly ImmutableArray<double> UsualThicknesses = [1.5, 2, 2.5, 3, 4, 5, 6];

    /// <summary>Those of a job: sheets in stock that a preference rules out, sheets to be bought, limits of its own that are stricter than the usual.</summary>
    public static IEnumerable<JobEdit> Of(Job job)
    {
        foreach (var stock in job.Shop.Stock.Where(s => !IsAllowed(job, s)).OrderBy(s => s.Thickness))
        {
            yield return Allowing(job, stock, []);
        }

        foreach (var material in job.Shop.Stock.Select(s => s.Material).Distinct())
        {
            foreach (var thickness in UsualThicknesses.Except(job.Shop.Stock.Where(s => s.Material == material).Select(s => s.Thickness)))
            {
                yield return Allowing(job, new(material, thickness), [new(ChangedInput.Stock, material.Designation, 0, thickness)]);
            }
        }

        foreach (var limit in Limits(job.Preferences, new()))
        {
            yield return limit;
        }
    }

    private static bool IsAllowed(Job job, Stock stock) => stock.Thickness >= job.Preferences.MinThickness && stock.Thickness <= job.Preferences.MaxThickness
        && (job.Preferences.Materials.IsEmpty || job.Preferences.Materials.Contains(stock.Material.Designation));

    private static JobEdit Allowing(Job job, Stock stock, ImmutableArray<InputChange> bought)
    {
        var (changes, now) = (bought.ToBuilder(), job.Preferences);
        if (stock.Thickness < now.MinThickness)
        {
            changes.Add(new(ChangedInput.MinThickness, stock.Material.Designation, now.MinThickness, stock.Thickness));
        }

        if (stock.Thickness > now.MaxThickness)
        {
            changes.Add(new(ChangedInput.MaxThickness, stock.Material.Designation, now.MaxThickness, stock.Thickness));
        }

        if (!now.Materials.IsEmpty && !now.Materials.Contains(stock.Material.Designation))
        {
            changes.Add(new(ChangedInput.Materials, stock.Material.Designation, 0, stock.Thickness));
        }

        Job Apply(Job to) => to with
        {
            Shop = bought.IsEmpty ? to.Shop : to.Shop with { Stock = to.Shop.Stock.Add(stock) },
            Preferences = to.Preferences with
            {
                MinThickness = Math.Min(stock.Thickness, to.Preferences.MinThickness),
                MaxThickness = Math.Max(stock.Thickness, to.Preferences.MaxThickness),
                Materials = changes.Any(c => c.Input == ChangedInput.Materials) ? to.Preferences.Materials.Add(stock.Material.Designation) : to.Preferences.Materials,
            },
        };
        var applied = Apply(job);
        return new(changes.ToImmutable(), Apply, applied with { Shop = applied.Shop with { Stock = [stock] } });
    }

    private static IEnumerable<JobEdit> Limits(Preferences now, Preferences usual)
    {
        JobEdit Limit(ChangedInput input, double from, double to, Func<Preferences, Preferences> with) =>
            new([new(input, null, from, to)], job => job with { Preferences = with(job.Preferences) }, null);
        (bool IsStricter, JobEdit Edit)[] all =
        [
            (now.MaxGive < usual.MaxGive, Limit(ChangedInput.MaxGive, now.MaxGive, usual.MaxGive, p => p with { MaxGive = usual.MaxGive })),
            (now.MinYieldFactor > usual.MinYieldFactor, Limit(ChangedInput.MinYieldFactor, now.MinYieldFactor, usual.MinYieldFactor, p => p with { MinYieldFactor = usual.MinYieldFactor })),
            (now.MinEnduranceFactor > usual.MinEnduranceFactor, Limit(ChangedInput.MinEnduranceFactor, now.MinEnduranceFactor, usual.MinEnduranceFactor, p => p with { MinEnduranceFactor = usual.MinEnduranceFactor })),
            (now.MinFrequencyRatio > usual.MinFrequencyRatio, Limit(ChangedInput.MinFrequencyRatio, now.MinFrequencyRatio, usual.MinFrequencyRatio, p => p with { MinFrequencyRatio = usual.MinFrequencyRatio })),
            (now.SweepClearance > usual.SweepClearance, Limit(ChangedInput.SweepClearance, now.SweepClearance, usual.SweepClearance, p => p with { SweepClearance = usual.SweepClearance })),
            (now.KeepOutClearance > usual.KeepOutClearance, Limit(ChangedInput.KeepOutClearance, now.KeepOutClearance, usual.KeepOutClearance, p => p with { KeepOutClearance = usual.KeepOutClearance })),
            (now.OuterClearance > usual.OuterClearance, Limit(ChangedInput.OuterClearance, now.OuterClearance, usual.OuterClearance, p => p with { OuterClearance = usual.OuterClearance })),
            (now.FittingClearance > usual.FittingClearance, Limit(ChangedInput.FittingClearance, now.FittingClearance, usual.FittingClearance, p => p with { FittingClearance = usual.FittingClearance })),
            (now.MinWrap.Radians > usual.MinWrap.Radians, Limit(ChangedInput.MinWrap, now.MinWrap.Radians, usual.MinWrap.Radians, p => p with { MinWrap = usual.MinWrap })),
            (now.MinFreePlay > usual.MinFreePlay, Limit(ChangedInput.MinFreePlay, now.MinFreePlay, usual.MinFreePlay, p => p with { MinFreePlay = usual.MinFreePlay })),
            (now.MinOverTravel > usual.MinOverTravel, Limit(ChangedInput.MinOverTravel, now.MinOverTravel, usual.MinOverTravel, p => p with { MinOverTravel = usual.MinOverTravel })),
            (now.AdjusterReserve > usual.AdjusterReserve, Limit(ChangedInput.AdjusterReserve, now.AdjusterReserve, usual.AdjusterReserve, p => p with { AdjusterReserve = usual.AdjusterReserve })),
        ];
        return all.Where(l => l.IsStricter).Select(l => l.Edit);
    }
}
