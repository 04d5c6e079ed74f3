using BracketGen.Geometry;
using BracketGen.Units;

namespace BracketGen.Profiles.Interview;

/// <summary>What is asked of a vehicle; what follows depends on what was answered.</summary>
internal static class VehicleQuestions
{
    public static IEnumerable<Question> After(Answers answers)
    {
        yield return new("", "name", AnswerForm.Text, "What is the vehicle called?", "The name stands on drawings and reports.");
        yield return new("[cable]", "wire_diameter", AnswerForm.Quantity, "Wire diameter?", "Calliper across the bare wire.");
        yield return new("[cable]", "outer_diameter", AnswerForm.Quantity, "Outer diameter?", "Calliper across the sheath.");
        yield return new("[cable]", "free_inner_length", AnswerForm.Measured, "Free inner length?", "From the seat of the outer's end to the end fitting's centre: adjuster at mid range, pedal released, wire pulled taut by hand. Say how well you measured it: 138 +/- 1.");
        yield return new("[cable]", "fleet_limit", AnswerForm.Quantity, "Largest fleet angle?", "How far the wire may lean out of the groove's plane, in degrees.", "3");
        yield return new("[cable]", "min_bend_radius", AnswerForm.Quantity, "Tightest bend radius of the outer?", "The tightest bend in which the wire still slides freely.", "60");
        yield return new("[cable]", "outer_length", AnswerForm.Quantity, "Length of the outer, seat to bulkhead?", "Needed only to check its way to the bulkhead.", "");
        yield return new("[cable.fitting]", "kind", AnswerForm.Word, "What is on the wire's end?", "A barrel lies across the wire, a nipple along it.", null, "barrel", "nipple", "ball");
        yield return new("[cable.fitting]", "diameter", AnswerForm.Quantity, "Its diameter?", "Calliper.");
        if (answers.Of("[cable.fitting]", "kind") != "ball")
        {
            yield return new("[cable.fitting]", "length", AnswerForm.Quantity, "Its length?", "Along its own axis.");
        }

        const string end = "[cable.outer_end]";
        yield return new(end, "kind", AnswerForm.Word, "How does the outer end at the bracket?", "A threaded end with two nuts, a plain ferrule with a shoulder, or a ferrule with a ring groove that is pushed into a slot.", null, "threaded adjuster", "plain ferrule", "slotted clip");
        switch (answers.Of(end, "kind"))
        {
            case "threaded adjuster":
                yield return new(end, "thread", AnswerForm.Text, "Its thread?", "\"M8x1\", \"M8\" for the coarse pitch, or \"5/16-24\". Count the pitch over ten threads.");
                yield return new(end, "across_flats", AnswerForm.Quantity, "Nuts across flats?", "Calliper.");
                yield return new(end, "nut_height", AnswerForm.Quantity, "Height of one nut?", "Calliper.");
                yield return new(end, "range", AnswerForm.Quantity, "Whole range of the adjuster?", "From one end of the thread to the other, nuts on.");
                break;
            case "plain ferrule":
                yield return new(end, "nose_diameter", AnswerForm.Quantity, "Diameter of the nose?", "The part that sits in the hole.");
                yield return new(end, "shoulder_diameter", AnswerForm.Quantity, "Diameter of the shoulder?", "The part that bears on the bracket.");
                yield return new(end, "range", AnswerForm.Quantity, "Range of an adjuster elsewhere in the outer?", "0 where there is none.", "0");
                break;
            case "slotted clip":
                yield return new(end, "neck_diameter", AnswerForm.Quantity, "Diameter at the bottom of the ring groove?", "It sits in the slot.");
                yield return new(end, "collar_diameter", AnswerForm.Quantity, "Diameter of the collars?", "Beside the ring groove.");
                yield return new(end, "neck_length", AnswerForm.Quantity, "Length of the ring groove?", "The sheet must fit in it.");
                yield return new(end, "range", AnswerForm.Quantity, "Range of an adjuster elsewhere in the outer?", "0 where there is none.", "0");
                break;
            default:
                break;
        }

        yield return new("[pedal]", "available_pull", AnswerForm.Measured, "Pull of the whole pedal stroke?", "Wire pulled at the cable's end from released to the floor, carpet in place: 51 +/- 0.5.");
        yield return new("[pedal]", "lever_ratio", AnswerForm.Quantity, "Pad travel over pull?", "Travel of the pad under the foot for 1 mm of pull: pad travel to the floor divided by the pull; no unit. A table can be written into the file later.");
        yield return new("[pedal]", "pad_load", AnswerForm.Measured, "The pedal's own force at the pad, cable off?", "In N, where its weight opens the valve; negative where a spring lifts it: -1.5 +/- 0.5.", "0");
        yield return new("[controller]", "zero_volts", AnswerForm.Quantity, "Sensor reading the controller takes for closed?", "In V; leave empty where it learns its own zero.", "");
    }
}
