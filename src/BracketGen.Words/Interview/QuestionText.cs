using System.Globalization;
using BracketGen.Profiles.Interview;

namespace BracketGen.Words.Interview;

/// <summary>The questions of the interview as sentences: what is asked, and how to measure it.</summary>
public static class QuestionText
{
    private const string Calliper = "Measure with a calliper.";

    /// <summary>The question.</summary>
    public static string Ask(Question question) => Of(question).Ask;

    /// <summary>What the answer is and how to measure it.</summary>
    public static string Explain(Question question) => Of(question).Explain;

    private static (string Ask, string Explain) Of(Question question) => question.Id switch
    {
        <= QuestionId.ZeroVolts => OfVehicle(question.Id, question.Item.ToString(CultureInfo.InvariantCulture)),
        <= QuestionId.GrooveDirection => OfQuadrant(question.Id, question.Item.ToString(CultureInfo.InvariantCulture)),
        <= QuestionId.IdleSpeed => OfThrottleBody(question.Id, question.Item.ToString(CultureInfo.InvariantCulture)),
        <= QuestionId.KFactor => ShopQuestionText.Of(question),
        _ => JobQuestionText.Of(question),
    };

    private static (string Ask, string Explain) OfVehicle(QuestionId id, string item) => id switch
    {
        QuestionId.VehicleName => ("Name of the vehicle?", "It is printed on drawings and reports."),
        QuestionId.WireDiameter => ("Wire diameter?", "Measure the bare wire with a calliper."),
        QuestionId.OuterDiameter => ("Outer diameter?", "Measure the outer with a calliper."),
        QuestionId.OuterBore => ("Inside diameter of the outer?", "Try drill shanks in a cut end, liner in place. Leave empty if you cannot measure it."),
        QuestionId.WireConstruction => (
            "How is the wire stranded?", "Strands times wires in each: cut off an end and count them. Leave empty if you cannot tell."),
        QuestionId.FreeInnerLength => (
            "Free inner length?",
            "From the stop's seat to the end fitting's centre: adjuster at mid range, pedal released, wire pulled taut by hand. Give the ± too: 138 +/- 1."),
        QuestionId.FleetLimit => ("Maximum fleet angle?", "How far the wire may lean out of the plane of the groove, in degrees."),
        QuestionId.MinBendRadius => ("Minimum bend radius of the outer?", "The tightest bend in which the wire still slides freely."),
        QuestionId.OuterLength => ("Length of the outer, seat to bulkhead?", "Needed only to check the route to the bulkhead."),
        QuestionId.FittingKind => ("Which end fitting is on the wire?", "A barrel lies across the wire, a nipple along it."),
        QuestionId.FittingDiameter => ("Diameter of the end fitting?", Calliper),
        QuestionId.FittingLength => ("Length of the end fitting?", "Measure along its own axis."),
        QuestionId.OuterEndKind => (
            "Which outer end does the cable have at the bracket?",
            "A threaded adjuster with two locknuts; a plain ferrule with a shoulder; a slotted clip, a neck between two collars that slides into an open slot; a bulkhead ferrule, a short thread with two nuts that sets nothing; "
                + "a clipped ferrule, whose nose is held by a clip in a groove; a push-in end with barbs for a round hole; or a square push-in end for a square one."),
        QuestionId.AdjusterThread => ("Thread of the outer end?", "\"M8x1\", \"M8\" for the coarse pitch, or \"5/16-24\". Count the pitch over ten threads."),
        QuestionId.NutAcrossFlats => ("Width across flats of the nuts?", Calliper),
        QuestionId.NutHeight => ("Height of one nut?", Calliper),
        QuestionId.AdjusterRange => ("Full range of the adjuster?", "From one end of the thread to the other, locknuts on."),
        QuestionId.EndThreadLength => ("Length of the thread?", "Both nuts and the sheet must find room on it."),
        QuestionId.Grip => ("Length of nose from the shoulder to the clip?", "The sheet must fit in it."),
        QuestionId.NoseLength => ("Length of the whole nose?", "From the shoulder on."),
        QuestionId.ClipDiameter => ("Diameter over the clip?", Calliper),
        QuestionId.EndHoleDiameter => ("Which hole is the end made for?", "Measure the hole it came out of, or just behind its collar."),
        QuestionId.EndHoleSide => ("Side of the square hole that the end is made for?", "Measure the hole it came out of, or just behind its collar."),
        QuestionId.EndCornerRadius => ("Radius of the corners of that hole?", "No larger than that of the end's own corners."),
        QuestionId.EndCollarDiameter => ("Diameter of the collar?", "The collar bears on the bracket."),
        QuestionId.MinSheet => ("Thinnest sheet that it holds on to?", "From the collar to the barbs, spread open."),
        QuestionId.MaxSheet => ("Thickest sheet that it snaps over?", "From the collar to where the barbs spring open."),
        QuestionId.Reach => ("How far does it stand in?", "From the collar to its tip, on the quadrant's side."),
        QuestionId.NoseDiameter => ("Diameter of the nose?", "The nose goes through the hole."),
        QuestionId.ShoulderDiameter => ("Diameter of the shoulder?", "The shoulder bears on the bracket."),
        QuestionId.RangeElsewhere => ("Range of an adjuster in the run of the outer?", "0 if there is none."),
        QuestionId.NeckDiameter => ("Diameter of the neck?", "The neck sits in the open slot."),
        QuestionId.CollarDiameter => ("Diameter of the collars?", "One on each side of the neck."),
        QuestionId.NeckLength => ("Length of the neck?", "The sheet must fit between the collars."),
        QuestionId.AvailablePull => (
            "Available pull?", "Length of wire drawn at the cable's end from pedal released to pedal on the floor, carpet in place: 51 +/- 0.5."),
        QuestionId.LeverKind => (
            "Is the lever ratio the same over the whole travel?", "One ratio where a plain arm pulls the cable. A table where a cam, a link or a bent arm does: pad travel and pull, point by point."),
        QuestionId.PedalPointCount => ("How many points of the pedal did you measure?", "Released and floor included. The worksheet has 5: released, a quarter, half, three quarters, floor."),
        QuestionId.PedalPad => ($"Pad travel at point {item} of the pedal?", "From released, along the path of the pad. The last point is on the floor."),
        QuestionId.PedalPull => ($"Pull at point {item} of the pedal?", "Length of wire drawn there. On the floor it is the available pull."),
        QuestionId.LeverRatio => ("Lever ratio?", "Pad travel to the floor divided by the pull to the floor; no unit."),
        QuestionId.PadLoad => (
            "The pedal's own force at the pad, cable off?", "In N, positive if the pedal's weight opens the valve, negative if a spring lifts the pedal: -1.5 +/- 0.5."),
        QuestionId.ClosingDrag => (
            "Closing drag of the cable?",
            "Outer routed as on the vehicle, pedal end unhooked: pull at the end fitting with a spring balance, over the whole stroke, after standing. The largest reading, in N: 2 +/- 0.5. Leave empty if you cannot measure it."),
        QuestionId.OpeningDrag => (
            "Opening drag of the cable?", "The same from the other end: pull at the pedal end, end fitting free. Leave empty if you cannot measure it."),
        QuestionId.OuterAxialStiffness => (
            "Axial stiffness of the outer?",
            "Outer routed as on the vehicle, end fitting held fast: how far the wire's pedal end moves under a known weight, the stretch of the wire taken off. Weight times length of the outer over that movement, in N: 45000 +/- 4000. "
                + "Leave empty if you cannot measure it: the stiffest and the softest usual outer then count."),
        QuestionId.OtherCableCount => (
            "How many other cables come to throttle or pedal?", "Cruise control, kick-down of an automatic gearbox, hand throttle, idle-up. Include those that you mean to leave out."),
        QuestionId.OtherCableName => ($"Name of other cable {item}?", "The job speaks of it by this name."),
        QuestionId.OtherCableDoes => ("What does it do?", "Kick-down is any cable that tells an automatic gearbox how far the valve is open."),
        QuestionId.OtherCableFrom => ("Where does it come from?", "What pulls it, or what it pulls, and where that is."),
        QuestionId.OtherCableOnPedal => ("Is an end of it hooked to the pedal?", "Look behind the pedal arm. Leave empty if you cannot see it."),
        _ => ("Sensor reading that the controller takes for closed?", "In V. Leave empty if the controller learns its own zero."),
    };

