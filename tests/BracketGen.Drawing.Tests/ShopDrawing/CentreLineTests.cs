using BracketGen.Design.Part;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.ShopDrawing;

/// <summary>Centre lines of holes in the formed views, whichever way the flange leans.</summary>
public class CentreLineTests
{
    [Fact]
    public void Every_hole_seen_from_before_has_its_centre_crossed_square()
    {
        int square = 0, leaning = 0, edgeOn = 0;
        RandomSolutions.Each(120, solution =>
        {
            var scene = new BracketScene(solution, solution.Bracket!);
            foreach (var view in new[] { scene.Front, scene.FromTop, scene.FromSide(true), scene.FromSide(false) })
            {
                var sketch = new ViewSketch(scene, view, false);
                var lines = sketch.CentreLines(1).Cast<Stroke>().ToList();
                Assert.All(lines, l => Assert.Equal(LineKind.Centre, l.Kind));
                foreach (var hole in scene.Bracket.Holes)
                {
                    var frame = scene.Bracket.Folded.Flanges[hole.Flange];
                    var facing = frame.Z.Dot(view.Z);
                    if (Math.Abs(facing) <= 0.3)
                    {
                        edgeOn++;
                        continue;
                    }

                    // From the centre on the face that the eye sees, four arms, the long ones past the rim.
                    var face = view.ToLocal(frame.ToWorld(hole.Centre.Vector, facing > 0 || Math.Abs(facing) > 1 - 1e-6 ? scene.Thickness : 0)).XY;
                    var arms = lines.Where(l => l.Segment.Start.DistanceTo(face) < 1e-6).Select(l => l.Segment.End - face).ToList();
                    Assert.Equal(4, arms.Count);
                    Assert.Equal(2 * (hole.Diameter / 2 + 2), arms.Max(a => 2 * a.Length), 1e-6);
                    Assert.Equal(2, arms.Count(a => Math.Abs(a.Cross(arms[0])) < 1e-6));
                    Assert.Equal(2, arms.Count(a => Math.Abs(a.Dot(arms[0])) < 1e-6));
                    _ = Math.Abs(facing) > 1 - 1e-6 ? square++ : leaning++;
                }
            }
        });
        Assert.All(new[] { square, leaning, edgeOn }, n => Assert.True(n > LongRun.AtLeast(40), $"{square}, {leaning}, {edgeOn}"));
    }
}
