using BracketGen.Mechanism.Grooves;
using BracketGen.Profiles;
using BracketGen.Profiles.Errors;
using BracketGen.TestSupport.Comparison;
using Tomlyn.Model;

namespace BracketGen.Bench.Same;

/// <summary>Changes a shipped throttle body so that most still take a bracket: groove, springs, mount, keep-outs, and the side it opens to.</summary>
internal static class RandomBody
{
    private static readonly string[] Corners = ["least", "most"], Ends = ["from", "to"];

    /// <summary>Changes the table.</summary>
    /// <returns>
    /// How much larger the groove's radius is (mm): the cable must be longer by about twice as much; and about how much wire the
    /// rotation takes up (mm).
    /// </returns>
    public static (double LargerRadius, double Pull) Change(TomlTable body, Dice dice)
    {
        var taken = Groove(body.In("quadrant"), dice);
        Springs(body.In("return_springs"), dice);
        Mount(body.In("mount"), dice);
        KeepOuts(body, dice);
        WhatMayBeLeftOut(body, dice);
        if (dice.Percent(40))
        {
            Mirror(body);
        }

        return taken;
    }

    private static (double LargerRadius, double Pull) Groove(TomlTable quadrant, Dice dice)
    {
        var old = Toml.Number(quadrant.TryGetValue("pitch_radius", out var pitch) ? pitch : quadrant.In("groove")["radius"]);
        var radius = Math.Round(old * dice.Between(0.9, 1.1), 2);
        var (offset, direction) = (dice.Between(0.3, 2.5), dice.Between(-180, 180, 0));
        var pocket = Toml.Number(quadrant["pocket_angle"]) + dice.Between(-10, 10);
        var extent = Toml.Number(quadrant["groove_extent"]) + dice.Between(-8, 15);
        quadrant.Remove("pitch_radius");
        quadrant.Remove("groove");
        var shape = dice.Whole(0, 3);
        if (shape <= 1)
        {
            (offset, quadrant["pitch_radius"]) = (0, dice.Reading(radius, dice.Between(0.05, 0.4)));
        }
        else
        {
            quadrant["groove"] = shape == 2
                ? new TomlTable(inline: false)
                {
                    ["shape"] = "eccentric circle", ["radius"] = dice.Reading(radius, dice.Between(0.05, 0.4)), ["offset"] = offset, ["direction"] = direction,
                }
                : Table(radius, offset, direction, pocket, extent, dice);
        }

        var rotation = dice.Between(72, 90);
        quadrant["rotation"] = dice.Reading(rotation, dice.Between(0.3, 1.5));
        quadrant["pocket_angle"] = dice.Reading(pocket, 1);
        quadrant["groove_extent"] = extent;
        quadrant["outer_radius"] = dice.Length(radius + offset + dice.Between(2.5, 4.5));
        quadrant["thickness"] = dice.Length(dice.Between(7, 11));
        if (dice.Percent(15))
        {
            quadrant.Remove("hub_radius");
        }

        return (radius - old, radius * rotation * Math.PI / 180);
    }

    // The same eccentric circle as readings of the radius every 20 degrees.
    private static TomlTable Table(double radius, double offset, double direction, double pocket, double extent, Dice dice)
    {
        var points = new TomlTableArray();
        for (var angle = Math.Floor(pocket) - 40; angle < Math.Min(pocket + extent + 40, Math.Floor(pocket) + 300); angle += 20)
        {
            var turn = (angle - direction) * Math.PI / 180;
            var at = (offset * Math.Cos(turn)) + Math.Sqrt((radius * radius) - Math.Pow(offset * Math.Sin(turn), 2));
            points.Add(new TomlTable(inline: false) { ["angle"] = angle, ["radius"] = Math.Round(at, 3) });
        }

        var table = new TomlTable(inline: false) { ["shape"] = "table", ["points"] = points };
        if (dice.Percent(50))
        {
            table["plus_minus"] = dice.Between(0.05, 0.3);
        }

        return table;
    }

    private static void Springs(TomlTable springs, Dice dice)
    {
        var closed = dice.Between(0.45, 1);
        springs["torque_closed"] = dice.Reading(closed, 0.1 * closed);
        springs["torque_open"] = dice.Reading(closed * dice.Between(1.1, 2.4), 0.1 * closed);
        springs["count"] = dice.Percent(80) ? 2 : dice.Whole(1, 4);
    }

    private static void Mount(TomlTable mount, Dice dice)
    {
        double[] normal = [.. Vector(mount["normal"])], by = [dice.Between(-6, 6), dice.Between(-6, 6), dice.Between(-4, 4)];
        var holes = mount.ListIn("holes");
        var thread = dice.Pick("M5", "M6", "M6", "M8");
        foreach (var hole in holes)
        {
            hole["at"] = Toml.Array(Vector(hole["at"]).Zip(by, (a, b) => (object)Math.Round(a + b, 3)));
            hole["thread"] = thread;
            hole["boss_diameter"] = dice.Length(dice.Between(13, 18));
        }

        // Between the two and off their line, in the plane of the face.
        if (dice.Percent(25) && holes.Count > 1)
        {
            double[] a = [.. Vector(holes[0]["at"])], b = [.. Vector(holes[1]["at"])], along = [.. a.Zip(b, (p, q) => q - p)];
            double[] beside = [(normal[1] * along[2]) - (normal[2] * along[1]), (normal[2] * along[0]) - (normal[0] * along[2]), (normal[0] * along[1]) - (normal[1] * along[0])];
            var share = dice.Between(-0.6, 0.6);
            holes.Add(new TomlTable(inline: false)
            {
                ["at"] = Toml.Array(Enumerable.Range(0, 3).Select(i => (object)Math.Round(a[i] + (0.5 * along[i]) + (share * beside[i]), 3))),
                ["thread"] = thread,
                ["boss_diameter"] = 15.0,
            });
        }
        else if (dice.Percent(15))
        {
            holes.RemoveAt((int)dice.Whole(0, holes.Count - 1));

            // One bolt leaves the face free to lean.
            mount["normal"] = Toml.Array(normal.Select(n => (object)(n + dice.Between(-0.25, 0.25))));
        }

        mount.SetList("holes", holes);
    }

