using BracketGen.Design.Checks;

namespace BracketGen.Design.Study;

/// <summary>A check that stands in the way of brackets.</summary>
/// <param name="Nearest">The check, of the bracket that misses it by the least.</param>
/// <param name="Stopped">How many of the shapes it stops.</param>
/// <param name="Of">How many shapes were looked at.</param>
public sealed record Obstacle(Check Nearest, int Stopped, int Of);
