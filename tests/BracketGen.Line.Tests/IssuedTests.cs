using BracketGen.Line.Combinations;
using BracketGen.Line.Lists;
using BracketGen.Line.Numbering;
using BracketGen.Line.Solving;
using BracketGen.Profiles;

namespace BracketGen.Line.Tests;

/// <summary>Numbers that stay: what was given out is kept where it passes, recalled where it does not, and replaced with a reason.</summary>
public class IssuedTests
{
    // The Plover's two parts: a wire 1.5 mm longer is within their adjuster's range, one 32 mm longer is not.
    private static MemoryFileSource Plover(string length, string numbers = "") => Estuary.Edit(
        Estuary.WithSmall.With(Estuary.Path, Estuary.Small + numbers), "vehicles/plover.toml", "free_inner_length = { value = 138,", $"free_inner_length = {{ value = {length},");

    [Fact]
    public void A_part_that_still_passes_is_not_drawn_anew_until_it_is_asked_for()
    {
        using var rig = new LineRig();
        rig.Make(Estuary.WithSmall);
        var register = rig.Register.Bytes;
        var cut = Cut(rig, "PLV-A58-S");
        var longer = rig.Make(Plover("139.5"));
        Assert.Equal(register, rig.Register.Bytes);
        Assert.Equal(cut, Cut(rig, "PLV-A58-S"));
        var staying = longer.Made.Where(m => m!.Redraw is not null).ToList();
        Assert.Equal(["PLV-A58-S", "PLV-R64-S"], staying.Select(m => m!.Combination));
        Assert.All(staying, m => Assert.Equal("A", m!.Revision));
        Assert.All(staying, m => Assert.NotEqual(0, m!.Fit!.AdjusterShift));
        Assert.Contains("blank: ", IssuedLists.Redraw(longer.Made.Select(m => m!)).Rows[0][3].Text);

        // Neither again nor with another program does it become another part.
        var files = rig.Contents();
        Assert.Equal(6, rig.Make(Plover("139.5")).Kept);
        Assert.Equal(files, rig.Contents());
        rig.Make(Plover("139.5"), program: "2");
        Assert.Equal(register, rig.Register.Bytes);
        Assert.Equal(cut, Cut(rig, "PLV-A58-S"));

        // What the folder lost comes back from the register, as it was given out.
        Directory.Delete(rig.Combinations.Of("PLV-A58-S"), recursive: true);
        rig.Make(Plover("139.5"), program: "2");
        Assert.Equal(cut, Cut(rig, "PLV-A58-S"));

        // One is asked for: it alone gets a revision, nothing is recalled, and then it stays.
        rig.Make(Plover("139.5"), program: "2", redraw: "SF-PLV-A58-S");
        Assert.Equal(("PLV-A58-S", "B"), (rig.Register.Revisions[^1].Combination, rig.Register.Revisions[^1].Revision));
        Assert.Equal(7, rig.Register.Revisions.Length);
        Assert.Empty(rig.Register.Recalls);
        Assert.Equal(6, rig.Make(Plover("139.5"), program: "2").Kept);
    }

    [Fact]
    public void A_pinned_part_is_not_drawn_anew_though_it_is_asked_for()
    {
        using var rig = new LineRig();
        rig.Make(Estuary.WithSmall);
        rig.Make(Plover("139.5", "pinned = [\"SF-PLV-A58-S\"]\n"), redraw: ["SF-PLV-A58-S", "SF-PLV-R64-S"]);
        Assert.Equal(["SF-PLV-R64-S"], rig.Register.Revisions.Skip(6).Select(r => r.PartNumber));
    }

