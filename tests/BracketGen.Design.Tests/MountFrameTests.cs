using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.TestSupport;

namespace BracketGen.Design.Tests;

/// <summary>The mount face's own frame, and how flat pattern and throttle frame meet in it.</summary>
public class MountFrameTests
{
    [Fact]
    public void The_holes_lie_where_the_profile_has_them() => RandomJobs.Job.Check(LongRun.Of(200), job =>
    {
        var mount = job.Body.Mount;
        var frame = MountFrame.Of(mount);
        var sheet = new SheetOnMount(mount, job.Vehicle.Cable, job.Preferences, job.Shop.Stock[0], job.Shop.Rates);
        Assert.Equal(0, frame.ToFace(mount.Holes[0].At).DistanceTo(new(0, 0)), 1e-9);
        foreach (var (hole, bolt) in mount.Holes.Zip(sheet.Bolts))
        {
            var face = frame.ToFace(hole.At);
            Assert.InRange(frame.ToThrottle(face).DistanceTo(hole.At), 0, Tolerance.OffPlane + 1e-9);

            // The mount flange is not bent: the frame of the folded sheet leads to the same place.
            Assert.Equal(0, sheet.Frame.ToThrottle(bolt.Centre).DistanceTo(frame.ToThrottle(face)), 1e-9);
        }

        if (mount.Holes.Length > 1)
        {
            var second = frame.ToFace(mount.Holes[1].At);
            Assert.Equal(0, second.Y, 1e-9);
            Assert.True(second.X > 0);
        }
    });
}
