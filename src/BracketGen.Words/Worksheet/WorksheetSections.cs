using System.Collections.Immutable;
using BracketGen.Units;

namespace BracketGen.Words.Worksheet;

/// <summary>What the worksheet asks, in the order in which one goes round the engine and then the vehicle.</summary>
/// <remarks>The letters run through the sections of a profile. I and O are left out: they look like 1 and 0.</remarks>
public static class WorksheetSections
{
    private const string Alphabet = "ABCDEFGHJKLMNPQRSTUVWXYZ", Degrees = "deg", Volts = "V";

    /// <summary>The sections about the throttle body.</summary>
    public static ImmutableArray<WorksheetSection> OfThrottleBody(UnitSystem units)
    {
        string length = units.Symbol(Quantity.Length), torque = units.Symbol(Quantity.Torque);
        return Lettered(
        [
            new(
                "1  Quadrant, seen from outside along the throttle shaft", SketchKind.Quadrant,
                "calliper, protractor or a photograph taken square on from two metres away.",
                "measuring to the bottom of the groove: the pitch radius goes to the middle of the wire. Angles run counter-clockwise from x, whichever way the valve opens.",
                [
                    Word("opens", "opens: clockwise or counter-clockwise"),
                    Repeated("pitch_radius", "pitch radius, to the middle of the wire", length),
                    Repeated("pocket_angle", "pocket angle, x axis to end fitting, valve closed", Degrees),
                    Repeated("rotation", "rotation, closed stop to wide-open stop", Degrees),
                    Once("groove_extent", "groove extent, from the pocket on", Degrees),
                    Once("hub_radius", "hub radius", length),
                    Word("groove", "groove: round about the shaft, or section 9 or 10"),
                ]),
            new(
                "2  Quadrant from its edge", SketchKind.QuadrantEdge,
                "calliper; a drill shank for the groove.",
                "a groove worn wider at the top: measure where the wire lies.",
                [
                    Once("groove_width", "groove width", length),
                    Once("thickness", "thickness over the rims", length),
                    Once("outer_radius", "outside radius over the rims", length),
                ]),
            new(
                "3  Pocket of the end fitting", SketchKind.Pocket,
                "calliper and its depth rod; a drill shank for the slot.",
                "a burr or wear at the mouth of the pocket: measure inside it.",
                [
                    Word("kind", "pocket for: barrel, ball or nipple"),
                    Once("diameter", "barrel or ball: diameter", length),
                    Once("slot_width", "width of the slot", length),
                    Once("length", "nipple: length along the wire", length),
                    Once("width", "nipple: width across it", length),
                    Once("depth", "depth from the quadrant's face", length),
                    Word("axis", "barrel's axis: along or across the shaft"),
                ]),
            new(
                "4  Valve and sensor", SketchKind.Valve,
                "calliper; a protractor on the valve plate; a voltmeter.",
                "measuring the bore at its bell mouth: measure at the valve plate.",
                [
                    Once("bore", "bore", length),
                    Once("shaft_diameter", "throttle shaft where it crosses the bore", length),
                    Once("closed_angle", "closed angle of the valve plate", Degrees),
                    Once("slot", "sensor, turn left in its slot, the shorter way", Degrees),
                    Unseen(Once("closed_volts", "sensor, valve on its closed stop", Volts)),
                    Unseen(Once("open_volts", "sensor, valve on its wide-open stop", Volts)),
                ]),
            new(
                "5  Return springs, cable off", SketchKind.Torque,
                "spring balance on a lever clamped to the throttle shaft, pulled square; closing torque = force x lever. Each spring alone with the others unhooked.",
                "reading while opening: drag is then in it. Read while it closes slowly: what the coils of the springs rub is then taken off. One spring in two coils is one spring.",
                [
                    Repeated("torque_closed", "all springs, closed stop", torque),
                    Repeated("torque_open", "all springs, wide-open stop", torque),
                    Repeated("shaft_drag", "drag at the shaft: half of (opening - closing torque)", torque),
                    Repeated("torque_closed", "spring 1 alone, closed stop", torque) with { Item = 1, Mark = "1 closed" },
                    Repeated("torque_open", "spring 1 alone, wide-open stop", torque) with { Item = 1, Mark = "1 open" },
                    Repeated("torque_closed", "spring 2 alone, closed stop", torque) with { Item = 2, Mark = "2 closed" },
                    Repeated("torque_open", "spring 2 alone, wide-open stop", torque) with { Item = 2, Mark = "2 open" },
                ]),
            new(
                "6  Mount face: holes and normal", SketchKind.Mount,
                "calliper from shaft and holes; a steel square; a depth gauge from a straight-edge across the quadrant.",
                "mixing up signs: x to the right, y up, z towards the viewer; left, below and behind are negative. z counts from the middle of the groove, not from the rim.",
                [
                    Hole(1, "x", length), Hole(1, "y", length), Hole(1, "z", length),
                    Hole(2, "x", length), Hole(2, "y", length), Hole(2, "z", length),
                    OfHoles("thread", "thread", ""),
                    OfHoles("boss_diameter", "boss diameter", length),
                    Unseen(OfHoles("thread_depth", "depth of full thread", length)),
                    Unseen(Once("flatness", "flatness: feeler gauge under a straight edge", length)),
                    Point("normal", "normal, out of the casting", ""),
                ]),
            new(
                "7  Bore's axis and casting", SketchKind.BoreAxis,
                "depth gauge from a straight-edge across the quadrant; calliper, protractor.",
                "measuring z from the rim of the quadrant: z counts from the middle of the groove, negative behind it.",
                [
                    Once("z", "z where the bore's axis crosses the shaft's", length),
                    Once("outside_diameter", "casting round the bore: outside diameter", length),
                    Once("direction", "polar angle of the bore's axis", Degrees),
                    Once("ahead", "casting, from the shaft that way", length),
                    Once("behind", "casting, from the shaft the other way", length),
                ]),
            new(
                "8  Keep-outs for bracket, cable and quadrant (one for each)", SketchKind.KeepOut,
                "rule; make the boxes generous.",
                "forgetting what moves: hoses, the engine on its mounts, the bonnet.",
                [
                    Word("name", "what it is"),
                    Point("min", "minimum corner", length),
                    Point("max", "maximum corner", length),
                ]),
            new(
                "9  Only for a groove that is round about a centre beside the shaft", SketchKind.EccentricGroove,
                "calliper from the edge of the shaft (add half its diameter); a photograph square on for the angle.",
                "radii to the bottom of the groove: they go to the middle of the wire.",
                [
                    Repeated("radius", "radius of the groove about its own centre", length),
                    Once("offset", "that centre from the shaft's axis", length),
                    Once("direction", "polar angle of that centre, valve closed", Degrees),
                ]),
            new(
                "10  Only for any other groove that is not round about the shaft", SketchKind.GrooveTable,
                "as in section 9. Write down the angles, from x, if you take other points.",
                "too few points where the radius changes fast; every radius goes to the middle of the wire.",
                [
                    Radius("radius at the pocket", length, 0),
                    Radius("30° on", length, 30), Radius("60° on", length, 60), Radius("90° on", length, 90),
                    Radius("120° on", length, 120), Radius("150° on", length, 150),
                    Unseen(new("plus_minus", "one ± for all radii: the largest", length, [Blank.PlusMinus])),
                ]),
        ]);
    }

