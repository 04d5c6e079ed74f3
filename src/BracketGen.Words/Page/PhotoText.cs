using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Photo;
using BracketGen.Units;

namespace BracketGen.Words.Page;

/// <summary>What a photograph tells of a throttle body, in words.</summary>
public static class PhotoText
{
    /// <summary>Why a photograph does not tell, and what to do.</summary>
    /// <param name="answer">The answer; it has a problem.</param>
    /// <param name="units">The units of the job.</param>
    public static string Problem(PhotoAnswer answer, UnitSystem units) => answer.Problem switch
    {
        PhotoProblem.TooFewMarks => "Click at least four marks. No three of the four may lie in one line.",
        PhotoProblem.Mirrored => "No camera sees the marks like this. The photograph is mirrored, or two marks have each other's number.",
        PhotoProblem.MarkOff => $"Mark {answer.Mark} lies {Length(units, answer.Off)} from where the other marks put it. Click it again. If it stays, the paper does not lie flat.",
        PhotoProblem.LensBends => $"The lens bends straight lines by {Length(units, answer.Off)}. Photograph with the main lens, from farther away.",
        PhotoProblem.DistanceUnknown =>
            "Something lies above the face, and the camera's distance is not known well enough to correct for that. "
            + "Measure from the lens to the middle of the target, or photograph from 20° to 30° beside the shaft.",
        PhotoProblem.NoCircle => "Spread the clicks round the rim: three or more that do not lie in one line, six or more where the groove has another shape.",
        _ => "Something is marked higher than the camera. Check the heights and the distance.",
    };

    /// <summary>How the photograph was taken and how well it tells.</summary>
    /// <param name="found">What it tells.</param>
    /// <param name="units">The units of the job.</param>
    public static ImmutableArray<string> About(PhotoFindings found, UnitSystem units)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        lines.Add($"Camera {units.WriteCoarse(Quantity.Length, found.CameraHeight.Value)} ± {units.WriteCoarse(Quantity.Length, found.CameraHeight.PlusMinus)} above the face, {found.Tilt.Degrees:F0}° from square.");
        lines.Add($"The marks fit within {Length(units, found.MarksOff)}. The lens shifts a mark by up to {Length(units, found.Bend)}; this is taken out.");
        lines.Add(found.IsClickMeasured
            ? $"Your clicks scatter by {Length(units, found.Click)}."
            : $"Your clicks are assumed to scatter by {Length(units, found.Click)}. Click every mark twice or more to have this measured.");
        if (found.Marks == 4)
        {
            lines.Add("With four marks a wrong click hardly shows. Click all eight.");
        }

        if (found.EdgeOffset is { } offset && offset.Value > offset.PlusMinus)
        {
            lines.Add($"The middle of the edge lies {With(units, offset)} from the shaft: the edge is not round about the shaft. Click the shaft's end again, or tick that the groove has another shape.");
        }

        return lines.ToImmutable();
    }

    /// <summary>A length with its ±.</summary>
    public static string With(UnitSystem units, Measured value) => $"{units.Number(Quantity.Length, value.Value)} ± {units.Write(Quantity.Length, value.PlusMinus)}";

    /// <summary>An angle with its ±.</summary>
    public static string With(MeasuredAngle value) => $"{value.Value.Degrees:F1} ± {value.PlusMinus.Degrees:F1}°";

    /// <summary>Where a hole is.</summary>
    public static string At(UnitSystem units, ThrottlePoint at, PointPlusMinus plusMinus) =>
        $"x {With(units, new(at.X, plusMinus.X))}, y {With(units, new(at.Y, plusMinus.Y))}, z {With(units, new(at.Z, plusMinus.Z))}";

    /// <summary>A reading by its number's own name.</summary>
    public static string Label(PhotoReadingKind kind, int item) => kind switch
    {
        PhotoReadingKind.OuterRadius => "Radius over the rims",
        PhotoReadingKind.PitchRadius => "Pitch radius, to the middle of the wire",
        PhotoReadingKind.Cam => "Groove as a table, about the shaft",
        PhotoReadingKind.PocketAngle => "Angle of the pocket on the closed stop",
        _ => $"Hole {item} of the mount",
    };

    /// <summary>How many points a cam has, with their ±.</summary>
    public static string Cam(UnitSystem units, int points, double plusMinus) => $"{points} points, radii ± {units.Write(Quantity.Length, plusMinus)}";

    /// <summary>The bar of the target was not measured.</summary>
    public const string BarAssumed = "The bar of the target was not measured: its length is assumed right within 1 %.";

    /// <summary>How square the face is to the shaft.</summary>
    /// <param name="degrees">What is taken for it, each way.</param>
    public static string FaceAssumed(double degrees) => FormattableString.Invariant($"The mount face is assumed square to the throttle shaft within {degrees:0.#}°: a milled face. Each ± has this in it. Where you know it is worse, measure the holes by hand.");

    /// <summary>Heights without a ±.</summary>
    /// <param name="plusMinus">What is taken for it.</param>
    /// <param name="units">The units of the job.</param>
    public static string HeightsAssumed(double plusMinus, UnitSystem units) => $"Lengths without a ± are assumed right within {units.Write(Quantity.Length, plusMinus)}.";

    /// <summary>The holes lie on a face that is not square to the shaft.</summary>
    public const string HolesElsewhere = "The mount face of this throttle body is not square to the throttle shaft: a photograph along the shaft does not tell where its holes are. Measure them.";

    /// <summary>A length that cannot be read.</summary>
    /// <param name="typed">What was typed.</param>
    public static string NoLength(string typed) => $"\"{typed}\" is no length. Write a number, with mm or in behind it.";

    private static string Length(UnitSystem units, double value) => units.Write(Quantity.Length, value);
}

/// <summary>What a reading of a photograph is of.</summary>
public enum PhotoReadingKind
{
    /// <summary>Radius over the rims.</summary>
    OuterRadius,

    /// <summary>Radius of the wire.</summary>
    PitchRadius,

    /// <summary>A groove of any other shape.</summary>
    Cam,

    /// <summary>Angle of the pocket.</summary>
    PocketAngle,

    /// <summary>A hole of the mount.</summary>
    Hole,
}