    private static (string Ask, string Explain) OfQuadrant(QuestionId id, string item) => id switch
    {
        QuestionId.ThrottleBodyName => ("Name of the throttle body?", "It is printed on drawings and reports."),
        QuestionId.Opens => (
            "Which way does the quadrant turn when the valve opens?",
            "Look at the quadrant from outside, along the throttle shaft. You see x to the right, y up and z towards you; the origin is where the shaft's axis crosses the middle of the groove."),
        QuestionId.Bore => ("Bore?", "Diameter at the valve, not at the bell mouth."),
        QuestionId.ShaftDiameter => ("Diameter of the throttle shaft?", "Where it crosses the bore."),
        QuestionId.GrooveKind => (
            "Shape of the groove?", "Round about the shaft, round about a centre beside it, or any other: then a table of points."),
        QuestionId.PitchRadius => ("Pitch radius?", "From the shaft's axis to the centre line of the wire in the groove, not to the bottom of the groove: 31.5 +/- 0.2."),
        QuestionId.Rotation => ("Rotation?", "From the closed stop to the wide-open stop, in degrees: 84 +/- 1."),
        QuestionId.PocketAngle => (
            "Pocket angle?", "Polar angle of the end fitting's centre with the valve closed, in degrees counter-clockwise from x; negative below x: -20 +/- 1."),
        QuestionId.GrooveExtent => ("Groove extent?", "Arc of groove from the pocket on that can carry the wire, in degrees."),
        QuestionId.GrooveWidth => ("Groove width?", "Where the wire lies."),
        QuestionId.SlotWidth => ("Width of the pocket slot?", "The wire enters the pocket through it."),
        QuestionId.PocketKind => (
            "Which end fitting is the pocket made for?",
            "A bore for a barrel, a socket for a ball, or a recess along the wire for a nipple. Leave empty if you did not measure it: the job is then not proven."),
        QuestionId.PocketDiameter => ("Inside diameter of the pocket?", Calliper),
        QuestionId.PocketWidth => ("Width of the pocket across the wire?", Calliper),
        QuestionId.PocketLength => ("Length of the pocket along the wire?", Calliper),
        QuestionId.PocketDepth => ("Depth of the pocket?", "From the quadrant's face to the bottom, with the calliper's rod; through the quadrant if it has no bottom."),
        QuestionId.PocketAxis => ("Direction of the pocket's axis?", "Along the throttle shaft the barrel can turn with the wire."),
        QuestionId.OuterRadius => ("Outer radius?", "Over the rims."),
        QuestionId.Thickness => ("Thickness of the quadrant?", "Over the rims, with a calliper."),
        QuestionId.HubRadius => (
            "Hub radius?", "All of the quadrant but its grooved sector lies inside this radius. Leave empty to count the whole disc as moving."),
        QuestionId.GroovePlusMinus => ("How far may the radii be off?", "One error common to all, the largest. Every radius goes to the middle of the wire, not to the bottom of the groove."),
        QuestionId.GroovePointCount => ("How many points of the groove did you measure?", "At least 4, closer where the radius changes fast. The worksheet has 6: at the pocket and every 30 degrees on."),
        QuestionId.GroovePointAngle => (
            $"Polar angle of point {item} of the groove?", "Valve closed, counter-clockwise from x. By rising angle; add 360 to go on past x."),
        QuestionId.GroovePointRadius => ($"Radius at point {item} of the groove?", "From the shaft's axis to the middle of the wire."),
        QuestionId.GrooveRadius => ("Radius of the groove about its own centre?", "To the centre line of the wire: 32.5 +/- 0.2."),
        QuestionId.GrooveOffset => ("Distance of that centre from the shaft's axis?", "Half the difference between the longest and the shortest distance from shaft to groove."),
        _ => ("Direction of that centre?", "Polar angle with the valve closed, in degrees counter-clockwise from x: where the groove is farthest from the shaft."),
    };

