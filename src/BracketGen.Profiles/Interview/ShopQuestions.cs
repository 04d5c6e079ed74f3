using BracketGen.SheetMetal.Shops;

namespace BracketGen.Profiles.Interview;

/// <summary>What is asked of a shop; what follows depends on what was answered.</summary>
internal static class ShopQuestions
{
    private const string Rates = "[rates]", Press = "[press]", PressBrake = "press brake", Clamps = "folder or vice", Both = "both";

    public static IEnumerable<Question> After(Answers answers)
    {
        yield return new(QuestionId.ShopName, "", "name", AnswerForm.Text);
        yield return new(QuestionId.CuttingProcess, "", "process", AnswerForm.Word, null, "laser", "plasma", "water jet");
        yield return new(QuestionId.Kerf, "", "kerf", AnswerForm.Quantity);
        yield return new(QuestionId.BendRule, "", "bend_rule", AnswerForm.Word, "DIN 6935", "DIN 6935", "Machinery's Handbook");
        yield return new(QuestionId.BendMarks, "", "bend_marks", AnswerForm.Word, "etched", "etched", "none");

        // Before the materials: a price needs a currency.
        yield return new(QuestionId.Currency, Rates, "currency", AnswerForm.Text, "");
        var hasRates = answers.Of(Rates, "currency") is not null;
        if (hasRates)
        {
            yield return new(QuestionId.CuttingRate, Rates, "cutting_rate", AnswerForm.Quantity, "");
            yield return new(QuestionId.BendingRate, Rates, "bending_rate", AnswerForm.Quantity, "");
            yield return new(QuestionId.BendTime, Rates, "bend_time", AnswerForm.Quantity, "");
            yield return new(QuestionId.SheetPerKilogram, Rates, "sheet_per_kilogram", AnswerForm.Quantity, "");
            yield return new(QuestionId.BatchSize, Rates, "batch", AnswerForm.Quantity, "");
        }

        yield return new(QuestionId.MaterialCount, "[materials]", "materials", AnswerForm.Count, "1") { Min = 1 };
        var designations = new List<string>();
        for (var i = 1; i <= answers.CountOf("[materials]", "materials"); i++)
        {
            foreach (var question in OfMaterial(answers, i, hasRates))
            {
                yield return question;
            }

            designations.AddRange(answers.Of($"[[materials]] {i}", "designation") is { } designation ? [designation] : []);
        }

        yield return new(QuestionId.BendsWith, Answers.Unwritten, "bends", AnswerForm.Word, PressBrake, PressBrake, Clamps, Both);
        var bendsWith = answers.Of(Answers.Unwritten, "bends");
        if (bendsWith is not null)
        {
            yield return new(QuestionId.ToolDetail, Answers.Unwritten, "tools", AnswerForm.Word, "usual", "usual", "measured");
        }

        var isMeasured = answers.Of(Answers.Unwritten, "tools") == "measured";
        foreach (var question in bendsWith is PressBrake or Both ? OfPress(answers, isMeasured) : [])
        {
            yield return question;
        }

        foreach (var question in bendsWith is Clamps or Both ? OfClamps(answers, isMeasured) : [])
        {
            yield return question;
        }

        yield return new(QuestionId.TestBendCount, "[test_bends]", "test_bends", AnswerForm.Count, "0");
        for (var i = 1; i <= answers.CountOf("[test_bends]", "test_bends"); i++)
        {
            var bend = $"[[test_bends]] {i}";
            yield return new(QuestionId.TestBendMaterial, bend, "material", AnswerForm.Word, null, [.. designations]) { Item = i, TakesOther = true };
            yield return new(QuestionId.TestBendThickness, bend, "thickness", AnswerForm.Quantity) { Item = i };
            yield return new(QuestionId.TestBendRadius, bend, "inside_radius", AnswerForm.Quantity) { Item = i };
            yield return new(QuestionId.KFactor, bend, "k", AnswerForm.Quantity) { Item = i };
        }
    }

