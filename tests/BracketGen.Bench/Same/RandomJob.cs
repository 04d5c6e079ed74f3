using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Profiles;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;
using Tomlyn.Model;

namespace BracketGen.Bench.Same;

/// <summary>Random jobs made from the shipped ones: most have a bracket, not all of them a good one.</summary>
internal static class RandomJob
{
    private static readonly string[] Jobs = ["dunlin-hornbeam-70", "dunlin-rowan-64", "plover-alder-58", "whimbrel-hornbeam-70"];

    /// <summary>The job with that number: the same for the same seed and shipped profiles.</summary>
    public static JobTables Make(int seed, int number, IReadOnlyDictionary<string, string> newNames)
    {
        var dice = new Dice(seed, number);
        var (tables, other) = (JobTables.Shipped(dice.Pick(Jobs), newNames), JobTables.Shipped(dice.Pick(Jobs), newNames));
        if (dice.Percent(20))
        {
            tables = tables with { Vehicle = other.Vehicle };
        }

        tables = tables with { Name = string.Create(CultureInfo.InvariantCulture, $"random-{number:000}") };
        RandomVehicle.Change(tables.Vehicle, RandomBody.Change(tables.Body, dice), dice);
        RandomShop.Change(tables.Shop, dice);
        Change(tables, dice);
        return tables;
    }

    /// <summary>A job that uses every key with a new name, to find out which names a program knows.</summary>
    public static JobTables WithEveryRenamedKey(IReadOnlyDictionary<string, string> newNames)
    {
        var tables = JobTables.Shipped("plover-alder-58", newNames) with { Name = "every-key" };
        tables.Vehicle["controller"] = new TomlTable(inline: false) { ["least_volts"] = 0.2, ["most_volts"] = 4.8 };
        foreach (var (key, value) in Preferences(tables.Shop, new(0, 0)).Where(p => newNames.ContainsKey(p.Key)))
        {
            tables.Job.In("preferences")[key] = value();
        }

        return tables;
    }

    private static void Change(JobTables tables, Dice dice)
    {
        var job = tables.Job;
        job["units"] = dice.Pick("mm", "in");
        var preferences = new TomlTable(inline: false);
        foreach (var (key, value) in Preferences(tables.Shop, dice))
        {
            if (dice.Percent(40))
            {
                preferences[key] = value();
            }
        }

        job["preferences"] = preferences;
        job.Remove("bulkhead");
        if (dice.Percent(50))
        {
            // The outer of a body that opens clockwise leaves at the bottom.
            var side = (string)tables.Body["opens"] == "clockwise" ? -1 : 1;
            job["bulkhead"] = new TomlTable(inline: false)
            {
                ["point"] = Toml.Array(dice.Between(-520, -380, 0), side * dice.Between(60, 200, 0), dice.Between(-200, 20, 0)),
                ["direction"] = Toml.Array(dice.Between(0.6, 1), dice.Between(-0.4, 0.4), dice.Between(-0.5, 0.5)),
            };
        }

        var document = job.In("document");
        document["projection"] = dice.Pick("first angle", "third angle");
        document["paper"] = dice.Pick("A3", "A4", "B", "A");
    }

    private static IEnumerable<(string Key, Func<object> Value)> Preferences(TomlTable shop, Dice dice) =>
    [
        ("free_play", () => dice.Reading(dice.Between(1.4, 2.6), dice.Between(0.2, 0.5))),
        ("least_free_play", () => dice.Length(dice.Between(0.3, 1.1))),
        ("over_travel_reserve", () => dice.Between(0.2, 0.8)),
        ("most_over_travel", () => dice.Length(dice.Between(3.5, 8))),
        ("least_wrap", () => dice.Between(5, 20, 1)),
        ("fitting_clearance", () => dice.Length(dice.Between(3, 9))),
        ("sweep_clearance", () => dice.Length(dice.Between(2, 5))),
        ("keep_out_clearance", () => dice.Length(dice.Between(1, 4))),
        ("adjuster_reserve", () => dice.Between(0.1, 0.6)),
        ("stop_opening", () => dice.Pick("as needed", "hole", "open slot")),
        ("materials", () => Toml.Array(dice.Some([.. shop.ListIn("materials").Select(m => m["designation"])], 1, 50))),
        ("least_thickness", () => dice.Between(1, 2, 1)),
        ("most_thickness", () => dice.Between(3, 5, 1)),
        ("corner_radius", () => dice.Length(dice.Between(2, 8))),
        ("least_yield_factor", () => dice.Between(1.1, 1.8)),
        ("least_endurance_factor", () => dice.Between(1.2, 2.5)),
        ("most_give", () => dice.Between(0.05, 0.5)),
    ];
}
