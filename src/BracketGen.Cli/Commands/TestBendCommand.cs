using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using System.Text.Json;
using BracketGen.Cli.Terminal;
using BracketGen.Geometry;
using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Shops;
using BracketGen.Storage;
using BracketGen.Units;
using BracketGen.Words.Profiles;
using BracketGen.Words.Terminal;

namespace BracketGen.Cli.Commands;

/// <summary>Works out the K factor from measured test strips, and writes it into the shop's file.</summary>
internal static class TestBendCommand
{
    // Kinds of a strip's values in their order; the last may be left out.
    private static readonly ReadingKind[] Kinds =
        [ReadingKind.Length, ReadingKind.Length, ReadingKind.Length, ReadingKind.BendAngle, ReadingKind.Length, ReadingKind.Length];

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
        const UnitSystem units = UnitSystem.Metric;
        var read = ProfileReader.ReadShop(file.ToString(), new DiskFileSource());
        if (read.Value is not { } shop)
        {
            foreach (var error in read.Errors)
            {
                Console.Error.WriteLine(ProfileErrorText.Format(error));
            }

            return ExitCode.BadInput;
        }

        if (shop.Stock.FirstOrDefault(s => s.Material.Designation == material && IsSame(s.Thickness, thickness)) is not { } stock)
        {
            return Refuse(TestBendWords.NoStock(
                material, thickness, shop.Stock.Select(s => TestBendWords.Stock(s.Material.Designation, s.Thickness, units)), units));
        }

        // For the radius that the design counts with, so that its flanges come out as long as those of the strips.
        double radius;
        if (opening is { } width)
        {
            if (shop.Dies.FirstOrDefault(d => IsSame(d.Opening, width)) is not { } die)
            {
                return Refuse(TestBendWords.NoDie(width, units));
            }

            radius = die.InsideRadiusIn(stock.Material.BendGroup);
        }
        else if (shop.Tools.Clamps.FirstOrDefault(c => c.Name == clampName) is { } clamp)
        {
            radius = clamp.Radius;
        }
        else
        {
            return Refuse(TestBendWords.NoClamp(clampName!, shop.Tools.Clamps.Select(c => c.Name)));
        }

        List<TestStrip> measured = [];
        foreach (var text in strips)
        {
            var (one, why) = Parse(text, thickness);
            if (one is null)
            {
                return Refuse(TestBendWords.BadStrip(text, why));
            }

            measured.Add(one);
        }

        ImmutableArray<TestStrip> counted = [.. measured.Select(s => s with { InsideRadius = radius })];
        var result = TestStripResult.Of(counted);
        var seen = measured.Average(s => s.InsideRadius);
        var screen = Screen.OfConsole();
        screen.Paragraph(opening is { } on ? TestBendWords.Heading(material, thickness, on, units) : TestBendWords.HeadingOver(material, thickness, clampName!, units));
        screen.Table(TestBendWords.Rows(counted, units));
        screen.Paragraph(TestBendWords.Result(result, counted.Length));
        if (Math.Abs(seen - radius) > RadiusReading)
        {
            screen.Paragraph(TestBendWords.OtherRadius(seen, radius, units));
        }

        if (result.IsSpreadTooLarge || !counted.All(s => s.IsPlausible))
        {
            screen.Paragraph(result.IsSpreadTooLarge ? TestBendWords.SpreadTooLarge : TestBendWords.NotPlausible);
            return ExitCode.CheckFailed;
        }

        if (counted.Length == 1)
        {
            screen.Paragraph(TestBendWords.OneStrip);
            return ExitCode.NotProven;
        }

        if (!write)
        {
            screen.Paragraph(TestBendWords.NotWritten);
            return ExitCode.Pass;
        }

        return Write(file, shop, new(material, stock.Thickness, radius, Math.Round(result.K, 3)), screen);
    }

    // How exactly a radius gauge reads an inside radius (mm; common practice, no source).
    private const double RadiusReading = 0.3;

    private static int Write(FileInfo file, Shop shop, TestBend bend, Screen screen)
    {
        var text = File.ReadAllText(file.FullName);
        var known = shop.TestBends.ToList().FindIndex(
            b => b.Material == bend.Material && IsSame(b.Thickness, bend.Thickness) && IsSame(b.InsideRadius, bend.InsideRadius));
        var k = bend.K.ToString(CultureInfo.InvariantCulture);
        var edited = known >= 0
            ? ProfileEditor.Apply(text, $"test_bends[{known + 1}].k", Json(k))
            : ProfileEditor.Apply(text, "test_bends[+]", Json(string.Create(
                CultureInfo.InvariantCulture,
                $$"""{"material": "{{JsonEncodedText.Encode(bend.Material)}}", "thickness": {{bend.Thickness}}, "inside_radius": {{bend.InsideRadius}}, "k": {{k}}}""")));

        // What is written must be read again as it was meant.
        const string inMemory = "shop.toml";
        if (edited is null || ProfileReader.ReadShop(inMemory, MemoryFileSource.Empty.With(inMemory, edited)).Value?.TestBends.Contains(bend) != true)
        {
            Console.Error.WriteLine($"bracketgen: k could not be put into {file}. Write it there by hand: k = {k}.");
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

    private static (TestStrip? Strip, string? Why) Parse(string text, double thickness)
    {
        var parts = text.Split(',', StringSplitOptions.TrimEntries);
        if (parts.Length is not 5 and not 6)
        {
            return (null, null);
        }

        var values = new double[parts.Length];
        for (var i = 0; i < parts.Length; i++)
        {
            var (value, error) = ReadingText.Parse(parts[i], Kinds[i]);
            if (error is not null)
            {
                return (null, ProfileErrorText.OfReading(error));
            }

            values[i] = value!.Value;
        }

        return values.All(v => v > 0)
            ? (new(values[0], values[1], values[2], new(values[3]), values[4], parts.Length == 6 ? values[5] : thickness), null)
            : (null, null);
    }

    private static JsonElement Json(string text)
    {
        using var document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }

    private static bool IsSame(double a, double b) => Math.Abs(a - b) < Tolerance.SameSize;

    private static int Refuse(string why)
    {
        Console.Error.WriteLine($"bracketgen: {why}");
        return ExitCode.BadInput;
    }
}
