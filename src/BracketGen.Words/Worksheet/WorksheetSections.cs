using System.Collections.Immutable;
using BracketGen.Units;

namespace BracketGen.Words.Worksheet;

/// <summary>What the worksheet asks, in the order in which one goes round the engine and then the vehicle.</summary>
public static class WorksheetSections
{
    /// <summary>The sections about the throttle body.</summary>
    public static ImmutableArray<WorksheetSection> OfThrottleBody(UnitSystem units)
    {
        string length = units.Symbol(Quantity.Length), torque = units.Symbol(Quantity.Torque);
        return
        [
            new(
                "1  Quadrant, seen from outside along the throttle shaft", SketchKind.Quadrant,
                "calliper, protractor or a photograph taken square on from two metres away.",
                "measuring to the bottom of the groove: A goes to the middle of the wire. Angles run counter-clockwise from x, whichever way the valve opens.",
                [
                    new("", "opens: clockwise or counter-clockwise", "", "opens"),
                    new("A", "pitch radius, to the middle of the wire", length, "pitch_radius", true),
                    new("B", "pocket angle, x axis to end fitting, valve closed", "deg", "pocket_angle", true),
                    new("C", "rotation, closed stop to wide-open stop", "deg", "rotation", true),
                    new("D", "groove extent, from the pocket on", "deg", "groove_extent"),
                    new("", "if not round about the shaft: section 8", "", "groove"),
                ]),
            new(
                "2  Quadrant from its edge", SketchKind.QuadrantEdge,
                "calliper; a drill shank for groove and slot.",
                "a groove worn wider at the top: measure where the wire lies.",
                [
                    new("E", "groove width", length, "groove_width"),
                    new("F", "thickness over the rims", length, "thickness"),
                    new("G", "outside radius over the rims", length, "outer_radius"),
                    new("", "width of the pocket slot", length, "slot_width"),
                    new("", "hub radius", length, "hub_radius"),
                    new("", "pocket for: barrel, ball or nipple", "", "kind"),
                    new("", "pocket: diameter, or width and length", length, "pocket"),
                    new("", "pocket: depth", length, "depth"),
                    new("", "pocket's axis: along or across the shaft", "", "axis"),
                ]),
            new(
                "3  Valve", SketchKind.Valve,
                "calliper; a protractor on the valve plate.",
                "measuring the bore at its bell mouth: measure at the valve plate.",
                [
                    new("H", "bore", length, "bore"),
                    new("I", "throttle shaft where it crosses the bore", length, "shaft_diameter"),
                    new("J", "closed angle of the valve plate", "deg", "closed_angle"),
                    new("", "sensor, valve on its closed stop", "V", "closed_volts"),
                    new("", "sensor, valve on its wide-open stop", "V", "open_volts"),
                    new("", "sensor, turn left in its slot, each way", "deg", "slot"),
                ]),
            new(
                "4  Return springs, cable off", SketchKind.Torque,
                "spring balance on a lever clamped to the throttle shaft, pulled square; closing torque = force x lever. Each spring alone with the others unhooked.",
                "reading while opening: drag is then in it. Read while it closes slowly: what the coils of the springs rub is then taken off. One spring in two coils is one spring.",
                [
                    new("", "all springs, closed stop", torque, "torque_closed", true),
                    new("", "all springs, wide-open stop", torque, "torque_open", true),
                    new("", "spring 1 alone, closed stop", torque, "each", true), new("", "spring 1 alone, wide-open stop", torque, "each", true),
                    new("", "spring 2 alone, closed stop", torque, "each", true), new("", "spring 2 alone, wide-open stop", torque, "each", true),
                    new("", "drag at the shaft: half of (opening - closing torque)", torque, "shaft_drag", true),
                ]),
            new(
                "5  Mount face: holes", SketchKind.Mount,
                "calliper from shaft and holes; a steel square.",
                "mixing up signs: x to the right, y up, z towards the viewer; left, below and behind are negative.",
                [
                    new("", "hole 1: x", length, "at"), new("", "hole 1: y", length, "at"), new("", "hole 1: z", length, "at"),
                    new("", "hole 2: x", length, "at"), new("", "hole 2: y", length, "at"), new("", "hole 2: z", length, "at"),
                    new("", "thread", "", "thread"), new("", "boss diameter", length, "boss_diameter"),
                ]),
            new(
                "6  Mount face: depth and normal", SketchKind.MountSide,
                "depth gauge from a straight-edge across the quadrant.",
                "measuring from the rim of the quadrant: z counts from the middle of the groove.",
                [
                    new("", "z of the bore's axis where it crosses the shaft's", length, "z"),
                    new("", "polar angle of the bore's axis", "deg", "direction"),
                    new("", "casting round the bore: outside diameter", length, "outside_diameter"),
                    new("", "casting, from the shaft that way", length, "ahead"), new("", "and the other way", length, "behind"),
                    new("", "normal, out of the casting: x", "", "normal"), new("", "normal: y", "", "normal"), new("", "normal: z", "", "normal"),
                ]),
            new(
                "7  Keep-outs for bracket, cable and quadrant (one for each)", SketchKind.KeepOut,
                "rule; make the boxes generous.",
                "forgetting what moves: hoses, the engine on its mounts, the bonnet.",
                [
                    new("", "what it is", "", "name"),
                    new("", "minimum x", length, "min"), new("", "minimum y", length, "min"), new("", "minimum z", length, "min"),
                    new("", "maximum x", length, "max"), new("", "maximum y", length, "max"), new("", "maximum z", length, "max"),
                ]),
            new(
                "8  Only for a groove that is not round about the shaft", SketchKind.GrooveTable,
                "calliper from the edge of the shaft (add half its diameter); a photograph square on for the angles.",
                "too few points where the radius changes fast; every radius goes to the middle of the wire.",
                [
                    new("", "radius at the pocket", length, "points"),
                    new("", "30° on from the pocket", length, "points"), new("", "60° on", length, "points"),
                    new("", "90° on", length, "points"), new("", "120° on", length, "points"), new("", "150° on", length, "points"),
                ]),
        ];
    }

