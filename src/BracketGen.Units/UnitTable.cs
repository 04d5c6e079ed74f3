using System.Collections.Immutable;

namespace BracketGen.Units;

/// <summary>Every unit of measure the program reads or writes, with its conversion factor.</summary>
/// <remarks>
/// Source: NIST Special Publication 811 (2008), appendix B.8, and the exact definitions it rests on: 1 in = 25.4 mm,
/// 1 lb = 0.453 592 37 kg, standard gravity = 9.806 65 m/s². A factor made of exact numbers is written as their product.
/// </remarks>
public static class UnitTable
{
    private const double Inch = 25.4;
    private const double Pound = 0.45359237;
    private const double Gravity = 9.80665;
    private const double PoundForce = Pound * Gravity;

    /// <summary>No unit.</summary>
    public static readonly Unit One = new("", Quantity.Number, 1);
    /// <summary>mm.</summary>
    public static readonly Unit Millimetre = new("mm", Quantity.Length, 1, "mm");
    /// <summary>deg.</summary>
    public static readonly Unit Degree = new("deg", Quantity.Angle, Math.PI / 180, "deg", "°");
    /// <summary>N.</summary>
    public static readonly Unit Newton = new("N", Quantity.Force, 1, "N");
    /// <summary>N m.</summary>
    public static readonly Unit NewtonMetre = new("N m", Quantity.Torque, 1000, "N m");
    /// <summary>MPa.</summary>
    public static readonly Unit Megapascal = new("MPa", Quantity.Stress, 1, "MPa", "N/mm2", "N/mm²");
    /// <summary>GPa.</summary>
    public static readonly Unit Gigapascal = new("GPa", Quantity.Stress, 1000, "GPa");
    /// <summary>kg/m3.</summary>
    public static readonly Unit KilogramPerCubicMetre = new("kg/m3", Quantity.Density, 1e-12, "kg/m3", "kg/m³");

    /// <summary>N/mm.</summary>
    public static readonly Unit NewtonPerMillimetre = new("N/mm", Quantity.Stiffness, 1, "N/mm");
    /// <summary>V.</summary>
    public static readonly Unit Volt = new("V", Quantity.Voltage, 1, "V");
    /// <summary>in.</summary>
    public static readonly Unit InchLength = new("in", Quantity.Length, Inch, "in");
    /// <summary>kN.</summary>
    public static readonly Unit Kilonewton = new("kN", Quantity.Force, 1000, "kN");
    /// <summary>lbf.</summary>
    public static readonly Unit PoundsForce = new("lbf", Quantity.Force, PoundForce, "lbf");
    /// <summary>N mm.</summary>
    public static readonly Unit NewtonMillimetre = new("N mm", Quantity.Torque, 1, "N mm");
    /// <summary>lbf in.</summary>
    public static readonly Unit PoundForceInch = new("lbf in", Quantity.Torque, PoundForce * Inch, "lbf in", "in lbf");
    /// <summary>ksi.</summary>
    public static readonly Unit Ksi = new("ksi", Quantity.Stress, 1000 * PoundForce / (Inch * Inch), "ksi");
    /// <summary>lbf/in.</summary>
    public static readonly Unit PoundForcePerInch = new("lbf/in", Quantity.Stiffness, PoundForce / Inch, "lbf/in");
    /// <summary>Hz.</summary>
    public static readonly Unit Hertz = new("Hz", Quantity.Frequency, 1, "Hz");
    /// <summary>g.</summary>
    public static readonly Unit Gram = new("g", Quantity.Mass, 1e-6, "g");
    /// <summary>kg.</summary>
    public static readonly Unit Kilogram = new("kg", Quantity.Mass, 1e-3, "kg");
    /// <summary>lb.</summary>
    public static readonly Unit PoundMass = new("lb", Quantity.Mass, Pound / 1000, "lb");
    /// <summary>mm².</summary>
    public static readonly Unit SquareMillimetre = new("mm²", Quantity.Area, 1, "mm2", "mm²");
    /// <summary>in².</summary>
    public static readonly Unit SquareInch = new("in²", Quantity.Area, Inch * Inch, "in2", "in²");
    /// <summary>s.</summary>
    public static readonly Unit Second = new("s", Quantity.Time, 1, "s");
    /// <summary>1/min.</summary>
    public static readonly Unit PerMinute = new("1/min", Quantity.Speed, 1, "1/min");
    /// <summary>kg mm².</summary>
    public static readonly Unit KilogramSquareMillimetre = new("kg mm²", Quantity.Inertia, 1e-3, "kg mm2", "kg mm²");
    /// <summary>lb in².</summary>
    public static readonly Unit PoundSquareInch = new("lb in²", Quantity.Inertia, Pound / 1000 * Inch * Inch, "lb in2", "lb in²");
    /// <summary>%.</summary>
    public static readonly Unit Percent = new("%", Quantity.Fraction, 0.01, "%");

    /// <summary>Every unit that may stand in a profile.</summary>
    public static readonly ImmutableArray<Unit> All =
    [
        Millimetre,
        new("cm", Quantity.Length, 10, "cm"),
        new("m", Quantity.Length, 1000, "m"),
        InchLength,
        new("ft", Quantity.Length, 12 * Inch, "ft"),
        Degree,
        new("rad", Quantity.Angle, 1, "rad"),
        Newton,
        Kilonewton,
        PoundsForce,
        new("kgf", Quantity.Force, Gravity, "kgf"),
        NewtonMetre,
        NewtonMillimetre,
        PoundForceInch,
        new("lbf ft", Quantity.Torque, PoundForce * 12 * Inch, "lbf ft", "ft lbf"),
        new("kgf cm", Quantity.Torque, Gravity * 10, "kgf cm"),
        Megapascal,
        Gigapascal,
        new("psi", Quantity.Stress, PoundForce / (Inch * Inch), "psi"),
        Ksi,
        KilogramPerCubicMetre,
        new("g/cm3", Quantity.Density, 1e-9, "g/cm3", "g/cm³"),
        new("lb/in3", Quantity.Density, Pound / 1000 / (Inch * Inch * Inch), "lb/in3", "lb/in³"),
        NewtonPerMillimetre,
        PoundForcePerInch,
        Volt,
        new("mV", Quantity.Voltage, 1e-3, "mV"),
        Hertz,
        Gram,
        Kilogram,
        PoundMass,
        Second,
    ];

    /// <summary>What may stand between the two factors of a product of units: N m, N·m, lbf-in, Nm.</summary>
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
    public static string NamesOf(Quantity kind)
    {
        var names = All.Where(u => u.Kind == kind).Select(u => u.Name).ToArray();
        return names.Length == 1 ? names[0] : string.Join(", ", names[..^1]) + " or " + names[^1];
    }

    /// <summary>"a length", "a torque".</summary>
    public static string With(Quantity kind) => kind switch
    {
        Quantity.Number => "a number",
        Quantity.Length => "a length",
        Quantity.Angle => "an angle",
        Quantity.Force => "a force",
        Quantity.Torque => "a torque",
        Quantity.Stress => "a stress",
        Quantity.Stiffness => "a stiffness",
        Quantity.Voltage => "a voltage",
        Quantity.Density => "a density",
        Quantity.Mass => "a mass",
        Quantity.Frequency => "a frequency",
        Quantity.Fraction => "a percentage",
        Quantity.Area => "an area",
        Quantity.Speed => "a speed",
        _ => "a time",
    };
}
