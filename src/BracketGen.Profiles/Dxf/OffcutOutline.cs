using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;

namespace BracketGen.Profiles.Dxf;

/// <summary>Makes an offcut of its drawn outline.</summary>
internal static class OffcutOutline
{
    /// <summary>The offcut with its outline, the lower left corner of its rectangle at the origin; null where a mistake was reported.</summary>
    /// <param name="known">What its file says.</param>
    /// <param name="drawn">The drawing: the largest contour is the edge, the others are cut out.</param>
    /// <param name="unit">Millimetres to the drawing's unit where it does not say one.</param>
    /// <param name="path">Path of the drawing.</param>
    /// <param name="reading">Takes the mistake.</param>
    public static Offcut? Of(Offcut known, DxfDrawn drawn, double unit, string path, Reading reading)
    {
        var scale = drawn.Unit ?? unit;
        var (closed, wrong) = PathChain.Join([.. drawn.Paths.Select(p => p.Path with { Points = [.. p.Path.Points.Select(q => q with { At = scale * q.At })] })], DxfWrong.Together);
        Offcut? Wrong(int line, string read, OffcutWrong problem)
        {
            reading.Report(new(path, line, line > 0 ? 1 : 0), "", read, problem);
            return null;
        }

        if (wrong is var (fault, at, _, gap))
        {
            return Wrong(drawn.Paths[at].Line, drawn.Paths[at].Kind, new(fault == ChainFault.Open ? OffcutMistake.Open : OffcutMistake.Fork, drawn.Paths[at].Layer, gap));
        }

        (Contour Contour, string Kind, string Layer, int Line)[] all =
        [
            .. closed.Select(c => (c.Contour, drawn.Paths[c.Path].Kind, drawn.Paths[c.Path].Layer, drawn.Paths[c.Path].Line)),
            .. drawn.Circles.Select(c => (Contour.Circle(scale * c.Centre, scale * c.Radius), "CIRCLE", c.Layer, c.Line)),
        ];
        if (all.Length == 0)
        {
            return Wrong(0, "", new(OffcutMistake.NoContour));
        }

        var outer = all.MaxBy(c => Math.Abs(c.Contour.SignedArea));
        var bounds = outer.Contour.Bounds;
        if (bounds.Width is < Offcut.Least or > Offcut.MostLength || bounds.Height is < Offcut.Least or > Offcut.MostWidth)
        {
            return Wrong(outer.Line, outer.Kind, new(OffcutMistake.Size, outer.Layer, bounds.Width, bounds.Height));
        }

        var holes = all.Where(c => c != outer).ToArray();
        foreach (var hole in holes)
        {
            if (!hole.Contour.Flatten(1).All(outer.Contour.Contains))
            {
                return Wrong(hole.Line, hole.Kind, new(OffcutMistake.Outside, hole.Layer));
            }
        }

        Contour Turned(Contour contour, bool isHole) => (contour.SignedArea > 0 == isHole ? contour.Reversed : contour).Shift(-bounds.Min);
        return known with { Length = bounds.Width, Width = bounds.Height, Outline = new(Turned(outer.Contour, false), holes.Select(h => Turned(h.Contour, true))) };
    }
}
