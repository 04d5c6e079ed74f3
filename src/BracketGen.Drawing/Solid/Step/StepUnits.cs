namespace BracketGen.Drawing.Solid.Step;

/// <summary>Units of a STEP file (ISO 10303-41), each written once.</summary>
internal static class StepUnits
{
    /// <summary>Millimetre.</summary>
    public static string Millimetre(StepData data) => data.Share("(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))");

    /// <summary>Kilogram.</summary>
    public static string Kilogram(StepData data) => data.Share("(MASS_UNIT()NAMED_UNIT(*)SI_UNIT(.KILO.,.GRAM.))");

    /// <summary>Cubic millimetre.</summary>
    public static string CubicMillimetre(StepData data) => Derived(data, (Millimetre(data), 3));

    /// <summary>Gram per cubic centimetre.</summary>
    public static string GramPerCubicCentimetre(StepData data) => Derived(
        data,
        (data.Share("(MASS_UNIT()NAMED_UNIT(*)SI_UNIT($,.GRAM.))"), 1),
        (data.Share("(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.CENTI.,.METRE.))"), -3));

    private static string Derived(StepData data, params (string Unit, int Exponent)[] elements) => data.Share(
        $"DERIVED_UNIT({StepText.List(elements.Select(e => data.Share($"DERIVED_UNIT_ELEMENT({e.Unit},{StepText.Real(e.Exponent)})")))})");
}
