using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Design.Inputs;

namespace BracketGen.Profiles.Interview;

/// <summary>What is asked of a job; what follows depends on what was answered.</summary>
/// <param name="found">Profiles to choose from.</param>
/// <param name="cablesOf">The other cables of the vehicle with a path, none where it cannot be read.</param>
/// <param name="groovesOf">Names of the other grooves of the throttle body with a path.</param>
/// <param name="materialsOf">Designations that the shop with a path stocks.</param>
internal sealed class JobQuestions(
    FoundProfiles found, Func<string, ImmutableArray<OtherCable>> cablesOf, Func<string, ImmutableArray<string>> groovesOf, Func<string, ImmutableArray<string>> materialsOf)
{
    /// <summary>Key of the answer that says where the bulkhead is.</summary>
    public const string BulkheadWay = "bulkhead";

    private const string Preferences = "[preferences]", Document = "[document]", Life = "[life]", Bulkhead = "[bulkhead]", Movement = "[engine_movement]", Finish = "[finish]";

    private static readonly Preferences Usual = new();

    public IEnumerable<Question> After(Answers answers)
    {
        yield return File(QuestionId.JobVehicle, "vehicle", found.Vehicles);
        yield return File(QuestionId.JobBody, "throttle_body", found.Bodies);
        yield return File(QuestionId.JobShop, "shop", found.Shops);
        yield return new(QuestionId.JobUnits, "", "units", AnswerForm.Word, "mm", "mm", "in");
        yield return new(QuestionId.Up, "", "up", AnswerForm.Direction, "");
        yield return new(QuestionId.BulkheadWay, Answers.Unwritten, BulkheadWay, AnswerForm.Direction, "");
        foreach (var question in OfPart(answers).Concat(OfLimits(answers)).Concat(OfVehicle(answers)).Concat(OfCables(answers)))
        {
            yield return question;
        }

        yield return new(QuestionId.PartNumber, Document, "part_number", AnswerForm.Text);
        yield return new(QuestionId.Revision, Document, "revision", AnswerForm.Text, "A");
        yield return new(QuestionId.DrawingTitle, Document, "title", AnswerForm.Text);
        yield return new(QuestionId.IssueDate, Document, "date", AnswerForm.Text, "");
        yield return new(QuestionId.Creator, Document, "creator", AnswerForm.Text, "");
        yield return new(QuestionId.Approver, Document, "approver", AnswerForm.Text, "");
        yield return new(QuestionId.ViewLayout, Document, "projection", AnswerForm.Word, "first angle", "first angle", "third angle");
    }

    // With one file there is nothing to choose; it is still shown.
    private static Question File(QuestionId id, string key, ImmutableArray<string> files) =>
        new(id, "", key, AnswerForm.Word, files.Length == 1 ? files[0] : null, [.. files]) { TakesOther = true };

    private IEnumerable<Question> OfPart(Answers answers)
    {
        yield return new(QuestionId.FreePlayWanted, Preferences, "free_play", AnswerForm.Measured, "");
        yield return new(QuestionId.MaterialsAllowed, Preferences, "materials", AnswerForm.Texts, "", [.. answers.Of("", "shop") is { } shop ? materialsOf(shop) : []]);
        yield return new(QuestionId.MinSheetThickness, Preferences, "min_thickness", AnswerForm.Quantity, Number(Usual.MinThickness));
        yield return new(QuestionId.MaxSheetThickness, Preferences, "max_thickness", AnswerForm.Quantity, Number(Usual.MaxThickness));
        yield return new(QuestionId.StopOpening, Preferences, "stop_opening", AnswerForm.Word, "as needed", "as needed", "hole", "open slot");
        yield return new(QuestionId.PartFinish, Finish, "kind", AnswerForm.Word, "", "bare", "zinc plated", "powder coated", "anodised");
        if (answers.Of(Finish, "kind") is not (null or "bare"))
        {
            yield return new(QuestionId.PartFinishThickness, Finish, "thickness", AnswerForm.Quantity);
        }
    }

    private static IEnumerable<Question> OfLimits(Answers answers)
    {
        yield return new(QuestionId.Limits, Answers.Unwritten, "limits", AnswerForm.Word, "usual", "usual", "own");
        if (answers.Of(Answers.Unwritten, "limits") != "own")
        {
            yield break;
        }

        foreach (var (id, key, usual) in ((QuestionId, string, double)[])
        [
            (QuestionId.MinFreePlay, "min_free_play", Usual.MinFreePlay),
            (QuestionId.MinOverTravel, "min_over_travel", Usual.MinOverTravel),
            (QuestionId.MaxOverTravel, "max_over_travel", Usual.MaxOverTravel),
            (QuestionId.MinWrap, "min_wrap", Usual.MinWrap.Degrees),
            (QuestionId.FittingClearance, "fitting_clearance", Usual.FittingClearance),
            (QuestionId.SweepClearance, "sweep_clearance", Usual.SweepClearance),
            (QuestionId.OuterClearance, "outer_clearance", Usual.OuterClearance),
            (QuestionId.KeepOutClearance, "keep_out_clearance", Usual.KeepOutClearance),
            (QuestionId.DirtAndCold, "dirt_and_cold", Usual.DirtAndCold),
            (QuestionId.AdjusterReserve, "adjuster_reserve", Usual.AdjusterReserve),
            (QuestionId.MinYieldFactor, "min_yield_factor", Usual.MinYieldFactor),
            (QuestionId.MinEnduranceFactor, "min_endurance_factor", Usual.MinEnduranceFactor),
            (QuestionId.MinFrequencyRatio, "min_frequency_ratio", Usual.MinFrequencyRatio),
            (QuestionId.MaxGive, "max_give", Usual.MaxGive),
            (QuestionId.CornerRadius, "corner_radius", Usual.CornerRadius),
        ])
        {
            yield return new(id, Preferences, key, AnswerForm.Quantity, Number(usual));
        }
    }

    private static IEnumerable<Question> OfVehicle(Answers answers)
    {
        yield return new(QuestionId.Temperature, Life, "temperature", AnswerForm.Quantity, "");
        yield return new(QuestionId.Openings, Life, "openings", AnswerForm.Quantity, "");
        yield return new(QuestionId.EngineHours, Life, "engine_hours", AnswerForm.Quantity, "");
        yield return new(QuestionId.BulkheadPoint, Bulkhead, "point", AnswerForm.Point, "");
        if (answers.Of(Bulkhead, "point") is not null)
        {
            yield return new(QuestionId.BulkheadDirection, Bulkhead, "direction", AnswerForm.Direction);
            yield return new(QuestionId.ClipCount, Bulkhead, "clip", AnswerForm.Count, "0") { Max = 8 };
            for (var i = 1; i <= answers.CountOf(Bulkhead, "clip"); i++)
            {
                var clip = $"[[bulkhead.clip]] {i}";
                yield return new(QuestionId.ClipPoint, clip, "point", AnswerForm.Point) { Item = i };
                yield return new(QuestionId.ClipDirection, clip, "direction", AnswerForm.Direction, "") { Item = i };
                yield return new(QuestionId.ClipAlong, clip, "outer_before", AnswerForm.Quantity, "") { Item = i };
            }
        }

        yield return new(QuestionId.MovementX, Movement, "x", AnswerForm.Quantity, "");
        if (answers.Of(Movement, "x") is not null)
        {
            yield return new(QuestionId.MovementY, Movement, "y", AnswerForm.Quantity);
            yield return new(QuestionId.MovementZ, Movement, "z", AnswerForm.Quantity);
            yield return new(QuestionId.Roll, Movement, "roll", AnswerForm.Quantity);
            yield return new(QuestionId.CrankshaftDirection, Movement, "crankshaft_direction", AnswerForm.Direction, "");
            yield return new(QuestionId.CrankshaftPoint, Movement, "crankshaft_point", AnswerForm.Point, "");
        }
    }

    private IEnumerable<Question> OfCables(Answers answers)
    {
        if (answers.Of("", "vehicle") is not { } vehicle)
        {
            yield break;
        }

        var cables = cablesOf(vehicle);
        for (var i = 1; i <= cables.Length; i++)
        {
            var (section, cable) = ($"[[other_cables]] {i}", cables[i - 1]);
            var all = Of(section, cable, answers.Of(section, "becomes"), answers.Of("", "throttle_body") is { } body ? groovesOf(body) : []);
            foreach (var question in all)
            {
                yield return question with { Item = i, About = cable.Name };
            }
        }
    }

    private static IEnumerable<Question> Of(string section, OtherCable cable, string? becomes, ImmutableArray<string> grooves)
    {
        yield return new(QuestionId.CableBecomes, section, "becomes", AnswerForm.Word, "", ["laid by", "taken out", "hooked elsewhere", .. grooves.IsEmpty ? (string[])[] : ["in a groove"]])
        {
            Before = $"cable = {Toml.TomlLiteral.Quoted(cable.Name)}\n",
        };
        switch (becomes)
        {
            case "laid by":
                yield return new(QuestionId.CablePedalEnd, section, "pedal_end", AnswerForm.Word, "", "off", "hooked");
                yield return new(QuestionId.CableActuator, section, "actuator", AnswerForm.Word, "", "dead", "live");
                yield return new(QuestionId.CableServedBy, section, "served_by", AnswerForm.Text, "");
                break;
            case "taken out":
                yield return new(QuestionId.CableServedBy, section, "served_by", AnswerForm.Text, "");
                break;
            case "hooked elsewhere":
                yield return new(QuestionId.CableTo, section, "to", AnswerForm.Text);
                break;
            case "in a groove":
                yield return new(QuestionId.CableGroove, section, "groove", AnswerForm.Word, null, [.. grooves]);
                yield return new(QuestionId.CableStopAt, section, "stop_at", AnswerForm.Point, "");
                yield return new(QuestionId.CableHeldBy, section, "held_by", AnswerForm.Text, "");
                break;
            default:
                break;
        }
    }

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
