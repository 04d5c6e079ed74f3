using BracketGen.Profiles.Toml;
using BracketGen.TestSupport.Comparison;
using Tomlyn.Model;

namespace BracketGen.Bench.Same;

/// <summary>Changes the shipped shop: how it cuts, what it has in stock, which dies and test bends.</summary>
internal static class RandomShop
{
    /// <summary>Changes the table.</summary>
    public static void Change(TomlTable shop, Dice dice)
    {
        shop["process"] = dice.Pick("laser", "laser", "plasma", "water jet");
        shop["kerf"] = dice.Length(dice.Between(0.1, 1.2));
        shop["bend_rule"] = dice.Pick("DIN 6935", "Machinery's Handbook");
        var materials = dice.Some(shop.ListIn("materials"), 1, 65);
        foreach (var material in materials)
        {
            material["thicknesses"] = Toml.Array(dice.Some([.. ((TomlArray)material["thicknesses"]).Cast<object>()], 2, 60));
            material["yield"] = Math.Round(Toml.Number(material["yield"]) * dice.Between(0.9, 1.3), 0);

            // Never larger than along the grain: that is an error.
            material["least_radius_across_grain"] = Math.Round(Toml.Number(material["least_radius_across_grain"]) * dice.Between(0.8, 1), 2);
            material["least_radius_along_grain"] = Math.Round(Toml.Number(material["least_radius_along_grain"]) * dice.Between(1, 1.4), 2);
        }

        var dies = dice.Some(shop.ListIn("dies"), 3, 70);

        // A test bend of a sheet or a die that the shop does not have is an error.
        var tests = dice.Some(shop.ListIn("test_bends"), 0, 70).Where(t =>
            materials.Any(m => (string)m["designation"] == (string)t["material"] && ((TomlArray)m["thicknesses"]).Any(d => Toml.Number(d).Equals(Toml.Number(t["thickness"]))))
            && dies.Any(d => Toml.Number(d["inside_radius"]).Equals(Toml.Number(t["inside_radius"])))).ToList();
        foreach (var test in tests)
        {
            test["k"] = dice.Between(0.36, 0.46, 3);
        }

        shop.SetList("materials", materials);
        shop.SetList("dies", dies);
        shop.SetList("test_bends", tests);
    }
}
