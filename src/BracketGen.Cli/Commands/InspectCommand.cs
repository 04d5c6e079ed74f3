using System.CommandLine;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Profiles;
using BracketGen.Units;
using BracketGen.Words.Inspecting;
using BracketGen.Words.Profiles;

namespace BracketGen.Cli.Commands;

/// <summary>What the dimensions measured on a finished bracket mean for this vehicle.</summary>
internal static class InspectCommand
{
    public static Command Create()
    {
        var job = new Argument<FileInfo>("job") { Description = "The job file (TOML)." };
        var readings = new Argument<string[]>("readings")
        {
            Description = "What was measured, by the numbers of the inspection sheet: D1=6.62 D2=\"0.26 in\". Without any, the list of dimensions is printed.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var skip = new Option<bool>("--skip-strength") { Description = "Leave out whether the bracket as measured bends, shakes or cracks; it is not proven then." };
        var command = new Command(
            "inspect", $"Say whether a finished bracket is as drawn, and whether it is good on this vehicle though it is not.\n\n{ExitCode.Help}")
        {
            job, readings, skip,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(job), parsed.GetValue(readings) ?? [], parsed.GetValue(skip) ? null : StrengthDetail.Usual));
        return command;
    }

    private static int Run(FileInfo file, IReadOnlyList<string> texts, StrengthDetail? strength)
    {
        if (JobInput.Read(file) is not { } job)
        {
            return ExitCode.BadInput;
        }

        var solution = Designer.Solve(job, SearchEffort.BestOnly);
        if (solution.Bracket is not { } bracket)
        {
            return Refuse("no bracket was found for this job, so that there is no drawing to measure by. See the command make.");
        }

        var items = Inspection.ItemsOf(job, bracket);
        Dictionary<string, double> read = [];
        foreach (var text in texts)
        {
            if (text.Split('=', 2, StringSplitOptions.TrimEntries) is not [var name, var written] || written.Length == 0)
            {
                return Refuse(InspectionText.BadReading(text, null));
            }

            if (items.FirstOrDefault(i => string.Equals(i.Name, name, StringComparison.OrdinalIgnoreCase)) is not { } item)
            {
                return Refuse(InspectionText.NoSuch(name, items));
            }

            var kind = item.Thing == InspectedThing.IncludedAngle ? ReadingKind.IncludedAngle : ReadingKind.Coordinate;
            if (kind == ReadingKind.Coordinate && job.Units == UnitSystem.Inch && ReadingText.IsBare(written))
            {
                return Refuse(InspectionText.BadReading(text, "The job is in inches: write the unit with the value, \"0.26 in\" or \"6.6 mm\"."));
            }

            var (value, error) = ReadingText.Parse(written, kind);
            if (error is not null)
            {
                return Refuse(InspectionText.BadReading(text, ProfileErrorText.OfReading(error)));
            }

            if (!Inspection.IsOf(item, value!.Value))
            {
                return Refuse(InspectionText.NotOf(item, value.Value, job.Units));
            }

            if (!read.TryAdd(item.Name, value.Value))
            {
                return Refuse(InspectionText.Twice(item.Name));
            }
        }

        InspectionItem[] place = [.. items.Where(i => i.Thing >= InspectedThing.StopAlong)], missing = [.. place.Where(i => !read.ContainsKey(i.Name))];
        if (missing.Length > 0 && missing.Length < place.Length)
        {
            return Refuse(InspectionText.WholePlace(missing));
        }

        var screen = Screen.OfConsole();
        return read.Count == 0
            ? PrintList(screen, items, job.Units)
            : Print(screen, Inspection.Of(solution, read, MeasuredStop.UsualReading, strength), job.Units);
    }

    private static int PrintList(Screen screen, IReadOnlyList<InspectionItem> items, UnitSystem units)
    {
        screen.Table([[.. InspectionText.Heads], .. items.Select(i => (string[])[.. InspectionText.Row(i, null, units)])]);
        screen.Line();
        foreach (var note in InspectionText.Notes(items))
        {
            screen.Paragraph(note);
        }

        return ExitCode.Pass;
    }

    private static int Print(Screen screen, Inspection inspection, UnitSystem units)
    {
        screen.Table(
        [
            [.. InspectionText.Heads, ""],
            .. inspection.Items.Select(i => (string[])[.. InspectionText.Row(i.Item, i.Reading, units), InspectionText.Mark(i.Item, i.Reading)]),
        ]);
        screen.Line();
        foreach (var line in InspectionText.Places(inspection, units).Append(InspectionText.Drawn(inspection)))
        {
            screen.Paragraph(line);
        }

        if (inspection.OnVehicle is not { } solution)
        {
            screen.Paragraph(InspectionText.NoWire, Tone.Bad);
            return ExitCode.CheckFailed;
        }

        CheckTable.Print(screen, solution.Checks, units, all: false);
        screen.Line();
        CheckTable.PrintVerdict(screen, solution.Verdict, InspectionText.Question);
        if (inspection.IsWhole || solution.Verdict.Kind != VerdictKind.Passes)
        {
            return ExitCode.Of(solution.Verdict.Kind);
        }

        screen.Paragraph(InspectionText.NotWhole(inspection));
        return ExitCode.NotProven;
    }

    private static int Refuse(string why)
    {
        Console.Error.WriteLine($"bracketgen: {why}");
        return ExitCode.BadInput;
    }
}
