namespace BracketGen.Drawing.Solid.Step;

/// <summary>Writes what a part is made of and what it weighs: properties of ISO 10303-41 with their representations.</summary>
/// <remarks>
/// Names as the implementers' forum agreed them. Material and density: CAx-IF Recommended Practices for Material Identification and Density, release 2.1, 4.1 and 4.2.
/// Mass: PDM Schema Usage Guide, pre-defined properties. Volume: CAx-IF Recommended Practices for Geometric and Assembly Validation Properties, release 4.4.
/// </remarks>
internal static class StepProperties
{
    /// <summary>Adds the properties of a part.</summary>
    /// <param name="data">Where they go.</param>
    /// <param name="definition">Name of its product_definition.</param>
    /// <param name="shape">Name of its product_definition_shape.</param>
    /// <param name="space">Name of the context of its shape.</param>
    /// <param name="info">What the properties say.</param>
    public static void Add(StepData data, string definition, string shape, string space, SolidInfo info)
    {
        // The mass goes before the density: Open CASCADE takes the last measure of a part for its density, whatever its name.
        Add("mass property", "mass of the blank, which bending keeps", definition, "mass", Measure("mass measure", "MASS_MEASURE", 1e3 * info.Mass, StepUnits.Kilogram(data)));
        const string material = "material property";
        var designation = StepText.String(info.Material);
        Add(material, "material name", definition, "material name", $"DESCRIPTIVE_REPRESENTATION_ITEM({designation},{designation})");

        // 1 t/mm³ is 1e9 g/cm³. Readers that pass over the unit take this one for granted.
        Add(material, "density", definition, "density", Measure("density measure", "POSITIVE_RATIO_MEASURE", 1e9 * info.Density, StepUnits.GramPerCubicCentimetre(data)));
        Add("geometric validation property", "volume of the solid", shape, "volume", Measure("volume measure", "VOLUME_MEASURE", info.Volume, StepUnits.CubicMillimetre(data)));

        void Add(string name, string description, string of, string representation, string item)
        {
            var property = data.Add($"PROPERTY_DEFINITION('{name}','{description}',{of})");
            data.Add($"PROPERTY_DEFINITION_REPRESENTATION({property},{data.Add($"REPRESENTATION('{representation}',({data.Add(item)}),{space})")})");
        }
    }

    // Decimals that stand for nothing but rounding are left out.
    private static string Measure(string name, string measure, double value, string unit) =>
        $"MEASURE_REPRESENTATION_ITEM('{name}',{measure}({StepText.Real(Math.Round(value, 9))}),{unit})";
}
