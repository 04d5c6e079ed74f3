using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Line.Lists;
using BracketGen.Line.Orders;
using BracketGen.Profiles;
using BracketGen.Profiles.Family;
using BracketGen.Storage;
using BracketGen.Words.Line;

namespace BracketGen.Line.Running;

/// <summary>What is wanted of an order.</summary>
/// <param name="File">Path of the order's file.</param>
/// <param name="Line">Where the line is that it is of.</param>
/// <param name="Folder">The order's own folder.</param>
/// <param name="Strength">How finely brackets are meshed; null without strength: then nothing is proven, and nothing sold.</param>
/// <param name="Threads">How many variants to check at once.</param>
public sealed record OrderWishes(string File, LinePlace Line, string Folder, StrengthDetail? Strength, int Threads);

/// <summary>An order of a made line, from its file to its folder. The line's own files are only read.</summary>
public static class OrderWork
{
    // Longer than any order of the largest size.
    private const int MaxBytes = 4 << 20;

    // The rest is counted.
    private const int MostProblems = 20;

    /// <summary>Reads an order in CSV.</summary>
    /// <param name="file">Path of the file.</param>
    /// <param name="files">Where it comes from.</param>
    /// <param name="tell">Where mistakes are told.</param>
    /// <returns>The order; null after every mistake has been told.</returns>
    public static LineOrder? ReadCsv(string file, IFileSource files, LineTeller tell)
    {
        var read = files.Read(file, MaxBytes);
        if (read.State != FileState.Read)
        {
            tell.Problem(OrderText.Unread(file, read.State switch
            {
                FileState.TooLong => OrderText.TooLong(MaxBytes),
                FileState.NoFile => OrderText.NoFile,
                FileState.Missing => OrderText.Missing,
                _ => OrderText.Closed,
            }));
            return null;
        }

        var (order, problems) = OrderCsv.Parse(read.Bytes.Span);
        Tell(file, problems, tell);
        return order;
    }

    /// <summary>Makes it: all files or none.</summary>
    /// <param name="order">The order.</param>
    /// <param name="family">The family that it is of.</param>
    /// <param name="wishes">What is wanted.</param>
    /// <param name="qr">Calculates QR codes.</param>
    /// <param name="tell">Where it tells what it does.</param>
    /// <returns>How it ended, and what it comes to where it is made.</returns>
    public static (LineEnd End, VerdictKind? Verdict) Run(LineOrder order, LoadedFamily family, OrderWishes wishes, QrModules qr, LineTeller tell)
    {
        try
        {
            if (Kept(wishes.Line, family, tell) is not { } line)
            {
                return (LineEnd.BadInput, null);
            }

            var (plan, problems) = OrderPlan.Of(order, line, family, LineWork.ProgramVersion);
            if (plan is null)
            {
                Tell(wishes.File, problems, tell);
                return (LineEnd.BadInput, null);
            }

            var solved = SolvedOrder.Of(Path.GetFileNameWithoutExtension(wishes.File), family, plan, wishes.Strength, wishes.Threads);
            var files = OrderFiles.Of(solved, qr, wishes.Threads);
            using (var held = FolderLock.Take(wishes.Folder))
            {
                WholeFiles.Write(held, wishes.Folder, files, Outdated(wishes.Folder, files.Select(f => f.Name)));
            }

            Print(tell.Output, solved, wishes.Folder, files.Count);
            return (LineEnd.Made, solved.Verdict);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            tell.Problem(LineRunText.NotWritten(wishes.Folder, problem.Message));
            return (LineEnd.CannotWrite, null);
        }
    }

    private static KeptLine? Kept(LinePlace place, LoadedFamily family, LineTeller tell)
    {
        var file = Path.Combine(place.Folder, KeptLine.FileName);
        if (!File.Exists(file))
        {
            tell.Problem(OrderText.NotMade(file));
            return null;
        }

        if (KeptLine.Read(File.ReadAllBytes(file)) is not { } line)
        {
            tell.Problem(OrderText.Damaged(file));
            return null;
        }

        if (line.Family != family.Family.Name)
        {
            tell.Problem(OrderText.OtherLine(file, line.Family, family.Family.Name));
            return null;
        }

        return line;
    }

    // Of an earlier run of the same order nothing is left that this one does not have.
    private static string[] Outdated(string folder, IEnumerable<string> now)
    {
        IEnumerable<string> In(string name, string pattern) => Directory.Exists(Path.Combine(folder, name))
            ? Directory.GetFiles(Path.Combine(folder, name), pattern).Select(f => Path.Combine(name, Path.GetFileName(f))) : [];
        return [.. OrderFiles.Names.Concat(In(OrderFiles.Sheets, "*.dxf")).Concat(In(OrderFiles.Fitting, "*.pdf")).Except(now)];
    }

    private static void Tell(string file, ImmutableArray<OrderProblem> problems, LineTeller tell)
    {
        foreach (var problem in problems.Take(MostProblems))
        {
            tell.Errors.WriteLine(OrderText.In(file, problem));
        }

        if (problems.Length > MostProblems)
        {
            tell.Errors.WriteLine(OrderText.More(problems.Length - MostProblems));
        }

        if (problems.Length > 0)
        {
            tell.Errors.WriteLine(OrderText.Problems(problems.Length));
        }
    }

    private static void Print(TextWriter output, SolvedOrder order, string folder, int files)
    {
        output.WriteLine(OrderText.Outcome(order.Sold.Length, order.Items.Length, order.Parts.Sum(p => p.Pieces), order.Parts.Length));
        foreach (var item in order.Items.Where(i => !i.IsSold))
        {
            foreach (var variant in item.Variants.Where(v => v.Open.Any()))
            {
                output.WriteLine($"  {OrderText.NotSold(item.Item.Line, item.Item.Name, variant.Served.Combination.Key, LineLists.Answer(variant.Outcome))}");
                foreach (var open in variant.Open)
                {
                    output.WriteLine($"    {open}");
                }
            }
        }

        if (!order.Sold.IsEmpty)
        {
            var (family, prices) = (order.Family.Family, order.Sold.Sum(i => Math.Round(order.PriceOf(i) * i.Item.Quantity, 2)));
            var cost = order.Parts.Sum(p => Costing.PartCost.Of(p.Part.Served.Bracket, family.Cutting, family.Rates).For(p.Pieces) * p.Pieces);
            output.WriteLine(OrderText.Total(LineText.Money(prices, family.Rates.Currency), LineText.Money(cost, family.Rates.Currency)));
        }

        output.WriteLine($"  {LineRunText.WroteFiles(files, folder)}");
    }
}