    private static IEnumerable<Question> OfMaterial(Answers answers, int i, bool hasRates)
    {
        var material = $"[[materials]] {i}";
        yield return new(QuestionId.Designation, material, "designation", AnswerForm.Word, null, [.. SheetLibrary.All.Select(m => m.Designation)]) { Item = i, TakesOther = true };
        if (answers.Of(material, "designation") is { } designation && SheetLibrary.Of(designation) is null)
        {
            foreach (var question in OfOwnSheet(material, i))
            {
                yield return question with { About = designation };
            }
        }

        yield return new(QuestionId.SheetThicknesses, material, "thicknesses", AnswerForm.List) { Item = i };
        if (hasRates)
        {
            yield return new(QuestionId.MaterialPrice, material, "price_per_kilogram", AnswerForm.Quantity, "") { Item = i };
        }

        var finish = $"[materials.finish] {i}";
        yield return new(QuestionId.FinishKind, finish, "kind", AnswerForm.Word, "", "bare", "zinc plated", "powder coated", "anodised") { Item = i };
        if (answers.Of(finish, "kind") is not (null or "bare"))
        {
            yield return new(QuestionId.FinishThickness, finish, "thickness", AnswerForm.Quantity) { Item = i };
        }
    }

    // What the library knows of its own sheets.
    private static IEnumerable<Question> OfOwnSheet(string material, int i)
    {
        yield return new(QuestionId.Density, material, "density", AnswerForm.Quantity) { Item = i };
        yield return new(QuestionId.Modulus, material, "modulus", AnswerForm.Quantity) { Item = i };
        yield return new(QuestionId.Poisson, material, "poisson", AnswerForm.Quantity, "0.3") { Item = i };
        yield return new(QuestionId.YieldStrength, material, "yield", AnswerForm.Quantity) { Item = i };
        yield return new(QuestionId.MinTensile, material, "min_tensile", AnswerForm.Quantity, "") { Item = i };
        yield return new(QuestionId.MaxTensile, material, "max_tensile", AnswerForm.Quantity, "") { Item = i };
        yield return new(QuestionId.Endurance, material, "endurance", AnswerForm.Quantity) { Item = i };
        yield return new(QuestionId.RadiusAcrossGrain, material, "min_radius_across_grain", AnswerForm.Quantity) { Item = i };
        yield return new(QuestionId.RadiusAlongGrain, material, "min_radius_along_grain", AnswerForm.Quantity) { Item = i };
        yield return new(QuestionId.BendGroup, material, "bend_group", AnswerForm.Word, null, "soft brass or copper", "soft steel or aluminium", "cold-rolled or spring steel") { Item = i };
        yield return new(QuestionId.MaterialSource, material, "source", AnswerForm.Text) { Item = i };
    }

