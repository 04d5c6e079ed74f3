using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Photo.Tests;

/// <summary>Photographs that tell nothing say why; a better photograph never tells less.</summary>
public sealed class ProblemTests
{
    private static readonly Scene Good = new(7, 25, 500, 1, true);

    [Fact]
    public void Three_marks_are_too_few() =>
        Assert.Equal(PhotoProblem.TooFewMarks, Of(Good.Picture with { Marks = Good.Picture.Marks[..3] }));

    [Fact]
    public void Four_marks_with_three_in_line_are_too_few() =>
        Assert.Equal(PhotoProblem.TooFewMarks, Of(Good.Picture with { Marks = Good.Picture.Marks[..4] }));

    [Fact]
    public void Numbers_of_two_marks_mixed_up_are_found()
    {
        var marks = Good.Picture.Marks.ToBuilder();
        (marks[1], marks[3]) = (marks[1] with { Clicks = marks[3].Clicks }, marks[3] with { Clicks = marks[1].Clicks });

        Assert.Contains(Of(Good.Picture with { Marks = marks.ToImmutable() }), new PhotoProblem?[] { PhotoProblem.Mirrored, PhotoProblem.MarkOff, PhotoProblem.TooFewMarks });
    }

    [Fact]
    public void A_mirrored_photograph_is_found()
    {
        var mirrored = Good.Picture.Marks.Select(m => m with { Clicks = [.. m.Clicks.Select(c => new Vector2(Scene.Width - c.X, c.Y))] });

        Assert.Equal(PhotoProblem.Mirrored, Of(Good.Picture with { Marks = [.. mirrored] }));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(6)]
    public void A_mark_clicked_beside_its_place_is_named(int which)
    {
        var marks = Good.Picture.Marks.ToBuilder();
        marks[which] = marks[which] with { Clicks = [.. marks[which].Clicks.Select(c => c + new Vector2(60, -45))] };

        var answer = PhotoReading.Of(Good.Picture with { Marks = marks.ToImmutable() }, Good.Body);

        Assert.Equal(PhotoProblem.MarkOff, answer.Problem);
        Assert.Equal(which + 1, answer.Mark);
    }

    [Fact]
    public void What_lies_off_the_face_needs_the_distance_of_a_square_photograph()
    {
        var square = new Scene(11, 1, 500, 1, givesDistance: false);

        Assert.Equal(PhotoProblem.DistanceUnknown, PhotoReading.Of(square.Picture, square.Body).Problem);
        Assert.Null(PhotoReading.Of(square.Picture with { Distance = new(square.Eye.Length, 10) }, square.Body).Problem);
    }

    [Fact]
    public void Nothing_is_as_high_as_the_camera() => Assert.Equal(
        PhotoProblem.AboveCamera, PhotoReading.Of(Good.Picture, Good.Body with { Shaft = Good.Body.Shaft with { Height = 600 } }).Problem);

    [Fact]
    public void Clicks_in_line_are_no_rim() => Assert.Equal(
        PhotoProblem.NoCircle,
        PhotoReading.Of(Good.Picture, Good.Body with { Shaft = new(33, true, [new(100, 100), new(200, 200), new(300, 300)]) }).Problem);

    [Fact]
    public void A_smaller_plus_minus_that_goes_in_never_makes_a_larger_one_come_out()
    {
        var wide = PhotoReading.Of(Good.Picture, Good.Body).Findings!;
        var picture = Good.Picture with { Distance = new(Good.Picture.Distance!.Value.Value, 2) };
        var body = Good.Body with { GrooveHeight = new(Good.Body.GrooveHeight.Value, 0.05), Shaft = Good.Body.Shaft with { Height = new(Good.Body.Shaft.Height.Value, 0.05) } };

        var narrow = PhotoReading.Of(picture, body).Findings!;

        Assert.True(narrow.CameraHeight.PlusMinus < wide.CameraHeight.PlusMinus);
        Assert.All(Enumerable.Range(0, 2), i =>
        {
            Assert.True(narrow.Holes[i]!.Value.PlusMinus.X <= wide.Holes[i]!.Value.PlusMinus.X * 1.001);
            Assert.True(narrow.Holes[i]!.Value.PlusMinus.Y <= wide.Holes[i]!.Value.PlusMinus.Y * 1.001);
        });
    }

    [Fact]
    public void The_points_of_a_cam_lie_on_it()
    {
        // An eccentric circle, 32.5 about a centre 2 mm from the shaft, seen as a cam.
        var scene = new Scene(21, 20, 500, 0.7, true);
        var centre = Vector2.FromPolar(2, Angle.FromDegrees(-110));
        ImmutableArray<Vector2> clicks = [.. Enumerable.Range(0, 12).Select(i => scene.OnFlange(centre + Vector2.FromPolar(35.5, Angle.FromDegrees(-30 + 15 * i))))];

        var found = PhotoReading.Of(scene.Picture, scene.Body with { Edge = new(Scene.FlangeHeight, new(3, 0.1), true, clicks) }).Findings!;

        Assert.Equal(12, found.Cam.Length);
        Assert.True(found.IsCamOfWire);
        Assert.All(found.Cam, p => Assert.InRange(Vector2.FromPolar(p.Radius, p.Angle).DistanceTo(centre), 32.5 - found.CamPlusMinus, 32.5 + found.CamPlusMinus));
        Assert.Equal(found.Cam.Select(p => p.Angle.Radians).Order(), found.Cam.Select(p => p.Angle.Radians));
    }

    private static PhotoProblem? Of(Photograph photograph) => PhotoReading.Of(photograph, Good.Body).Problem;
}
