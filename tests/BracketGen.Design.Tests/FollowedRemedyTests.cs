using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Design.Tests;

/// <summary>The remedies that are printed, followed as a person would: the job so changed, solved whole, has nothing that fails.</summary>
public class FollowedRemedyTests
{
    /// <summary>Ways to spoil a job.</summary>
    private static readonly (string Name, Func<Job, Job> Spoil)[] Ways =
    [
        ("cable too short", j => j with { Vehicle = j.Vehicle with { Cable = j.Vehicle.Cable with { FreeInnerLength = j.Vehicle.Cable.FreeInnerLength with { Value = 85 } } } }),
        ("only thin sheet", j => j with
        {
            Shop = j.Shop with { Stock = [new(j.Shop.Stock[0].Material, 1.5)] },
            Preferences = j.Preferences with { MinThickness = 1, Materials = [] },
        }),
        ("hardly any give", j => j with { Preferences = j.Preferences with { MaxGive = 0.01 } }),
        ("thick sheet excluded", j => j with { Preferences = j.Preferences with { MinThickness = 1, MaxThickness = 1.5, Materials = [] } }),
        ("fitting far from the stop", j => j with { Preferences = j.Preferences with { FittingClearance = 70 } }),
    ];

    [Fact]
    public void A_remedy_that_is_printed_works()
    {
        var followed = 0;
        var cases = Ways.SelectMany(w => Examples.All.Select(e => (w.Name, w.Spoil, Example: e))).ToList();
        foreach (var (name, spoil, example) in cases.Where((_, i) => i % (LongRun.Of(cases.Count) == cases.Count ? 7 : 10) == 2))
        {
            var job = spoil(Examples.Read(example)) with { Chosen = null };
            var solution = Designer.Solve(job, SearchEffort.BestOnly);
            foreach (var way in Diagnosis.Of(solution, SearchEffort.BestOnly)?.Ways ?? [])
            {
                if (way.Changes.Aggregate((Job?)job, (j, change) => j is null ? null : Followed(j, change)) is not { } mended)
                {
                    continue;
                }

                followed++;
                var after = Designer.Solve(mended, SearchEffort.BestOnly);
                Assert.True(after.NothingFails, $"{example}, {name}, {string.Join(" and ", way.Changes)}: {string.Join(", ", after.Verdict.Deciding.Select(c => c.Code))}");
            }
        }

        Assert.True(followed > 0, "No remedy was printed.");
    }

    // Null where only a whole profile shows how it is done: a pedal's or a quadrant's.
    private static Job? Followed(Job job, InputChange change)
    {
        var (cable, wanted) = (job.Vehicle.Cable, job.Preferences);
        Job With(Preferences preferences) => job with { Preferences = preferences };
        Job WithCable(Cable other) => job with { Vehicle = job.Vehicle with { Cable = other } };
        return change.Input switch
        {
            ChangedInput.FreeInnerLength => WithCable(cable with { FreeInnerLength = cable.FreeInnerLength with { Value = change.To } }),
            ChangedInput.AdjusterRange => WithCable(cable with
            {
                OuterEnd = cable.OuterEnd switch
                {
                    ThreadedAdjuster a => a with { Range = change.To },
                    PlainFerrule f => f with { Range = change.To },
                    SlottedClip c => c with { Range = change.To },
                    var other => other,
                },
            }),
            ChangedInput.OuterStiffness => WithCable(cable with { OuterAxialStiffness = new(change.To) }),
            ChangedInput.FreePlay => With(wanted with { FreePlay = wanted.FreePlay with { Value = change.To } }),
            ChangedInput.Stock => job with
            {
                Shop = job.Shop with { Stock = job.Shop.Stock.Add(new(job.Shop.Stock.Select(s => s.Material).First(m => m.Designation == change.What), change.To)) },
            },
            ChangedInput.MinThickness => With(wanted with { MinThickness = change.To }),
            ChangedInput.MaxThickness => With(wanted with { MaxThickness = change.To }),
            ChangedInput.Materials => With(wanted with { Materials = wanted.Materials.Add(change.What!) }),
            ChangedInput.MaxGive => With(wanted with { MaxGive = change.To }),
            ChangedInput.FittingClearance => With(wanted with { FittingClearance = change.To }),
            _ => null,
        };
    }
}
