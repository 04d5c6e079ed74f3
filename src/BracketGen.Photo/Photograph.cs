using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Photo;

/// <summary>A mark of known position that was found in a photograph.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="At">Where it is on the face (mm).</param>
/// <param name="PlusMinus">How far it may be off there (mm), each way.</param>
/// <param name="Clicks">Where it was clicked (pixels from the upper left corner, x to the right, y down); one or more.</param>
public sealed record PhotoMark(int Number, Vector2 At, double PlusMinus, ImmutableArray<Vector2> Clicks);

/// <summary>A photograph of a face with marks of known position on it. It shows the whole picture that the camera took: its middle is the lens's axis.</summary>
/// <param name="Width">Width (pixels).</param>
/// <param name="Height">Height (pixels).</param>
/// <param name="Marks">The marks.</param>
/// <param name="Scale">True size of the printed target for one of its own: the length of its bar as measured, over what the bar should be.</param>
/// <param name="Distance">From the lens to the middle of the target (mm); null where nobody measured it.</param>
public sealed record Photograph(int Width, int Height, ImmutableArray<PhotoMark> Marks, Measured Scale, Measured? Distance);
