using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Profiles.Dxf;

/// <summary>A line of a DXF file: LINE, ARC or polyline.</summary>
/// <param name="Kind">Name of the entity.</param>
/// <param name="Layer">Its layer.</param>
/// <param name="Line">Line of the file on which it begins, from 1.</param>
/// <param name="Path">What it draws, in the file's unit.</param>
internal sealed record DxfPath(string Kind, string Layer, int Line, DrawnPath Path);

/// <summary>A circle of a DXF file.</summary>
/// <param name="Layer">Its layer.</param>
/// <param name="Line">Line of the file on which it begins, from 1.</param>
/// <param name="Centre">Its centre, in the file's unit.</param>
/// <param name="Radius">Its radius, in the file's unit.</param>
internal sealed record DxfRound(string Layer, int Line, Vector2 Centre, double Radius);

/// <summary>What was understood of a DXF file.</summary>
/// <param name="Unit">Millimetres to its unit; null where it does not say.</param>
/// <param name="Paths">Its lines.</param>
/// <param name="Circles">Its circles.</param>
/// <param name="Skipped">Kinds of entities that were left out, with their number.</param>
internal sealed record DxfDrawn(double? Unit, ImmutableArray<DxfPath> Paths, ImmutableArray<DxfRound> Circles, ImmutableArray<(string Kind, int Count)> Skipped);
