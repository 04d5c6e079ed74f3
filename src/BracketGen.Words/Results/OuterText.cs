using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Units;

namespace BracketGen.Words.Results;

/// <summary>How the outer gets to the bulkhead, in words.</summary>
public static class OuterText
{
    /// <summary>Why it does not get there, in a sentence or two; null where it does.</summary>
    public static string? Problem(NoOuterRoute? problem, UnitSystem units)
    {
        string Length(double value) => units.Write(Quantity.Length, value);
        return problem switch
        {
            EndsTooClose p => $"No route with bends of {Length(p.Radius)} leads from the stop to the bulkhead. They are {Length(p.Apart)} apart, too close for their directions. Move or turn one of them.",
            OuterTooShort { Needed: var needed } p when needed > p.Length => $"The outer is {Length(needed - p.Length)} too short. With bends of {Length(p.Radius)} the route is {Length(needed)}, and the outer has {Length(p.Length)}.",
            OuterTooShort p => $"The outer has {Length(p.Length)}: pulled taut, it does not reach.",
            _ => null,
        };
    }

    /// <summary>Length of the outer against its way; "none" where it does not get there.</summary>
    public static string Length(OuterFit fit, UnitSystem units) => fit switch
    {
        { Problem: not null } => "none",
        { IsLaid: true } => units.Write(Quantity.Length, fit.AtLengths[0].Length),
        _ => units.Write(Quantity.Length, fit.Shortest!.Length),
    };

    /// <summary>How it lies: as an elastic line, or on the shortest route where its length is not known, and what to order.</summary>
    public static string Lie(OuterFit fit, UnitSystem units)
    {
        string Length(double value) => units.Write(Quantity.Length, value);
        var order = fit.Order is { } length ? $" Order an outer of {Length(length)}." : "";
        var spare = fit.Spare >= 0 ? $"; {Length(fit.Spare)} longer than the shortest route" : "";
        return fit switch
        {
            { Problem: { } problem } => Problem(problem, units) + order,
            { IsTooLong: true } => $"The outer is too long: it can only lie in a loop.{order}",
            { IsLaid: true } => $"minimum radius {Length(fit.MinRadius)}{spare}" + (order.Length > 0 ? $".{order}" : ""),
            _ => $"shortest route with bends of {Length(fit.Shortest!.Radius)}; the outer's own length was not measured.{order}",
        };
    }

    /// <summary>Where the bends that friction takes come from.</summary>
    public static string BendsFrom(Cable cable, MechanismReport report) =>
        report.Friction.TotalBend.Radians <= cable.TotalBend.Max && report.Friction.TotalBend != report.Outer?.Bends
            ? cable.TotalBend.Evidence == Evidence.Assumed ? "usual value, not measured" : "as measured"
            : report.Outer!.IsLaid ? "as its length lies, worst way" : "of the shortest route to the bulkhead";
}