    private static void KeepOuts(TomlTable body, Dice dice)
    {
        var kept = dice.Some(body.ListIn("keep_out"), 0, 80);
        foreach (var keepOut in kept)
        {
            double[] by = [dice.Between(-6, 6), dice.Between(-6, 6), dice.Between(-4, 4)];
            foreach (var key in keepOut.ContainsKey("radius") ? Ends : Corners)
            {
                keepOut[key] = Toml.Array(Vector(keepOut[key]).Zip(by, (a, b) => (object)Math.Round(a + b, 3)));
            }
        }

        if (dice.Percent(35))
        {
            double[] corner = [dice.Between(-140, 60), dice.Between(-80, 90), dice.Between(-70, 10)];
            kept.Add(new TomlTable(inline: false)
            {
                ["name"] = "bracket of the air hose",
                ["shape"] = "box",
                ["least"] = Toml.Array(corner.Select(c => (object)c)),
                ["most"] = Toml.Array(corner.Select(c => (object)(c + dice.Between(5, 40)))),
            });
        }

        if (dice.Percent(20))
        {
            double[] from = [dice.Between(-140, 60), dice.Between(-80, 90), dice.Between(-70, 10)];
            kept.Add(new TomlTable(inline: false)
            {
                ["name"] = "hose",
                ["shape"] = "cylinder",
                ["from"] = Toml.Array(from.Select(c => (object)c)),
                ["to"] = Toml.Array(from.Select(c => (object)(c + dice.Between(10, 60)))),
                ["radius"] = dice.Length(dice.Between(4, 15)),
            });
        }

        body.SetList("keep_out", kept);
    }

    private static void WhatMayBeLeftOut(TomlTable body, Dice dice)
    {
        body.In("valve")["closed_angle"] = dice.Between(3, 12, 1);
        var engine = body.In("engine");
        engine["cylinders"] = dice.Whole(2, 8);
        engine["most_speed"] = dice.Whole(40, 90) * 100;
        if (dice.Percent(20))
        {
            engine["cycle"] = dice.Pick("four-stroke", "two-stroke");
        }

        var (low, high) = (dice.Between(0.47, 0.8), dice.Between(4, 4.55));
        var sensor = body.In("sensor");
        (sensor["closed_volts"], sensor["open_volts"]) = dice.Percent(95) ? (low, high) : (high, low);
        foreach (var key in new[] { "valve", "engine", "sensor" }.Where(_ => dice.Percent(12)))
        {
            body.Remove(key);
        }
    }

    // The whole body in the plane y = 0: it opens to the other side.
    private static void Mirror(TomlTable body)
    {
        body["opens"] = (string)body["opens"] == "clockwise" ? "counter-clockwise" : "clockwise";
        var (quadrant, mount) = (body.In("quadrant"), body.In("mount"));
        quadrant["pocket_angle"] = Negative(quadrant["pocket_angle"]);
        if (quadrant.TryGetValue("groove", out var groove))
        {
            var shape = (TomlTable)groove;
            if (shape.TryGetValue("direction", out var direction))
            {
                shape["direction"] = Negative(direction!);
            }

            var points = shape.ListIn("points");
            points.Reverse();
            foreach (var point in points)
            {
                point["angle"] = Negative(point["angle"]);
            }

            shape.SetList("points", points);
        }

        mount["normal"] = Mirrored(mount["normal"]);
        foreach (var hole in mount.ListIn("holes"))
        {
            hole["at"] = Mirrored(hole["at"]);
        }

        foreach (var keepOut in body.ListIn("keep_out"))
        {
            var isBox = !keepOut.ContainsKey("radius");
            foreach (var key in isBox ? Corners : Ends)
            {
                keepOut[key] = Mirrored(keepOut[key]);
            }

            if (isBox)
            {
                var (least, most) = ((TomlArray)keepOut["least"], (TomlArray)keepOut["most"]);
                (least[1], most[1]) = (most[1], least[1]);
            }
        }
    }

    private static object Negative(object value)
    {
        if (value is TomlTable reading)
        {
            reading["value"] = Negative(reading["value"]);
            return reading;
        }

        return -Toml.Number(value);
    }

    private static TomlArray Mirrored(object vector) => Toml.Array(Vector(vector).Select((c, i) => (object)(i == 1 ? -c : c)));

    private static IEnumerable<double> Vector(object vector) => ((TomlArray)vector).Select(Toml.Number);
}
