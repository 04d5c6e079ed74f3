using BracketGen.Profiles.Errors;
using BracketGen.Units;

namespace BracketGen.Words.Profiles;

/// <summary>An adapter ring that does not go with the mount: what is allowed, and what to do.</summary>
internal static class RingText
{
    public static string Allowed(RingWrong wrong, UnitSystem units) => wrong.Mistake switch
    {
        RingMistake.UnderFlange => "\"under the heads\"",
        RingMistake.BoltOffFlange => $"a point {Length(wrong.Limit, units)} under the mount face, the thickness of the ring",
        RingMistake.BoltsTogether => $"a point at least {Length(wrong.Limit, units)} from {wrong.Other}, so that both heads have room",
        RingMistake.BoltTooShort => $"less than {Length(wrong.Limit, units)}: length less washer",
        RingMistake.HoleInBore => $"a hole at least {Length(wrong.Limit, units)} from the bore's axis",
        RingMistake.HoleAtBolt => $"a hole at least {Length(wrong.Limit, units)} from {wrong.Other}",
        RingMistake.Stud => "kind = \"through\" or \"tapped\" in an adapter ring",
        RingMistake.Spacer => "no spacer in an adapter ring: its top is flat",
        RingMistake.PlusMinus => "no plus_minus in a hole of an adapter ring: it is cut where you say",
        RingMistake.Thickness => $"{Length(wrong.Limit, units)}, the thickness of the ring",
        RingMistake.ThreadDepth => $"at most {Length(wrong.Limit, units)}, the thickness of the ring",
        RingMistake.Family => "throttle bodies without an adapter ring in a family",
        RingMistake.Slots => "slotted mount holes only on a mount without an adapter ring",
        _ => "a second face or an adapter ring, not both",
    };

    public static string Advice(RingWrong wrong, UnitSystem units) => wrong.Mistake switch
    {
        RingMistake.UnderFlange => "A ring between flange and manifold moves the throttle body and needs gaskets and longer bolts on both sides: that is not designed here. Put the ring under the heads of the bolts, or bolt the bracket elsewhere.",
        RingMistake.BoltOffFlange => $"{wrong.Hole} lies {Length(wrong.Value, units)} under the mount face. The mount face is the top of the ring: give the mount holes and the bolts heights that differ by its thickness, and measure again where the heads bear.",
        RingMistake.BoltsTogether => $"{wrong.Hole} is {Length(wrong.Value, units)} from it. Measure both again.",
        RingMistake.BoltTooShort => "Measure the bolt under its head, and how deep it is screwed in.",
        RingMistake.HoleInBore => $"{wrong.Hole} is {Length(wrong.Value, units)} from it and reaches into the bore as it is cut. Put the hole farther out, or measure bore_radius again.",
        RingMistake.HoleAtBolt => $"{wrong.Hole} is {Length(wrong.Value, units)} from it: the two run into each other. Put the hole elsewhere.",
        RingMistake.Stud => $"{wrong.Hole} is a stud. Take a bolt with a nut where there is room under the ring, or a thread tapped in the ring.",
        RingMistake.Spacer => "Delete the line, and give all holes the height of the ring's top.",
        RingMistake.PlusMinus => "Delete the line. What the flange bolts leave of play counts by itself; give the ± of the flange bolts instead.",
        RingMistake.Thickness => $"{wrong.Hole} says {Length(wrong.Value, units)}. The bolt goes through the ring: write its thickness.",
        RingMistake.ThreadDepth => $"{wrong.Hole} asks for {Length(wrong.Value, units)}. Take a thicker ring, or a bolt with a nut.",
        RingMistake.Family => $"A product line makes brackets alone. Take the throttle body {wrong.Hole} out of the family and make its bracket as a job.",
        RingMistake.Slots => "The ring has play on its own bolts already. Take mount_slots out, or the adapter ring out of the throttle body.",
        _ => "Take the second face out of the mount, or the ring.",
    };

    private static string Length(double length, UnitSystem units) => units.WriteLimit(Quantity.Length, length);
}
