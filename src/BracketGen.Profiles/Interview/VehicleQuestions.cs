namespace BracketGen.Profiles.Interview;

/// <summary>What is asked of a vehicle; what follows depends on what was answered.</summary>
internal static class VehicleQuestions
{
    private const string OneRatio = "one ratio";

    public static IEnumerable<Question> After(Answers answers)
    {
        yield return new(QuestionId.VehicleName, "", "name", AnswerForm.Text);
        yield return new(QuestionId.WireDiameter, "[cable]", "wire_diameter", AnswerForm.Quantity);
        yield return new(QuestionId.OuterDiameter, "[cable]", "outer_diameter", AnswerForm.Quantity);
        yield return new(QuestionId.FreeInnerLength, "[cable]", "free_inner_length", AnswerForm.Measured);
        yield return new(QuestionId.FleetLimit, "[cable]", "fleet_limit", AnswerForm.Quantity, "3");
        yield return new(QuestionId.MinBendRadius, "[cable]", "min_bend_radius", AnswerForm.Quantity, "60");
        yield return new(QuestionId.OuterLength, "[cable]", "outer_length", AnswerForm.Quantity, "");
        yield return new(QuestionId.OuterBore, "[cable]", "outer_bore", AnswerForm.Quantity, "");
        yield return new(QuestionId.WireConstruction, "[cable]", "wire_construction", AnswerForm.Word, "", "7x19", "7x7", "1x19", "single");
        yield return new(QuestionId.FittingKind, "[cable.fitting]", "kind", AnswerForm.Word, null, "barrel", "nipple", "ball");
        yield return new(QuestionId.FittingDiameter, "[cable.fitting]", "diameter", AnswerForm.Quantity);
        if (answers.Of("[cable.fitting]", "kind") != "ball")
        {
            yield return new(QuestionId.FittingLength, "[cable.fitting]", "length", AnswerForm.Quantity);
        }

        const string end = "[cable.outer_end]";
        yield return new(QuestionId.OuterEndKind, end, "kind", AnswerForm.Word, null, "threaded adjuster", "plain ferrule", "slotted clip", "bulkhead ferrule", "clipped ferrule", "push-in end", "square push-in end");
        switch (answers.Of(end, "kind"))
        {
            case "threaded adjuster":
                yield return new(QuestionId.AdjusterThread, end, "thread", AnswerForm.Text);
                yield return new(QuestionId.NutAcrossFlats, end, "across_flats", AnswerForm.Quantity);
                yield return new(QuestionId.NutHeight, end, "nut_height", AnswerForm.Quantity);
                yield return new(QuestionId.AdjusterRange, end, "range", AnswerForm.Quantity);
                break;
            case "plain ferrule":
                yield return new(QuestionId.NoseDiameter, end, "nose_diameter", AnswerForm.Quantity);
                yield return new(QuestionId.ShoulderDiameter, end, "shoulder_diameter", AnswerForm.Quantity);
                yield return new(QuestionId.RangeElsewhere, end, "range", AnswerForm.Quantity, "0");
                break;
            case "slotted clip":
                yield return new(QuestionId.NeckDiameter, end, "neck_diameter", AnswerForm.Quantity);
                yield return new(QuestionId.CollarDiameter, end, "collar_diameter", AnswerForm.Quantity);
                yield return new(QuestionId.NeckLength, end, "neck_length", AnswerForm.Quantity);
                yield return new(QuestionId.RangeElsewhere, end, "range", AnswerForm.Quantity, "0");
                break;
            case "bulkhead ferrule":
                yield return new(QuestionId.AdjusterThread, end, "thread", AnswerForm.Text);
                yield return new(QuestionId.EndThreadLength, end, "thread_length", AnswerForm.Quantity);
                yield return new(QuestionId.NutAcrossFlats, end, "across_flats", AnswerForm.Quantity);
                yield return new(QuestionId.NutHeight, end, "nut_height", AnswerForm.Quantity);
                yield return new(QuestionId.RangeElsewhere, end, "range", AnswerForm.Quantity, "0");
                break;
            case "clipped ferrule":
                yield return new(QuestionId.NoseDiameter, end, "nose_diameter", AnswerForm.Quantity);
                yield return new(QuestionId.ShoulderDiameter, end, "shoulder_diameter", AnswerForm.Quantity);
                yield return new(QuestionId.Grip, end, "grip", AnswerForm.Quantity);
                yield return new(QuestionId.NoseLength, end, "nose_length", AnswerForm.Quantity);
                yield return new(QuestionId.ClipDiameter, end, "clip_diameter", AnswerForm.Quantity);
                yield return new(QuestionId.RangeElsewhere, end, "range", AnswerForm.Quantity, "0");
                break;
            case "push-in end" or "square push-in end":
                if (answers.Of(end, "kind") == "push-in end")
                {
                    yield return new(QuestionId.EndHoleDiameter, end, "hole_diameter", AnswerForm.Quantity);
                }
                else
                {
                    yield return new(QuestionId.EndHoleSide, end, "hole_side", AnswerForm.Quantity);
                    yield return new(QuestionId.EndCornerRadius, end, "corner_radius", AnswerForm.Quantity, "0.5");
                }

                yield return new(QuestionId.EndCollarDiameter, end, "shoulder_diameter", AnswerForm.Quantity);
                yield return new(QuestionId.MinSheet, end, "min_sheet", AnswerForm.Quantity);
                yield return new(QuestionId.MaxSheet, end, "max_sheet", AnswerForm.Quantity);
                yield return new(QuestionId.Reach, end, "reach", AnswerForm.Quantity);
                yield return new(QuestionId.RangeElsewhere, end, "range", AnswerForm.Quantity, "0");
                break;
            default:
                break;
        }

        yield return new(QuestionId.AvailablePull, "[pedal]", "available_pull", AnswerForm.Measured);
        yield return new(QuestionId.LeverKind, Answers.Unwritten, "lever", AnswerForm.Word, OneRatio, OneRatio, "table");
        foreach (var question in answers.Of(Answers.Unwritten, "lever") switch { OneRatio => [new(QuestionId.LeverRatio, "[pedal]", "lever_ratio", AnswerForm.Quantity)], "table" => OfTable(answers), _ => [] })
        {
            yield return question;
        }

        yield return new(QuestionId.PadLoad, "[pedal]", "pad_load", AnswerForm.Measured, "0");
        yield return new(QuestionId.ClosingDrag, "[cable]", "closing_drag", AnswerForm.Measured, "");
        yield return new(QuestionId.OpeningDrag, "[cable]", "opening_drag", AnswerForm.Measured, "");
        yield return new(QuestionId.OuterAxialStiffness, "[cable]", "outer_axial_stiffness", AnswerForm.Measured, "");
        yield return new(QuestionId.ZeroVolts, "[controller]", "zero_volts", AnswerForm.Quantity, "");
        yield return new(QuestionId.OtherCableCount, "[other_cables]", "cables", AnswerForm.Count, "0");
        for (var i = 1; i <= answers.CountOf("[other_cables]", "cables"); i++)
        {
            var cable = $"[[other_cables]] {i}";
            yield return new(QuestionId.OtherCableName, cable, "name", AnswerForm.Text) { Item = i };
            yield return new(QuestionId.OtherCableDoes, cable, "does", AnswerForm.Word, null, "cruise control", "kick-down", "hand throttle", "idle-up", "other") { Item = i };
            yield return new(QuestionId.OtherCableFrom, cable, "from", AnswerForm.Text) { Item = i };
            yield return new(QuestionId.OtherCableOnPedal, cable, "on_pedal", AnswerForm.Word, "", "yes", "no") { Item = i };
        }
    }

    // The last row is on the floor: its pull is the available pull.
    private static IEnumerable<Question> OfTable(Answers answers)
    {
        yield return new(QuestionId.PedalPointCount, "[pedal]", "table", AnswerForm.Count, "5") { Min = 2, Max = 36 };
        for (var i = 1; i <= answers.CountOf("[pedal]", "table"); i++)
        {
            var point = $"[[pedal.table]] {i}";
            yield return new(QuestionId.PedalPad, point, "pad", AnswerForm.Quantity, i == 1 ? "0" : null) { Item = i, IsOfTable = true };
            yield return new(QuestionId.PedalPull, point, "pull", AnswerForm.Quantity, i == 1 ? "0" : null) { Item = i, IsOfTable = true };
        }
    }
}
