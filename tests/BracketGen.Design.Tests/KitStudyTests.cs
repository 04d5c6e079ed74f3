using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Kit;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Throttles;
using BracketGen.Profiles;
using BracketGen.TestSupport;

namespace BracketGen.Design.Tests;

/// <summary>The whole kit of the bare Alder 58.</summary>
public class KitStudyTests
{
    private static readonly KitJob Kit = Read("plover-alder-58-bare");

    private static readonly Lazy<KitStudy> Study = new(() => KitStudy.Of(Kit, StrengthDetail.Usual));

    private static KitJob Read(string job) => ProfileReader.ReadKit(RepositoryRoot.PathOf("profiles", "jobs", job + ".toml"), new DiskFileSource()).Value!;

    private static ImmutableArray<KitPart> Offer => ProfileReader.ReadParts(RepositoryRoot.PathOf("profiles", "parts", "estuary-breakers.toml"), new DiskFileSource()).Value!.Parts;

    private static KitAnswer Of(KitStudy study, KitNeedKind kind) => study.Answers.Single(a => a.Need.Kind == kind);

    private static string? Taken(KitStudy study, KitNeedKind kind) => Of(study, kind).Taken is { } taken ? taken.Part?.Name ?? taken.Own.ToString() : null;

    [Fact]
    public void The_shipped_kit_is_complete_and_its_price_is_that_of_its_parts()
    {
        var study = Study.Value;
        Assert.Equal(FitState.Fits, study.State);
        Assert.Equal("sensor off the donor", Taken(study, KitNeedKind.PositionSensor));
        Assert.Equal("M4 x 12 off the donor", Taken(study, KitNeedKind.SensorScrews));
        Assert.Equal("MadeBracket", Taken(study, KitNeedKind.Bracket));
        Assert.Equal("VehicleCable", Taken(study, KitNeedKind.Cable));
        var making = Of(study, KitNeedKind.Bracket).Taken!.Price!.Value;
        Assert.Equal(24 + 2.5 + 4.2 + 3 * 0.35 + 2 * 0.4 + making, study.Cost.Money, 1e-9);
        Assert.Equal((0, 0), (study.Cost.Open, study.Cost.Unpriced));

        // What is not known is never taken, and the answer says what it would save: sensor 14, two screws 0.25 each and valve 6 in place of the donor.
        Assert.True(study.MayBeBetter);
        Assert.Equal(study.Cost.Money - 24 + 14 + 0.5 + 6, study.CostIfKnown.Money, 1e-9);
        Assert.Equal(FitState.NotKnown, Of(study, KitNeedKind.IdleValve).Options.Single(o => o.WouldBeTaken).State);
        Assert.All(study.Answers.SelectMany(a => a.Options).Where(o => o.IsTaken), o => Assert.Equal(FitState.Fits, o.State));
    }

    [Fact]
    public void Our_own_price_is_the_bill_of_the_bracket_that_make_designs()
    {
        var job = MechanismTrial.With(Kit.Job, null, null)!;
        var solution = Designer.Solve(job, new SearchEffort(StrengthDetail.Usual) { WithOthers = true });
        var offer = solution.Offers[0].Candidate;
        var bill = Part.BracketCost.Of(offer.Bracket, offer.Placement, offer.Give, job.Vehicle.Cable.OuterEnd.AdjusterRange, job.Shop.Rates).Bill;
        Assert.Equal(bill, Of(Study.Value, KitNeedKind.Bracket).Options[0].Price!.Value, 1e-9);
    }

    [Fact]
    public void A_bracket_on_the_list_has_the_verdict_of_check()
    {
        var bracket = Of(Study.Value, KitNeedKind.Bracket).Options.Single(o => o.Part?.Name == "Upright 34 from the shelf");
        var trial = MechanismTrial.Of(MechanismTrial.With(Kit.Job, null, null)!, ((BracketMeasures)bracket.Part!.Measures).Bracket, StrengthDetail.Usual);
        Assert.Equal((trial.State, trial.Codes), (bracket.State, bracket.Findings[0].Codes), new SameCodes());
        Assert.Contains("fleet-angle", trial.Codes);
        Assert.Equal(11.5, bracket.Price);
    }