    /// <summary>The sections about the vehicle.</summary>
    public static ImmutableArray<WorksheetSection> OfVehicle(UnitSystem units)
    {
        string length = units.Symbol(Quantity.Length), force = units.Symbol(Quantity.Force);
        return
        [
            new(
                "1  End of the cable", SketchKind.Cable,
                "rule and calliper; pull the wire taut by hand, pedal released, adjuster at mid range.",
                "measuring with the wire slack, or with the adjuster at one end of its range.",
                [
                    new("A", "free inner length, seat to fitting centre", length, "free_inner_length", true),
                    new("B", "wire diameter", length, "wire_diameter"),
                    new("C", "outer diameter", length, "outer_diameter"),
                    new("", "outer: inside diameter at a cut end", length, "outer_bore"),
                    new("", "strands x wires in each, at a cut end", "", "wire_construction"),
                    new("D", "end fitting: diameter", length, "diameter"),
                    new("", "end fitting: length, and kind (barrel, ball, nipple)", length, "length"),
                ]),
            new(
                "2  Outer end", SketchKind.OuterEnds,
                "calliper, thread gauge.",
                "mistaking a fine thread for the coarse one: measure the pitch over ten threads.",
                [
                    new("", "kind", "", "kind"),
                    new("", "thread and pitch, or nose or neck diameter", "", "thread"),
                    new("F", "nuts across flats, or shoulder or collar", length, "across_flats"),
                    new("", "nut height, or neck length", length, "nut_height"),
                    new("", "whole range of the adjuster", length, "range"),
                    new("", "minimum bend radius of the outer", length, "min_bend_radius"),
                    new("", "length of the outer, seat to bulkhead", length, "outer_length"),
                ]),
            new(
                "3  Pedal, carpet and mat in place", SketchKind.Pedal,
                "two rules: one at the pad, one at the end of the cable; someone to work the pedal.",
                "pressing past the carpet, or measuring the pull with slack in the wire.",
                [
                    new("A", "pad travel, released to floor", length, "lever_ratio"),
                    new("", "pull at the cable, whole stroke", length, "available_pull", true),
                    new("", "about a quarter down: pad", length, "table"), new("", "and the pull there", length, "table"),
                    new("", "about half down: pad", length, "table"), new("", "and the pull there", length, "table"),
                    new("", "about three quarters: pad", length, "table"), new("", "and the pull there", length, "table"),
                    new("", "the pedal's own force at the pad, cable off", force, "pad_load", true),
                ]),
            new(
                "4  Drag of the cable, outer routed as on the vehicle", SketchKind.Drag,
                "spring balance, pulled slowly over the whole stroke; after the car has stood, and cold if it matters. The largest reading counts, breaking away or moving.",
                "measuring the cable laid out straight on the bench: it drags less than in its bends.",
                [
                    new("A", "closing drag: pull at the fitting, pedal end unhooked", force, "closing_drag", true),
                    new("B", "opening drag: pull at the pedal end, fitting free", force, "opening_drag", true),
                    new("", "pull at B with a known weight on the fitting", force, "friction"),
                    new("", "and that weight: friction is ln((pull - B) / weight) / bends", force, "friction"),
                ]),
            new(
                "5  Bulkhead, engine in its final place", SketchKind.Bulkhead,
                "rule and plumb line from the throttle shaft; axes as on the sheet of the throttle body.",
                "measuring before the engine is on its mounts.",
                [
                    new("", "point: x", length, "point"), new("", "point: y", length, "point"), new("", "point: z", length, "point"),
                    new("", "direction out of it: x", "", "direction"), new("", "direction: y", "", "direction"), new("", "direction: z", "", "direction"),
                    new("", "body moves as the engine rocks, each way: x", length, "x"), new("", "y", length, "y"), new("", "z", length, "z"),
                    new("", "and turns about the crankshaft, each way", "deg", "roll"),
                ]),
        ];
    }

    /// <summary>The readings after fitting.</summary>
    public static WorksheetSection AfterFitting(UnitSystem units)
    {
        var length = units.Symbol(Quantity.Length);
        return new(
            "Readings after fitting, engine off", SketchKind.Fitted,
            "voltmeter at the sensor, rule; pedal worked by foot, not by hand.",
            "reading with the engine running, or with the floor mat taken out.",
            [
                new("", "sensor set, cable off, closed stop", "V", "--volts-stop"),
                new("", "sensor, pedal released", "V", "--volts-closed"),
                new("", "sensor, pedal on the floor", "V", "--volts-floored"),
                new("A", "free play, pedal released", length, "--free-play"),
                new("", "pad travel, released to floor", length, "--pedal-travel"),
            ]);
    }
}
