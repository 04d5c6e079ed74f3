using System.Collections.Immutable;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Profiles.Errors;

/// <summary>A thread that is not in the tables.</summary>
/// <param name="Near">Those of the same size; all of them where the size is not known either.</param>
/// <param name="IsSizeKnown">Whether the size is in the tables, with another pitch.</param>
public sealed record ThreadUnknown(ImmutableArray<FastenerThread> Near, bool IsSizeKnown) : ProfileProblem;

/// <summary>A key that a hole of this kind needs is not there.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Name">The key.</param>
/// <param name="Description">What it is, as the schema says it.</param>
public sealed record KindNeedsKey(string Kind, string Name, string Description) : ProfileProblem;

/// <summary>A key that says nothing of a hole of this kind.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Name">The key.</param>
/// <param name="Belongs">The kind that has it.</param>
public sealed record KeyOfOtherKind(string Kind, string Name, string Belongs) : ProfileProblem;

/// <summary>Spacers under all holes of a mount.</summary>
public sealed record SpacerUnderAll : ProfileProblem;

/// <summary>A plain hole that its bolt does not go through, or nearly falls through.</summary>
/// <param name="Thread">The bolt's thread.</param>
/// <param name="From">Minimum diameter (mm).</param>
/// <param name="To">Maximum diameter (mm).</param>
public sealed record HoleNotForBolt(string Thread, double From, double To) : ProfileProblem;

/// <summary>A property class in which screws of a thread are not made.</summary>
/// <param name="Thread">The thread.</param>
/// <param name="Classes">The classes in which they are.</param>
/// <param name="Usual">What is taken where none is named.</param>
public sealed record ClassNotForThread(string Thread, ImmutableArray<string> Classes, string Usual) : ProfileProblem;