    [Fact]
    public void Without_strength_no_bracket_is_proven()
    {
        var study = KitStudy.Of(Kit with { Parts = [] }, null);
        Assert.Equal(FitState.NotKnown, Of(study, KitNeedKind.Bracket).State);
        Assert.All((KitNeedKind[])[KitNeedKind.Cable, KitNeedKind.ReturnSprings, KitNeedKind.Bracket, KitNeedKind.BracketBolts], k => Assert.Null(Taken(study, k)));
        Assert.Equal(FitState.DoesNotFit, Of(study, KitNeedKind.IdleValve).State);
        Assert.Equal(FitState.DoesNotFit, study.State);
    }

    // A body with one spring fails for want of a second source of energy; a second spring on the list closes the valve alone as well.
    [Fact]
    public void A_second_spring_makes_a_second_source_of_energy()
    {
        var springs = Kit.Job.Body.Springs;
        var single = Kit with { Job = Kit.Job with { Body = Kit.Job.Body with { Springs = ReturnSprings.Of([springs.Each[0]]) } }, Parts = [] };
        var alone = KitStudy.Of(single, null);
        Assert.Equal(FitState.DoesNotFit, Of(alone, KitNeedKind.ReturnSprings).Options[0].State);
        Assert.Contains("return-springs", alone.Base.Codes);
        var second = new KitPart("second spring", PartSource.Bought, new SpringMeasures(springs.Each[1])) { Price = 3 };
        var both = KitStudy.Of(single with { Parts = [second] }, StrengthDetail.Usual);
        Assert.Equal("second spring", Taken(both, KitNeedKind.ReturnSprings));

        // The same springs on the throttle body itself have the same verdict.
        var whole = Designer.Solve(Kit.Job with { Body = Kit.Job.Body with { Sensor = null, Springs = ReturnSprings.Of(springs.Each) } }, new SearchEffort(StrengthDetail.Usual) { WithOthers = true });
        Assert.Equal(VerdictKind.Passes, whole.Verdict.Kind);

        // Springs that were measured only together cannot be told apart.
        var together = Kit.Job with { Body = Kit.Job.Body with { Springs = new(springs.TorqueClosed, springs.TorqueOpen, 2) } };
        Assert.Null(MechanismTrial.With(together, null, (SpringMeasures)second.Measures));
    }

    // 141 mm of wire as on the Plover Estate: the job with it is solved whole, and the vehicle's own stays the cheaper.
    [Fact]
    public void Cables_springs_and_pedal_stops_on_a_list_are_looked_at()
    {
        var study = KitStudy.Of(Kit with { Parts = Offer, Without = [KitNeedKind.PositionSensor, KitNeedKind.IdleValve, KitNeedKind.PressureSensor, KitNeedKind.FlangeGasket] }, null);
        Assert.Equal(5, study.Answers.Sum(a => a.Options.Count(o => o.Part is null)) + Of(study, KitNeedKind.Cable).Options.Count(o => o.Part is not null));
        var cable = Of(study, KitNeedKind.Cable).Options[1];
        var direct = Designer.Solve(MechanismTrial.With(Kit.Job, (CableMeasures)cable.Part!.Measures, null)!, new SearchEffort(null) { WithOthers = true });
        Assert.Equal(direct.Verdict.Kind == VerdictKind.NotProven ? FitState.NotKnown : FitState.DoesNotFit, cable.State);
        Assert.Equal("rubber stop on a screw", Assert.Single(study.Unwanted).Name); // over-travel 2.8 mm needs none
        Assert.DoesNotContain(study.Answers, a => a.Need.Kind is KitNeedKind.IdleValve or KitNeedKind.IdleScrews or KitNeedKind.SensorScrews);
    }

    [Fact]
    public void A_job_without_lists_says_what_is_needed()
    {
        var study = KitStudy.Of(Read("dunlin-rowan-64"), null);
        Assert.False(study.Kit.HasLists);
        Assert.Contains(study.Answers, a => a.Need.Kind == KitNeedKind.Cable);

        // Nobody said whether it takes these: that is not known, and no kit is complete on it.
        Assert.Equal<KitNeedKind>([KitNeedKind.IdleValve, KitNeedKind.PressureSensor, KitNeedKind.FlangeGasket], study.NotSaid);
        Assert.Equal(FitState.NotKnown, study.State);
    }

    private sealed class SameCodes : IEqualityComparer<(FitState State, ImmutableArray<string> Codes)>
    {
        public bool Equals((FitState State, ImmutableArray<string> Codes) x, (FitState State, ImmutableArray<string> Codes) y) => x.State == y.State && x.Codes.SequenceEqual(y.Codes);

        public int GetHashCode((FitState State, ImmutableArray<string> Codes) obj) => 0;
    }
}
