using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.Units;

namespace BracketGen.Profiles.Interview;

/// <summary>What is asked of a throttle body; what follows depends on what was answered.</summary>
internal static class ThrottleBodyQuestions
{
    // Answers under this name only steer the questions.
    private const string Steering = Answers.Unwritten;

    private const string Quadrant = "[quadrant]", Groove = "[quadrant.groove]", Springs = "[return_springs]";

    public static IEnumerable<Question> After(Answers answers)
    {
        yield return new("", "name", AnswerForm.Text, "What is the throttle body called?", "The name stands on drawings and reports.");
        yield return new("", "opens", AnswerForm.Word, "Which way does the valve open?", "As the eye sees it that looks at the quadrant from outside, along the throttle shaft. That eye sees x to the right, y up and z towards itself; the origin is where the shaft's axis crosses the middle of the groove.", null, "counter-clockwise", "clockwise");
        yield return new("", "bore", AnswerForm.Quantity, "Bore?", "Diameter at the plate, not at the bell mouth.");
        yield return new("", "shaft_diameter", AnswerForm.Quantity, "Throttle shaft's diameter?", "Where it crosses the bore.");
        yield return new(Steering, "shape", AnswerForm.Word, "Shape of the groove?", "Round about the shaft, or round about a centre beside it. A groove of another shape is written into the file as a table of points: see docs/profiles.md.", "round", "round", "eccentric circle");
        if (answers.Of(Steering, "shape") == "round")
        {
            yield return new(Quadrant, "pitch_radius", AnswerForm.Measured, "Pitch radius?", "From the shaft's axis to the middle of the wire in the groove, not to the groove's bottom: 31.5 +/- 0.2.");
        }

        yield return new(Quadrant, "rotation", AnswerForm.Measured, "Rotation?", "From the closed stop to the wide-open stop, in degrees: 84 +/- 1.");
        yield return new(Quadrant, "pocket_angle", AnswerForm.Measured, "Pocket angle?", "Polar angle of the end fitting's centre on the closed stop, in degrees counter-clockwise from x; negative below it: -20 +/- 1.");
        yield return new(Quadrant, "groove_extent", AnswerForm.Quantity, "Groove extent?", "Arc of groove from the pocket on that can carry the wire, in degrees.");
        yield return new(Quadrant, "groove_width", AnswerForm.Quantity, "Groove width?", "Where the wire lies.");
        yield return new(Quadrant, "slot_width", AnswerForm.Quantity, "Width of the slot into the pocket?", "The wire enters through it.");
        yield return new(Quadrant, "outer_radius", AnswerForm.Quantity, "Outer radius?", "Over the flanges beside the groove.");
        yield return new(Quadrant, "thickness", AnswerForm.Quantity, "Thickness over the flanges?", "Calliper.");
        yield return new(Quadrant, "hub_radius", AnswerForm.Quantity, "Hub radius?", "What of the quadrant is not the grooved sector lies within it; leave empty to take the whole disc as moving.", "");
        if (answers.Of(Steering, "shape") == "eccentric circle")
        {
            yield return new(Groove, "shape", AnswerForm.Word, "Its kind?", "Round about a centre beside the shaft.", "eccentric circle", "eccentric circle");
            yield return new(Groove, "radius", AnswerForm.Measured, "Radius of the groove about its own centre?", "To the middle of the wire: 32.5 +/- 0.2.");
            yield return new(Groove, "offset", AnswerForm.Quantity, "Distance of that centre from the shaft's axis?", "Half the difference of the longest and the shortest distance from the shaft to the groove.");
            yield return new(Groove, "direction", AnswerForm.Quantity, "Direction of that centre?", "Polar angle on the closed stop, in degrees counter-clockwise from x: where the groove is farthest from the shaft.");
        }

        yield return new(Springs, "torque_closed", AnswerForm.Measured, "Closing torque on the closed stop?", "Spring balance on a lever, read while it closes slowly: force times lever. In N m, or with its unit: 6 lbf in +/- 0.5 lbf in.");
        yield return new(Springs, "torque_open", AnswerForm.Measured, "Closing torque on the wide-open stop?", "The same.");
        yield return new(Springs, "count", AnswerForm.Quantity, "How many springs close the valve alone?", "Each must do it with the others unhooked: try it. Two at least are needed (49 CFR 571.124 S5).");
        yield return new("[valve]", "closed_angle", AnswerForm.Quantity, "Closed angle of the plate?", "Between the plate and the bore's cross-section, in degrees.", "7");
        yield return new("[sensor]", "closed_volts", AnswerForm.Quantity, "Sensor's reading on the closed stop?", "In V, cable off; leave empty where there is no sensor.", "");
        if (answers.Of("[sensor]", "closed_volts") is not null)
        {
            yield return new("[sensor]", "open_volts", AnswerForm.Quantity, "Sensor's reading on the wide-open stop?", "In V, valve held open by hand, cable off.");
        }

        yield return new("[mount]", "normal", AnswerForm.Point, "Normal of the mount face?", "Direction out of the casting, square to the face, as x, y, z: 0, 0, 1 for a face that looks at the eye.");
        yield return new("[mount]", "holes", AnswerForm.Count, "How many threaded holes has it?", "1 to 12.", "2");
        for (var i = 1; i <= answers.CountOf("[mount]", "holes"); i++)
        {
            var hole = $"[[mount.holes]] {i}";
            yield return new(hole, "at", AnswerForm.Point, $"Centre of hole {i}?", "x, y, z on the face, from the throttle shaft's axis and the middle of the groove: -50, 12, -24.");
            yield return new(hole, "thread", AnswerForm.Word, $"Thread of hole {i}?", "Metric.", "M6", "M4", "M5", "M6", "M8", "M10", "M12");
            yield return new(hole, "boss_diameter", AnswerForm.Quantity, $"Boss diameter of hole {i}?", "The bracket covers it.");
        }

        yield return new("[keep_out]", "boxes", AnswerForm.Count, "How many things must the bracket stay clear of?", "Each is given as a box; think of what moves, too.", "0");
        for (var i = 1; i <= answers.CountOf("[keep_out]", "boxes"); i++)
        {
            var box = $"[[keep_out]] {i}";
            yield return new(box, "name", AnswerForm.Text, $"What is thing {i}?", "A name for the report.");
            yield return new(box, "shape", AnswerForm.Word, "Its shape?", "A box; cylinders can be written into the file later.", "box", "box");
            yield return new(box, "min", AnswerForm.Point, "Its corner of minimum x, y and z?", "As x, y, z.");
            yield return new(box, "max", AnswerForm.Point, "Its corner of maximum x, y and z?", "As x, y, z.");
        }
    }
}