    private static (string Ask, string Explain) OfThrottleBody(QuestionId id, string item) => id switch
    {
        QuestionId.TorqueClosed => (
            "Closing torque of all springs together, on the closed stop?",
            "Pull a lever on the shaft with a spring balance and read it while the valve closes slowly: force times lever. In N m, or with a unit: 6 lbf in +/- 0.5 lbf in."),
        QuestionId.TorqueOpen => ("Closing torque of all springs together, on the wide-open stop?", "Measure as on the closed stop."),
        QuestionId.SpringCount => (
            "How many return springs close the valve alone?", "Unhook the others and try each one. At least two are needed (49 CFR 571.124 S5)."),
        QuestionId.SpringAloneClosed => (
            $"Closing torque of return spring {item} alone, on the closed stop?", "Unhook the others and read it while the valve closes slowly: 0.27 +/- 0.03."),
        QuestionId.SpringAloneOpen => ($"Closing torque of return spring {item} alone, on the wide-open stop?", "Measure as on the closed stop."),
        QuestionId.ShaftDrag => (
            "Drag at the throttle shaft?",
            "Read the torque at one place as the valve opens and as it closes: half the difference, in N m. Read it after standing: 0.01 +/- 0.005. Leave empty if you cannot measure it."),
        QuestionId.ClosedAngle => ("Closed angle of the valve?", "Between the valve plate and the cross-section of the bore, in degrees."),
        QuestionId.ClosedVolts => ("Sensor reading on the closed stop?", "In V, cable off. Leave empty if there is no position sensor."),
        QuestionId.OpenVolts => ("Sensor reading on the wide-open stop?", "In V, valve held open by hand, cable off."),
        QuestionId.SensorSlot => (
            "How far can the sensor be turned each way?", "In degrees, from where you read it to the end of its slot, the shorter way. 0 if it cannot be turned. Leave empty if you do not know."),
        QuestionId.BoreZ => (
            "Where does the bore's axis cross the shaft's axis?",
            "z from the middle of the groove to the middle of the bore, negative behind the groove: -63. Leave empty if you did not measure it: the job is then not proven."),
        QuestionId.BoreDirection => ("Direction of the bore's axis?", "Polar angle of either of its two ways, in degrees counter-clockwise from x: 0 for a bore along x."),
        QuestionId.CastingDiameter => ("Outside diameter of the casting round the bore?", "Over its largest flange."),
        QuestionId.CastingAhead => ("How far does the casting reach in that direction?", "From the throttle shaft's axis to its end."),
        QuestionId.CastingBehind => ("How far does it reach the other way?", "From the throttle shaft's axis to its other end."),
        QuestionId.MountNormal => (
            "Normal of the mount face?", "Direction out of the casting, square to the face, as x, y, z: 0, 0, 1 for a face that you look straight at."),
        QuestionId.HoleCount => ("How many mount holes are there?", "1 to 12."),
        QuestionId.HoleCentre => (
            $"Centre of hole {item}?", "x, y, z on the face, from the throttle shaft's axis and the middle of the groove: -50, 12, -24. Without their ± all centres must lie within 0.05 mm of one plane."),
        QuestionId.HoleThread => ($"Thread of hole {item}?", "Metric or inch; of a plain hole that of its bolt, of a stud its own."),
        QuestionId.HoleKind => ($"Kind of hole {item}?", "Tapped for a screw, a plain hole through a flange for bolt and nut, or a stud for a nut."),
        QuestionId.PlainHoleDiameter => ($"Diameter of plain hole {item}?", Calliper),
        QuestionId.FlangeThickness => ($"Thickness of the flange at hole {item}?", "That the bolt goes through."),
        QuestionId.RoomBehind => ($"Free depth behind the flange at hole {item}?", "Over the whole nut and washer. Leave empty if you did not measure it: the mount is then not proven."),
        QuestionId.StandsOut => ($"How far does the stud at {item} stand out of the face?", "Depth gauge from its end to the face."),
        QuestionId.SpacerLength => ($"How much lower than the mount face does hole {item} lie?", "Depth gauge from a straight edge over the others: a spacer of that length goes under the bracket. Leave empty if it lies on the face."),
        QuestionId.BossDiameter => ($"Boss diameter of hole {item}?", "The bracket covers the boss."),
        QuestionId.KeepOutCount => ("How many keep-outs are there?", "Things that bracket, cable and quadrant must stay clear of, each as a box. Include everything that moves."),
        QuestionId.KeepOutName => ($"What is keep-out {item}?", "A name for the report."),
        QuestionId.KeepOutShape => ("Its shape?", "A box. You can write cylinders into the file later."),
        QuestionId.KeepOutMin => ("Its corner of minimum x, y and z?", "As x, y, z."),
        QuestionId.ThreadDepth => ($"Depth of full thread in hole {item}?", "Turn a screw in by hand and measure how far it goes. Leave empty if you did not measure it: the strength of the mount is then not proven."),
        QuestionId.Flatness => (
            "Flatness of the bosses?", "Straight edge over all of them, feeler gauge under it: the largest gap. Leave empty if you did not measure it: the life of the bracket is then not proven."),
        QuestionId.BossMaterial => ("Metal of the bosses?", "Leave empty if you cannot tell: the weakest usual one then counts."),
        QuestionId.Cylinders => ("How many cylinders does the engine have?", "Leave empty if you do not know the engine: what shakes the bracket is then not known."),
        QuestionId.MaxSpeed => ("Maximum speed of the engine?", "Revolutions of the crankshaft a minute; no unit."),
        QuestionId.IdleSpeed => ("Idle speed?", "Revolutions a minute, warm: 800 +/- 50. Leave empty for the usual one."),
        _ => ("Its corner of maximum x, y and z?", "As x, y, z."),
    };
}