    private static IEnumerable<Question> OfPress(Answers answers, bool isMeasured)
    {
        yield return new(QuestionId.DieCount, "[dies]", "dies", AnswerForm.Count, "1") { Min = 1 };
        for (var i = 1; i <= answers.CountOf("[dies]", "dies"); i++)
        {
            var die = $"[[dies]] {i}";
            yield return new(QuestionId.DieOpening, die, "opening", AnswerForm.Quantity) { Item = i };
            yield return new(QuestionId.DieRadius, die, "inside_radius", AnswerForm.Quantity) { Item = i };
            if (isMeasured)
            {
                yield return new(QuestionId.DieAngle, die, "angle", AnswerForm.Quantity, "") { Item = i };
                yield return new(QuestionId.DieWidth, die, "body_width", AnswerForm.Quantity, "") { Item = i };
                yield return new(QuestionId.ShoulderHeight, die, "shoulder_height", AnswerForm.Quantity, "") { Item = i };
                yield return new(QuestionId.ShoulderRadius, die, "shoulder_radius", AnswerForm.Quantity, "") { Item = i };
                yield return new(QuestionId.DieForce, die, "max_force", AnswerForm.Quantity, "") { Item = i };
            }
        }

        if (!isMeasured)
        {
            yield break;
        }

        yield return new(QuestionId.PunchCount, "[punches]", "punches", AnswerForm.Count, "0");
        for (var i = 1; i <= answers.CountOf("[punches]", "punches"); i++)
        {
            var punch = $"[[punches]] {i}";
            yield return new(QuestionId.PunchName, punch, "name", AnswerForm.Text) { Item = i };
            yield return new(QuestionId.PunchKind, punch, "kind", AnswerForm.Word, "straight", "straight", "gooseneck") { Item = i };
            yield return new(QuestionId.PunchHeight, punch, "height", AnswerForm.Quantity) { Item = i };
            yield return new(QuestionId.TipAngle, punch, "angle", AnswerForm.Quantity) { Item = i };
            yield return new(QuestionId.TipRadius, punch, "tip_radius", AnswerForm.Quantity) { Item = i };
            if (answers.Of(punch, "kind") == "straight")
            {
                yield return new(QuestionId.PunchWidth, punch, "body_width", AnswerForm.Quantity) { Item = i };
            }

            yield return new(QuestionId.PunchForce, punch, "max_force", AnswerForm.Quantity, "") { Item = i };
        }

        yield return new(QuestionId.OpenHeight, Press, "open_height", AnswerForm.Quantity, "");
        if (answers.Of(Press, "open_height") is null)
        {
            yield break;
        }

        yield return new(QuestionId.Stroke, Press, "stroke", AnswerForm.Quantity);
        yield return new(QuestionId.PressForce, Press, "max_force", AnswerForm.Quantity, "");
        yield return new(QuestionId.PressForceOnLength, Press, "max_force_on_length", AnswerForm.Quantity, "");
        yield return new(QuestionId.PressBeamWidth, Press, "beam_width", AnswerForm.Quantity, "");
        yield return new(QuestionId.BedWidth, Press, "bed_width", AnswerForm.Quantity, "");
        yield return new(QuestionId.GaugeMin, Press, "gauge_min", AnswerForm.Quantity, "");
        yield return new(QuestionId.GaugeMax, Press, "gauge_max", AnswerForm.Quantity, "");
        yield return new(QuestionId.FingerWidth, Press, "finger_width", AnswerForm.Quantity, "");
        yield return new(QuestionId.FingerHeight, Press, "finger_height", AnswerForm.Quantity, "");
        yield return new(QuestionId.FingerDepth, Press, "finger_depth", AnswerForm.Quantity, "");
        yield return new(QuestionId.GaugeInBend, Press, "gauge_in_bend", AnswerForm.Word, "stays", "stays", "moves back");
        yield return new(QuestionId.ToolSections, Press, "tool_sections", AnswerForm.Quantity, "");
    }

    private static IEnumerable<Question> OfClamps(Answers answers, bool isMeasured)
    {
        yield return new(QuestionId.ClampCount, "[clamps]", "clamps", AnswerForm.Count, "1") { Min = 1 };
        for (var i = 1; i <= answers.CountOf("[clamps]", "clamps"); i++)
        {
            var clamp = $"[[clamps]] {i}";
            yield return new(QuestionId.ClampKind, clamp, "kind", AnswerForm.Word, null, "folder", "hand brake", "vice") { Item = i };
            yield return new(QuestionId.ClampName, clamp, "name", AnswerForm.Text) { Item = i };
            yield return new(QuestionId.ClampRadius, clamp, "radius", AnswerForm.Quantity) { Item = i };
            if (isMeasured)
            {
                yield return new(QuestionId.ClampDepth, clamp, "depth", AnswerForm.Quantity, "") { Item = i };
                yield return new(QuestionId.ClampHeight, clamp, "height", AnswerForm.Quantity, "") { Item = i };
                yield return new(QuestionId.NoseAngle, clamp, "nose_angle", AnswerForm.Quantity, "") { Item = i };
                yield return new(QuestionId.ClampBelow, clamp, "below", AnswerForm.Quantity, "") { Item = i };
                yield return new(QuestionId.ClampBeamWidth, clamp, "beam_width", AnswerForm.Quantity, "") { Item = i };
                yield return new(QuestionId.ClampLength, clamp, "length", AnswerForm.Quantity, "") { Item = i };
                yield return new(QuestionId.ClampMaxThickness, clamp, "max_thickness", AnswerForm.Quantity, "") { Item = i };
                yield return new(QuestionId.MinClamped, clamp, "min_clamped", AnswerForm.Quantity, "") { Item = i };
            }
        }
    }
}
