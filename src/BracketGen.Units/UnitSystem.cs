using System.Globalization;

namespace BracketGen.Units;

/// <summary>The units in which a job's outputs are written.</summary>
public enum UnitSystem
{
    /// <summary>mm, N, MPa, g.</summary>
    Metric,

    /// <summary>in, lbf, ksi, lb.</summary>
    Inch,
}

/// <summary>Writes quantities in a unit system: the one place where an internal number becomes text for a person.</summary>
/// <remarks>Numbers are in the internal unit of their <see cref="Quantity"/>. Decimal point, at least one digit before it.</remarks>
public static class UnitSystems
{
    /// <summary>The unit that a system writes a quantity in.</summary>
    public static Unit UnitOf(this UnitSystem system, Quantity quantity) => (system, quantity) switch
    {
        (UnitSystem.Inch, Quantity.Length) => UnitTable.InchLength,
        (UnitSystem.Inch, Quantity.Force) => UnitTable.PoundsForce,
        (UnitSystem.Inch, Quantity.Torque) => UnitTable.PoundForceInch,
        (UnitSystem.Inch, Quantity.Stress) => UnitTable.Ksi,
        (UnitSystem.Inch, Quantity.Mass) => UnitTable.PoundMass,
        (UnitSystem.Inch, Quantity.Stiffness) => UnitTable.PoundForcePerInch,
        (UnitSystem.Inch, Quantity.Area) => UnitTable.SquareInch,
        (UnitSystem.Inch, Quantity.Inertia) => UnitTable.PoundSquareInch,
        (_, Quantity.Length) => UnitTable.Millimetre,
        (_, Quantity.Angle) => UnitTable.Degree,
        (_, Quantity.Fraction) => UnitTable.Percent,
        (_, Quantity.Force) => UnitTable.Newton,
        (_, Quantity.Torque) => UnitTable.NewtonMetre,
        (_, Quantity.Stress) => UnitTable.Megapascal,
        (_, Quantity.Mass) => UnitTable.Gram,
        (_, Quantity.Density) => UnitTable.KilogramPerCubicMetre,
        (_, Quantity.Stiffness) => UnitTable.NewtonPerMillimetre,
        (_, Quantity.Voltage) => UnitTable.Volt,
        (_, Quantity.Frequency) => UnitTable.Hertz,
        (_, Quantity.Area) => UnitTable.SquareMillimetre,
        (_, Quantity.Time) => UnitTable.Second,
        (_, Quantity.Speed) => UnitTable.PerMinute,
        (_, Quantity.Inertia) => UnitTable.KilogramSquareMillimetre,
        _ => UnitTable.One,
    };

    /// <summary>The unit as it stands after a number: "mm", "lbf in", "°"; empty for a plain number.</summary>
    public static string Symbol(this UnitSystem system, Quantity quantity) =>
        quantity == Quantity.Angle ? "°" : system.UnitOf(quantity).Name;

    /// <summary>A number in the system's unit, not rounded.</summary>
    public static double In(this UnitSystem system, Quantity quantity, double value) => value / system.UnitOf(quantity).Factor;

    /// <summary>A quantity with its unit: "12.5 mm", "0.492 in", "37.5°", "81 %".</summary>
    public static string Write(this UnitSystem system, Quantity quantity, double value) =>
        WithUnit(system, quantity, value, system.Number(quantity, value));

    /// <summary>The same with finer decimals, for kerfs and small deflections: "0.023 mm", "0.0009 in".</summary>
    public static string WriteFine(this UnitSystem system, Quantity quantity, double value) =>
        WithUnit(system, quantity, value, system.FineNumber(quantity, value));

    /// <summary>A quantity to four decimals at most and without trailing zeros, for a limit that someone must meet: "7 mm", "0.0197 in".</summary>
    public static string WriteLimit(this UnitSystem system, Quantity quantity, double value) =>
        WithUnit(system, quantity, value, Decimals(system.In(quantity, value), "0.####"));

    /// <summary>The same with coarser decimals, for bolts: "8.4 kN", "62 lbf in", "16 ksi".</summary>
    public static string WriteCoarse(this UnitSystem system, Quantity quantity, double value) => (system, quantity) switch
    {
        (UnitSystem.Inch, Quantity.Force or Quantity.Torque or Quantity.Stress) => WithUnit(system, quantity, value, Decimals(system.In(quantity, value), "0")),
        (UnitSystem.Metric, Quantity.Force) => $"{Decimals(value / UnitTable.Kilonewton.Factor, "0.0")} {UnitTable.Kilonewton.Name}",
        (UnitSystem.Metric, Quantity.Torque) => WithUnit(system, quantity, value, Decimals(system.In(quantity, value), "0.0")),
        _ => system.Write(quantity, value),
    };