    /// <summary>The sections about the vehicle.</summary>
    public static ImmutableArray<WorksheetSection> OfVehicle(UnitSystem units)
    {
        string length = units.Symbol(Quantity.Length), force = units.Symbol(Quantity.Force), mass = units.Symbol(Quantity.Mass);
        return Lettered(
        [
            new(
                "1  End of the cable", SketchKind.Cable,
                "rule and calliper; pull the wire taut by hand, pedal released, adjuster at mid range.",
                "measuring with the wire slack, or with the adjuster at one end of its range.",
                [
                    Repeated("free_inner_length", "free inner length, seat to fitting centre", length),
                    Once("wire_diameter", "wire diameter", length),
                    Once("outer_diameter", "outer diameter", length),
                    Once("outer_bore", "outer: inside diameter at a cut end", length),
                    Word("wire_construction", "strands x wires in each, at a cut end"),
                    Word("kind", "end fitting: barrel, ball or nipple"),
                    Once("diameter", "end fitting: diameter", length),
                    Once("length", "end fitting: length along its own axis", length),
                ]),
            new(
                "2  Outer end", SketchKind.OuterEnds,
                "calliper, thread gauge, kitchen scale.",
                "mistaking a fine thread for the coarse one: measure the pitch over ten threads.",
                [
                    Word("kind", "kind: adjuster, ferrule, clip, or another"),
                    Word("thread", "adjuster: thread and pitch") with { Mark = "thread" },
                    Once("across_flats", "locknuts: width across flats", length),
                    Once("nut_height", "one locknut: height", length),
                    Once("range", "range: free thread, nuts at one end", length),
                    Once("nose_diameter", "ferrule: nose diameter", length),
                    Once("shoulder_diameter", "ferrule: shoulder diameter", length),
                    Once("neck_diameter", "clip: neck diameter", length),
                    Once("collar_diameter", "clip: collar diameter", length),
                    Once("neck_length", "clip: neck length", length),
                    Unseen(new("grip", "another kind (see begin)", length, ["", "", "", ""])),
                    Unseen(Once("outer_end_mass", "the end with its nuts or clip, weighed", mass)),
                    Unseen(Once("outer_mass_per_metre", "one metre of the outer, weighed", mass)),
                ]),
            new(
                "3  Pedal, carpet and mat in place", SketchKind.Pedal,
                "two rules: one at the pad, one at the end of the cable; someone to work the pedal. Lever ratio = pad travel / pull.",
                "pressing past the carpet, or measuring the pull with slack in the wire.",
                [
                    Once("lever_ratio", "pad travel, released to floor", length),
                    Repeated("available_pull", "pull at the cable, whole stroke", length),
                    Repeated("pad_load", "the pedal's own force at the pad, cable off", force),
                    Pair("about a quarter down", length), Pair("about half down", length), Pair("about three quarters down", length),
                ]),
            new(
                "4  Bulkhead, engine in its final place", SketchKind.Bulkhead,
                "rule and plumb line from the throttle shaft; axes as on the sheet of the throttle body.",
                "measuring before the engine is on its mounts.",
                [
                    Point("point", "point where the outer comes out", length),
                    Point("direction", "direction out of it", ""),
                    Point("up", "which way is up, by the plumb line", ""),
                    Repeated("outer_length", "length of the outer, seat to bulkhead", length),
                    Once("min_bend_radius", "minimum bend radius of the outer", length),
                    Point("engine_movement", "body moves as the engine rocks, each way", length),
                    Once("roll", "and turns about the crankshaft, each way", Degrees),
                ]),
            new(
                "5  Drag of the cable, outer routed as on the vehicle", SketchKind.Drag,
                "spring balance, pulled slowly over the whole stroke; after the car has stood, and cold if it matters. The largest reading of a stroke counts, breaking away or moving.",
                "measuring the cable laid out straight on the bench: it drags less than in its bends.",
                [
                    Repeated("closing_drag", "closing drag: pull at the fitting, pedal end unhooked", force),
                    Repeated("opening_drag", "opening drag: pull at the pedal end, fitting free", force),
                    Repeated("friction", "pull at the pedal end with a known weight on the fitting", force) with { Mark = "pull" },
                    Once("friction", "that weight; friction is ln((pull - opening drag) / weight) / bends in radians", force) with { Mark = "weight" },
                ]),
            new(
                "6  Stiffness of the outer, routed as on the vehicle", SketchKind.OuterStiffness,
                "dial gauge or calliper; weights. Hold the fitting fast, hang a small weight on the pedal end and read; add the large one and read again. Stiffness = "
                    + "weight x length of the outer / (movement - stretch of the wire). The wire stretches by weight x its length / (its modulus x its fill x its area): " + (units == UnitSystem.Inch ? "20 lbf stretch 36 in of .059 in wire by .015 in." : "100 N stretch 1 m of 1.5 mm wire by 0.47 mm."),
                "reading from slack: the first weight takes up the slack, only the second counts. A fitting or a stop that moves reads as a soft outer.",
                [
                    Repeated("outer_axial_stiffness", "movement at the pedal end as the weight is added", length) with { Mark = "movement" },
                    Once("outer_axial_stiffness", "weight added", force) with { Mark = "weight" },
                ]),
            new(
                "7  Other cables at throttle or pedal (one for each)", SketchKind.OtherCable,
                "a lamp; follow each cable from end to end by hand. Calliper.",
                "leaving one hooked to the pedal, or its loose end by the quadrant.",
                [
                    Word("name", "name you give it"),
                    Word("does", "cruise, kick-down, hand throttle, idle-up, other"),
                    Word("from", "where it comes from, and what pulls it"),
                    Word("on_pedal", "an end of it hooked to the pedal: yes or no"),
                    Once("diameter", "its end fitting: diameter", length),
                    Once("length", "its end fitting: length along its own axis", length),
                ]),
        ]);
    }

