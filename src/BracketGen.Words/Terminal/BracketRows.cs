using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Units;
using BracketGen.Words.Results;

namespace BracketGen.Words.Terminal;

/// <summary>Where the stop is, what the bracket is made of and how strong it is, as rows: name, value, remark.</summary>
public static class BracketRows
{
    /// <summary>Stop, sheet and bends; empty where there is no bracket.</summary>
    public static IReadOnlyList<string[]> Of(Solution solution)
    {
        if (solution.Bracket is not { } bracket || solution.Placement is not { } placement)
        {
            return [];
        }

        var units = solution.Job.Units;
        string Length(double value) => units.Write(Quantity.Length, value);
        string Degrees(Angle angle) => units.Write(Quantity.Angle, angle.Radians);
        var bounds = bracket.Flat.Blank.Outline.Bounds;
        return
        [
            ["stop's seat", $"x {Length(placement.Seat.X)}, y {Length(placement.Seat.Y)}, z {Length(placement.Seat.Z)}", "from the throttle shaft, in the groove's plane"],
            ["wire direction", Degrees(placement.Direction.XY.Polar), "counter-clockwise from x"],
            ["free wire, valve closed", Length(placement.Straight), "from groove to seat"],
            ["sheet", $"{bracket.Stock.Material.Designation}, {Length(bracket.Stock.Thickness)}", units.Write(Quantity.Mass, bracket.Mass)],
            ["blank", $"{Length(bounds.Width)} x {Length(bounds.Height)}", bracket.Flat.Bends.IsEmpty ? "flat plate, no bend" : ""],
            ["turn in the play of the bolts", SeatTolerances.TurnInPlay(bracket, solution.Job.Shop.Process) is { } turn ? "±" + Degrees(turn) : "not held", SeatTolerances.TurnInPlay(bracket, solution.Job.Shop.Process) is null ? "a single bolt does not keep the bracket from turning: set it in line with the wire" : "maximum, before the bolts are tight"],
            .. bracket.Flat.Bends.Select((b, i) => new[]
            {
                $"bend {i + 1}", $"{(b.IsUp ? "up" : "down")} {Degrees(b.Turn.Magnitude)}, inside radius {Length(b.InsideRadius)}",
                $"allowance {Length(b.Allowance)} by {b.Rule.Name}",
            }),
        ];
    }

    /// <summary>Loads, stress, frequencies; empty where strength was not calculated.</summary>
    public static IReadOnlyList<string[]> Strength(Solution solution)
    {
        if (solution.Strength is not { } report)
        {
            return [];
        }

        var units = solution.Job.Units;
        string Force(double value) => units.Write(Quantity.Force, value);
        string Stress(double value) => units.Write(Quantity.Stress, value);
        return
        [
            ["maximum tension of an opening", Force(report.Opening.Tension), $"{Stress(report.Opening.LargestStress)}, the stop gives {units.Write(Quantity.Length, report.Opening.Give)}"],
            [
                "pedal stamped on", Force(report.Stamped.Tension),
                $"{Stress(report.Stamped.LargestStress)}, {(report.LimitingFootForce is { } foot ? $"a foot of {Force(foot)}" : "the floor stops the pedal, the over-travel stretches the cable")}",
            ],
            ["stiffness of the outer", Force(report.OuterStiffness.Max), $"{(report.OuterStiffness.Evidence == Evidence.Assumed ? "assumed, the stiffest usual" : "the stiff end of what was measured")}. {StrengthText.OuterLimit(report, units)}"],
            ["hanging on the stop", units.Write(Quantity.Mass, report.End.Mass), $"centre of gravity {units.Write(Quantity.Length, report.End.Centre)} from the middle of the sheet"],
            [
                "natural frequencies", string.Join(", ", report.Frequencies.Select(f => units.Number(Quantity.Frequency, f))) + " Hz",
                report.FiringFrequency is { } firing ? $"the engine fires at up to {units.Write(Quantity.Frequency, firing)}" : "the engine is not known: give [engine] in the throttle body's file",
            ],
        ];
    }
}
