using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Fitted;

/// <summary>The bracket in its place on the throttle body, with names and an arrow that points up; to no scale.</summary>
internal sealed class FittedPicture
{
    /// <summary>The picture's longer side is never shorter than this (mm on paper), names left aside.</summary>
    public const double Smallest = 60;

    /// <summary>Length of the arrow that points up (mm on paper).</summary>
    private const double ArrowLength = 11;

    /// <summary>The head of that arrow.</summary>
    private static readonly DimensionStyle Head = new(ArrowLength: 4.5, ArrowAngle: 35);

    /// <summary>What names take beside the picture (mm on paper), roughly.</summary>
    private const double NameRoom = 10;

    /// <summary>Radius of the dot in which a leader ends on a face (mm on paper).</summary>
    private const double Dot = 0.5;

    /// <summary>Between picture and arrow (mm on paper).</summary>
    private const double Air = 2;

    private readonly FittedScene _scene;
    private readonly FittedView _view;

    // Drawing, set-up sheet and report show the same picture, and are made at the same time.
    private static readonly ConditionalWeakTable<Solution, Lazy<FittedPicture>> Made = [];

    public FittedPicture(FittedScene scene) => (_scene, _view) = (scene, new(scene));

    /// <summary>The picture of a solution with a bracket, made once for all that show it.</summary>
    public static FittedPicture Of(Solution solution) => Made.GetValue(solution, s => new(() => new(new(s, s.Bracket!)))).Value;

    /// <summary>What stands below the heading.</summary>
    public string Seen => FittedText.Seen + _scene.OfArrow;

    /// <summary>What stands below the picture on the page.</summary>
    public string Caption => FittedText.Caption + _scene.OfArrow;

    /// <summary>The picture as large as it fits into a room (mm) with its names, no larger than a scale; null where it would be too small.</summary>
    public SheetBlock? Draw(Vector2 room, double most = 1.5)
    {
        // Names stand out of the picture: rather than try every size, allow for them from the start where there is room.
        var bounds = _view.Bounds;
        var scale = Math.Min(most, Math.Max(Least, Math.Min((room.X - 2 * NameRoom) / bounds.Width, (room.Y - NameRoom) / bounds.Height)));
        for (; scale >= Least; scale *= 0.95)
        {
            if (At(scale, room) is { } block)
            {
                return block;
            }
        }

        return null;
    }

    /// <summary>The same where it must be drawn: at its smallest, with the names that have room, where it does not fit with all of them.</summary>
    public SheetBlock DrawIn(Vector2 room, double most = 1.5)
    {
        var middle = Least * _view.Bounds.Centre;
        return Draw(room, most) ?? SheetBlock.Around(Named(Least, new(middle - 0.5 * room, middle + 0.5 * room), _ => true)!);
    }

    /// <summary>Length of the longer side (mm on paper) that the picture would have in a room without its names.</summary>
    public double SizeIn(Vector2 room) => Math.Min(room.X / _view.Bounds.Width, room.Y / _view.Bounds.Height) * Math.Max(_view.Bounds.Width, _view.Bounds.Height);

    /// <summary>The smallest scale.</summary>
    private double Least => Smallest / Math.Max(_view.Bounds.Width, _view.Bounds.Height) - Tolerance.Point;

    // Null where it does not fit: seen with the first name that is too much.
    private SheetBlock? At(double scale, Vector2 room)
    {
        bool Fits(Bounds bounds) => bounds.Width <= room.X && bounds.Height <= room.Y;
        return Named(scale, null, Fits) is { } items && SheetBlock.Around(items) is var block && Fits(block.Bounds) ? block : null;
    }

    // Null where what is drawn stops to fit.
    private IReadOnlyList<SheetItem>? Named(double scale, Bounds? room, Predicate<Bounds> fits)
    {
        var space = new FreeSpace(_view.Lines.Select(l => l.Line.AtScale(scale)).OfType<SheetItem>()) { Room = room };
        Bounds drawn = new(scale * _view.Bounds.Min, scale * _view.Bounds.Max);
        space.AddBest(Corners(drawn).Select(Upwards));
        foreach (var name in _scene.Names)
        {
            if (!fits(space.Bounds))
            {
                return null;
            }

            // What is hidden is not named: its leader would point at what hides it.
            Vector2[] places = [.. _view.Seen(name.Places).Take(4).Select(p => scale * p)];
            space.AddBest(
                from reach in (double[])[7, 11, 16, 23, 32, 44, 60, 80]
                from turn in (double[])[0, 25, -25, 50, -50, 80, -80, 115, -115, 150, -150]
                from place in places
                let out_ = place - drawn.Centre
                let angle = (out_.Length > Tolerance.Point ? out_.Polar : Angle.Zero) + Angle.FromDegrees(turn)
                where FreeSpace.IsOblique(angle)
                select Leader(place, angle, name, reach));
        }

        return space.Items;
    }

    private static ImmutableArray<SheetItem> Leader(Vector2 place, Angle angle, FittedName name, double reach)
    {
        var items = Dimensions.Callout(place, 0, angle, [name.Text], reach);
        return name.OnFace ? [.. items.Select(i => i is Fill ? new Fill([.. FittedShapes.Round(Dot, 12).Select(p => place + p)], Ink.Black) : i)] : items;
    }

    /// <summary>Feet of the arrow: in the corners of the picture where they are free, or else beside it.</summary>
    private static IEnumerable<Vector2> Corners(Bounds drawn)
    {
        double tall = ArrowLength + 2 * Air + TextHeight.Small;
        foreach (var x in (double[])[drawn.Min.X + 3 * Air, drawn.Max.X - 3 * Air, drawn.Min.X - 3 * Air, drawn.Max.X + 3 * Air])
        {
            foreach (var y in (double[])[drawn.Min.Y, drawn.Max.Y - tall])
            {
                yield return new(x, y);
            }
        }
    }

    private ImmutableArray<SheetItem> Upwards(Vector2 foot)
    {
        Vector2 up = new(0, 1), tip = foot + ArrowLength * up;
        return
        [
            new Stroke(foot, tip - Head.ArrowLength / 2 * up, LineKind.Visible),
            Arrow.Head(tip, up, Head),
            new TextItem(_scene.ArrowIsUp ? FittedText.Up : FittedText.NotUp, tip + Air * up, TextHeight.Small, TextAlign.Centre, Weight: FontWeight.Bold),
        ];
    }
}
