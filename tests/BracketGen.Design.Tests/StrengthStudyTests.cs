using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;
using BracketGen.Words.Report;

namespace BracketGen.Design.Tests;

/// <summary>The strength of whole brackets: what is loaded how, what is made of it, and what the search does with it.</summary>
public sealed class StrengthStudyTests
{
    private static readonly Job Plover = Examples.Read("plover-alder-58");
    private static readonly Solution Answer = Designer.Solve(Plover, SearchEffort.Whole);

    [Theory]
    [MemberData(nameof(Examples.Names), MemberType = typeof(Examples))]
    public void Every_example_is_strong_enough(string name)
    {
        var solution = Designer.Solve(Examples.Read(name), SearchEffort.Whole);
        var report = solution.Strength!;
        bool Ends(string part) => name.EndsWith(part, StringComparison.Ordinal);
        string[] drawn = Ends("-rib") ? ["second-face-drawn"] : Ends("-ring") ? ["ring-yield", "ring-endurance"] : [], fixing = Ends("-ring") ? ["nut-room", "nut-thread"] : Ends("-stud") ? ["stud-length", "stud-depth", "nut-room", "spacer-pressure", "nut-thread"] : ["thread-depth"];
        string[] slots = Ends("-slotted") ? ["slot-slip", "slot-slip-stamped"] : [];
        Assert.Equal(
            ["stamped-yield", "endurance", "stop-give", .. drawn, "resonance", "screw-yield", "boss-thread", .. fixing, "joint-slip", "stamped-slip", .. slots, "joint-opening", "washer-pressure", "shaking-test"],
            report.Checks.Select(c => c.Code));
        Assert.All(report.Checks, c => Assert.True(c.Passes || c.Kind == CheckKind.Advice, c.Code));
        // The report is of the bracket in the middle of its slots; what is worse at an end of them counts.
        Assert.All(report.Checks, c => Assert.True(solution.Checks.Any(o => o.Equals(c) || (o.IsAtSlotEnd && o.Id == c.Id && o.Margin <= c.Margin)), c.Code));
        Assert.All(solution.Offers, o => Assert.NotNull(o.GiveFound));
    }

    [Fact]
    public void Washers_hold_the_tension_and_the_stop_moves_towards_the_quadrant()
    {
        var report = Answer.Strength!;
        var reaction = report.Opening.Response.Solution.Reactions.Aggregate(Vector3.Zero, (sum, r) => sum + r.Force);
        Assert.True((reaction + report.Opening.Response.Force).Length < 1e-6 * report.Opening.Tension);
        var wire = Answer.Travel.WideOpen;
        Assert.Equal(-1, report.Opening.Response.Force.Unit.Dot(Vector3.From(wire.Direction)), 1e-9);
        Assert.Equal(wire.Opening, Answer.Travel.Rotation);

        // Torque over arm, as a spring balance would find it. The springs' torque is read as the valve closes: on the way open the drag counts twice.
        Assert.Equal((Plover.Body.Springs.TorqueAt(1) + 2 * Plover.Body.ShaftDrag.Value) / wire.Arm, report.Opening.Tension, 1e-9);
        Assert.Equal(report.GivePerTension * report.Opening.Tension, report.Opening.Give, 1e-4 * report.Opening.Give);
    }

    [Fact]
    public void Stamped_on_the_cable_stretches_by_what_the_floor_leaves()
    {
        // Virtual cable: with the mean and no tolerance the tension over the springs' own, times all that gives, is the over-travel.
        var report = Answer.Strength!;
        var mechanism = Answer.Mechanism!;
        var measured = mechanism.Uncertainty!.OverTravel;
        var (stiff, friction) = (Plover.Vehicle.Cable.Stiff with { Bracket = report.GivePerTension }, mechanism.Friction);
        var stretch = (report.Stamped.Tension - report.Opening.Tension) * stiff.PerTension(friction);
        var lost = stiff.PerTension(friction) * report.Opening.Tension + stiff.ForDrag(friction);
        Assert.Equal(Answer.Travel.OverTravel - lost + measured.Quantile(0.99) - measured.Nominal, stretch, 1e-6);
        Assert.Null(report.LimitingFootForce);

        // A weak foot never gets there: the pedal's lever then says how hard it pulls.
        var weak = Designer.Solve(Plover with { Vehicle = Plover.Vehicle with { Pedal = Plover.Vehicle.Pedal with { ProofForce = 60 } } }, SearchEffort.Whole);
        Assert.Equal(60 * Plover.Vehicle.Pedal.LeverRatio, weak.Strength!.Stamped.Tension, 1e-9);
        Assert.Equal(60, weak.Strength.LimitingFootForce);
    }

