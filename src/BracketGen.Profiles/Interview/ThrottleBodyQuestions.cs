using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Profiles.Interview;

/// <summary>What is asked of a throttle body; what follows depends on what was answered.</summary>
internal static class ThrottleBodyQuestions
{
    // Answers under this name only steer the questions.
    private const string Steering = Answers.Unwritten;

    private const string Quadrant = "[quadrant]", Groove = "[quadrant.groove]", Pocket = "[quadrant.pocket]", Bore = "[bore_axis]", Springs = "[return_springs]", Engine = "[engine]";

    public static IEnumerable<Question> After(Answers answers)
    {
        yield return new(QuestionId.ThrottleBodyName, "", "name", AnswerForm.Text);
        yield return new(QuestionId.Opens, "", "opens", AnswerForm.Word, null, "counter-clockwise", "clockwise");
        yield return new(QuestionId.Bore, "", "bore", AnswerForm.Quantity);
        yield return new(QuestionId.ShaftDiameter, "", "shaft_diameter", AnswerForm.Quantity);
        yield return new(QuestionId.GrooveKind, Steering, "shape", AnswerForm.Word, "round", "round", "eccentric circle", "table");
        if (answers.Of(Steering, "shape") == "round")
        {
            yield return new(QuestionId.PitchRadius, Quadrant, "pitch_radius", AnswerForm.Measured);
        }

        yield return new(QuestionId.Rotation, Quadrant, "rotation", AnswerForm.Measured);
        yield return new(QuestionId.PocketAngle, Quadrant, "pocket_angle", AnswerForm.Measured);
        yield return new(QuestionId.GrooveExtent, Quadrant, "groove_extent", AnswerForm.Quantity);
        yield return new(QuestionId.GrooveWidth, Quadrant, "groove_width", AnswerForm.Quantity);
        yield return new(QuestionId.SlotWidth, Quadrant, "slot_width", AnswerForm.Quantity);
        yield return new(QuestionId.OuterRadius, Quadrant, "outer_radius", AnswerForm.Quantity);
        yield return new(QuestionId.Thickness, Quadrant, "thickness", AnswerForm.Quantity);
        yield return new(QuestionId.HubRadius, Quadrant, "hub_radius", AnswerForm.Quantity, "");
        foreach (var question in answers.Of(Steering, "shape") switch { "eccentric circle" => OfEccentric(), "table" => OfTable(answers), _ => [] })
        {
            yield return question;
        }

        yield return new(QuestionId.PocketKind, Pocket, "kind", AnswerForm.Word, "", "barrel", "ball", "nipple");
        var pocket = answers.Of(Pocket, "kind");
        if (pocket is "barrel" or "ball")
        {
            yield return new(QuestionId.PocketDiameter, Pocket, "diameter", AnswerForm.Quantity);
        }
        else if (pocket is "nipple")
        {
            yield return new(QuestionId.PocketWidth, Pocket, "width", AnswerForm.Quantity);
            yield return new(QuestionId.PocketLength, Pocket, "length", AnswerForm.Quantity);
        }

        if (!string.IsNullOrEmpty(pocket))
        {
            yield return new(QuestionId.PocketDepth, Pocket, "depth", AnswerForm.Quantity);
        }

        if (pocket is "barrel")
        {
            yield return new(QuestionId.PocketAxis, Pocket, "axis", AnswerForm.Word, null, "along the shaft", "across the shaft");
        }

        yield return new(QuestionId.SpringCount, Springs, "springs", AnswerForm.Count, "2");
        for (var i = 1; i <= answers.CountOf(Springs, "springs"); i++)
        {
            var spring = $"[[return_springs.each]] {i}";
            yield return new(QuestionId.SpringAloneClosed, spring, "torque_closed", AnswerForm.Measured) { Item = i };
            yield return new(QuestionId.SpringAloneOpen, spring, "torque_open", AnswerForm.Measured) { Item = i };
        }

        // Last, because each is held against what the springs alone add up to.
        yield return new(QuestionId.TorqueClosed, Springs, "torque_closed", AnswerForm.Measured);
        yield return new(QuestionId.TorqueOpen, Springs, "torque_open", AnswerForm.Measured);
        yield return new(QuestionId.ShaftDrag, "", "shaft_drag", AnswerForm.Measured, "");
        yield return new(QuestionId.ClosedAngle, "[valve]", "closed_angle", AnswerForm.Quantity, "7");
        yield return new(QuestionId.ClosedVolts, "[sensor]", "closed_volts", AnswerForm.Quantity, "");
        if (answers.Of("[sensor]", "closed_volts") is not null)
        {
            yield return new(QuestionId.OpenVolts, "[sensor]", "open_volts", AnswerForm.Quantity);
            yield return new(QuestionId.SensorSlot, "[sensor]", "slot", AnswerForm.Quantity, "");
        }

        yield return new(QuestionId.BoreZ, Bore, "z", AnswerForm.Quantity, "");
        if (answers.Of(Bore, "z") is not null)
        {
            yield return new(QuestionId.BoreDirection, Bore, "direction", AnswerForm.Quantity);
            yield return new(QuestionId.CastingDiameter, Bore, "outside_diameter", AnswerForm.Quantity);
            yield return new(QuestionId.CastingAhead, Bore, "ahead", AnswerForm.Quantity);
            yield return new(QuestionId.CastingBehind, Bore, "behind", AnswerForm.Quantity);
        }

        yield return new(QuestionId.MountNormal, "[mount]", "normal", AnswerForm.Direction);
        yield return new(QuestionId.HoleCount, "[mount]", "holes", AnswerForm.Count, "2") { Min = 1 };
        for (var i = 1; i <= answers.CountOf("[mount]", "holes"); i++)
        {
            var hole = $"[[mount.holes]] {i}";
            yield return new(QuestionId.HoleKind, hole, "kind", AnswerForm.Word, "tapped", "tapped", "through", "stud") { Item = i };
            yield return new(QuestionId.HoleThread, hole, "thread", AnswerForm.Word, "M6", [.. FastenerThread.All.Select(t => t.Name)]) { Item = i };
            yield return new(QuestionId.BossDiameter, hole, "boss_diameter", AnswerForm.Quantity) { Item = i };
            var kind = answers.Of(hole, "kind");
            if (kind == "through")
            {
                yield return new(QuestionId.PlainHoleDiameter, hole, "hole_diameter", AnswerForm.Quantity) { Item = i };
                yield return new(QuestionId.FlangeThickness, hole, "flange_thickness", AnswerForm.Quantity) { Item = i };
                yield return new(QuestionId.RoomBehind, hole, "room_behind", AnswerForm.Quantity, "") { Item = i };
            }
            else
            {
                if (kind == "stud")
                {
                    yield return new(QuestionId.StandsOut, hole, "stands_out", AnswerForm.Quantity) { Item = i };
                }

                yield return new(QuestionId.ThreadDepth, hole, "thread_depth", AnswerForm.Quantity, "") { Item = i };
            }
        }

        // Together, so that a point off the face shows as soon as the last is there.
        for (var i = 1; i <= answers.CountOf("[mount]", "holes"); i++)
        {
            var hole = $"[[mount.holes]] {i}";
            if (i > 1)
            {
                // Before the centre, which otherwise counts as off the face.
                yield return new(QuestionId.SpacerLength, hole, "spacer", AnswerForm.Quantity, "") { Item = i };
            }

            yield return new(QuestionId.HoleCentre, hole, "at", AnswerForm.Point) { Item = i, TakesPlusMinus = true };
        }

        yield return new(QuestionId.Flatness, "[mount]", "flatness", AnswerForm.Quantity, "");
        yield return new(QuestionId.BossMaterial, "[mount]", "boss_material", AnswerForm.Word, "", [.. BossMetal.All.Select(m => m.Name)]);
        yield return new(QuestionId.Cylinders, Engine, "cylinders", AnswerForm.Quantity, "");
        if (!string.IsNullOrEmpty(answers.Of(Engine, "cylinders")))
        {
            yield return new(QuestionId.MaxSpeed, Engine, "max_speed", AnswerForm.Quantity);
            yield return new(QuestionId.IdleSpeed, Engine, "idle_speed", AnswerForm.Measured, "");
        }

        yield return new(QuestionId.KeepOutCount, "[keep_out]", "boxes", AnswerForm.Count, "0");
        for (var i = 1; i <= answers.CountOf("[keep_out]", "boxes"); i++)
        {
            var box = $"[[keep_out]] {i}";
            yield return new(QuestionId.KeepOutName, box, "name", AnswerForm.Text) { Item = i };
            yield return new(QuestionId.KeepOutShape, box, "shape", AnswerForm.Word, "box", "box") { Item = i };
            yield return new(QuestionId.KeepOutMin, box, "min", AnswerForm.Point) { Item = i };
            yield return new(QuestionId.KeepOutMax, box, "max", AnswerForm.Point) { Item = i };
        }
    }

    private static IEnumerable<Question> OfEccentric()
    {
        yield return new(QuestionId.GrooveRadius, Groove, "radius", AnswerForm.Measured) { Before = "shape = \"eccentric circle\"\n" };
        yield return new(QuestionId.GrooveOffset, Groove, "offset", AnswerForm.Quantity);
        yield return new(QuestionId.GrooveDirection, Groove, "direction", AnswerForm.Quantity);
    }

    private static IEnumerable<Question> OfTable(Answers answers)
    {
        yield return new(QuestionId.GroovePlusMinus, Groove, "plus_minus", AnswerForm.Quantity) { Before = "shape = \"table\"\n" };
        yield return new(QuestionId.GroovePointCount, Groove, "points", AnswerForm.Count, "6") { Min = 4, Max = 36 };
        for (var i = 1; i <= answers.CountOf(Groove, "points"); i++)
        {
            var point = $"[[quadrant.groove.points]] {i}";
            yield return new(QuestionId.GroovePointAngle, point, "angle", AnswerForm.Quantity) { Item = i, IsOfTable = true };
            yield return new(QuestionId.GroovePointRadius, point, "radius", AnswerForm.Quantity) { Item = i, IsOfTable = true };
        }
    }
}
