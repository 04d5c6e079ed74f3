using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Throttles;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;
using BracketGen.Words;
using BracketGen.Words.Checks;
using BracketGen.Words.Results;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Result;

/// <summary>Writes a solution as JSON for other programs; the published schema is docs/result.schema.json.</summary>
public static class ResultJson
{
    /// <summary>Version of the layout; raised when a reader of the old one would be misled.</summary>
    public const int Version = 3;

    /// <summary>The bytes of result.json, the same for the same solution.</summary>
    /// <param name="solution">The solution.</param>
    /// <param name="allowed">Failed safety checks that the user allowed by name.</param>
    public static byte[] Write(Solution solution, IReadOnlyList<string> allowed) => Write(ModelOf(solution, allowed));

    /// <summary>The bytes of a model: whatever in it is not a finite number is null, and its path stands in <see cref="ResultModel.NotCalculated"/>.</summary>
    internal static byte[] Write(ResultModel model)
    {
        var text = JsonSerializer.Serialize(model, ResultContext.Readable.ResultModel);
        if (FiniteNumbers.PathsOfMarks(text) is { Count: > 0 } paths)
        {
            text = FiniteNumbers.WithoutMarks(JsonSerializer.Serialize(model with { NotCalculated = paths }, ResultContext.Readable.ResultModel));
        }

        return Encoding.UTF8.GetBytes(text + "\n");
    }