    [Fact]
    public void A_part_that_no_longer_passes_is_recalled_once_and_the_recall_is_withdrawn_where_it_passes_again()
    {
        using var rig = new LineRig();
        var first = rig.Make(Estuary.WithSmall);
        rig.Choose(first);
        var sold = rig.Register.Serving["PLV-A58-S"].PartNumber;
        var far = rig.Make(Plover("170"));
        rig.Choose(far);
        var recall = rig.Register.OpenRecalls.Single(r => r.Combination == "PLV-A58-S");
        Assert.Equal((sold, "A"), (recall.PartNumber, recall.Revision));
        Assert.Contains(recall.Why, w => w.StartsWith("Adjuster travel left both ways", StringComparison.Ordinal));
        Assert.Equal("B", rig.Register.Latest["PLV-A58-S"].Revision);
        var register = rig.Register.Bytes;
        rig.Choose(rig.Make(Plover("170")));
        Assert.Equal(register, rig.Register.Bytes);

        // Where no bracket passes, the one given out is recalled too; its number stays its own.
        var none = Estuary.Edit(Plover("170"), "vehicles/plover.toml", "available_pull = { value = 51,", "available_pull = { value = 40,");
        var failing = rig.Make(none);
        rig.Choose(failing);
        Assert.Contains(rig.Register.OpenRecalls, r => r is { Combination: "PLV-A58-S", Revision: "B" });
        Assert.Equal("SF-PLV-A58-S", failing.Made[0]!.PartNumber);
        Assert.Null(rig.Register.Serving["PLV-A58-S"].PartNumber);
        rig.Choose(rig.Make(Plover("170")));
        Assert.DoesNotContain(rig.Register.OpenRecalls, r => r is { Combination: "PLV-A58-S", Revision: "B" });
        Assert.Contains(rig.Register.OpenRecalls, r => r is { Combination: "PLV-A58-S", Revision: "A" });
        Assert.True(rig.Register.Bytes.AsSpan().StartsWith(register));
    }

    // Plover and Plover Estate share parts. A change of one throttle body leaves what the variants of the other have.
    [Fact]
    public void A_change_of_one_body_gives_the_others_no_other_number()
    {
        using var rig = new LineRig();
        rig.Choose(rig.Make(Estuary.WithSmall));
        var before = rig.Register;
        Assert.Contains(before.Serving.Values, s => s.PartNumber != before.Latest[s.Combination].PartNumber);
        var moved = Estuary.Edit(Estuary.WithSmall, "throttle-bodies/alder-58.toml", MountAt, MountMoved);
        rig.Choose(rig.Make(moved));
        Assert.All(before.Serving.Values.Where(s => s.Combination.Contains("R64", StringComparison.Ordinal)), s => Assert.Equal(s, rig.Register.Serving[s.Combination]));
        var replaced = IssuedLists.Replaced(rig.Register);
        Assert.NotEmpty(replaced.Rows);
        Assert.All(replaced.Rows, r => Assert.Contains("A58", r[0].Text, StringComparison.Ordinal));
        Assert.All(replaced.Rows, r => Assert.NotEqual("", r[6].Text));
        Assert.Contains(rig.Register.OpenRecalls, r => r.Combination.Contains("A58", StringComparison.Ordinal));

        // The same once more adds nothing.
        var register = rig.Register.Bytes;
        var selection = rig.Choose(rig.Make(moved));
        Assert.Equal(register, rig.Register.Bytes);
        Assert.Equal(6, selection.Kept);
    }

    private const string MountAt = "at = [-50, 12, -24]", MountMoved = "at = [-50, 17, -24]";

    [Fact]
    public void Pinned_parts_are_always_made_and_a_variant_that_grows_the_line_takes_an_issued_part()
    {
        using var rig = new LineRig();
        var withoutPlover = Estuary.WithSmall.With(Estuary.Path, Estuary.Small + "[[exclusions]]\nvehicle = \"PLV\"\nreason = \"later\"\n");
        var estate = rig.Choose(rig.Make(withoutPlover));
        Assert.DoesNotContain(estate.Parts, p => p.Combination.Vehicle.Code == "PLV");

        // The Plover comes later: either's part would do for both, and the one that is there is taken.
        var both = rig.Choose(rig.Make(Estuary.WithSmall));
        Assert.DoesNotContain(both.Parts, p => p.Combination.Vehicle.Code == "PLV");
        Assert.Equal(4, both.Kept);

        // Pinned, the Plover's own part is made, and the reason is told.
        var pinned = rig.Choose(rig.Make(Estuary.WithSmall.With(Estuary.Path, Estuary.Small + "pinned = [\"SF-PLV-A58-S\"]\n")));
        Assert.Contains(pinned.Parts, p => p.Made.PartNumber == "SF-PLV-A58-S");
        Assert.Equal(["SF-PLV-A58-S is pinned."], rig.Register.Serving["PLV-A58-S"].Why.AsEnumerable());
        Assert.Empty(rig.Register.Recalls);

        // Not sold any more: the service ends, with the family's reason.
        rig.Choose(rig.Make(withoutPlover));
        Assert.Equal((null, "not sold: later"), (rig.Register.Serving["PLV-A58-S"].PartNumber, rig.Register.Serving["PLV-A58-S"].Why.Single()));
    }

