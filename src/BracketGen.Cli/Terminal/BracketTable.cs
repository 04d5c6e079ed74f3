using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Measuring;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Cli.Terminal;

/// <summary>Where the stop is and what the bracket is made of.</summary>
internal static class BracketTable
{
    public static void Print(TextWriter output, Solution solution)
    {
        if (solution.Bracket is not { } bracket || solution.Placement is not { } placement)
        {
            return;
        }

        string Length(double value) => CheckText.Number(Quantity.Length, value, solution.Job.Units);
        string Degrees(double value) => value.ToString("0.0", CultureInfo.InvariantCulture) + "°";
        var bounds = bracket.Flat.Blank.Outline.Bounds;
        output.WriteLine();
        TextTable.Print(output,
        [
            ["stop's seat", $"x {Length(placement.Seat.X)}, y {Length(placement.Seat.Y)}, z {Length(placement.Seat.Z)}", "from the throttle shaft, in the groove's plane"],
            ["wire leaves towards", Degrees(placement.Direction.XY.Polar.Degrees), "counter-clockwise from x"],
            ["free wire, valve closed", Length(placement.Straight), "from groove to seat"],
            ["sheet", $"{bracket.Stock.Material.Designation}, {Length(bracket.Stock.Thickness)}", $"{(bracket.Mass * 1e6).ToString("0", CultureInfo.InvariantCulture)} g"],
            ["blank", $"{Length(bounds.Width)} x {Length(bounds.Height)}", bracket.Flat.Bends.IsEmpty ? "flat plate, no bend" : ""],
            .. bracket.Flat.Bends.Select((b, i) => new[]
            {
                $"bend {i + 1}", $"{(b.IsUp ? "up" : "down")} {Degrees(b.Turn.Magnitude.Degrees)}, inside radius {Length(b.InsideRadius)}",
                $"allowance {Length(b.Allowance)} by {b.Rule.Name}",
            }),
        ]);
    }
}
