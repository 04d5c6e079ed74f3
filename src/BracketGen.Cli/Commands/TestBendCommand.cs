using System.CommandLine;
using System.Globalization;
using System.Text;
using BracketGen.Cli.Terminal;
using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.SheetMetal.Shops;
using BracketGen.Storage;
using BracketGen.Words.Profiles;
using BracketGen.Words.Terminal;

namespace BracketGen.Cli.Commands;

/// <summary>Works out the K factor from measured test strips, and writes it into the shop's file.</summary>
internal static class TestBendCommand
{
    public static Command Create()
    {
        var file = new Argument<FileInfo>("shop") { Description = "The shop's file (TOML)." };
        var material = new Option<string>("--material") { Description = "Designation of the sheet, as in the shop's file.", Required = true };
        var thickness = new Option<string>("--thickness") { Description = "Its nominal thickness (mm, or with its unit: \"0.12 in\").", Required = true };
        var die = new Option<string>("--die") { Description = "Opening of the die the strips were bent on (mm, or with its unit)." };
        var clamp = new Option<string>("--clamp") { Description = "Name of the folder, hand brake or vice bar the strips were bent over, as in the shop's file; in place of --die." };
        var strip = new Option<string[]>("--strip")
        {
            Description = "One strip: length before bending, one leg, the other leg, bend angle, inside radius and, if it was measured, thickness, with commas between: "
                + "\"100, 51.8, 51.7, 90, 2.6\". Give it two or three times.",
            Required = true,
        };
        var write = new Option<bool>("--write") { Description = "Write k into the shop's file." };
        var command = new Command(
            "test-bend", $"Work out the K factor from strips that were bent and measured, and write it into the shop's file (see docs/test-bends.md).\n\n{ExitCode.Help}")
        {
            file, material, thickness, die, clamp, strip, write,
        };
        foreach (var length in new[] { thickness, die })
        {
            length.Validators.Add(result =>
            {
                if (result.GetValueOrDefault<string?>() is { } text && ReadingText.Parse(text, ReadingKind.Length) is { Error: { } error })
                {
                    result.AddError($"{length.Name} was given as '{text}'. {ProfileErrorText.OfReading(error)}");
                }
            });
        }

        command.Validators.Add(result =>
        {
            if (result.GetResult(die) is null == (result.GetResult(clamp) is null))
            {
                result.AddError(TestBendWords.DieOrClamp);
            }
        });
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(file), parsed.GetRequiredValue(material),
            ReadingText.Parse(parsed.GetRequiredValue(thickness), ReadingKind.Length).Value!.Value, parsed.GetValue(die) is { } opening ? ReadingText.Parse(opening, ReadingKind.Length).Value!.Value : null, parsed.GetValue(clamp),
            parsed.GetRequiredValue(strip), parsed.GetValue(write)));
        return command;
    }

    private static int Run(FileInfo file, string material, double thickness, double? opening, string? clampName, IReadOnlyList<string> strips, bool write)
    {
        var read = ProfileReader.ReadShop(file.ToString(), new DiskFileSource());
        if (read.Value is not { } shop)
        {
            foreach (var error in read.Errors)
            {
                Console.Error.WriteLine(ProfileErrorText.Format(error));
            }

            return ExitCode.BadInput;
        }

        var (found, refusal) = TestBendAnswer.Of(
            shop, new(material, thickness, opening, clampName), [.. strips.Select(s => new TypedStrip("--strip", s, s.Split(',', StringSplitOptions.TrimEntries)))]);
        if (found is not { } answer)
        {
            return Refuse(refusal!);
        }

        var screen = Screen.OfConsole();
        screen.Paragraph(answer.Heading);
        screen.Table(answer.Rows);
        foreach (var line in answer.Told)
        {
            screen.Paragraph(line);
        }

        if (answer.Bend is not { } bend)
        {
            return answer.State == TestBendState.OneStrip ? ExitCode.NotProven : ExitCode.CheckFailed;
        }

        if (!write)
        {
            screen.Paragraph(TestBendWords.NotWritten);
            return ExitCode.Pass;
        }

        return Write(file, shop, bend, screen);
    }

    private static int Write(FileInfo file, Shop shop, TestBend bend, Screen screen)
    {
        if (TestBendEdit.Apply(File.ReadAllText(file.FullName), shop, bend) is not { } edited)
        {
            Console.Error.WriteLine($"bracketgen: k could not be put into {file}. Write it there by hand: k = {bend.K.ToString(CultureInfo.InvariantCulture)}.");
            return ExitCode.CannotWrite;
        }

        try
        {
            WholeFiles.WriteOne(file.FullName, Encoding.UTF8.GetBytes(edited));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"bracketgen: {file} could not be written: {problem.Message}");
            return ExitCode.CannotWrite;
        }

        screen.Paragraph(TestBendWords.Wrote(bend.K, file.ToString()));
        return ExitCode.Pass;
    }

    private static int Refuse(string why)
    {
        Console.Error.WriteLine($"bracketgen: {why}");
        return ExitCode.BadInput;
    }
}
