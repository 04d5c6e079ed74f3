namespace BracketGen.Drawing.Report;

/// <summary>The picture to turn: throttle frame as measured, mm.</summary>
/// <param name="Parts">What is shown.</param>
/// <param name="Least">Least coordinates of the upright box that must be seen.</param>
/// <param name="Most">Its greatest coordinates.</param>
internal sealed record SolidData(SolidPart[] Parts, double[] Least, double[] Most);

/// <summary>One thing in the picture.</summary>
/// <param name="Kind">What it is, by which it is coloured: sheet, mount, moving, outer, keepout.</param>
/// <param name="Points">Corners, x, y and z in turn.</param>
/// <param name="Triangles">Facets by the numbers of their corners, counter-clockwise from outside.</param>
/// <param name="Edges">Lines that are drawn on it, by the numbers of their ends, two each.</param>
/// <param name="Turns">Whether it turns with the valve about the shaft.</param>
internal sealed record SolidPart(string Kind, double[] Points, int[] Triangles, int[] Edges, bool Turns);
