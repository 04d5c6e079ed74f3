using BracketGen.Mechanism.Cables;
using BracketGen.Units;

namespace BracketGen.Words.Results;

/// <summary>Why the outer does not get to the bulkhead, in words.</summary>
public static class OuterText
{
    /// <summary>The reason as a sentence or two; null where there is a route.</summary>
    public static string? Problem(NoOuterRoute? problem, UnitSystem units)
    {
        string Length(double value) => units.Write(Quantity.Length, value);
        return problem switch
        {
            EndsTooClose p => $"No route with bends of {Length(p.Radius)} leads from the stop to the bulkhead. They are {Length(p.Apart)} apart, too close for their directions. Move or turn one of them.",
            OuterTooShort p => $"The outer is {Length(p.Needed - p.Length)} too short. With bends of {Length(p.Radius)} the route is {Length(p.Needed)}, and the outer has {Length(p.Length)}.",
            _ => null,
        };
    }
}
