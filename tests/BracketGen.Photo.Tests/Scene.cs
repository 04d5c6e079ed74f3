using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Photo.Tests;

/// <summary>A photograph of a throttle body made by a camera of its own: nothing of it comes from the program. Every number that goes in is off by as much as its ± allows.</summary>
internal sealed class Scene
{
    public const int Width = 4000, Height = 3000;
    public const double OuterRadius = 34.5, ToWire = 3, GrooveHeight = 24, FlangeHeight = 28.5, ShaftHeight = 33, PocketRadius = 31.5, HeadHeight = 4;

    public static readonly Vector2[] HolePlaces = [new(-50, -22), new(-50, 12)];
    public static readonly Angle Pocket = Angle.FromDegrees(-20);

    private readonly Random _random;
    private readonly double _focal, _k1, _k2, _click;
    private readonly Vector2 _axis, _lean;
    private readonly double[,] _turn;
    private readonly Vector3 _eye;
    private readonly Vector2 _origin;

    public Scene(int seed, double tiltDegrees, double distance, double click, bool givesDistance, int marks = 8, int repeats = 3)
    {
        _random = new Random(seed);
        _click = click;
        _focal = Width * (0.65 + 0.6 * _random.NextDouble());
        _k1 = Normal() * 0.05;
        _k2 = Normal() * 0.025;
        _axis = new(Width / 2.0 + Normal() * 0.01 * Width, Height / 2.0 + Normal() * 0.01 * Width);

        // The camera looks at the middle of the target from a side, turned a little about its own axis.
        var side = 2 * Math.PI * _random.NextDouble();
        var tilt = tiltDegrees * Math.PI / 180;
        _eye = new(distance * Math.Sin(tilt) * Math.Cos(side), distance * Math.Sin(tilt) * Math.Sin(side), distance * Math.Cos(tilt));
        var ahead = (-_eye).Unit;
        var roll = 0.2 * Normal();
        var right = new Vector3(Math.Cos(roll), Math.Sin(roll), 0);
        right = (right - right.Dot(ahead) * ahead).Unit;
        var down = ahead.Cross(right);
        _turn = new[,] { { right.X, right.Y, right.Z }, { down.X, down.Y, down.Z }, { ahead.X, ahead.Y, ahead.Z } };
        _origin = new(8 * Normal(), 8 * Normal());
        var lean = Math.Tan(0.3 * Math.PI / 180);
        _lean = new(Within(lean), Within(lean));

        var scaleOff = Within(0.2 / 140);
        var print = 1 + 0.01 * Normal();
        var numbers = Enumerable.Range(1, 8).Where(i => marks == 8 || i % 2 == 1).ToArray();
        Picture = new(Width, Height,
            [.. numbers.Select(i =>
            {
                var at = PrintedTarget.Marks[i - 1];
                var true3 = Vector3.From(print * (at + new Vector2(Within(0.2), Within(0.2))), Within(0.5));
                return new PhotoMark(i, at, 0.2, [.. Enumerable.Range(0, repeats).Select(_ => Click(true3))]);
            })],
            new(print + scaleOff, 0.2 / 140), givesDistance ? new(_eye.Length + Within(10), 10) : null);
        var bias = Normal() / PixelsPerMillimetre;
        Body = new()
        {
            Shaft = Point(Place(Vector2.Zero, ShaftHeight), 0.3),
            GrooveHeight = new(GrooveHeight + Within(0.2), 0.2),
            Edge = new(new(FlangeHeight + Within(0.3), 0.3), new(ToWire + Within(0.1), 0.1), false,
                [.. Enumerable.Range(0, 10).Select(i => Click(Place(Vector2.FromPolar(OuterRadius + bias, Angle.FromDegrees(-20 + 15 * i)), FlangeHeight)))]),
            Pocket = Point(Place(Vector2.FromPolar(PocketRadius, Pocket), FlangeHeight), 0.3),
            Holes = [.. HolePlaces.Select(h => Point(Place(h, 0) + new Vector3(0, 0, HeadHeight), 0.3))],
        };
    }

    public Photograph Picture { get; }

    public MarkedBody Body { get; }

    public Vector3 Eye => _eye;

    /// <summary>Where a point of the throttle frame's plan on the quadrant's front flange is seen, exactly (pixels).</summary>
    public Vector2 OnFlange(Vector2 at) => See(Place(at, FlangeHeight));

    private double PixelsPerMillimetre => _focal / _eye.Length;

    /// <summary>A point of the throttle frame's plan at a height, over the face: the shaft leans within what a milled face allows.</summary>
    private Vector3 Place(Vector2 at, double height) => Vector3.From(_origin + at + height * _lean, height);

    private MarkedPoint Point(Vector3 at, double plusMinus) =>
        new(new(at.Z + Within(plusMinus), plusMinus), false, [.. Enumerable.Range(0, 3).Select(_ => Click(at))]);

    private Vector2 Click(Vector3 at) => See(at) + new Vector2(_click * Normal(), _click * Normal());

    private Vector2 See(Vector3 at)
    {
        var d = at - _eye;
        double Row(int i) => _turn[i, 0] * d.X + _turn[i, 1] * d.Y + _turn[i, 2] * d.Z;
        var (u, v) = (_focal * Row(0) / Row(2), _focal * Row(1) / Row(2));
        var q = (u * u + v * v) / (Width * Width + Height * Height) * 4;
        return new(_axis.X + u * (1 + _k1 * q + _k2 * q * q), _axis.Y + v * (1 + _k1 * q + _k2 * q * q));
    }

    private double Within(double plusMinus) => plusMinus * (2 * _random.NextDouble() - 1);

    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());
}