    [Fact]
    public void Travel_and_make_give_the_same_proof_load()
    {
        // What make prints with the mechanism is what the strength calculation puts on the stop; travel has no bracket, so its give and its tolerances are not in it.
        Assert.Equal(new ProofLoad(Answer.Strength!.Stamped.Tension, Answer.Strength.LimitingFootForce), Answer.Mechanism!.ProofLoad);
        var rigid = MechanismReport.Of(Plover, Answer.Travel, Answer.Placement, null);
        var bracket = MechanismReport.Of(Plover, Answer.Travel, Answer.Placement, Answer.Bracket, give: 0);
        Assert.Equal(rigid.ProofLoad.Tension, bracket.ProofLoad.Tension, 0.02 * rigid.ProofLoad.Tension);
        Assert.True(rigid.ProofLoad.Tension > Answer.Mechanism.ProofLoad.Tension);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(2)]
    public void The_stiffness_at_the_limit_puts_the_yield_factor_there(double part)
    {
        // Solved again with an outer of that stiffness: the yield factor is then the one that was asked for.
        var factor = part * Answer.Strength!.YieldFactor;
        var asked = Plover with { Preferences = Plover.Preferences with { MinYieldFactor = factor } };
        StrengthReport With(Measured stiffness) => StrengthStudy.Of(
            asked with { Vehicle = Plover.Vehicle with { Cable = Plover.Vehicle.Cable with { OuterAxialStiffness = stiffness } } }, Answer.Travel, Answer.Placement!, Answer.Bracket!, StrengthDetail.Usual);
        var known = Plover.Vehicle.Cable.OuterAxialStiffness;
        var found = With(known).OuterStiffnessAtLimit;
        if (double.IsInfinity(found))
        {
            Assert.True(With(known with { Value = 1e12 }).YieldFactor >= factor);
            return;
        }

        // The soft end stays, so that the spread of the lost motion does.
        Assert.Equal(factor, With(new((found + known.Min) / 2, (found - known.Min) / 2)).YieldFactor, 1e-4 * factor);
    }

    [Fact]
    public void Give_that_was_found_goes_into_the_lost_motion()
    {
        var estimate = MechanismReport.Of(Plover, Answer.Travel, Answer.Placement, Answer.Bracket);
        var difference = Answer.Mechanism!.Loaded!.LostPerTension - estimate.Loaded!.LostPerTension;
        Assert.Equal(Answer.Strength!.GivePerTension - StopGive.Of(Answer.Bracket!, 1), difference, 1e-12);
    }

    [Fact]
    public void Beam_estimate_and_finite_elements_are_of_one_mind()
    {
        // Cantilever theory (Roark, table of beams) for a short wide flange: half to double is what it is worth.
        Assert.InRange(Answer.Strength!.GivePerTension / StopGive.Of(Answer.Bracket!, 1), 0.5, 2);
    }

    [Fact]
    public void Soderberg_line()
    {
        // Steady stress alone fails at yield, amplitude alone at the endurance limit; half and half in between: 1/n = σa/Se + σm/Sy
        // (Shigley, chapter on fluctuating stresses). 200 MPa coming and going, Se 150, Sy 300 MPa: 100/150 + 100/300 = 1.
        Assert.Equal(1, StrengthStudy.EnduranceFactor(200, 150, 300), 1e-12);
        Assert.Equal(2, StrengthStudy.EnduranceFactor(100, 150, 300), 1e-12);
    }

