using System.Collections.Immutable;
using BracketGen.Geometry;
using MathNet.Numerics.LinearAlgebra;

namespace BracketGen.Photo;

/// <summary>All that goes into a measurement as one vector of numbers with their covariance: the camera, then how square the face is, then each thing with its height and clicks.</summary>
internal sealed class PhotoInputs
{
    // Step of a difference quotient, as a part of a number's natural size.
    private const double Difference = 1e-4;

    private readonly CameraFound _found;
    private readonly Dictionary<object, int> _places = new(ReferenceEqualityComparer.Instance);
    private readonly List<double> _at, _sizes = [], _variances = [];
    private readonly double _click;
    private readonly int _tilt;

    /// <param name="found">The camera.</param>
    /// <param name="pictureHeight">Height of the photograph (pixels).</param>
    /// <param name="body">What was marked.</param>
    /// <param name="click">Standard deviation of a click (pixels).</param>
    /// <param name="scale">Pixels for a millimetre on the face.</param>
    public PhotoInputs(CameraFound found, int pictureHeight, MarkedBody body, double click, double scale)
    {
        (_found, _click) = (found, click);
        _at = [.. found.Parameters];
        var far = Math.Abs(found.Parameters[Photo.Camera.Place + 2]);
        _sizes.AddRange([1, 1, 1, far, far, far, 1, pictureHeight, pictureHeight, 1, 1, 1]);
        _variances.AddRange(new double[Photo.Camera.Count]);
        _tilt = _at.Count;
        Add(0, 1, CameraFit.Uniform(PhotoReading.TiltSlope));
        Add(0, 1, CameraFit.Uniform(PhotoReading.TiltSlope));
        Add(body.Shaft);
        foreach (var point in new[] { body.Pocket }.Concat(body.Holes))
        {
            if (point is not null)
            {
                Add(point);
            }
        }

        if (body.Edge is { } edge)
        {
            _places[edge] = _at.Count;
            Add(edge.Height);
            Add(0, 1, 1 / scale);
            Add(edge.ToWire ?? new(0));
            AddClicks(edge.Clicks);
        }

        Body = body;
        Spreads = Matrix<double>.Build.Dense(_at.Count, _at.Count, (i, j) =>
            i < Photo.Camera.Count && j < Photo.Camera.Count ? found.Spread[i, j] : i == j ? _variances[i] : 0);
    }

    /// <summary>What was marked.</summary>
    public MarkedBody Body { get; }

    private Matrix<double> Spreads { get; }

    /// <summary>Values with their covariance, through difference quotients.</summary>
    public Carried Spread(Func<double[], double[]> function)
    {
        var values = function(At);
        var slopes = Matrix<double>.Build.Dense(values.Length, _at.Count);
        for (var j = 0; j < _at.Count; j++)
        {
            var step = Difference * _sizes[j];
            double[] up = At, down = At;
            (up[j], down[j]) = (_at[j] + step, _at[j] - step);
            var (over, under) = (function(up), function(down));
            for (var i = 0; i < values.Length; i++)
            {
                slopes[i, j] = (over[i] - under[i]) / (2 * step);
            }
        }

        return new(values, slopes * Spreads * slopes.Transpose());
    }

    /// <summary>The numbers as they were read.</summary>
    public double[] At => [.. _at];

    /// <summary>The camera with some numbers.</summary>
    public Camera Camera(double[] x) => _found.With(x[..Photo.Camera.Count]);

    /// <summary>Whether every rim and every edge has its circle.</summary>
    public bool HasCircles()
    {
        var x = At;
        return new[] { Body.Shaft, Body.Pocket }.Concat(Body.Holes).All(p => p is not { IsRim: true } || CircleThrough.Of(Clicks(x, p, p.Clicks.Length, 1)) is not null)
            && (Body.Edge is not { } edge || (edge.IsCam ? edge.Clicks.Length >= 6 : CircleThrough.Of(EdgePoints(x, edge)) is not null));
    }

    /// <summary>Where a marked point is over the face, and its height (mm).</summary>
    public Vector3 Find(double[] x, MarkedPoint point)
    {
        var height = x[_places[point]];
        return point.IsRim
            ? Vector3.From(CircleThrough.Of(Clicks(x, point, point.Clicks.Length, 1))!.Value.Centre, height)
            : Camera(x).Find(new(x[_places[point] + 1], x[_places[point] + 2]), height);
    }

    /// <summary>The points of the edge where they are over the face (mm).</summary>
    public Vector2[] EdgePoints(double[] x, MarkedEdge edge) => Clicks(x, edge, edge.Clicks.Length, 3);

    /// <summary>Height of the edge's flange over the face (mm).</summary>
    public double EdgeHeight(double[] x, MarkedEdge edge) => x[_places[edge]];

    /// <summary>How far all clicks on the edge lie outwards of it (mm), and the way from it to the wire's middle (mm).</summary>
    public (double Outwards, double ToWire) EdgeWays(double[] x, MarkedEdge edge) => (x[_places[edge] + 1], x[_places[edge] + 2]);

    /// <summary>How far a line along the shaft goes sideways for each millimetre of height over the face.</summary>
    public Vector2 Lean(double[] x) => new(x[_tilt], x[_tilt + 1]);

    private Vector2[] Clicks(double[] x, object thing, int count, int before)
    {
        var (camera, place) = (Camera(x), _places[thing]);
        return [.. Enumerable.Range(0, count).Select(i => camera.Find(new(x[place + before + 2 * i], x[place + before + 2 * i + 1]), x[place]).XY)];
    }

    private void Add(MarkedPoint point)
    {
        if (!_places.TryAdd(point, _at.Count))
        {
            return;
        }

        Add(point.Height);
        if (point.IsRim)
        {
            AddClicks(point.Clicks);
        }
        else
        {
            var middle = CameraFit.Middle(point.Clicks);
            var deviation = _click / Math.Sqrt(point.Clicks.Length);
            Add(middle.X, 1, deviation);
            Add(middle.Y, 1, deviation);
        }
    }

    private void AddClicks(ImmutableArray<Vector2> clicks)
    {
        foreach (var click in clicks)
        {
            Add(click.X, 1, _click);
            Add(click.Y, 1, _click);
        }
    }

    private void Add(Measured value) => Add(value.Value, 1, CameraFit.Uniform(value.PlusMinus));

    private void Add(double value, double size, double deviation)
    {
        _at.Add(value);
        _sizes.Add(size);
        _variances.Add(deviation * deviation);
    }
}
