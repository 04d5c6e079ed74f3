using BracketGen.Design.Study;
using BracketGen.Mechanism.Forces;
using BracketGen.Units;

namespace BracketGen.Words.Report;

/// <summary>Headings and main numbers under the verdict.</summary>
public static class VerdictFacts
{
    /// <summary>Heading of the main numbers.</summary>
    public const string AtAGlance = "At a glance";

    /// <summary>Heading of what blocks every bracket.</summary>
    public const string Causes = "What blocks every bracket";

    /// <summary>Heading of the remedies.</summary>
    public const string Remedies = "What would make it pass";

    /// <summary>Heading of the failed checks.</summary>
    /// <param name="onlyAdvice">Whether only advice is among them.</param>
    public static string Failures(bool onlyAdvice) => onlyAdvice ? "What is left to do" : "What fails or is not known, and what it means";

    /// <summary>Heading of what to measure or calculate.</summary>
    public const string ToProve = "Before you make the bracket";

    /// <summary>The main numbers.</summary>
    public static IEnumerable<Fact> Of(Solution solution)
    {
        var units = solution.Job.Units;
        string Length(double value) => units.Write(Quantity.Length, value);
        string Part(double value) => units.Write(Quantity.Fraction, value);
        string Degrees(double radians) => units.Write(Quantity.Angle, radians);
        var travel = solution.Travel;
        yield return new("Valve opens to", Degrees(travel.Reached.Radians), $"of {Degrees(travel.Rotation.Radians)}");
        yield return travel.ReachesWideOpen
            ? new("Over-travel", Length(travel.OverTravel), $"wide open at {Part(travel.PedalAtWideOpen)} of the pedal")
            : new("Missing pull", Length(-travel.OverTravel), $"available pull {Length(travel.AvailablePull)}");
        yield return new("Free play", Length(travel.FreePlay), $"the valve moves from {Part(travel.PedalAtFirstMove)} of the pedal");
        if (solution.Mechanism is { } mechanism)
        {
            if (!mechanism.FootForces.IsEmpty)
            {
                yield return new("Maximum foot force", units.Write(Quantity.Force, mechanism.FootForces.Max(f => f.Pressing)), "pedal going down");
            }

            if (!mechanism.Returns.IsEmpty)
            {
                yield return new("Return margin", Part(ReturnMargin.Least(mechanism.Returns).Fraction), "minimum over the sweep; weakest springs, most friction and drag");
            }
        }

        if (solution.Placement is { } placement)
        {
            yield return new(
                "Seat", $"x {units.Number(Quantity.Length, placement.Seat.X)}, y {units.Number(Quantity.Length, placement.Seat.Y)}, z {Length(placement.Seat.Z)}",
                "from the throttle shaft, in the plane of the groove");
            yield return new("Wire direction", Degrees(placement.Direction.XY.Polar.Radians), "counter-clockwise from x");
            yield return new("Straight length", Length(placement.Straight), "from groove to seat, valve closed");
        }

        if (solution.Bracket is { } bracket)
        {
            var bounds = bracket.Flat.Blank.Outline.Bounds;
            yield return new("Sheet", ShopDrawing.DrawingText.Sheet(bracket, units), FlatText.Bends(bracket));
            yield return new("Blank", $"{Length(bounds.Width)} x {Length(bounds.Height)}", $"mass {units.Write(Quantity.Mass, bracket.Mass)}");
        }

        // Of a bracket that is there already no shapes were looked for.
        if (solution.Offers.IsEmpty && !(solution.Bracket is not null && solution.Search is null))
        {
            var search = solution.Search;
            yield return new(
                "Shapes judged", Phrases.Count(search?.Shapes ?? 0),
                search is { IsCertain: false } ? $"of {search.AllShapes ?? search.Shapes}; whether none passes is not proven" : "none of them passes every check");
        }
    }
}