    [Theory]
    [InlineData(4, 6000, 4, 200)]
    [InlineData(6, 6000, 4, 300)]
    [InlineData(8, 6000, 4, 400)]
    [InlineData(2, 6000, 2, 200)]
    public void Firing_frequency(int cylinders, double speed, int strokes, double frequency)
    {
        // A four-cylinder four-stroke engine fires in the second order of the crankshaft (any text on engine vibration): 100 Hz at
        // 6000/min makes 200 Hz; a six the third, an eight the fourth. A two-stroke fires every turn.
        Assert.Equal(frequency, new Engine(cylinders, speed, strokes).FiringFrequency, 1e-9);
    }

    [Fact]
    public void Clockwise_is_as_strong_as_its_mirror_image()
    {
        var job = Examples.Read("dunlin-rowan-64");
        var mirror = job.OpeningCounterClockwise() with { Bulkhead = null };
        var (one, other) = (Designer.Solve(job with { Bulkhead = null }, SearchEffort.Whole).Strength!, Designer.Solve(mirror, SearchEffort.Whole).Strength!);
        Assert.True(one.Frequencies.SequenceEqual(other.Frequencies));
        Assert.Equal(one.YieldFactor, other.YieldFactor);
        Assert.Equal(one.Opening.At, other.Opening.At.MirroredInX);
    }

    [Fact]
    public void The_cheapest_strong_bracket_is_taken()
    {
        // More is asked of the strength than the cheapest has. Every candidate cheaper than the one taken is judged in full, one by one: none that fits is strong enough.
        var job = Plover with { Preferences = Plover.Preferences with { MinYieldFactor = 1.05 * Answer.Strength!.YieldFactor } };
        var answer = Designer.Solve(job, SearchEffort.Whole);
        var best = answer.Search!.Best!.Candidate;
        var cheaper = CandidateSearch.All(job).Where(c => c.Cost < best.Cost - 1e-12 && CandidateSearch.Promising(c))
            .Where(c => BracketChecks.InSpace(c.Bracket, job, c.Placement, c.Travel).All(CandidateSearch.IsGoodEnough)).ToList();
        Assert.NotEmpty(cheaper);
        Assert.DoesNotContain(cheaper, c => StrengthStudy.Of(job, c.Travel, c.Placement, c.Bracket, StrengthDetail.Usual).Checks.All(CandidateSearch.IsGoodEnough));
        Assert.NotNull(answer.Reasons!.TooWeak);
    }

    [Fact]
    public void Where_only_thin_sheet_is_in_stock_the_diagnosis_says_so()
    {
        var thin = Plover with
        {
            Shop = Plover.Shop with { Stock = [new Stock(Plover.Shop.Stock.First(s => s.Material.Designation == "S235JR").Material, 1.5)] },
            Preferences = Plover.Preferences with { MinThickness = 1, Materials = [] },
        };
        var solution = Designer.Solve(thin, SearchEffort.Whole);
        Assert.Empty(solution.Offers);
        Assert.NotNull(solution.Search!.Nearest!.Strength);
        Assert.True(solution.Search.IsCertain);
        Assert.False(solution.Passes);
        Assert.Contains(solution.Dangers, d => d.Code == "stamped-yield");

        var diagnosis = Diagnosis.Of(solution, SearchEffort.Whole)!;
        Assert.Contains(diagnosis.Obstacles, o => o.Nearest.Code == "stamped-yield");
        var thicker = diagnosis.Ways.SelectMany(w => w.Changes.Length == 1 ? w.Changes : []).First(c => c.Input == ChangedInput.Stock);
        var material = thin.Shop.Stock[0].Material;
        Job With(double thickness) => thin with { Shop = thin.Shop with { Stock = [new Stock(material, thickness)] } };
        Assert.NotEmpty(Designer.Solve(With(thicker.To), SearchEffort.Whole).Offers);
    }
}
