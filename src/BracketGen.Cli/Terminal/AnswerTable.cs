using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Fitted;
using BracketGen.Mechanism.Motion;
using BracketGen.Words.Fitted;
using BracketGen.Words.Results;
using BracketGen.Words.Terminal;

namespace BracketGen.Cli.Terminal;

/// <summary>The parts of an answer on the screen, each under its heading.</summary>
internal static class AnswerTable
{
    /// <summary>The travel, and where a pedal stop goes.</summary>
    public static void PrintTravel(Screen screen, Job job, Travel travel)
    {
        screen.Line();
        screen.Table(TravelRows.Of(job, travel));
        if (TravelText.PedalStop(job, travel) is { } stop)
        {
            screen.Line();
            screen.Paragraph(stop);
        }
    }

    /// <summary>What becomes of the vehicle's other cables; nothing where there are none.</summary>
    public static void PrintCables(Screen screen, Job job)
    {
        if (!OtherCableText.Has(job))
        {
            return;
        }

        screen.Line();
        screen.Paragraph(OtherCableText.Intro(job));
        foreach (var cable in job.Vehicle.OtherCables)
        {
            screen.Line();
            screen.Paragraph($"{OtherCableText.Which(cable)}. {OtherCableText.Account(job, cable)}");
            screen.Table([.. OtherCableText.Steps(job, cable).Select(s => new[] { "-", s })]);
        }
    }

    /// <summary>The bracket, its strength, the choices and why the first stands first; or what is in the way of one.</summary>
    public static void PrintBracket(Screen screen, Solution solution)
    {
        if (solution.Bracket is not null)
        {
            screen.Line();
            screen.Table([.. BracketRows.Of(solution), .. BracketRows.Strength(solution)]);
        }

        PrintChoices(screen, solution);
        if (solution.Diagnosis is { } diagnosis)
        {
            PrintDiagnosis(screen, solution, diagnosis);
        }
    }

    /// <summary>What is in the way of a bracket, and what was tried against it.</summary>
    public static void PrintDiagnosis(Screen screen, Solution solution, Diagnosis diagnosis)
    {
        var units = solution.Job.Units;
        if (DiagnosisText.Searched(solution) is { } searched)
        {
            screen.Line();
            screen.Paragraph(searched);
        }

        if (!diagnosis.Obstacles.IsEmpty)
        {
            PrintList(screen, TerminalWords.NoBracket, [.. diagnosis.Obstacles.Select(o => DiagnosisText.Obstacle(o, units))]);
        }

        PrintList(
            screen, diagnosis.Ways.IsEmpty ? DiagnosisText.NoneFound(diagnosis) : DiagnosisText.AnyOne,
            [.. diagnosis.Ways.Select(w => DiagnosisText.Way(w, units))]);
    }

    /// <summary>The whole mechanism.</summary>
    public static void PrintMechanism(Screen screen, Job job, MechanismReport report)
    {
        if (MechanismRows.OverThePedal(job, report) is { Count: > 0 } pedal)
        {
            screen.Line();
            screen.Paragraph(TerminalWords.OverThePedal);
            screen.Line();
            screen.Table(pedal);
            screen.Line();
            screen.Table(MechanismRows.Forces(job, report));
        }

        if (MechanismRows.Sensor(report, job.Vehicle.Controller, job.Units) is { } sensor)
        {
            screen.Line();
            screen.Paragraph(sensor);
        }

        if (report.Uncertainty is not { } sure)
        {
            return;
        }

        screen.Line();
        screen.Paragraph(MechanismRows.ProbabilityHeading(sure));
        screen.Line();
        screen.Table(MechanismRows.Probabilities(job, report, sure));
        if (MechanismRows.MeasureAgain(sure) is { Count: > 0 } again)
        {
            screen.Line();
            screen.Paragraph(MechanismRows.MeasureAgainHeading(sure));
            screen.Line();
            screen.Table(again);
        }
    }

    /// <summary>What the readings after fitting say, the most severe first.</summary>
    public static void PrintFindings(Screen screen, Job job, IReadOnlyList<Finding> findings)
    {
        var words = new FindingText(job.Units, job.Vehicle.Cable.OuterEnd is ThreadedAdjuster adjuster ? adjuster.Pitch : null);
        screen.Paragraph(TerminalWords.FittedHeading(job.Vehicle.Name, job.Body.Name), Tone.Strong);
        screen.Line();
        screen.Table(
            [.. findings.Select(f => new[] { FindingText.Mark(f.Weight), f.Code, words.Of(f) })], row => InkOf(findings[row].Weight));
        screen.Line();
        screen.Paragraph(TerminalWords.Verdict(FindingText.Verdict(findings)), InkOf(FindingText.Decides(findings)), hang: 2);
    }

    private static void PrintChoices(Screen screen, Solution solution)
    {
        if (solution.Offers.IsEmpty)
        {
            return;
        }

        screen.Line();
        screen.Table(
        [
            (string[])["", .. OfferText.Heads],
            .. solution.Offers.Select((offer, i) => (string[])[i + 1 == solution.Choice ? ">" : "", .. OfferText.Row(offer, i + 1, solution.Job)]),
        ]);
        screen.Line();
        foreach (var reason in ReasonText.Of(solution.Reasons, solution.Job, solution.Job.Units))
        {
            screen.Paragraph(reason);
        }

        if (solution.Offers.Length > 1)
        {
            screen.Paragraph(OfferText.Note(solution));
        }
    }

    private static void PrintList(Screen screen, string heading, IReadOnlyList<string> items)
    {
        screen.Line();
        screen.Paragraph(heading);
        screen.Table([.. items.Select(item => new[] { "-", item })]);
    }

    private static Tone InkOf(FindingWeight weight) => weight switch
    {
        FindingWeight.Safety => Tone.Bad,
        FindingWeight.Adjust or FindingWeight.NotProven => Tone.Open,
        _ => Tone.Good,
    };
}
