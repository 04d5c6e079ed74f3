using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Profiles.Units;

/// <summary>Every unit a profile may use, with its conversion factor.</summary>
/// <remarks>
/// Source: NIST Special Publication 811 (2008), appendix B.8, and the exact definitions it rests on: 1 in = 25.4 mm,
/// 1 lb = 0.453 592 37 kg, standard gravity = 9.806 65 m/s². A factor made of exact numbers is written as their product.
/// </remarks>
internal static class UnitTable
{
    private const double Inch = 25.4;
    private const double Pound = 0.45359237;
    private const double Gravity = 9.80665;
    private const double PoundForce = Pound * Gravity;

    public static readonly Unit One = new("", UnitKind.Number, 1);
    public static readonly Unit Millimetre = new("mm", UnitKind.Length, 1, "mm");
    public static readonly Unit Degree = new("deg", UnitKind.Angle, Math.PI / 180, "deg", "°");
    public static readonly Unit Newton = new("N", UnitKind.Force, 1, "N");
    public static readonly Unit NewtonMetre = new("N m", UnitKind.Torque, 1000, "N m");
    public static readonly Unit Megapascal = new("MPa", UnitKind.Stress, 1, "MPa", "N/mm2", "N/mm²");
    public static readonly Unit Gigapascal = new("GPa", UnitKind.Stress, 1000, "GPa");
    public static readonly Unit KilogramPerCubicMetre = new("kg/m3", UnitKind.Density, 1e-12, "kg/m3", "kg/m³");

    public static readonly Unit NewtonPerMillimetre = new("N/mm", UnitKind.Stiffness, 1, "N/mm");
    public static readonly Unit Volt = new("V", UnitKind.Voltage, 1, "V");

    public static readonly ImmutableArray<Unit> All =
    [
        Millimetre,
        new("cm", UnitKind.Length, 10, "cm"),
        new("m", UnitKind.Length, 1000, "m"),
        new("in", UnitKind.Length, Inch, "in"),
        new("ft", UnitKind.Length, 12 * Inch, "ft"),
        Degree,
        new("rad", UnitKind.Angle, 1, "rad"),
        Newton,
        new("kN", UnitKind.Force, 1000, "kN"),
        new("lbf", UnitKind.Force, PoundForce, "lbf"),
        new("kgf", UnitKind.Force, Gravity, "kgf"),
        NewtonMetre,
        new("N mm", UnitKind.Torque, 1, "N mm"),
        new("lbf in", UnitKind.Torque, PoundForce * Inch, "lbf in", "in lbf"),
        new("lbf ft", UnitKind.Torque, PoundForce * 12 * Inch, "lbf ft", "ft lbf"),
        new("kgf cm", UnitKind.Torque, Gravity * 10, "kgf cm"),
        Megapascal,
        Gigapascal,
        new("psi", UnitKind.Stress, PoundForce / (Inch * Inch), "psi"),
        new("ksi", UnitKind.Stress, 1000 * PoundForce / (Inch * Inch), "ksi"),
        KilogramPerCubicMetre,
        new("g/cm3", UnitKind.Density, 1e-9, "g/cm3", "g/cm³"),
        new("lb/in3", UnitKind.Density, Pound / 1000 / (Inch * Inch * Inch), "lb/in3", "lb/in³"),
        NewtonPerMillimetre,
        new("lbf/in", UnitKind.Stiffness, PoundForce / Inch, "lbf/in"),
        Volt,
        new("mV", UnitKind.Voltage, 1e-3, "mV"),
    ];

    /// <summary>What may stand between the two factors of a product of units: «N m», «N·m», «lbf-in», «Nm».</summary>
    public const string Between = "[ \\t·⋅*-]*";

    /// <summary>The unit written as <paramref name="word"/>, or null.</summary>
    public static Unit? Find(string word) => All.FirstOrDefault(u => u.Spellings.Any(s => IsWritten(word, s)));

    private static bool IsWritten(string word, string spelling)
    {
        var gap = spelling.IndexOf(' ');
        return gap < 0
            ? word == spelling
            : word.StartsWith(spelling[..gap], StringComparison.Ordinal) && word[gap..].TrimStart(' ', '\t', '·', '⋅', '*', '-') == spelling[(gap + 1)..];
    }

    /// <summary>The names of the units of one kind, for messages.</summary>
    public static string NamesOf(UnitKind kind)
    {
        var names = All.Where(u => u.Kind == kind).Select(u => u.Name).ToArray();
        return names.Length == 1 ? names[0] : string.Join(", ", names[..^1]) + " or " + names[^1];
    }

    /// <summary>«a length», «a torque».</summary>
    public static string With(UnitKind kind) => kind switch
    {
        UnitKind.Number => "a number",
        UnitKind.Length => "a length",
        UnitKind.Angle => "an angle",
        UnitKind.Force => "a force",
        UnitKind.Torque => "a torque",
        UnitKind.Stress => "a stress",
        UnitKind.Stiffness => "a stiffness",
        UnitKind.Voltage => "a voltage",
        _ => "a density",
    };
}