    /// <summary>The readings after fitting.</summary>
    public static WorksheetSection AfterFitting(UnitSystem units)
    {
        var length = units.Symbol(Quantity.Length);
        return Lettered(
        [
            new(
                "Readings after fitting, engine off", SketchKind.Fitted,
                "voltmeter at the sensor, rule; pedal worked by foot, not by hand.",
                "reading with the engine running, or with the floor mat taken out.",
                [
                    Unseen(Settings("--volts-stop", "sensor set, cable off, closed stop", Volts)),
                    Unseen(Settings("--volts-closed", "sensor, pedal released", Volts)),
                    Unseen(Settings("--volts-floored", "sensor, pedal on the floor", Volts)),
                    Settings("--free-play", "free play, pedal released", length),
                    Settings("--pedal-travel", "pad travel, released to floor", length),
                ]),
        ])[0];
    }

    // A, B, ... Z, AA, AB, ...
    private static string Letter(int number) =>
        (number < Alphabet.Length ? "" : Letter(number / Alphabet.Length - 1)) + Alphabet[number % Alphabet.Length];

    private static ImmutableArray<WorksheetSection> Lettered(ImmutableArray<WorksheetSection> sections)
    {
        var next = 0;
        return [.. sections.Select(s => s with { Blanks = [.. s.Blanks.Select(b => b.Mark.Length == 0 ? b : b with { Letter = Letter(next++) })] })];
    }

