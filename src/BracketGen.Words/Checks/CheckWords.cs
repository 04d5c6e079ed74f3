using BracketGen.Design.Checks;

namespace BracketGen.Words.Checks;

/// <summary>The words of one check.</summary>
/// <param name="Title">What is checked, in a few words.</param>
/// <param name="Formula">How its value is found.</param>
/// <param name="Consequence">What happens where it fails, and what to do.</param>
public sealed record CheckPhrases(string Title, string Formula, string Consequence);

/// <summary>The words of every check in the catalogue.</summary>
public static class CheckWords
{
    /// <summary>The words of a check.</summary>
    public static CheckPhrases Of(CheckId id) => id switch
    {
        CheckId.FreePlay => new(
            "Free play at the closed stop", "free inner length minus the wire's path at the closed stop",
            "Without free play the cable, not the valve's own stop, decides where the valve closes: it can hang open. Give more free play."),
        CheckId.ReturnSprings => new(
            "Return springs that close the valve alone", "number of springs",
            "When the only spring breaks, nothing closes the valve. Fit a second, independent return spring."),
        CheckId.WideOpen => new(
            "Over-travel with the valve wide open", "available pull - free play - pull to wide open",
            "The valve may not reach its wide-open stop: the engine does not give full power."),
        CheckId.OverTravel => new(
            "Over-travel of the pedal past wide open", "available pull - free play - pull to wide open",
            "A stamped pedal strains the valve's stop, the cable and the bracket. Fit a pedal stop where the valve is just wide open."),
        CheckId.PlatePastSquare => new(
            "Valve plate at the wide-open stop, from closed across the bore", "closed angle + rotation; limit: 90° + the ± of the rotation",
            "The plate turns past square and begins to close the bore again: the last part of the pedal takes power away. Measure closed angle and rotation again, or set the wide-open stop back."),
        CheckId.MomentArm => new(
            "Minimum moment arm of the wire over the sweep", "distance from the shaft's axis to the wire's line, minimum; limit: half of it at the closed stop",
            "The wire pulls along the quadrant instead of turning it: it can pass the centre and hold the valve open."),
        CheckId.WrapWideOpen => new(
            "Wrap left at the wide-open stop", "tangent angle - pocket - rotation",
            "The wire lifts out of the groove before the valve is open, and can catch beside it on the way back. Let the wire leave farther round the quadrant."),
        CheckId.GrooveLength => new(
            "Groove left behind the wire at the closed stop", "groove extent - wrap at the closed stop; limit: the ± of the pocket angle",
            "The wire runs off the end of the groove with the valve closed, and can jump out. Let the wire leave nearer to the pocket."),
        CheckId.WireInGroove => new(
            "Groove width for the wire", "groove width; limit: wire diameter + 0.2 mm",
            "The wire is pinched in the groove and may not come back. Use a thinner wire or another quadrant."),
        CheckId.WireInSlot => new(
            "Pocket slot width for the wire", "slot width; limit: wire diameter + 0.2 mm",
            "The wire does not go into the pocket's slot. Open the slot, or use a thinner wire."),
        CheckId.PocketShape => new(
            "Pocket made for the end fitting", "1 if it takes the fitting's shape: its own, or a ball in the bore of a barrel",
            "The pocket is made for another end fitting: the wire is not held. Fit a cable with the right end, or another quadrant."),
        CheckId.PocketPlay => new(
            "Play of the end fitting in its pocket", "size of the pocket - size of the fitting",
            "The end fitting does not go into the pocket, or it jams there. Open the pocket, or fit a cable with a smaller end."),
        CheckId.PocketHold => new(
            "End fitting wider than the slot", "minimum width of the fitting - slot width; limit: 0.5 mm on each side",
            "The end fitting can slip out through the slot: it can jam in the groove and hold the valve open. Fit a larger end fitting, or a quadrant with a narrower slot."),
        CheckId.PocketTurn => new(
            "End fitting free to turn with the wire", "1 if a barrel's axis lies along the shaft, or the fitting is a ball, or a nipple whose wire never leaves the groove",
            "The end fitting cannot turn with the wire: the wire bends beside it at every opening until it frays, and a frayed wire jams. Use a pocket whose axis lies along the shaft."),
        CheckId.PocketDepth => new(
            "End fitting below the quadrant's face", "depth of the pocket - size of the fitting along it",
            "The end fitting sticks out of the quadrant and can catch on something and hold the valve open. Deepen the pocket, or fit a shorter end fitting."),
        CheckId.WireBend => new(
            "Diameter of the groove's bottom over the wire's", "(2 x minimum radius of the wire's centre line - wire diameter) / wire diameter",
            "The wire is bent tighter than its strands stand: it frays early. Use a wire of more and finer strands, or look at it at every service."),
        CheckId.GrooveLoose => new(
            "Groove width over wire diameter", "groove width / wire diameter",
            "The groove is far wider than the wire: a slack wire can cross over itself. Use a quadrant made for this wire."),
        CheckId.OuterBoreTight => new(
            "Play of the wire in the outer", "inside diameter of the outer - wire diameter",
            "The outer is too narrow for the wire: dirt and a bend make it drag. Use an outer made for this wire."),
        CheckId.OuterBoreLoose => new(
            "Inside diameter of the outer over the wire's", "inside diameter of the outer / wire diameter",
            "The outer is far wider than the wire: the free play changes with the outer's bends. Use an outer made for this wire."),
        CheckId.CableLaidBy => new(
            "Cable that is left out: taken out or laid by, off the pedal", "1 if the job says so; not known until it does; 0 if an end is still hooked to the pedal",
            "A second cable still hooked to the pedal can hold it down by its friction or its own end stop, and a loose end can catch in the quadrant: the valve stays open. Take it off the pedal and lay it by."),
        CheckId.CableActuatorDead => new(
            "Actuator of a cable that is left out: dead", "1 if the job says so; not known until it does; 0 if it is live",
            "Something can still pull the cable: it can drag its loose end into the quadrant, or pull the pedal down. Unplug the actuator, or take its vacuum hose off and cap it."),
        CheckId.KickDownServed => new(
            "Kick-down cable connected, or the gearbox served another way", "1 if the job says what the cable is hooked to, or what serves the gearbox instead",
            "Kick-down cable not connected: the gearbox works with too low a pressure, slips, burns its clutches and can lose its drive in traffic. Connect the cable where it follows the valve, or serve the gearbox another way."),
        CheckId.CableWork => new(
            "Work of a cable that is left out", "1 if the job says what does it instead",
            "What the cable did is not done any more: cruise control, hand throttle or idle-up. Tell whoever drives."),
        CheckId.CableElsewhere => new(
            "Cable that is hooked elsewhere", "0: the program does not look at it there",
            "Pull the cable by hand over its whole stroke, then work the pedal over its own: neither may move the other or hold the valve open."),
        CheckId.OtherStop => new(
            "Stop for the outer of another cable", "1 if the job says where its seat is and what holds it",
            "No bracket holds the outer of this cable yet: this program makes a bracket for the pedal's cable alone. It must be held where the report says, by a bracket of its own that is stiff and cannot turn. "
                + "Make that bracket, with this one as a [[keep_out]], and write stop_at and held_by in the job; or lay the cable by."),
        CheckId.CableReach => new(
            "Wire that runs from its groove to its seat", "1 if it does at every opening",
            "No wire runs from the groove to the seat: the cable is too short, or the seat lies in the way of the groove. Move the seat, or fit another cable."),
        CheckId.CableStroke => new(
            "Stroke left with the valve wide open", "stroke - free play - pull to wide open",
            "The cable does not open the valve fully: its lever or actuator ends before. That may be wanted."),
        CheckId.KickDownStroke => new(
            "Wire drawn for the gearbox", "wire drawn from closed to wide open - free play; limit: stroke that the gearbox needs, with its ±",
            "The gearbox does not learn that the valve is wide open: it works with too low a pressure, slips and burns its clutches. Use a groove of larger radius."),
        CheckId.DrawnStroke => new(
            "Wire drawn by the quadrant", "wire drawn from closed to wide open; limit: what can be drawn before the far end meets its own stop",
            "The far end meets its own stop before the valve is open: the valve does not open fully, and a stamped pedal tears the cable. Use a groove of smaller radius."),
        CheckId.IdleSlack => new(
            "Slack of the idle wire taken up", "free arc of the groove + what the far end takes up - wire that would move from closed to wide open",
            "When the other cable opens the valve, this wire goes slack: it leaves its groove, can cross over the other wire or hook behind the quadrant, and hold the valve open. "
                + "Use a quadrant whose end fitting can stay behind, or an actuator that takes up its wire."),
        CheckId.PedalSlack => new(
            "Slack of the pedal's wire taken up while another cable opens the valve", "free arc of the first groove - rotation, as lengths of groove",
            "When the other cable opens the valve, the pedal's wire goes slack: it leaves its groove and can hook behind the quadrant, and hold the valve open. Use a quadrant whose end fitting can stay behind in the first groove too."),
        CheckId.CableReturn => new(
            "Closing torque left, this cable alone", "1 - (arm x closing drag, dirt and cold counted, + shaft drag) / springs at their weakest, minimum over the sweep",
            "The valve hangs open after this cable opened it. Free the cable and what pulls it, or fit stronger return springs."),
        CheckId.CablesReturn => new(
            "Closing torque left, with the pedal's cable", "as return-margin, with arm x closing drag of this cable more",
            "The springs cannot draw both wires back for sure: the valve hangs open. Free both cables, or fit stronger return springs."),
        CheckId.CablesReturnOneFailed => new(
            "Closing torque left with one spring broken, with the pedal's cable", "as return-one-failed, with arm x closing drag of this cable more",
            "With one return spring broken the others cannot draw both wires back. Free both cables, or fit stronger return springs."),
        CheckId.DrawnFootForce => new(
            "Maximum foot force with the wire that the quadrant draws", "foot force + draw force x its arm / arm of the pedal's wire x friction x lever, maximum over the sweep",
            "The pedal is heavy and tires the foot. Use a groove of smaller radius, or a lighter return at the gearbox."),
        CheckId.QuadrantOverlap => new(
            "Quadrant and fitting clear of casting and keep-outs", "minimum distance over the sweep; below zero they overlap",
            "The quadrant or the end fitting runs into something and holds the valve open."),
        CheckId.QuadrantClearance => new(
            "Quadrant and fitting to casting and keep-outs", "minimum distance over the sweep",
            "The quadrant or the end fitting passes something too close: a hose that sags or a loose clip can catch it."),
        CheckId.WireOverlap => new(
            "Straight wire clear of what stands", "minimum distance over the sweep; below zero they overlap",
            "The wire runs into something: it cannot be fitted so, or it rubs through and jams."),
        CheckId.WireClearance => new(
            "Straight wire to what stands", "minimum distance over the sweep",
            "The wire passes something too close: it can rub on it."),
        CheckId.OuterSideLoad => new(
            "Change of the wire's direction at the outer's end", "maximum minus minimum wire direction over the sweep",
            "The wire pulls sideways at the outer's end: it wears through the liner and rubs. More free wire between quadrant and stop makes the change smaller."),
        CheckId.OuterRoute => new(
            "Routes for the outer with its minimum bend radius", "shortest route of arcs and straights from the stop to the bulkhead",
            "The outer must bend tighter than it may to get from the stop to the bulkhead: it kinks, and the wire sticks in it. Let it leave in another direction, or move the bulkhead's exit."),
        CheckId.OuterLength => new(
            "Length of the outer for the shortest route to the bulkhead", "length of the outer; limit: length of the shortest route",
            "The outer is too short to get from the stop to the bulkhead. Fit a longer cable."),
        CheckId.FittingClearance => new(
            "End fitting to the stop, nearest", "minimum straight wire - reach of the fitting - what stands out of the stop",
            "The end fitting runs against the stop before the valve is open, and can jam there. Leave more free wire between quadrant and stop."),
        CheckId.FleetAngle => new(
            "Fleet angle at the groove", "atan(height of the stop over the groove's plane / minimum straight wire)",
            "The wire rubs on the groove's flank and can climb out of it. Bring the stop into the groove's plane."),
        CheckId.AdjusterReserve => new(
            "Adjuster travel left both ways", "half the range - how far the adjuster stands off mid range",
            "The design uses up the adjuster: nothing is left to set the free play on the vehicle."),
        CheckId.BodyDescribed => new(
            "Casting of the throttle body described", "1 if the profile gives the bore's axis, or says that the keep-outs describe the casting",
            "Nothing is known of the casting: the bracket may run into it."),
        CheckId.MountNormal => new(
            "Mount face's normal points out of the casting", "1 if it does: followed out of the holes it does not meet the casting",
            "The normal of the mount face points into the casting: the bracket would lie inside it. Turn the signs of all three numbers of the normal round."),
        CheckId.BracketShape => new(
            "A bracket that joins mount face and stop", "1 if a shape was found",
            "No wire direction gives a stop that a bracket can reach from the mount face. Choose another mount face, or change the free inner length."),
        CheckId.BoltHoleEdge => new(
            "Centre of a bolt hole to the edge", "distance in the flat; limit: 1.2 hole diameters; of a slotted hole from its middle line, limit: 1.5 widths", "The hole tears out of the edge. Widen the flange."),
        CheckId.StopHoleEdge => new(
            "Centre of the stop's hole to the edge", "distance in the flat; limit: 1.2 hole diameters", "The hole tears out of the edge. Widen the flange."),
        CheckId.SlotEdge => new(
            "Metal beside the open slot", "distance in the flat; limit: one thickness", "The lips beside the slot bend open. Widen the flange."),
        CheckId.SmallestHole => new(
            "Smallest hole or slot that is cut", "diameter or width; limit by process and thickness, of a slotted hole its bolt and the deviation of the cut too; holes marked for drilling are left out",
            "The process does not cut so narrow a slot clean in this thickness. Use thinner sheet, or a shop with a finer process."),
        CheckId.HoleBend => new(
            "Edge of a hole to the bend", "distance in the flat, hole's edge to the bend's strip", "The bend pulls the hole out of round. Move the bend or the hole."),
        CheckId.BendRadius => new(
            "Inside radius of the bend", "inside radius; limit: the material's ratio times the thickness",
            "The sheet cracks on the outside of the bend. Use a wider die or a softer sheet."),
        CheckId.ShortestFlange => new(
            "Shorter flange at the bend, outside", "setback + flat part; limit: (V/2) / cos(A/2)",
            "The flange drops into the die before the bend is done. Use a narrower die or a longer flange."),
        CheckId.BendAngle => new(
            "Angle of the bend", "bend angle", "A plain die cannot air-bend so sharp an angle. Use an acute die, or choose another bracket."),
        CheckId.BendOrder => new(
            "An order of bends", "1 if the bends can be made in some order without the part meeting punch, die, beam, bed or itself",
            "No punch and die of the shop make these bends in any order. Choose another bracket, or a shop with a gooseneck or an acute punch."),
        CheckId.DieShoulders => new(
            "Bend carried by the die's shoulders", "part of the bend's length where both legs reach (V/2) / cos(A/2) and the shoulder's radius from the outside mould line; 0 if an end does not",
            "The flange slips into the V where it is too short, and the bend runs off its angle there. Widen the flange beside the bend, or use a narrower die."),
        CheckId.HoleOverDie => new(
            "Edge of a hole to the middle of the bend", "distance in the flat; limit: where the sheet lies on the die's shoulder from the first touch to the last",
            "The hole lies over the V and is drawn out of round. Drill it after bending, or move it away from the bend."),
        CheckId.BendGauge => new(
            "Place of the bend line, ±", "± of what the bend is placed by: 0.1 mm against the back gauge, 0.5 mm by a scribed line",
            "No edge that the back gauge reaches runs parallel to the bend. Scribe the bend line, and bend to it."),
        CheckId.Finish => new(
            "Layer between steel and the casting", "1 if the sheet is no steel, or is zinc plated or powder coated",
            "Bare steel on an aluminium casting rusts and eats into the casting where it gets wet. Have the bracket zinc plated or powder coated."),
        CheckId.ClipNeck => new(
            "Sheet thickness in the clip's neck", "thickness with its finish; limit: length of the neck", "The outer's neck does not go over the sheet. Use thinner sheet."),
        CheckId.EndMaxSheet => new(
            "Sheet thickness at the outer end", "thickness with its finish; limit: the most sheet that the outer end goes over", "The outer end does not go over the sheet: its nuts, clip or barbs find no room behind it. Use thinner sheet."),
        CheckId.EndMinSheet => new(
            "Sheet thickness that the outer end holds", "thickness without finish; limit: the thinnest sheet that the end is made for", "The barbs of the outer end do not hold on to sheet so thin: a pull takes it out. Use thicker sheet."),
        CheckId.FittingThroughStop => new(
            "Cable into the stop", "narrowest of hole and nut that the end fitting goes through, over what it needs; for a slot, its width over the outer end's body",
            "The cable cannot be fitted: its end fitting does not go through the hole, or through the nut that has to come off over it. Both ends of the wire are swaged on, so the wire cannot be drawn out of the outer. Use an open slot."),
        CheckId.KeepOut => new(
            "Bracket to a keep-out", "minimum distance of the folded bracket", "The bracket meets a keep-out."),
        CheckId.BodyClearance => new(
            "Bracket to the casting", "minimum distance of the folded bracket; the mount flange may touch", "The bracket runs into the throttle body's casting."),
        CheckId.OuterClearance => new(
            "Outer to what it passes", "minimum distance from the outer on its route to bracket, casting, keep-outs and springs",
            "The outer lies against something: it rubs through, or it is pushed off its line and drags."),
        CheckId.OuterEndClearance => new(
            "Outer end to casting, keep-outs and springs", "minimum distance from nuts, shoulder or collars and all that stands out of the stop",
            "There is no room for the outer end at the stop: it cannot be fitted or set."),
        CheckId.OuterMoving => new(
            "Outer and its end to quadrant and fitting", "minimum distance over the sweep",
            "The quadrant or the end fitting can catch on the outer or its end and hold the valve open."),
        CheckId.MovingParts => new(
            "Bracket to quadrant, fitting, wire and springs", "minimum distance over the sweep from the folded bracket and its bolt heads",
            "What moves can catch on the bracket and hold the valve open."),
        CheckId.BoltRoom => new(
            "Room for the socket on a bolt, radius", "distance of the bent flange from the bolt's axis", "The bent flange is in the socket's way: the bolt cannot be tightened."),
        CheckId.StopRoom => new(
            "Room for the nut or shoulder at the stop, radius", "distance of the other flanges from the stop's axis", "The spanner or the shoulder at the stop runs into the bend."),
        CheckId.LipApart => new(
            "Return lip to mount flange, folded", "minimum distance", "The return lip runs into the mount flange."),
        CheckId.FlangesApart => new(
            "Stop flange to mount flange, folded", "minimum distance", "The bent flanges run into each other."),
        CheckId.SheetAllowed => new(
            "Sheet that the job allows", "1 if it is allowed", "The customer asked for another material."),
        CheckId.MountPattern => new(
            "Bolt holes off the threaded holes, maximum", "distance on the mount face", "The bracket does not go onto the bolts."),
        CheckId.MountThreads => new(
            "Bolt holes of the size for the threads", "1 if they are", "The bolts do not fit the bracket's holes."),
        CheckId.MountBosses => new(
            "Metal over bosses and washers, minimum to spare", "radius of metal - radius of boss or washer", "A boss or washer stands out over the bracket's edge."),
        CheckId.StopOpening => new(
            "Stop's opening over what the outer's end needs", "opening - what is needed", "The outer's end does not go into the opening."),
        CheckId.StopPlay => new(
            "Play of the outer's end in the opening beyond the usual", "opening - what is needed", "The outer's end sits loose and wanders."),
        CheckId.StopSlot => new(
            "Open slot where the outer's end needs one", "1 if it has one or needs none", "The outer's end does not go into a round hole."),
        CheckId.StopMetal => new(
            "Metal round the stop, to spare", "radius of metal - what is needed", "Nut or shoulder stands out over the edge."),
        CheckId.StopSquare => new(
            "Wire off the stop's own direction, with its change over the sweep", "angle at the closed stop + change over the sweep",
            "The wire pulls sideways at the outer's end: it wears through the liner and rubs."),
        CheckId.StopPlace => new(
            "Stop off its place, without an adjuster", "distance along the wire", "The free play cannot be set."),
        CheckId.OuterBendRadius => new(
            "Minimum bend radius of the outer at its real length", "minimum radius of the elastic line of the outer, worst stable line within its length's ±",
            "The outer is bent tighter than it may be: it kinks, and the wire sticks in it. Fit an outer of another length, or a clip that leads it."),
        CheckId.OuterSpare => new(
            "Bends that spare outer adds", "bends of the elastic line - minimum bends between stop and bulkhead; a full turn where the outer has to loop",
            "The outer is too long: the spare lies in bends, and friction grows with every one. Fit a shorter cable, or lead the spare with clips."),
        CheckId.OuterLine => new(
            "Line of the outer known", "1 if the job gives the bulkhead",
            "Without the bulkhead nobody knows where the outer lies: it is not compared with keep-outs, and its bends are those of the profile. Give the bulkhead and the length of the outer, or follow the outer by hand."),
        CheckId.FreePlayMoving => new(
            "Free play left at the worst corner of the engine's movement", "minimum free play as set - 2 c Δβ: c half of (inside diameter of the outer - wire), Δβ the maximum change of the outer's bends in radians; twice c because a slack wire may lie on either side",
            "As the engine rocks, the outer's bends change and the wire goes taut: the cable opens the valve by itself. Give more free play, a lined outer that fits the wire, a longer way with wider bends, or hold the engine better."),
        CheckId.OuterReach => new(
            "Corners of the engine's movement that the outer reaches", "part of the corners to which the outer's length allows a route with its minimum bend radius",
            "As the engine rocks, the outer pulls taut or kinks: it comes off its seat and pulls the valve open, or the wire sticks in it. Fit a longer cable, or move the bulkhead's exit."),
        CheckId.WideOpenLoaded => new(
            "Over-travel with lost motion taken off", "over-travel - lost motion at wide open",
            "Wire stretch and the give of outer and bracket use up the over-travel: the valve may not open fully."),
        CheckId.ReturnMargin => new(
            "Part of the springs' torque left to close the valve, minimum over the sweep", "(spring torque - torque that drag, friction and pedal take) / spring torque, weakest springs, maximum friction and drag",
            "Drag, friction in the outer and the pedal's weight eat up the springs: the valve returns slowly or hangs open. Fit a cable with less drag, ease the outer's bends, give the pedal a spring of its own, or fit stronger return springs."),
        CheckId.ReturnOneFailed => new(
            "The same with the strongest return spring broken", "as return-margin, with the springs that are left",
            "With one spring broken the other does not close the valve against drag, friction and pedal. Each must do it alone."),
        CheckId.ClosingTime => new(
            "Time from wide open to closed, foot off", "the torque left over, integrated over the sweep, against the inertia of plate, shaft, quadrant and pedal; without the air on the plate",
            "The valve closes too slowly, or not at all. Find what drags. Time it on the vehicle before you rely on this number."),
        CheckId.FootForce => new(
            "Maximum foot force, pedal going down", "wire tension at the pedal, drag included, times the lever; maximum over the sweep", "The pedal is heavy under the foot."),
        CheckId.Suddenness => new(
            "Off-idle gain: flow area of the first tenth of the pedal, over a tenth", "flow area at a tenth of the pedal / 0.1",
            "The engine comes off idle suddenly and is hard to drive slowly. A quadrant that starts with a larger radius is gentler."),
        CheckId.ProbabilityCloses => new(
            "Probability that the valve can be made to close", "share of samples within every ± in which the adjuster can leave the minimum free play; without an adjuster, in which the valve closes as built; the one-sided 95 % bound must keep the limit",
            "Within the ± of the measurements the wire may be too short to let the valve close."),
        CheckId.ProbabilityWideOpen => new(
            "Probability that the valve opens fully", "share of samples within every ±, free play set, or as built without an adjuster; the one-sided 95 % bound must keep the limit",
            "Within the ± of the measurements the valve may not open fully."),
        CheckId.ProbabilityAdjuster => new(
            "Probability that the adjuster can set the free play", "share of samples within every ±; the one-sided 95 % bound must keep the limit",
            "Within the ± of the measurements the adjuster may come to its end before the free play is right."),
        CheckId.ProbabilityInGroove => new(
            "Probability that the wire stays in the groove at the closed stop", "share of samples within every ± in which the wrap is no more than the groove extent; the one-sided 95 % bound must keep the limit",
            "Within the ± of the measurements the wire may run off the end of the groove with the valve closed, and can jump out."),
        CheckId.FreePlayMost => new(
            "Maximum free play", "as set, or what the adjuster cannot take up, in 99 of 100 samples; limit: twice the free play wanted",
            "The wire may hang far slacker than wanted: pull is lost, and a slack wire can leave the groove. Fit an adjuster, or one with more range."),
        CheckId.MountHolesFit => new(
            "Distance between two mount holes, off by their ±", "± of both holes along their line; limit: play of both bolts",
            "The bolts may not go in. Measure the distance between the mount holes directly, with callipers over two bolts."),
        CheckId.DeadBand => new(
            "Opening before the controller sees the valve move", "(controller zero - closed reading) / volts per angle, sensor turned towards the zero as far as its slot allows",
            "The engine does not answer the first part of the opening, and a valve that stands a little open is not seen. The sensor's slot does not let it read the controller's zero on the closed stop: lengthen the slot, or fit another sensor."),
        CheckId.ControllerZero => new(
            "How far open the controller takes the closed valve", "(closed reading - controller zero) / volts per angle, sensor turned towards the zero as far as its slot allows",
            "The controller takes the closed valve for open: the engine may not idle, and fuel is not cut off. The sensor's slot does not let it read the controller's zero on the closed stop: lengthen the slot, or fit another sensor."),
        CheckId.SensorClosed => new(
            "Closed reading off its target of 0.5 V", "|closed reading - 0.5 V|, sensor turned towards 0.5 V as far as its slot allows",
            "The controller may take the closed valve for a broken wire, or for an open valve. The sensor's slot does not let it read 0.45 to 0.55 V on the closed stop: lengthen the slot, or fit another sensor."),
        CheckId.SensorLow => new(
            "Minimum reading of the sensor, once it is set", "the lower of both readings, turned to the target; limit: the higher of what the controller accepts and where the reading still follows the shaft",
            "The controller takes the reading for a broken wire, or the reading no longer follows the shaft."),
        CheckId.SensorHigh => new(
            "Maximum reading of the sensor, once it is set", "the higher of both readings, turned to the target; limit: the lower of what the controller accepts and where the reading still follows the shaft",
            "The controller takes the reading for a short circuit, or the reading no longer follows the shaft."),
        CheckId.StampedYield => new(
            "Yield strength over the stress with the pedal stamped on", "yield strength / maximum von Mises stress under the proof load",
            "A foot stamped on the pedal bends the bracket for good: the stop moves, and nothing is where it was set. Take thicker, wider or stronger sheet, or fit a pedal stop that takes the over-travel."),
        CheckId.Endurance => new(
            "Safety factor against cracking, every opening counted", "Soderberg at every place: (1 - constant/yield) / (stress/2/permitted + stress/2/yield), maximum tension of an opening; permitted: for the openings of the life, less at cut edges; constant: bosses out of one plane drawn level",
            "In the long run the bracket cracks from being pulled and let go. Take thicker or wider sheet, or a larger bend radius."),
        CheckId.StopGive => new(
            "Give of the stop along the wire, maximum tension of an opening", "finite elements",
            "The stop gives way under the wire: the pedal feels soft and pull is lost. Take thicker or wider sheet."),
        CheckId.Resonance => new(
            "First natural frequency, clear of the engine's firing frequency", "finite elements; limit: the separation factor times the firing frequency at maximum speed",
            "At high speed the engine shakes the bracket at its own frequency: the pedal hums and the bracket cracks. Take thicker or wider sheet, or a shorter stop flange."),
        CheckId.ShakingEndurance => new(
            "Safety factor against cracking from shaking and every opening", "as endurance, over the life: opening/2 + alternating about opening/2 for each opening, alternating about the opening for all hours of the engine, damages added; its minimum over the bracket; modes superposed, worst direction, random three times its root mean square",
            "The bracket cracks from the shaking of its mount, and the outer comes off its stop. Take thicker or wider sheet, or a shorter stop flange: the first natural frequency must rise. If the profile is harsher than your engine, measure the acceleration at the mount and give it in [shaking]."),
        CheckId.ShakingTest => new(
            "Safety factor against cracking under a test of parts on an intake manifold (assumed)", "as shaking-endurance, under ISO 16750-3:2023, test XI; on the unfavourable side also test III, with half the damping",
            "The bracket would crack if it were shaken like this for ever. Nobody measured how this mount shakes, and the test is harsher than most engines: it decides nothing. Measure the acceleration at the mount and give it in [shaking] of the throttle body's file, or look for cracks after the first hours of running and at every service."),
        CheckId.FrequencyByResponse => new(
            "First natural frequency, passed by the response to shaking", "finite elements; limit: the separation factor times the firing frequency at maximum speed",
            "No bracket keeps clear of the engine's firing frequency. This one passes by what shaking of the mount does to it instead: shaking-endurance decides. Look for cracks after the first hours of running and at every service."),
        CheckId.ScrewYield => new(
            "Yield strength over the stress in a mount screw, pedal stamped on", "yield / √(σ² + 3 (τ/2)²); maximum preload (least friction, wrench 6 % high) and its part of the pull and of the tilting moment over the contact radius",
            "The screw stretches for good and loses its grip: the bracket works loose. Take a higher property class, a thicker screw, or bring the stop nearer to the mount face."),
        CheckId.BossThread => new(
            "Stripping load of the boss over the force in its screw, pedal stamped on", "shear strength of the boss x shear area of its thread (FED-STD-H28/2) / maximum force in the screw",
            "The thread in the boss strips and the bracket comes off. Give the boss more thread, fit a thread insert, or bring the stop nearer to the mount face."),
        CheckId.ThreadDepth => new(
            "Depth of full thread in the boss", "as measured; limit: engagement of the screw + 0.5 mm + 2 pitches",
            "The screw bottoms in the boss before it clamps the sheet, or too little of its thread bears. Tap the hole deeper, or fit another screw."),
        CheckId.JointSlip => new(
            "Grip of the bracket on its bosses over what makes it slip, maximum opening with shaking", "0.10, or less where less was tried, x (minimum clamp force - pull) / share of the force across, the screws as a group; minimum clamp force: most friction, wrench 6 % low, 10 µm embedded; shaking: that of the mount where it is given, else 20 g, on bracket and outer end together",
            "The bracket creeps on the mount face with every opening: the free play changes, and the screws work loose. Use more or larger screws farther apart, or bring the stop nearer to them."),
        CheckId.StampedSlip => new(
            "Grip of the bracket on its bosses over what makes it slip, pedal stamped on", "0.10, or less where less was tried, x (minimum clamp force - pull) / share of the force across, the screws as a group, which are not counted on to bear in their holes",
            "A foot stamped on the pedal can shift the bracket towards the quadrant by the play of its holes: the free play grows, and the valve may no longer open fully. Check the free play after it happened. More or larger screws farther apart, or a pedal stop, prevent it."),
        CheckId.JointOpening => new(
            "Clamp force over that which keeps the bracket closed on its bosses", "minimum clamp force / (pull + 4 r/(r² + r_hole²) x tilting moment), maximum opening and shaking of the mount where it is given, else 20 g, on bracket and outer end together",
            "The bracket lifts off the edge of its boss at every opening and hammers as the engine shakes: the screws work loose or break. Use more or larger screws, or bring the stop nearer to the mount face."),
        CheckId.WasherPressure => new(
            "Pressure under a washer, pedal stamped on", "maximum force in the screw / face of the washer less the hole, or less what the slot takes of it, of the washer on the sheet and of the sheet on the boss each; limit: 0.88 of the minimum tensile strength of the sheet, or limiting pressure of the boss (VDI 2230, table A9) where that is lower",
            "The washer sinks into the sheet and the screw loses its grip. Use harder or wider washers, a stronger sheet, or less torque."),
        CheckId.NutThread => new(
            "Proof load of a nut over the force in its bolt or stud, pedal stamped on", "proof stress of the nut's class x stress area / maximum force in the screw",
            "The nut strips and the bracket comes off. Take the nut of the screw's class, a larger bolt, or bring the stop nearer to the mount face."),
        CheckId.StudLength => new(
            "Length that a stud stands out of the mount face", "as measured; limit: sheet + washer + nut (maximum height) + 1 pitch",
            "The nut does not get its full thread and strips. Fit a longer stud, or take thinner sheet."),
        CheckId.StudDepth => new(
            "Depth of a stud's thread in the boss", "as measured with the stud out; limit: 1.5 diameters",
            "Too little thread holds the stud: it pulls out with the bracket. Fit a stud with a longer end in the boss, or tap the hole deeper."),
        CheckId.NutRoom => new(
            "Room behind the flange for washer, nut and the end of the bolt", "as measured; limit: length of the bolt - sheet - washer - flange",
            "The bolt cannot be put in, or its nut not turned. Make room, shorten the bolt to two pitches past its nut, or fit a stud."),
        CheckId.SlotSlip => new(
            "Grip of the bracket along its slotted mount holes over what makes it slip, maximum opening with shaking", "0.63 x friction x (minimum clamp force - pull) / whole force across, the twist of the bracket with it; friction as tried, 0.20 at most; 0.10 where nobody tried; 0.63: EN 1993-1-8, table 3.6, long slotted holes along the slot (from memory)",
            "Nothing but friction holds the bracket along its slots: it creeps with every opening, the stop goes with it, and the throttle can stick or open no longer. Use more or larger screws, a bare and clean face, or round holes."),
        CheckId.SlotSlipStamped => new(
            "Grip of the bracket along its slotted mount holes over what makes it slip, pedal stamped on", "as slot-slip, with what the pedal stamped on puts along the slot: across it the shank bears after its play",
            "A foot stamped on the pedal shifts the bracket along its slots, the stop with it: the free play is then another, and the throttle can stick or open no longer. Use more or larger screws, a pedal stop, or round holes."),
        CheckId.SlotFreePlay => new(
            "Free play left where the bracket slides from one end of its slots to another", "minimum free play wanted - how much longer the taut wire is at one end of the slots than at another, adjuster left as it is",
            "Where the screws lose their grip the bracket slides along its slots, draws the wire taut, and the wire holds the valve open. Turn the slots across the wire, make them shorter, or the holes round."),
        CheckId.SlotEnds => new(
            "Wire that runs from its groove to the seat, bracket at every end of its slots", "1 if it does at every end that the slotted mount holes allow",
            "At an end of its slots the bracket holds the stop where no wire runs to it from the groove. Make the slots shorter, or the holes round."),
        CheckId.SecondFaceCorner => new(
            "Room for the bend where the two faces meet", "inside corner: inside radius + thickness - radius of the fillet; outside edge: radius of the edge - inside radius x max(1, tan(bend angle / 2))",
            "The bend rests on the fillet or on the edge, and neither flange lies on its face: tightened, the bracket is bent. Give corner_radius; file the edge round, or choose a die with another inside radius."),
        CheckId.SecondFaceLine => new(
            "Flat left beside the bend between the two faces", "flat between the bend and the metal round the nearest hole of either face - straight edge beside the bend",
            "A hole lies too near the line where the two faces meet: there is no room for the bend and its die. Choose a thinner sheet or a die with a smaller radius, or another hole."),
        CheckId.SecondFaceGap => new(
            "Gap under the second mount flange, once bent to its face, maximum", "bend line, allowance, ± of the holes of both faces, each at its worst, magnitudes added, less what the play of the mount bolts takes up; limit: what shims fill",
            "Shims may not fill the gap. Measure the holes of both faces more exactly."),
        CheckId.SecondFaceHoles => new(
            "Second mount flange off along its face, maximum", "bend line, allowance, cutting, ± of the holes, each at its worst, magnitudes added; limit: play of its bolts",
            "The bolts of the second face may not go in. Measure the holes of both faces more exactly, or drill these holes through the second mount flange with the bracket in place."),
        CheckId.SecondFaceDrawn => new(
            "Yield strength over the stress as the bolts draw the second mount flange down", "finite elements: the second mount flange turned about its bend by 0.05 mm over the width of a washer, what a feeler gauge leaves",
            "Tightening bends the bracket for good, and its stop leaves its place. Use a thinner sheet, or another mount hole farther from the line where the faces meet."),
        CheckId.SpacerPressure => new(
            "Compression of a spacer, pedal stamped on", "(maximum force in the screw + tilting moment / contact radius) / (area of the spacer); limit: yield strength of S235",
            "The spacer is squeezed shorter and the screw loses its grip. Use a larger screw with its wider spacer, or stronger steel, or less torque."),
        CheckId.RingHoleEdge => new(
            "Centre of a hole of the adapter ring to the nearest edge", "distance to outline, bore or another hole; limit: 1.2 hole diameters, 1.5 in sheet under 3 mm",
            "The hole tears out of the ring. Put it farther from the bore and from the other holes, or use a smaller bolt."),
        CheckId.RingBore => new(
            "Radius that the bore of the adapter ring leaves free", "radius as cut - play of the flange bolts with the ± of their places - limit deviation of the cut",
            "The ring touches what stands in its bore and does not lie flat. Measure bore_radius and the flange bolts again."),
        CheckId.RingBoltEngagement => new(
            "Thread of a flange bolt left in engagement under the adapter ring", "engagement today - thickness of the ring + what the new bolt is longer; limit: 1.5 diameters",
            "The flange bolts hold throttle body, gasket and ring with too little thread: it strips, and air leaks in past the valve. Use longer bolts, or a thinner ring."),
        CheckId.RingBoltDepth => new(
            "Depth of full thread under a longer flange bolt", "as measured; limit: engagement of the bolt + 0.5 mm + 2 pitches",
            "The longer bolt bottoms before it clamps flange and ring. Measure the depth, tap deeper, or use a thinner ring."),
        CheckId.RingToolRoom => new(
            "Room for a socket on a bolt of the bracket beside a flange bolt", "centre of the mount hole to the washer of the flange bolt; limit: half the socket",
            "The socket does not go on. Put the mount hole farther from the flange bolt."),
        CheckId.RingHeadRoom => new(
            "Bracket to the head of a flange bolt on the adapter ring", "distance in space; limit: 1 mm",
            "The bracket lies on the head of a flange bolt and not on the ring. Put the mount holes farther from the flange bolts."),
        CheckId.RingYield => new(
            "Yield strength of the adapter ring over its stress with the pedal stamped on", "yield strength / maximum von Mises stress under the proof load; finite elements, held under the washers of the flange bolts alone, loaded by the bracket as both bend together",
            "A foot stamped on the pedal bends the ring for good: the stop moves with the bracket on it. Take a thicker or stronger ring, or put the mount holes nearer to the flange bolts."),
        CheckId.RingEndurance => new(
            "Safety factor of the adapter ring against cracking, every opening counted", "as endurance, for the ring; constant: the flange's faces out of one plane drawn level",
            "In the long run the ring cracks from being pulled and let go. Take a thicker ring, or put the mount holes nearer to the flange bolts."),
        _ => throw new ArgumentOutOfRangeException(nameof(id), id, "This check has no words yet."),
    };
}
