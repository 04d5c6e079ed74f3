using System.Collections.Immutable;
using BracketGen.Design.Kit;

namespace BracketGen.Profiles;

/// <summary>A list of parts at hand.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Parts">The parts, in order.</param>
public sealed record PartsList(string Name, ImmutableArray<KitPart> Parts);
