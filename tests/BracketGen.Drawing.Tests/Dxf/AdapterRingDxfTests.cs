using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;
using BracketGen.Profiles;
using BracketGen.TestSupport;

namespace BracketGen.Drawing.Tests.Dxf;

/// <summary>The cut file of an adapter ring, read by ezdxf.</summary>
public class AdapterRingDxfTests
{
    private static readonly Job Job = ProfileReader.ReadJob(RepositoryRoot.PathOf("profiles", "jobs", "whimbrel-hornbeam-70-ring.toml"), new DiskFileSource()).Value!;

    [SkippableTheory]
    [InlineData(DxfVersion.R2000)]
    [InlineData(DxfVersion.R12)]
    public void Another_program_reads_every_hole_where_the_throttle_body_has_it(DxfVersion version)
    {
        var shape = RingShape.Of(Job.Body.Mount)!;
        var read = ReadBack.Of(new DxfWriter(version).Write(AdapterRingDxf.Compose(shape, Job, [])));
        Assert.Empty(read.Problems);
        var circles = read.Entities.Where(e => e.Layer == "CUT_THROUGH" && e.Kind == "CIRCLE").ToArray();
        Assert.Equal(Job.Body.Mount.Holes.Length + Job.Body.Mount.Ring!.Bolts.Length + 1, circles.Length);

        // The distances of the file, in inches, are those of the points as measured, along the face.
        static double Radius(ReadEntity e) => 25.4 * e.Length / (2 * Math.PI);
        static Vector2 At(ReadEntity e) => new(25.4 * e.Start[0] - Radius(e), 25.4 * e.Start[1]);
        var holes = circles.Where(c => Radius(c) < 10).ToArray();
        var measured = Job.Body.Mount.Holes.Select(h => h.At).Concat(Job.Body.Mount.Ring.Bolts.Select(b => b.At)).Select(p => Job.Body.Mount.Plane.FootOf(p.Vector)).ToArray();
        var found = (from a in holes from b in holes select At(a).DistanceTo(At(b))).Order().ToArray();
        var wanted = (from a in measured from b in measured select a.DistanceTo(b)).Order().ToArray();
        Assert.All(found.Zip(wanted), p => Assert.Equal(p.Second, p.First, 1e-4));
        Assert.Equal(shape.Bore.Radius, circles.Max(Radius), 1e-4);
    }
}
