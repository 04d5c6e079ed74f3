using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Pedals;
using BracketGen.Profiles;
using BracketGen.Profiles.Errors;
using BracketGen.TestSupport.Comparison;
using Tomlyn.Model;

namespace BracketGen.Bench.Same;

/// <summary>Changes a shipped vehicle: cable, its two ends, pedal and controller.</summary>
internal static class RandomVehicle
{
    /// <summary>Changes the table.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="body">How much larger the quadrant's radius has become, and about how much wire the rotation takes up (mm).</param>
    /// <param name="dice">The choices.</param>
    public static void Change(TomlTable vehicle, (double LargerRadius, double Pull) body, Dice dice)
    {
        var cable = vehicle.In("cable");
        cable["free_inner_length"] = dice.Reading(Toml.Number(cable["free_inner_length"]) + (2 * body.LargerRadius) + dice.Between(-8, 12), dice.Between(0.3, 1.5));
        cable["wire_diameter"] = dice.Length(dice.Between(1.2, 1.6));
        cable["fleet_limit"] = dice.Between(1, 4, 1);
        cable["least_bend_radius"] = dice.Length(dice.Between(40, 80, 0));
        MayBe(cable, "wander_limit", () => dice.Between(3, 8, 1), dice);
        MayBe(cable, "friction", () => dice.Reading(dice.Between(0.05, 0.18), dice.Between(0.01, 0.04)), dice);
        MayBe(cable, "total_bend", () => dice.Between(60, 200, 0), dice);
        MayBe(cable, "wire_modulus", () => dice.Between(120, 210, 0), dice);
        MayBe(cable, "wire_fill", () => dice.Between(0.4, 0.9), dice);
        MayBe(cable, "outer_length", () => dice.Length(dice.Between(430, 900, 0)), dice);
        cable["fitting"] = Fitting(dice);
        cable["outer_end"] = OuterEnd(dice);
        Pedal(vehicle.In("pedal"), body.Pull, dice);
        Controller(vehicle, dice);
    }

    private static void MayBe(TomlTable table, string key, Func<object> value, Dice dice)
    {
        table.Remove(key);
        if (dice.Percent(60))
        {
            table[key] = value();
        }
    }

    private static TomlTable Fitting(Dice dice)
    {
        var fitting = new TomlTable(inline: false) { ["kind"] = dice.Pick("barrel", "barrel", "nipple", "ball"), ["diameter"] = dice.Length(dice.Between(5, 8)) };
        if ((string)fitting["kind"] != "ball")
        {
            fitting["length"] = dice.Length(dice.Between(5, 9));
        }

        return fitting;
    }

    private static TomlTable OuterEnd(Dice dice)
    {
        TomlTable end = dice.Whole(0, 2) switch
        {
            0 => new(inline: false)
            {
                ["kind"] = "threaded adjuster", ["thread"] = dice.Pick("M8x1", "M8", "M6", "5/16-24"), ["across_flats"] = dice.Between(10, 14, 0), ["nut_height"] = dice.Length(dice.Between(3, 6)),
            },
            1 => new(inline: false) { ["kind"] = "plain ferrule", ["nose_diameter"] = dice.Length(dice.Between(7, 10)), ["shoulder_diameter"] = dice.Length(dice.Between(12, 16)) },
            _ => new(inline: false)
            {
                ["kind"] = "slotted clip", ["neck_diameter"] = dice.Length(dice.Between(8, 10)), ["collar_diameter"] = dice.Length(dice.Between(12, 16)), ["neck_length"] = dice.Between(3, 5.5, 1),
            },
        };
        if (end.ContainsKey("thread") || dice.Percent(80))
        {
            end["range"] = dice.Length(dice.Between(6, 20));
        }

        return end;
    }

    private static void Pedal(TomlTable pedal, double needed, Dice dice)
    {
        // Most pedals open the valve fully with a little to spare, some do not reach it or go far beyond.
        var pull = Math.Round(needed + (dice.Percent(85) ? dice.Between(4.2, 5.6) : dice.Between(-4, 12)), 1);
        pedal["available_pull"] = dice.Reading(pull, dice.Between(0.2, 0.6));
        pedal.Remove("lever_ratio");
        pedal.Remove("table");
        var ratio = dice.Between(2.6, 4);
        if (dice.Percent(65))
        {
            pedal["lever_ratio"] = ratio;
        }
        else
        {
            // A pedal that is quicker at the floor than at the start, or the other way round.
            var bend = dice.Between(-0.15, 0.15);
            pedal.SetList("table", [.. Enumerable.Range(0, 5).Select(i => i / 4.0).Select(u => new TomlTable(inline: false)
            {
                ["pad"] = Math.Round(u * pull * ratio, 1),
                ["pull"] = Math.Round(pull * (u + (bend * u * (1 - u))), 2),
            })]);
        }

        MayBe(pedal, "pad_load", () => dice.Reading(dice.Between(-3, 3), dice.Between(0.1, 0.5)), dice);
        MayBe(pedal, "proof_force", () => dice.Between(400, 1200, 0), dice);
    }

    private static void Controller(TomlTable vehicle, Dice dice)
    {
        vehicle.Remove("controller");
        if (dice.Percent(50))
        {
            var controller = new TomlTable(inline: false);
            MayBe(controller, "zero_volts", () => dice.Between(0.3, 0.5), dice);
            MayBe(controller, "least_volts", () => dice.Between(0.1, 0.32), dice);
            MayBe(controller, "most_volts", () => dice.Between(4.6, 4.95), dice);
            vehicle["controller"] = controller;
        }
    }
}
