namespace BracketGen.Geometry.Tests;

/// <summary>The text of a record follows its properties; one that returns its own type would never end.</summary>
public class MessageTests
{
    [Fact]
    public void Every_value_can_be_put_in_a_message()
    {
        var frame = Frame.Identity;
        Assert.Equal("(1.5, -2)", new Vector2(1.5, -2).ToString());
        Assert.Equal("(1.5, -2, 0.000001)", new Vector3(1.5, -2, 1e-6).ToString());
        Assert.Equal("line (0, 0) to (1, 0)", new LineSegment(new(0, 0), new(1, 0)).ToString());
        Assert.Equal("arc (1, 0) to (0, 1) through 90°", new ArcSegment(Vector2.Zero, 1, Angle.Zero, Angle.Right).ToString());
        Assert.Equal("frame at (0, 0, 0), x (1, 0, 0), y (0, 1, 0), z (0, 0, 1)", frame.ToString());
        Assert.Equal("plane through (0, 0, 0), normal (0, 0, 1)", new Plane(Vector3.Zero, new(0, 0, 2)).ToString());
        Assert.Equal("region: 1 segments, 0 holes", new Region(Contour.Circle(Vector2.Zero, 1), []).ToString());
        Assert.Contains("Max = (1, 1)", Bounds.Around([new(0, 0), new(1, 1)]).ToString());
        Assert.Contains("Radius = 2", new Disc(Vector2.Zero, 2).ToString());
        Assert.Contains("Max = 3", new Measured(2, 1).ToString());
    }
}