    // The two Plovers' lines, unchanged, chosen anew: of as many parts, those given out.
    [Fact]
    public void Of_as_many_parts_those_given_out_are_chosen()
    {
        using var rig = new LineRig();
        var run = rig.Make(Estuary.WithSmall);
        var free = rig.Choose(run);
        rig.Choose(run, anew: true);
        Assert.Equal(free.Services.Select(s => s.By.Made.PartNumber), rig.Register.Serving.Values.OrderBy(s => run.Offered.Single(c => c.Key == s.Combination).Order).Select(s => s.PartNumber));
        Assert.All(rig.Register.Services, s => Assert.Empty(s.Why));
    }

    // Running numbers go to what has a part, in the order of the line, whenever and however often a run was stopped.
    [Fact]
    public void Running_numbers_are_the_same_after_every_stop_and_go_to_parts_alone()
    {
        var counted = Estuary.Small.Replace("SF-{vehicle}-{throttle_body}-{material}", "E{serial}", StringComparison.Ordinal);
        var files = Estuary.Edit(Estuary.WithSmall.With(Estuary.Path, counted), "vehicles/plover-estate.toml", "available_pull = { value = 52,", "available_pull = { value = 40,");
        using var whole = new LineRig();
        var run = whole.Make(files);
        Assert.Equal(["E0001", "E0002", "", "", "E0003", "E0004"], run.Made.Select(m => m!.PartNumber));
        Assert.All(run.Made, m => Assert.Equal(m!.HasPart ? "A" : "", m.Revision));
        Assert.All(whole.Register.Revisions, r => Assert.NotNull(r.Serial));
        var (expected, register) = (whole.Contents(), whole.Register.Bytes);
        Assert.Equal(6, whole.Make(files).Kept);
        Assert.Equal(expected, whole.Contents());
        Assert.Equal(register, whole.Register.Bytes);
        for (var after = 1; after < 6; after++)
        {
            using var rig = new LineRig();
            for (var more = after; ; more++)
            {
                using var stop = new CancellationTokenSource();
                var part = rig.Make(files, stop: stop.Token, threads: 1 + more % 2, tell: p =>
                {
                    if (p.Done >= more)
                    {
                        stop.Cancel();
                    }
                });
                if (!part.Made.Contains(null))
                {
                    break;
                }
            }

            Assert.Equal(expected, rig.Contents());
            Assert.Equal(register, rig.Register.Bytes);
        }

        // The Estate is put right: it gets the next numbers, and nobody else another.
        var corrected = whole.Make(Estuary.WithSmall.With(Estuary.Path, counted));
        Assert.Equal(["E0001", "E0002", "E0005", "E0006", "E0003", "E0004"], corrected.Made.Select(m => m!.PartNumber));

        // Stopped, then changed before any number was registered: the numbers are again those of a run in one go.
        using var changed = new LineRig();
        using var half = new CancellationTokenSource();
        changed.Make(Estuary.WithSmall.With(Estuary.Path, counted), stop: half.Token, threads: 1, tell: p =>
        {
            if (p.Done == 5)
            {
                half.Cancel();
            }
        });
        changed.Make(files);
        Assert.Equal(expected, changed.Contents());
        Assert.Equal(register, changed.Register.Bytes);
    }

    private static string Cut(LineRig rig, string key) => File.ReadAllText(Path.Combine(rig.Combinations.Of(key), CombinationSolver.CutFile));
}
