using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Dxf;

public class StrokeTextTests
{
    private const string Letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-.,:/+=_()#±×°Ø";

    [Fact]
    public void Every_letter_lies_in_its_box_and_no_two_are_the_same()
    {
        var seen = new HashSet<string>();
        foreach (var letter in Letters)
        {
            var strokes = StrokeFont.Of(letter).ToList();
            Assert.NotEmpty(strokes);
            Assert.All(strokes, s => Assert.True(s.Count >= 2));
            Assert.All(strokes.SelectMany(s => s), p => Assert.True(p.X is >= 0 and <= 4 && p.Y is >= 0 and <= StrokeFont.Height));
            Assert.True(seen.Add(string.Join("|", strokes.Select(s => string.Join(" ", s)))), $"{letter} looks like another letter.");
        }
    }

    [Fact]
    public void No_stroke_of_a_letter_is_drawn_twice()
    {
        foreach (var letter in Letters)
        {
            var pieces = StrokeFont.Of(letter)
                .SelectMany(s => s.Zip(s.Skip(1)))
                .Select(p => p.First.X < p.Second.X || (p.First.X == p.Second.X && p.First.Y < p.Second.Y) ? p : (p.Second, p.First))
                .ToList();
            Assert.True(pieces.Count == pieces.Distinct().Count(), $"{letter} repeats a stroke.");
        }
    }

    [Fact]
    public void Text_has_the_height_and_width_asked_for()
    {
        var marks = StrokeText.Of("HAM", new(10, 20), 3, Angle.Zero, DxfLayers.SurfaceMark);
        var bounds = marks.Select(m => m.Bounds).Aggregate((a, b) => a.Union(b));
        Assert.Equal(new Vector2(10, 20), bounds.Min);
        Assert.Equal(3, bounds.Height, 1e-12);
        Assert.Equal(StrokeText.Width("HAM", 3), bounds.Width, 1e-12);
        Assert.Equal(8, bounds.Width, 1e-12);
    }

    [Fact]
    public void Turned_text_turns_about_its_corner()
    {
        var marks = StrokeText.Of("L", new(10, 20), 6, Angle.Right, DxfLayers.SurfaceMark);
        Assert.Equal(new Bounds(new(4, 20), new(10, 24)).ToString(), Assert.Single(marks).Bounds.ToString());
    }

    [Fact]
    public void Small_letters_are_capitals_and_unknown_ones_an_error()
    {
        Assert.True(StrokeFont.Knows('a'));
        Assert.Equal(StrokeFont.Of('A').SelectMany(s => s), StrokeFont.Of('a').SelectMany(s => s));
        Assert.True(StrokeFont.Knows('ø'));
        Assert.False(StrokeFont.Knows('ж'));
        Assert.Throws<ArgumentException>(() => StrokeText.Of("ж", Vector2.Zero, 3, Angle.Zero, DxfLayers.SurfaceMark));
        Assert.Throws<ArgumentException>(() => StrokeText.Of("A", Vector2.Zero, 0, Angle.Zero, DxfLayers.SurfaceMark));
        Assert.Empty(StrokeText.Of(" ", Vector2.Zero, 3, Angle.Zero, DxfLayers.SurfaceMark));
    }
}
