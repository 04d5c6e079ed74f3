using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[valve]</c> of a throttle body; read as its closed angle (rad).</summary>
internal static class ValveSection
{
    /// <summary>Usual closed angle (rad; common practice, no source).</summary>
    public const double Usual = 7 * Math.PI / 180;

    private static readonly Key<double> ClosedAngle = new(
        "closed_angle", QuantityForm.Angle(0, 45), "Angle between the valve plate and the cross-section of the bore at the closed stop.");

    public static Section<double> Form { get; } = new([ClosedAngle], v => v.Get(ClosedAngle));
}