    /// <summary>A nominal length (mm) as it is ordered, with no decimals that it does not have: "3 mm", "0.118 in".</summary>
    public static string WriteSize(this UnitSystem system, double length) => system == UnitSystem.Inch
        ? system.Write(Quantity.Length, length)
        : WithUnit(system, Quantity.Length, length, Decimals(length, "0.##"));

    /// <summary>Two ends of a range with the unit once: "3.0 to 4.5 mm".</summary>
    public static string WriteRange(this UnitSystem system, Quantity quantity, double from, double to) =>
        $"{system.Number(quantity, from)} to {system.Write(quantity, to)}";

    /// <summary>The number alone, to the decimals that are usual for it.</summary>
    public static string Number(this UnitSystem system, Quantity quantity, double value) =>
        // A probability near one must not be rounded up to a certainty.
        quantity == Quantity.Fraction && value is > 0.985 and < 1
            ? Decimals(Math.Floor(10_000 * value) / 100, "0.0#")
            : Decimals(system.In(quantity, value), Format(system, quantity));

    /// <summary>The number alone, with finer decimals.</summary>
    public static string FineNumber(this UnitSystem system, Quantity quantity, double value) =>
        Decimals(system.In(quantity, value), quantity switch
        {
            Quantity.Length when system == UnitSystem.Inch => "0.0000",
            Quantity.Length => "0.000",
            Quantity.Mass when system == UnitSystem.Metric => "0.0",
            _ => Format(system, quantity) + "#",
        });

    /// <summary>A number in a format of .NET's, decimal point, no minus before a zero; "not known", "no limit" and "none" for what is no number.</summary>
    public static string Decimals(double value, string format)
    {
        if (!double.IsFinite(value))
        {
            return double.IsNaN(value) ? "not known" : value > 0 ? "no limit" : "none";
        }

        var text = value.ToString(format, CultureInfo.InvariantCulture);
        return text[0] == '-' && !text.AsSpan(1).ContainsAnyInRange('1', '9') ? text[1..] : text;
    }

    /// <summary>A number to a fixed count of decimals, half away from zero on the decimal number a reader would see: 0.125 is 0.13, as on the calculator beside the drawing.</summary>
    public static string Fixed(double value, int decimals)
    {
        // Twelve digits first: 40.2 in to mm and back must not fall on the wrong side of a half for its sixteenth digit.
        var steady = Math.Round((decimal)value, Math.Min(decimals + 8, 20));
        var rounded = Math.Round(steady, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0m : rounded).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    private static string WithUnit(UnitSystem system, Quantity quantity, double value, string number) => quantity switch
    {
        _ when !double.IsFinite(value) || quantity == Quantity.Number => number,
        Quantity.Angle => number + "°",
        _ => $"{number} {system.Symbol(quantity)}",
    };

    private static string Format(UnitSystem system, Quantity quantity) => (system, quantity) switch
    {
        (UnitSystem.Inch, Quantity.Length) => "0.000",
        (_, Quantity.Length) => "0.0#",
        (_, Quantity.Angle) => "0.0",
        (_, Quantity.Fraction) => "0",
        (_, Quantity.Force) => "0.0",
        (_, Quantity.Torque) => "0.0#",
        (UnitSystem.Inch, Quantity.Stress) => "0.0",
        (_, Quantity.Stress) => "0",
        (UnitSystem.Inch, Quantity.Mass) => "0.000",
        (_, Quantity.Mass) => "0.#",
        (UnitSystem.Inch, Quantity.Stiffness) => "0",
        (_, Quantity.Stiffness) => "0.0",
        (_, Quantity.Density) => "0",
        (_, Quantity.Voltage) => "0.00",
        (_, Quantity.Frequency) => "0",
        (_, Quantity.Speed) => "0",
        (UnitSystem.Inch, Quantity.Area) => "0.00",
        (_, Quantity.Area) => "0",
        (_, Quantity.Time) => "0.00",
        (UnitSystem.Inch, Quantity.Inertia) => "0.00",
        (_, Quantity.Inertia) => "0.0",
        _ => "0.##",
    };
}
