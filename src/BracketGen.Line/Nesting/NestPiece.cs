using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Line.Nesting;

/// <summary>A shape to be laid on sheets, and the ways it may be turned.</summary>
/// <param name="Name">What it is called on the sheet.</param>
/// <param name="Outline">Its outline (mm).</param>
/// <param name="Turns">Angles by which it may be turned, each once.</param>
/// <param name="Count">How many are wanted.</param>
public sealed record NestPiece(string Name, Contour Outline, ImmutableArray<Angle> Turns, int Count);
