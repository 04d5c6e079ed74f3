using System.CommandLine;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Checks;
using BracketGen.Line.Running;
using BracketGen.Profiles;
using BracketGen.Profiles.Paths;
using BracketGen.Words.Line;
using BracketGen.Words.Profiles;

namespace BracketGen.Cli.Commands;

/// <summary>An order of a made product line: what the shop needs to make, pack and send it.</summary>
internal static class OrderCommand
{
    private sealed record Wishes(FileInfo Order, FileInfo? Family, DirectoryInfo Into, bool Strength, int Threads);

    public static Command Create()
    {
        var order = new Argument<FileInfo>("order") { Description = "The order: a CSV file whose first line names the columns, or a TOML file." };
        var family = new Option<FileInfo?>("--family") { Description = "The family file (TOML) of the line; by default the one that an order in TOML names." };
        var into = new Option<DirectoryInfo>("--into")
        {
            Description = "Folder that the line was made in; the order's folder is made in orders in it.",
            DefaultValueFactory = _ => new("output"),
        };
        var weak = new Option<bool>("--skip-strength") { Description = "Do not calculate whether the brackets bend, shake or crack: then nothing is proven, and nothing is sold." };
        var threads = new Option<int>("--at-once") { Description = "How many variants to check at once; by default one on each processor.", DefaultValueFactory = _ => Environment.ProcessorCount };
        threads.Validators.Add(result =>
        {
            if (result.Errors.Any() || result.GetValueOrDefault<int>() is < 1 or > 1024)
            {
                result.AddError("--at-once is a whole number from 1 to 1024.");
            }
        });
        var command = new Command(
            "order",
            $"""
            Make what the shop needs for an order of a made product line: nested stock sheets, job cards, pick and packing lists, labels, set-up sheets, costs and prices. The line's own files stay as they are.

            Every variant of the order is checked again in full, with the part that serves it; what is not proven is listed, and not sold. {ExitCode.Help}
            """)
        {
            order, family, into, weak, threads,
        };
        command.SetAction(parsed => Run(new(
            parsed.GetRequiredValue(order), parsed.GetValue(family), parsed.GetRequiredValue(into), !parsed.GetValue(weak), parsed.GetValue(threads))));
        return command;
    }

    private static int Run(Wishes wishes)
    {
        var (path, files) = (wishes.Order.ToString(), new DiskFileSource());
        var tell = new LineTeller(Console.Out, Console.Error, "bracketgen: ", _ => { }, () => { });
        var order = wishes.Order.Extension.Equals(".toml", StringComparison.OrdinalIgnoreCase) ? Read(ProfileReader.ReadOrder(path, files)) : OrderWork.ReadCsv(path, files, tell);
        if (order is null)
        {
            return ExitCode.BadInput;
        }

        if ((wishes.Family?.ToString() ?? (order.FamilyFile is { } named ? ProfilePath.Beside(path, named) : null)) is not { } familyPath)
        {
            Console.Error.WriteLine("bracketgen: " + OrderText.NoFamily(path));
            return ExitCode.BadInput;
        }

        if (Read(FamilyReader.Read(familyPath, files)) is not { } family)
        {
            return ExitCode.BadInput;
        }

        var into = wishes.Into.ToString();
        var (end, verdict) = OrderWork.Run(
            order, family,
            new(
                path, LinePlace.Of(Path.GetFileName(familyPath), into, null), Path.Combine(into, "orders", Path.GetFileNameWithoutExtension(wishes.Order.Name)),
                wishes.Strength ? StrengthDetail.Usual : null, wishes.Threads),
            QrPicture.ModulesOf, tell);
        return end switch
        {
            LineEnd.BadInput => ExitCode.BadInput,
            LineEnd.CannotWrite => ExitCode.CannotWrite,
            _ => ExitCode.Of(verdict!.Value),
        };
    }

    private static T? Read<T>(ProfileResult<T> read)
        where T : class
    {
        foreach (var error in read.Errors)
        {
            Console.Error.WriteLine(ProfileErrorText.Format(error));
        }

        if (!read.IsRead)
        {
            Console.Error.WriteLine(LineRunText.Mistakes(read.Errors.Sum(e => e.Count)));
        }

        return read.Value;
    }
}
