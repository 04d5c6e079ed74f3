using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Photo;

/// <summary>The numbers of a throttle body from what was marked, in the throttle frame.</summary>
internal static class PhotoMeasuring
{
    private const int CirclePoints = 72;

    // Points along a side of the grid that lays the photograph square-on: what a lens bends between two is less than a line's width.
    private const int GridPoints = 17;

    // Drawn length of the x axis (mm).
    private const double AxisLength = 40;

    /// <summary>All that was marked; what the camera itself tells is left to be filled in.</summary>
    public static PhotoFindings Of(PhotoInputs inputs, MarkedBody body)
    {
        var findings = new PhotoFindings
        {
            CameraHeight = default,
            Tilt = default,
            Bend = 0,
            MarksOff = 0,
            Click = 0,
            IsClickMeasured = false,
            Marks = 0,
            Holes = [.. body.Holes.Select(h => h is null ? (FoundHole?)null : HoleOf(inputs, body, h))],
        };
        if (body.Pocket is { } pocket)
        {
            var at = InFrame(inputs, inputs.At, pocket);
            var start = Math.Atan2(at.Y, at.X);
            findings = findings with
            {
                PocketAngle = MeasuredAngle.FromRadians(inputs.Spread(x => [start + Near(InFrame(inputs, x, pocket), start)])[0]),
            };
        }

        if (body.Edge is { } edge)
        {
            findings = edge.IsCam ? WithCam(findings, inputs, edge) : WithCircle(findings, inputs, edge);
        }

        return findings with { Overlays = Overlays(inputs, body, findings), Grid = GridOf(inputs, body) };
    }

    // Over the height where the shaft's axis was marked, a point lies beside that axis by its own place less the lean of the axis between both heights.
    private static Vector2 FromShaft(PhotoInputs inputs, double[] x, Vector2 at, double height)
    {
        var shaft = inputs.Find(x, inputs.Body.Shaft);
        return at - shaft.XY - (height - shaft.Z) * inputs.Lean(x);
    }

    private static Vector2 InFrame(PhotoInputs inputs, double[] x, MarkedPoint point)
    {
        var at = inputs.Find(x, point);
        return FromShaft(inputs, x, at.XY, at.Z);
    }

    // Angle of a point beside a start, so that no step of a quotient jumps a turn.
    private static double Near(Vector2 at, double start)
    {
        var turned = at.Rotate(new Angle(-start));
        return Math.Atan2(turned.Y, turned.X);
    }

    // A screw's axis stands square on the face: the hole on the face is below the mark, wherever that was.
    private static FoundHole HoleOf(PhotoInputs inputs, MarkedBody body, MarkedPoint hole)
    {
        var at = inputs.Spread(x =>
        {
            var place = FromShaft(inputs, x, inputs.Find(x, hole).XY, 0);
            return [place.X, place.Y];
        });
        return new(new(at.Values[0], at.Values[1], -body.GrooveHeight.Value), new(at.PlusMinus(0), at.PlusMinus(1), body.GrooveHeight.PlusMinus));
    }

    private static PhotoFindings WithCircle(PhotoFindings findings, PhotoInputs inputs, MarkedEdge edge)
    {
        var circle = inputs.Spread(x =>
        {
            var (centre, radius) = CircleThrough.Of(inputs.EdgePoints(x, edge))!.Value;
            var (outwards, toWire) = inputs.EdgeWays(x, edge);
            var off = FromShaft(inputs, x, centre, inputs.EdgeHeight(x, edge));
            return [radius - outwards, radius - outwards - toWire, off.X, off.Y];
        });
        var offset = new Vector2(circle.Values[2], circle.Values[3]);
        return findings with
        {
            OuterRadius = circle[0],
            PitchRadius = edge.ToWire is null ? null : circle[1],
            EdgeOffset = new(offset.Length, new Vector2(circle.PlusMinus(2), circle.PlusMinus(3)).Length),
        };
    }