    internal static ResultModel ModelOf(Solution solution, IReadOnlyList<string> allowed)
    {
        var job = solution.Job;
        return new(
            "BracketGen result", Version, VerdictText.Name(solution.Verdict.Kind), VerdictText.ToProve(solution.Verdict),
            new(job.Vehicle.Name, job.Body.Name, job.Body.Opens == OpeningSense.Clockwise ? "clockwise" : "counter-clockwise",
                job.Shop.Name, job.Document.PartNumber, job.Document.Revision,
                job.Document.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), job.Units == UnitSystem.Inch ? "in" : "mm"),
            TravelOf(solution), StopOf(solution.Placement), BracketOf(solution.Bracket), MechanismResult.Of(solution), StrengthResult.Of(solution.Strength, solution.Bracket?.Flat.Blank.Outline.Bounds.Min ?? default, job.Body.Engine),
            [.. solution.Offers.Select((o, i) => OfferOf(o, i, job))], solution.Offers.IsEmpty || solution.Choice == 0 ? null : solution.Choice, ReasonText.Of(solution.Reasons, job, UnitSystem.Metric), SearchOf(solution.Search), DiagnosisOf(solution.Diagnosis, job),
            [.. solution.Checks.Select(c => CheckOf(c, job))], allowed, Cautions.All)
        {
            NotCalculated = [],
            AdapterRing = RingOf(job.Body.Mount),
        };
    }

    private static ResultAdapterRing? RingOf(MountFace mount)
    {
        if (RingShape.Of(mount) is not { } shape)
        {
            return null;
        }

        var bounds = shape.Blank.Outline.Bounds;
        return new(
            shape.Ring.Sheet.Material.Designation, shape.Ring.Thickness, Round(shape.Blank.Area * shape.Ring.Thickness * shape.Ring.Sheet.Material.Density * 1e6),
            Round(bounds.Width), Round(bounds.Height), Point(shape.Bore.Centre - bounds.Min), Round(2 * shape.Bore.Radius),
            [
                .. shape.Holes.Select(h => new ResultRingHole(
                    h.Name, h.Purpose == RingHolePurpose.Bracket ? "bracket" : "flange bolt", Point(h.Centre.Vector - bounds.Min), Round(h.Diameter), h.Thread.Name)),
            ],
            [
                .. RingChecks.Screws(mount).Select(s => new ResultFlangeBolt(
                    s.Name, s.Bolt.Thread.Name, Round(s.Screw.Length), Round(s.Screw.Engagement), s.Screw.Length > s.Bolt.Length, Round(s.Screw.Torque / 1000))),
            ]);
    }

    private static ResultTravel TravelOf(Solution solution)
    {
        var travel = solution.Travel;
        return new(
            Round(travel.FreePlay), Round(travel.AvailablePull), Round(travel.PullToWideOpen), Round(travel.OverTravel),
            Round(travel.Rotation.Degrees), Round(travel.Reached.Degrees), travel.ReachesWideOpen, Round(travel.PedalAtFirstMove),
            Round(travel.PedalAtWideOpen), Round(travel.Closed.Wrap.Degrees), Round(travel.WideOpen.Wrap.Degrees));
    }

    private static ResultStop? StopOf(StopPlacement? placement) => placement is null
        ? null
        : new(
            Point(placement.Seat.Vector), Point(placement.Direction), Round(placement.Leaving.Normalised.Degrees), Round(placement.Straight),
            Round(placement.AdjusterShift), Round(placement.FreePlay));

    private static ResultBracket? BracketOf(Bracket? bracket)
    {
        if (bracket is null)
        {
            return null;
        }

        var corner = bracket.Flat.Blank.Outline.Bounds.Min;
        var flat = bracket.Flat.Shift(-corner);
        var bounds = flat.Blank.Outline.Bounds;
        var mount = bracket.Folded.Flanges[0].Shift(Vector3.From(corner));
        return new(
            bracket.Stock.Material.Designation, bracket.Stock.Thickness, Round(bracket.Mass * 1e6), Round(flat.Blank.Area),
            Round(flat.Blank.CutLength), Round(bounds.Width), Round(bounds.Height), bracket.SeatOnTop ? "top" : "bottom", bracket.Die?.Opening,
            [
                .. flat.Bends.Select(b => new ResultBend(
                    b.From, b.To, Point(b.Start.Vector), Point(b.End.Vector), b.IsUp ? "up" : "down", Round(b.Turn.Magnitude.Degrees),
                    b.InsideRadius, Round(b.Allowance), b.Rule.Name, Round(b.Relief))),
            ],
            bracket.Plan is { } plan ? [.. plan.Steps.Select(StepOf)] : null,
            [
                .. bracket.Holes.Select(h => new ResultHole(
                    h.Name, h.Purpose == HolePurpose.Bolt ? "bolt" : "stop", Point(h.Centre.Vector - corner), h.Diameter, h.IsSlot, h.Thread?.Name, OutlineOf(h.Outline))),
            ],
            [Point(mount.Origin), Point(mount.X), Point(mount.Y), Point(mount.Z)]);
    }

    private static ResultBendStep StepOf(BendStep step)
    {
        double? OnPress(double value) => step.Clamp is null ? Round(value) : null;
        return new(
            step.Bend, step.TopUp, step.NewFlangeInFront, step.Die?.Opening, step.Punch?.Name, step.PunchReversed, step.ToolLength,
            step.Clamp is { } clamp ? BendStepText.Over(clamp) : null, Round(step.OverBend.Degrees), PlacedBy(step.Gauge.Kind),
            [.. step.Gauge.Fingers.Select(f => new ResultFinger(Round(f.Distance), Round(f.Along)))], step.Gauge.PlusMinus, OnPress(step.Force), OnPress(step.ForcePerLength),
            OnPress(step.MaxForcePerLength), OnPress(step.HandHold));
    }

    private static ResultHoleOutline? OutlineOf(HoleOutline? outline) => outline switch
    {
        SquareHole square => new("square", Point(square.Along), square.Corner, null, null),
        FlatSidedHole flats => new("flats", Point(flats.Along), null, flats.AcrossFlats, null),
        SlottedHole slot => new("slotted", Point(slot.Along), null, null, slot.Travel),
        _ => null,
    };

    private static string PlacedBy(GaugeKind kind) => kind switch
    {
        GaugeKind.Edge => "edge",
        GaugeKind.Flange => "flange",
        GaugeKind.TwoPoints => "two points",
        _ => "scribed line",
    };

    private static ResultOffer OfferOf(Offer offer, int index, Job job)
    {
        var stock = offer.Candidate.Bracket.Stock;
        return new(
            index + 1, stock.Material.Designation, stock.Thickness,
            [.. offer.Candidate.Bracket.Flat.Bends.Select(b => Round(b.Turn.Magnitude.Degrees))], Round(offer.Mass * 1e6), Round(offer.BestGive),
            offer.Tightest.Code, Round(offer.LeastSpare), CostOf(CostText.Of(offer, job), job.Shop.Rates));
    }

    private static ResultCost CostOf(BracketCost cost, ShopRates rates) => new(
        rates.Currency ?? "min", rates.Batch, Round(cost.Total), Round(cost.Bill),
        [.. cost.Parts.Select(p => new ResultCostPart(CostText.Name(p.Part), BracketCost.IsPreference(p.Part), Round(p.Cost)))]);

    private static ResultDiagnosis? DiagnosisOf(Diagnosis? diagnosis, Job job) => diagnosis is null
        ? null
        : new(
            [.. diagnosis.Obstacles.Select(o => new ResultObstacle(CheckOf(o.Nearest, job), o.Stopped, o.Of))],
            [
                .. diagnosis.Ways.Select(w => new ResultWay(
                    [.. w.Changes.Select(c => new ResultChange(DiagnosisText.Code(c.Input), c.What ?? DiagnosisText.Name(c.Input), Round(Scaled(c.Input, c.From)), Round(Scaled(c.Input, c.To))))],
                    w.Decides is { } check ? CheckOf(check, job) : null)),
            ],
            diagnosis.IsCutShort);

    private static ResultSearch? SearchOf(SearchOutcome? search) => search is null ? null : new(search.Shapes, search.AllShapes, search.Solves, search.IsCertain);

    private static double Scaled(ChangedInput input, double value) => input == ChangedInput.MinWrap ? value * 180 / Math.PI : value;

    private static ResultCheck CheckOf(Check check, Job job)
    {
        var (unit, scale) = check.Unit switch
        {
            Quantity.Length => ("mm", 1.0),
            Quantity.Angle => ("deg", 180 / Math.PI),
            Quantity.Force => ("N", 1.0),
            Quantity.Voltage => ("V", 1.0),
            Quantity.Frequency => ("Hz", 1.0),
            Quantity.Stress => ("MPa", 1.0),
            _ => ("1", 1.0),
        };
        return new(
            check.Code, check.Title(), CheckText.Kind(check.Kind), unit, Known(scale * check.Value),
            check.Bound == Bound.AtLeast ? "at least" : "at most", Round(scale * check.Limit), Known(scale * check.Margin), Known(check.Spare), CheckText.State(check.State),
            check.Unfavourable is { } worst ? Known(scale * worst) : null,
            [.. check.Definition.Inputs.Select(i => new ResultInput(NameOf(i), InputEvidence.Of(job, i) is { } e ? EvidenceText.Name(e) : null))],
            check.Source(), check.Consequence());
    }

    // FreeInnerLength is "free-inner-length" in files.
    private static string NameOf(InputId input) =>
        string.Concat(input.ToString().Select((c, i) => char.IsUpper(c) ? (i > 0 ? "-" : "") + char.ToLowerInvariant(c) : c.ToString()));

    private static double[] Point(Vector3 p) => [Round(p.X), Round(p.Y), Round(p.Z)];

    private static double[] Point(Vector2 p) => [Round(p.X), Round(p.Y)];

    // What was not calculated has no number.
    private static double? Known(double value) => double.IsFinite(value) ? Round(value) : null;

    // Nine decimals lose nothing that matters and hide the last bit's noise.
    internal static double Round(double value)
    {
        var rounded = Math.Round(value, 9);
        return rounded == 0 ? 0 : rounded;
    }
}

/// <summary>Serialization of the result without reflection.</summary>
[JsonSerializable(typeof(ResultModel))]
internal sealed partial class ResultContext : JsonSerializerContext
{
    private static ResultContext? _readable;

    /// <summary>Indented, with letters as they are instead of escapes: people read the file too.</summary>
    public static ResultContext Readable => _readable ??= new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new FiniteNumbers() },
    });
}
