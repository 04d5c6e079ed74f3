using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;
using BracketGen.TestSupport;
using CsCheck;
using Xunit;

namespace BracketGen.Design.Tests;

/// <summary>Brackets that are bolted to two faces.</summary>
public sealed class SecondFaceTests
{
    private static readonly Job Rib = Examples.Read("dunlin-rowan-64-rib");

    private static readonly Solution Solved = Designer.Solve(Rib, SearchEffort.WithoutStrength);

    [Fact]
    public void The_flat_pattern_folded_brings_every_hole_onto_its_face()
    {
        var (bracket, mount) = (Solved.Bracket!, Rib.Body.Mount);
        Assert.NotNull(bracket.SecondBend);
        var folded = new FoldedSheet(bracket.Flat, bracket.Folded.Flanges[0]);
        var bolts = bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt).ToArray();
        Assert.Equal(mount.Holes.Length, bolts.Length);
        foreach (var (bolt, hole) in bolts.Zip(mount.Holes))
        {
            Assert.Equal(0, folded.Fold(bolt.Centre, 0).DistanceTo(mount.FootOf(hole)), 1e-9);
            Assert.Equal(1, folded.TopAt(bolt.Centre).Dot(mount.PlaneOf(hole).Normal), 1e-12);
            Assert.Equal(hole.IsOnSecond ? bracket.SecondBend!.To : 0, bolt.Flange);
            Assert.True(bolt.Diameter >= hole.Clearance);
        }
    }

    // Any place of the second face's hole, any angle that is bent, either way: the flange that is made lies on the face, its holes over those of the face.
    [Fact]
    public void The_second_mount_flange_lies_on_its_face_whatever_the_angle()
    {
        var sheet = Rib.Shop.Stock.First(s => s.Thickness == 2);
        var die = Rib.Shop.Dies.First(d => d.Suits(2));
        var radius = die.InsideRadiusIn(sheet.Material.BendGroup);
        var rule = Rib.Shop.RuleFor(sheet, radius);
        var made = 0;
        Repeatable.Check(
            Gen.Select(Gen.Double[6, 134], Gen.Bool, Gen.Double[20, 60], Gen.Double[20, 60], Gen.Double[-30, 30], Gen.Double[0, 360]), 400, c =>
            {
                var (degrees, inside, line, beyond, aside, round) = c;

                // The mount face is z = 0 turned about; the line runs along y at x = line.
                var turn = Angle.FromDegrees(inside ? degrees : -degrees);
                var on = Frame.FromZX(new(5, -7, 11), new Vector3(1, 2, 3).Unit, new Vector3(1, 0, 0).Rotate(new Vector3(1, 2, 3).Unit, Angle.FromDegrees(round)));
                Vector3 axis = new(0, -1, 0), along = new Vector3(1, 0, 0).Rotate(axis, turn), normal = new Vector3(0, 0, 1).Rotate(axis, turn);
                ThrottlePoint At(Vector3 local) => new(on.ToWorld(local));
                var hole = Rib.Body.Mount.Holes[0] with { IsOnSecond = false, BossDiameter = 12 };
                var mount = Rib.Body.Mount with
                {
                    Plane = new(on.Origin, on.Z),
                    Second = new SecondFace(new(At(new(line, 0, 0)).Vector, on.ToWorldDirection(normal))),
                    Holes = [hole with { At = At(new(0, 0, 0)) }, hole with { At = At(new(0, 25, 0)) }, hole with { At = At(new Vector3(line, aside, 0) + beyond * along), IsOnSecond = true }],
                };
                Assert.Equal(inside, mount.IsInsideCorner);
                Assert.Equal(Math.Abs(degrees), mount.Second.Turn(mount.Plane).Degrees, 1e-9);
                Assert.Equal(beyond, mount.Second.FromLine(mount.Plane, mount.Holes[2].At), 1e-9);
                var onMount = new SheetOnMount(mount, Rib.Vehicle.Cable, Rib.Preferences, sheet, Rib.Shop.Rates);
                if (SecondFlange.Of(onMount, radius, rule) is not { } flange)
                {
                    Assert.False(SecondFlange.Room(onMount, radius, rule) >= 0);
                    return;
                }

                made++;
                var bend = flange.BendTo(1);
                var flat = new FlatPattern { Blank = new(Contour.Circle(new(0, 0), 500), []), Thickness = 2, Bends = [bend] };
                var folded = new FoldedSheet(flat, onMount.Frame);
                Assert.Equal(inside, bend.IsUp);
                Assert.Equal(degrees, bend.Turn.Magnitude.Degrees, 1e-9);
                Assert.Equal(0, folded.Fold(flange.Bolts[0].Centre, 0).DistanceTo(mount.FootOf(mount.Holes[2])), 1e-9);
                Assert.Equal(1, folded.TopAt(flange.Bolts[0].Centre).Dot(mount.Second.Plane.Normal), 1e-12);
            });
        Assert.True(made > 20, $"{made}");
    }

    [Fact]
    public void A_job_and_its_mirror_image_get_mirrored_brackets()
    {
        MirrorImage.Check(Rib, Rib.Mirrored());
        MirrorImage.Check(Solved, Designer.Solve(Rib.Mirrored(), SearchEffort.WithoutStrength));
    }

    [Fact]
    public void Every_candidate_lies_on_both_faces_and_costs_no_less_than_its_bound()
    {
        var pool = new CandidatePool(Rib.OpeningCounterClockwise());
        var mount = Rib.OpeningCounterClockwise().Body.Mount;
        var count = 0;
        foreach (var candidate in pool.ByCost((0, 1)).Take(300))
        {
            count++;
            var bolt = candidate.Bracket.Holes.Single(h => h.Purpose == HolePurpose.Bolt && h.Flange > 0);
            Assert.Equal(0, candidate.Bracket.Folded.Fold(bolt.Centre, 0).DistanceTo(mount.FootOf(mount.Holes[^1])), 1e-6);
            Assert.Equal((candidate.Bracket.SecondBend!.To, null), candidate.Bracket.Flat.ZoneOf(bolt.Centre));
            if (count <= 40)
            {
                FoldBackTests.KeepsFlangesApart(candidate.Bracket);
            }

            Assert.Equal((candidate.Bracket.Stop.Flange, null), candidate.Bracket.Flat.ZoneOf(candidate.Bracket.Stop.Centre));
        }

        Assert.True(count > 50, $"{count}");
    }

    // No second face, and a die more: each can only make the best bracket cheaper, or leave it as it is.
    [Fact]
    public void What_is_relaxed_makes_nothing_worse()
    {
        static double Cost(Job job) => BracketSearch.Cheapest(job.OpeningCounterClockwise(), SearchEffort.WithoutStrength).Best?.Candidate.Cost ?? double.PositiveInfinity;
        var mount = Rib.Body.Mount;
        var best = Cost(Rib);
        Assert.True(Cost(Rib with { Body = Rib.Body with { Mount = mount with { Second = null, Holes = mount.OwnHoles } } }) <= best);
        Assert.True(Cost(Rib with { Shop = Rib.Shop with { Dies = [.. Rib.Shop.Dies.Take(2)] } }) >= best);
        Assert.True(Cost(Rib with { Body = Rib.Body with { Mount = mount with { Second = mount.Second! with { CornerRadius = 5.7 } } } }) >= best);
    }

    // Worked by hand for a bend of 90°, inside radius 3.8 and thickness 3: the outside of the bend is round with 6.8.
    [Theory]
    [InlineData(true, 3, 3.8)]
    [InlineData(true, 8, -1.2)]
    [InlineData(false, 5, 1.2)]
    [InlineData(false, 0, -3.8)]
    public void The_bend_needs_room_in_the_corner(bool inside, double radius, double room)
    {
        var bend = Solved.Bracket!.SecondBend!;
        Assert.Equal((3.8, 3, 90), (bend.InsideRadius, Solved.Bracket.Stock.Thickness, Math.Round(bend.Turn.Magnitude.Degrees, 6)));
        Assert.Equal(room, SecondFaceChecks.CornerRoom(bend, 3, radius, inside), 1e-9);
    }

    [Fact]
    public void A_corner_that_nobody_measured_is_not_proven()
    {
        var mount = Rib.Body.Mount;
        var unknown = mount with { Second = mount.Second! with { CornerRadius = null } };
        var check = SecondFaceChecks.OfFlat(Solved.Bracket!, unknown).Single(c => c.Id == CheckId.SecondFaceCorner);
        Assert.False(check.Passes || check.Fails);
    }

    [Fact]
    public void Holes_too_near_the_line_are_told_as_such()
    {
        var mount = Rib.Body.Mount;
        var near = mount.Holes[^1] with { At = new(12, -58, -26) };
        var job = Rib with { Body = Rib.Body with { Mount = mount with { Holes = [.. mount.OwnHoles, near] } } };
        var solution = Designer.Solve(job, SearchEffort.WithoutStrength);
        Assert.Null(solution.Bracket);
        Assert.Contains(solution.Checks, c => c.Id == CheckId.SecondFaceLine && c.Fails);
    }

    // What of the bend is off moves the flange's hole; worked by hand for 90°: the bend line shifted by e moves the hole by e off its face and by e along it.
    [Fact]
    public void Deviations_of_the_bend_move_the_hole_off_its_face_and_along_it()
    {
        var (bracket, job) = (Solved.Bracket!, Rib);
        var hole = bracket.Holes.Single(h => h.Purpose == HolePurpose.Bolt && h.Flange > 0);
        var normal = job.Body.Mount.Second!.Plane.Normal;
        Vector3[] moves = [.. SecondFlangeTolerance.Moves(bracket, hole)];
        var bend = bracket.SecondBend!;

        // Angle: so far from the end of the bend as the hole lies, by 1°.
        Assert.Equal((bend.Depth(hole.Centre) - bend.Allowance) * Math.PI / 180, Math.Abs(moves[0].Dot(normal)), 1e-3);
        var line = SeatTolerances.OfLeg(bend.Depth(hole.Centre));
        Assert.Equal(line, Math.Abs(moves[1].Dot(normal)), 1e-6);
        Assert.Equal(line, (moves[1] - moves[1].Dot(normal) * normal).Length, 1e-6);
    }
}