    private static PhotoFindings WithCam(PhotoFindings findings, PhotoInputs inputs, MarkedEdge edge)
    {
        // In their order round the shaft, from the widest gap on: a cam's edge covers less than a turn.
        var angles = Polar(inputs.At).Select((p, i) => (p.Polar.Normalised.Radians, i)).Order().ToArray();
        var widest = Enumerable.Range(0, angles.Length).MaxBy(i => (angles[(i + 1) % angles.Length].Radians - angles[i].Radians + 4 * Math.PI) % (2 * Math.PI));
        int[] order = [.. Enumerable.Range(1, angles.Length).Select(i => angles[(widest + i) % angles.Length].i)];
        var radii = inputs.Spread(x => [.. Wire(x).Select(p => p.Length)]);
        var points = ImmutableArray.CreateBuilder<CamPoint>();
        var angle = double.NegativeInfinity;
        foreach (var p in Wire(inputs.At))
        {
            var here = p.Polar.Radians;
            while (here <= angle)
            {
                here += 2 * Math.PI;
            }

            points.Add(new(new(here), p.Length));
            angle = here;
        }

        return findings with
        {
            Cam = points.ToImmutable(),
            CamPlusMinus = Enumerable.Range(0, radii.Values.Length).Max(radii.PlusMinus),
            IsCamOfWire = edge.ToWire is not null,
        };

        IEnumerable<Vector2> Polar(double[] x) => inputs.EdgePoints(x, edge).Select(p => FromShaft(inputs, x, p, inputs.EdgeHeight(x, edge)));

        // Each point inwards along the edge's own normal: that of the circle through it and its neighbours.
        IEnumerable<Vector2> Wire(double[] x)
        {
            var (outwards, toWire) = inputs.EdgeWays(x, edge);
            Vector2[] all = [.. Polar(x)];
            Vector2[] edgePoints = [.. order.Select(i => all[i])];
            for (var i = 0; i < edgePoints.Length; i++)
            {
                var middle = Math.Clamp(i, 1, edgePoints.Length - 2);
                var (before, after) = (edgePoints[middle - 1], edgePoints[middle + 1]);
                var normal = CircleThrough.Of([before, edgePoints[middle], after]) is { } circle
                    ? (edgePoints[i] - circle.Centre).Unit : -(after - before).Left.Unit;
                normal = normal.Dot(edgePoints[i]) < 0 ? -normal : normal;
                yield return edgePoints[i] - (outwards + toWire) * normal;
            }
        }
    }

    // Over the target and no farther: beyond its marks nothing tells what the lens does.
    private static PhotoGrid GridOf(PhotoInputs inputs, MarkedBody body)
    {
        var x = inputs.At;
        var camera = inputs.Camera(x);
        var shaft = inputs.Find(x, body.Shaft);
        var height = body.Edge?.Height.Value ?? body.Pocket?.Height.Value ?? body.GrooveHeight.Value;
        var half = PrintedTarget.Marks.Max(m => (camera.Size * m).DistanceTo(shaft.XY));
        var middle = shaft.XY + (height - shaft.Z) * inputs.Lean(x);
        double At(int i) => half * (2.0 * i / (GridPoints - 1) - 1);
        return new(half, GridPoints,
            [.. Enumerable.Range(0, GridPoints * GridPoints).Select(i => camera.See(Vector3.From(middle + new Vector2(At(i % GridPoints), At(i / GridPoints)), height)))]);
    }

    private static ImmutableArray<Overlay> Overlays(PhotoInputs inputs, MarkedBody body, PhotoFindings findings)
    {
        var x = inputs.At;
        var camera = inputs.Camera(x);
        var shaft = inputs.Find(x, body.Shaft);
        var lines = ImmutableArray.CreateBuilder<Overlay>();
        lines.Add(new(Shown.Shaft, Circle(shaft.XY, 3, shaft.Z)));
        lines.Add(new(Shown.Axis, [camera.See(shaft), camera.See(shaft + Vector3.From(new Vector2(AxisLength, 0)))]));
        if (body.Edge is { } edge)
        {
            var height = inputs.EdgeHeight(x, edge);
            if (findings.OuterRadius is { } radius)
            {
                var centre = CircleThrough.Of(inputs.EdgePoints(x, edge))!.Value.Centre;
                lines.Add(new(Shown.Edge, Circle(centre, radius.Value, height)));
                if (findings.PitchRadius is { } pitch)
                {
                    lines.Add(new(Shown.Wire, Circle(centre, pitch.Value, body.GrooveHeight.Value)));
                }
            }

            if (findings.Cam.Length > 0)
            {
                var at = findings.IsCamOfWire ? body.GrooveHeight.Value : height;
                lines.Add(new(findings.IsCamOfWire ? Shown.Wire : Shown.Edge, [.. findings.Cam.Select(p => See(shaft.XY + Vector2.FromPolar(p.Radius, p.Angle), at))]));
            }
        }

        if (body.Pocket is { } pocket)
        {
            var at = inputs.Find(x, pocket);
            lines.Add(new(Shown.Pocket, Circle(at.XY, 3, at.Z)));
        }

        foreach (var hole in body.Holes.OfType<MarkedPoint>())
        {
            lines.Add(new(Shown.Hole, Circle(inputs.Find(x, hole).XY, 3, 0)));
        }

        return lines.ToImmutable();

        Vector2 See(Vector2 at, double height) => camera.See(Vector3.From(at, height));

        ImmutableArray<Vector2> Circle(Vector2 centre, double radius, double height) =>
            [.. Enumerable.Range(0, CirclePoints + 1).Select(i => See(centre + Vector2.FromPolar(radius, Angle.FromDegrees(360.0 * i / CirclePoints)), height))];
    }
}
