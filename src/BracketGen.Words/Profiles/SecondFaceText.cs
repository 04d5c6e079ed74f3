using System.Globalization;
using BracketGen.Design.Part;
using BracketGen.Profiles.Errors;
using BracketGen.Units;

namespace BracketGen.Words.Profiles;

/// <summary>A second face that does not go with the mount face: what is allowed, and what to do.</summary>
internal static class SecondFaceText
{
    public static string Allowed(SecondFaceWrong wrong, UnitSystem units) => wrong.Mistake switch
    {
        SecondFaceMistake.Parallel or SecondFaceMistake.TooSharp => $"a face that a bend of {Degrees(Joint.LeastTurn.Degrees)} to {Degrees(Joint.MostTurn.Degrees)} leads to",
        SecondFaceMistake.OtherSide => "holes of both faces on the same side of the line where the faces meet",
        SecondFaceMistake.NearLine => $"a hole at least {Length(wrong.Limit, units)} from the line where the faces meet, half its boss",
        SecondFaceMistake.FarLine => $"a hole at most {Length(wrong.Limit, units)} from the line where the faces meet",
        _ => "normal, or three points of the face that do not lie along a line, holes counted",
    };

    public static string Advice(SecondFaceWrong wrong, UnitSystem units) => wrong.Mistake switch
    {
        SecondFaceMistake.Parallel => $"The two faces stand parallel, {Length(Math.Abs(wrong.Distance), units)} apart: that is a step. Put its holes under [[mount.holes]] and give the lower ones a spacer, at most {Length(40, units)} long. If the step is deeper, bolt a block on it first.",
        SecondFaceMistake.TooSharp => $"It would take a bend of {Degrees(wrong.Turn.Degrees)}. Check that both normals point out of the metal. If they do, use the mount face alone, or make two brackets.",
        SecondFaceMistake.OtherSide => $"{Hole(wrong)} lies on the other side of the line. Check that both normals point out of the metal, and measure the hole again.",
        SecondFaceMistake.NearLine => $"{Hole(wrong)} is {Length(wrong.Distance, units)} from it: its boss would reach past the other face. Measure the hole and the normals again.",
        SecondFaceMistake.FarLine => $"{Hole(wrong)} is {Length(wrong.Distance, units)} from it. No bracket reaches so far: use the mount face alone.",
        _ => "Measure three points of the face far apart from each other, or give its normal.",
    };

    private static string Hole(SecondFaceWrong wrong) =>
        string.Create(CultureInfo.InvariantCulture, $"Hole {wrong.Hole} of the {(wrong.IsOnSecond ? "second" : "mount")} face");

    private static string Degrees(double degrees) => UnitSystems.Decimals(degrees, "0.#") + "°";

    private static string Length(double length, UnitSystem units) => units.WriteLimit(Quantity.Length, length);
}
