using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Strength.Parts;
using BracketGen.TestSupport;

namespace BracketGen.Bench.Solids;

/// <summary>Brackets as shells by this program beside solids by CalculiX.</summary>
internal static class SolidTable
{
    /// <summary>A row a bracket from number <paramref name="first"/> on: ours, theirs and the ratio.</summary>
    public static int Write(TextWriter output, string folder, double perThickness, int first)
    {
        output.WriteLine("| bracket | solid nodes | give, ours (mm) | solids | ratio | mode 1 (Hz) | solids | ratio | mode 2 | mode 3 | flanges (MPa) | solids | ratio | bends | solids, outside | solids, inside | ratio | anywhere | solids | ratio |");
        output.WriteLine("|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|");
        var number = 0;
        foreach (var solid in SolidCase.All())
        {
            number++;
            if (number < first)
            {
                continue;
            }

            var where = Directory.CreateDirectory(Path.Combine(folder, number.ToString(CultureInfo.InvariantCulture))).FullName;
            var theirs = SolidStudy.Of(solid, where, perThickness);
            var stress = new Dictionary<SolidZone, double>();
            var prepared = solid.Settled();
            var ours = prepared.Under(solid.Force);
            var modes = prepared.LowestModes(3);
            for (var n = 0; n < prepared.Flat.Nodes.Length; n++)
            {
                var zone = solid.ZoneOf(prepared.Model.Mesh.Nodes[n].Vector);
                stress[zone] = Math.Max(stress.GetValueOrDefault(zone), ours.Solution.Stresses[n].Largest);
            }

            double Of(SolidZone zone) => theirs.Stress.GetValueOrDefault(zone);
            double flange = stress.GetValueOrDefault(SolidZone.Flange), bend = stress.GetValueOrDefault(SolidZone.Bend);
            string[] cells =
            [
                $"{theirs.Nodes}", F(ours.AlongForce, "0.0000"), F(theirs.Give, "0.0000"), Ratio(ours.AlongForce, theirs.Give),
                F(modes[0].Frequency, "0.0"), F(theirs.Frequencies[0], "0.0"), Ratio(modes[0].Frequency, theirs.Frequencies[0]),
                Ratio(modes[1].Frequency, theirs.Frequencies[1]), Ratio(modes[2].Frequency, theirs.Frequencies[2]),
                F(flange, "0.0"), F(Of(SolidZone.Flange), "0.0"), Ratio(flange, Of(SolidZone.Flange)),
                F(bend, "0.0"), F(Of(SolidZone.Bend), "0.0"), F(Of(SolidZone.InsideOfBend), "0.0"), Ratio(bend, Math.Max(Of(SolidZone.Bend), Of(SolidZone.InsideOfBend))),
                F(ours.Solution.LargestStress, "0.0"), F(theirs.Stress.Values.Max(), "0.0"), Ratio(ours.Solution.LargestStress, theirs.Stress.Values.Max()),
            ];
            output.WriteLine($"| {solid.Name} | {string.Join(" | ", cells)} |");
            output.Flush();
        }

        return 0;
    }

    private static string F(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private static string Ratio(double ours, double theirs) => F(ours / theirs, "0.000");
}