    private static Blank Once(string key, string what, string unit) => new(key, what, unit, [""]);

    // A quantity that the profile takes with its ±: the sheet asks for three readings of it, common practice.
    private static Blank Repeated(string key, string what, string unit) => new(key, what, unit, ["", "", "", Blank.PlusMinus]);

    // After fitting every reading is taken again after each turn of the adjuster.
    private static Blank Settings(string key, string what, string unit) => new(key, what, unit, ["", "", ""]);

    private static Blank Word(string key, string what) => Unseen(new(key, what, "", [""]));

    private static Blank Point(string key, string what, string unit) => new(key, what, unit, ["x", "y", "z"]);

    private static Blank Hole(int number, string axis, string unit) =>
        Repeated("at", $"H{number}: {axis}", unit) with { Item = number, Mark = $"{number}{axis}" };

    private static Blank OfHoles(string key, string what, string unit) => new(key, what, unit, ["H1", "H2"]);

    // All radii share one ±, which has a row of its own.
    private static Blank Radius(string what, string unit, int on) => new("points", what, unit, ["", "", ""]) { Mark = $"{on}" };

    private static Blank Pair(string what, string unit) => Unseen(new("table", what, unit, ["pad", "pull"]));

    private static Blank Unseen(Blank blank) => blank with { Mark = "" };
}
