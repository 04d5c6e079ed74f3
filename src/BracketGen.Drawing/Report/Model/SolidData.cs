namespace BracketGen.Drawing.Report.Model;

/// <summary>The picture to turn: throttle frame as measured, mm.</summary>
/// <param name="Parts">What is shown.</param>
/// <param name="Least">Least coordinates of the upright box that must be seen.</param>
/// <param name="Most">Its greatest coordinates.</param>
/// <param name="Shell">The sheet with its stress and first vibration; null where strength was not looked at.</param>
internal sealed record SolidData(SolidPart[] Parts, double[] Least, double[] Most, ShellData? Shell);

/// <summary>One thing in the picture.</summary>
/// <param name="Kind">What it is, by which it is coloured: sheet, mount, shaft, fitting, outer, casting, valve, moving, keepout.</param>
/// <param name="Points">Corners, x, y and z in turn.</param>
/// <param name="Triangles">Facets by the numbers of their corners, counter-clockwise from outside.</param>
/// <param name="Edges">Lines that are drawn on it, by the numbers of their ends, two each.</param>
/// <param name="Turns">Whether it turns with the valve about the shaft.</param>
internal sealed record SolidPart(string Kind, double[] Points, int[] Triangles, int[] Edges, bool Turns);

/// <summary>The middle surface of the sheet with what was calculated on it.</summary>
/// <param name="Points">Nodes, x, y and z in turn.</param>
/// <param name="Triangles">Elements by the numbers of their corners.</param>
/// <param name="Stress">Stress of each node as part of the scale's end, 0 to 1.</param>
/// <param name="Swing">Movement of each node in the first vibration (mm, enlarged), x, y and z in turn.</param>
/// <param name="Bands">Colours of the scale's steps, the lowest first.</param>
internal sealed record ShellData(double[] Points, int[] Triangles, double[] Stress, double[] Swing, string[] Bands);
