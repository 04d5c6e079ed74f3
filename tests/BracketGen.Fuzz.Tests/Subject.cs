using System.Collections.Immutable;
using System.Text;
using BracketGen.Cli.Interview;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Kit;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Drawing;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Drawing.Kit;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Geometry;
using BracketGen.Line.Catalogue;
using BracketGen.Line.Combinations;
using BracketGen.Line.Lists;
using BracketGen.Line.Nesting;
using BracketGen.Line.Numbering;
using BracketGen.Line.Orders;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;
using BracketGen.Mechanism.Fitted;
using BracketGen.Mechanism.Motion;
using BracketGen.Profiles;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Interview;
using BracketGen.Units;
using BracketGen.Words.Kit;
using BracketGen.Words.Profiles;
using BracketGen.Words.Terminal;

namespace BracketGen.Fuzz.Tests;

/// <summary>How far an input went.</summary>
public enum Depth
{
    /// <summary>It was read, and refused with words.</summary>
    Refused,

    /// <summary>It was read and taken.</summary>
    Taken,

    /// <summary>It was taken, and every output was composed and looked into.</summary>
    Through,
}

/// <summary>Puts an input through the program as the commands do, the disk left out.</summary>
public static class Subject
{
    // Laying grows with the pieces, 100,000 of them take ten seconds; a second's worth shows what there is to see.
    private const int MostPieces = 400;

    /// <summary>Processor time that the last input spent on looking for what would open a way: tens of searches, by design.</summary>
    public static TimeSpan Diagnosing { get; private set; }

    /// <summary>Reads the input; where it is taken and <paramref name="whole"/> says so, designs (without strength) and composes every output.</summary>
    /// <exception cref="InvalidDataException">A refusal without words, or an output that is not whole or no number.</exception>
    public static Depth Run(FuzzCase input, bool whole)
    {
        Diagnosing = TimeSpan.Zero;
        return Of(input, whole);
    }

    private static Depth Of(FuzzCase input, bool whole) => input.Kind switch
    {
        InputKind.Family => Family(input, whole),
        InputKind.Bracket => Bracket(input, input.Path, whole),
        InputKind.Drawing => Bracket(input, Path.ChangeExtension(input.Path, ".toml"), whole),
        InputKind.Parts => Parts(input, whole),
        InputKind.Register => Register(input),
        InputKind.Order => Order(input, whole),
        InputKind.LineOrder => LineOrder(input, whole),
        InputKind.LineOrderCsv => LineOrderCsv(input, whole),
        InputKind.KeptLine => Kept(input.Bytes),
        InputKind.Kept => Kept(input),
        InputKind.Readings => Readings(input),
        InputKind.Answers => Answers(input),
        InputKind.Draft => Drafts(input),
        _ => Job(input, whole),
    };

    private static Depth Job(FuzzCase input, bool whole)
    {
        var files = Corpus.Tree.With(input.Path, input.Bytes);
        var jobs = Corpus.JobsOf(input.Path);
        var read = ProfileReader.ReadJob(input.Kind == InputKind.Job ? input.Path : jobs[input.Bytes.Length % jobs.Count], files);
        if (!Judge(read.IsRead, read.Errors))
        {
            return Depth.Refused;
        }

        if (!whole)
        {
            return Depth.Taken;
        }

        Made(read.Value!, input.Bytes.Length);
        return Depth.Through;
    }

    private static Depth Bracket(FuzzCase input, string path, bool whole)
    {
        var job = Plover.Value.Job;
        var read = ProfileReader.ReadBracket(path, Corpus.Tree.With(input.Path, input.Bytes), job.Shop);
        if (!Judge(read.IsRead, read.Errors))
        {
            return Depth.Refused;
        }

        if (!whole)
        {
            return Depth.Taken;
        }

        var measured = read.Value!;
        var trial = BracketTrial.Of(job, MeasuredShape.Of(measured, measured.MetalIn(job.Shop)!).Bracket!, 0, null);
        foreach (var line in TrialText.Fitted(trial).Append(TrialText.Heading(measured, job)).Append(TrialText.Adjuster(trial) ?? "").Concat(TrialText.Assumed(measured, job)))
        {
            OutputAudit.Text("screen", line, "");
        }

        return Depth.Through;
    }

    private static Depth Parts(FuzzCase input, bool whole)
    {
        var job = Bare.Value.Job;
        var read = ProfileReader.ReadParts(input.Path, Corpus.Tree.With(input.Path, input.Bytes), job.Shop);
        if (!Judge(read.IsRead, read.Errors))
        {
            return Depth.Refused;
        }

        if (!whole)
        {
            return Depth.Taken;
        }

        // Cables, springs and brackets ask for a search each, many of them for many: the first of each kind shows what there is to see.
        var parts = read.Value!.Parts.GroupBy(p => p.Measures.GetType()).SelectMany(g => g.Key == typeof(CableMeasures) || g.Key == typeof(SpringMeasures) || g.Key == typeof(BracketMeasures) ? g.Take(1) : g);
        var study = KitStudy.Of(Bare.Value with { Parts = [.. parts], HasLists = true }, null);
        var lists = (ListTable[])[KitLists.Set(study), KitLists.Parts(study), KitLists.Measures(study)];
        OutputAudit.Of("kit.csv", CsvText.Write(lists[1]));
        OutputAudit.Of("kit.xlsx", Workbook.Write(lists));
        Pages(KitSheet.Compose(study, PageFormat.A4));
        foreach (var line in KitText.OtherLines(study).Concat(KitText.Costs(study)).Concat(KitText.Measures(study)).Concat(KitText.SetNotes(study)).Append(KitText.Verdict(study)).Append(KitText.MakeOrBuy(study)))
        {
            OutputAudit.Text("screen", line, "");
        }

        return Depth.Through;
    }

    private static bool Judge(bool isRead, ImmutableArray<ProfileError> errors)
    {
        Require(isRead == errors.IsEmpty, "read and errors do not go together");
        foreach (var error in errors)
        {
            Require(
                error.Line >= 0 && ProfileErrorText.Read(error).Length > 0 && ProfileErrorText.Allowed(error).Length > 0 && ProfileErrorText.Advice(error).Length > 0,
                $"an error without words: {error}");
            Require(ProfileErrorText.Format(error).Length < 4000, "an error longer than a screen");
        }

        return isRead;
    }

    private static void Made(Job job, int variant)
    {
        var solution = Designer.Solve(job);
        if (solution.Offers.IsEmpty)
        {
            var before = Environment.CpuUsage.TotalTime;
            solution = solution with { Diagnosis = Diagnosis.Of(solution, SearchEffort.WithoutStrength) };
            Diagnosing = Environment.CpuUsage.TotalTime - before;
        }

        string[] accepted = [.. solution.Dangers.Select(d => d.Code)];
        var path = variant % 4 == 0 ? FlatPatternDxf.PathFor(solution) : null;
        var choices = new FileChoices(variant % 3 == 0 ? DxfVersion.R12 : DxfVersion.R2000, null, path?.Contours is null ? null : path);
        var files = JobFiles.Of(solution, accepted, choices);
        Require(files.Written.Count >= (solution.Bracket is null ? 2 : 8), "files are missing");
        foreach (var (name, bytes) in files.Written)
        {
            OutputAudit.Of(name, bytes);
        }

        if (solution.Bracket is not null && variant % 4 == 1)
        {
            Pages(BracketDrawing.Compose(solution, new DrawingOptions()));
        }

        var text = new StringWriter();
        var screen = new Screen(text, Screen.MinWidth, hasColour: false);
        CheckTable.PrintVerdict(screen, solution.Verdict);
        CheckTable.Print(screen, solution.Checks, job.Units, all: true);
        AnswerTable.PrintTravel(screen, job, solution.Travel);
        AnswerTable.PrintBracket(screen, solution);
        if (solution.Mechanism is { } mechanism)
        {
            AnswerTable.PrintMechanism(screen, job, mechanism);
        }

        OutputAudit.Text("screen", text.ToString(), "");
    }

    private static void Pages(IReadOnlyList<Drawing.Sheet.SheetPage> pages)
    {
        foreach (var item in pages.SelectMany(p => p.All))
        {
            var bounds = item.Bounds;
            Require(double.IsFinite(bounds.Width) && double.IsFinite(bounds.Height) && bounds.Width < 1e5 && bounds.Height < 1e5, $"{item} on the drawing has no place");
            if (item is TextItem text)
            {
                OutputAudit.Text("drawing", text.Text, "");
            }
        }
    }

    private static Depth Family(FuzzCase input, bool whole)
    {
        var read = FamilyReader.Read(input.Path, Corpus.Tree.With(input.Path, input.Bytes));
        if (!Judge(read.IsRead, read.Errors))
        {
            return Depth.Refused;
        }

        var family = read.Value!;
        var combinations = FamilyCombinations.Of(family);
        var (numbers, conflicts) = NumberPlan.Of(family.Family.Name, family.Family.Numbers, combinations.Offered, Line.Numbering.Register.Empty(family.Family.Name));
        Require(numbers is null == conflicts.Length > 0, "numbers and conflicts do not go together");
        if (numbers is null || !whole)
        {
            return numbers is null ? Depth.Refused : Depth.Taken;
        }

        // Two combinations stand for all: the others differ by the profiles alone.
        ImmutableArray<Combination> offered = [.. combinations.Offered.Take(2)];
        var inputs = new CombinationInputs(family, "fuzz");
        var solver = new CombinationSolver(family, inputs, numbers, null, null);
        var solved = offered.Select(solver.Solve).ToArray();
        foreach (var one in solved)
        {
            Require(!one.Made.Reasons.Any(r => r.Contains("does not know", StringComparison.Ordinal)), string.Join(' ', one.Made.Reasons));
            foreach (var (name, bytes) in one.Files)
            {
                OutputAudit.Of(name, bytes);
            }

            Require(Line.Solving.Made.Read(one.Made.ToBytes()) is not null, "what is kept cannot be read");
        }

        ImmutableArray<Made> made = [.. solved.Select(s => s.Made)];
        var parts = LineParts.Of(family, offered, made);
        var empty = Line.Numbering.Register.Empty(family.Family.Name);
        var register = NewRevisions.Add(empty, offered, made, inputs, parts, family.Family.Units);
        Require(Line.Numbering.Register.Parse(register.Bytes).Register is not null, "the register cannot be read");
        var selection = FewestParts.Of(family, parts, null, 1);
        var order = CuttingOrder.OfAll(selection, family.Family.Cutting with { Quantity = Math.Min(MostPieces / 2, family.Family.Cutting.Quantity) });
        var report = new LineReport(family, new(offered, combinations.Excluded), made, selection, CuttingPlanner.Of(selection, order, family.Family.Cutting, 1), register);
        ListTable[] lists = [LineLists.Parts(report), LineLists.Fits(report), LineLists.Shared(report), LineLists.Costs(report), LineLists.Sheets(report)];
        OutputAudit.Of("catalogue.html", CataloguePage.Write(report, 1));
        OutputAudit.Of("sheets.html", SheetsPage.Write(report));
        OutputAudit.Of("line.xlsx", Workbook.Write(lists));
        OutputAudit.Of("revisions.txt", RevisionList.Write(register));
        foreach (var (name, bytes) in lists.Select(l => (l.Name + ".csv", CsvText.Write(l))).Concat(SheetFiles.Of(report.Family.Family, report.Selection.Parts, report.Nests)))
        {
            OutputAudit.Of(name, bytes);
        }

        return Depth.Through;
    }

    private static Depth Register(FuzzCase input)
    {
        var (register, damage) = Line.Numbering.Register.Parse(input.Bytes);
        Require(register is null == damage is { Text.Length: > 0 }, "register and damage do not go together");
        if (register is null)
        {
            return Depth.Refused;
        }

        Require(register.Bytes.AsSpan().SequenceEqual(input.Bytes), "a register that is read is not the file any more");
        OutputAudit.Of("revisions.txt", RevisionList.Write(register));
        var family = Estuary.Value;
        var (numbers, conflicts) = NumberPlan.Of(family.Family.Name, family.Family.Numbers, FamilyCombinations.Of(family).Offered, register);
        Require(numbers is null == conflicts.Length > 0, "numbers and conflicts do not go together");
        foreach (var combination in numbers is null ? [] : FamilyCombinations.Of(family).Offered)
        {
            Require(numbers!.NumberOf(combination) is { Length: > 0 } && numbers.RevisionOf(combination, "x").Length > 0, "a combination without number or revision");
        }

        return Depth.Through;
    }

    private static Depth Order(FuzzCase input, bool whole)
    {
        var (order, mistakes) = CuttingOrder.Parse(input.Bytes, new HashSet<string> { "SF-PLVA58-S", "SF-PLVA58-L", "SF-WHIR64-S" });
        Require(order is null == mistakes.Length > 0 && mistakes.All(m => m.Text.Length > 0), "order and mistakes do not go together");
        if (order is null || !whole)
        {
            return order is null ? Depth.Refused : Depth.Taken;
        }

        var selection = Sold.Value;
        var plan = Estuary.Value.Family.Cutting;
        if (order.Quantities.Sum(q => q.Quantity) > MostPieces)
        {
            return Depth.Taken;
        }

        var nests = CuttingPlanner.Of(selection, order, plan, 1);
        Require(nests.All(n => double.IsFinite(n.Saved)), "a saving that is no number");
        return Depth.Through;
    }

    private static Depth LineOrder(FuzzCase input, bool whole)
    {
        var read = ProfileReader.ReadOrder(input.Path, Corpus.Tree.With(input.Path, input.Bytes));
        return Judge(read.IsRead, read.Errors) ? Ordered(read.Value!, MadeLine.Value, whole) : Depth.Refused;
    }

    private static Depth LineOrderCsv(FuzzCase input, bool whole)
    {
        var (order, problems) = OrderCsv.Parse(input.Bytes);
        Require(order is null == problems.Length > 0 && problems.All(p => p.Text.Length is > 0 and < 1000), "order and problems do not go together");
        return order is null ? Depth.Refused : Ordered(order, MadeLine.Value, whole);
    }

    // As the command uses what it finds, whether the line was made from the profiles as they are now or not.
    private static Depth Kept(byte[] bytes)
    {
        if (KeptLine.Read(bytes) is not { } line)
        {
            return Depth.Refused;
        }

        Ordered(new(null, [new(OrderedBy.Variant, "PLV-A58-S", 1, "", null, 1), new(OrderedBy.Part, "SF-DUNA58-S", 1, "", null, 2)]), line, whole: true);
        foreach (var part in line.Parts)
        {
            var bracket = part.Shape.ToBracket(Estuary.Value, Plover.Value.Job.Vehicle.Cable, Plover.Value.Job.Preferences.StopOpening);
            Require(bracket is null || double.IsFinite(bracket.Mass), "a mass that is no number");
        }

        return Depth.Through;
    }

    // Without strength nothing is sold; what is not known is left out, so that every file is composed.
    private static Depth Ordered(LineOrder order, KeptLine line, bool whole)
    {
        var (plan, problems) = OrderPlan.Of(order, line, Estuary.Value, "fuzz");
        Require(plan is null == problems.Length > 0 && problems.All(p => p.Text.Length is > 0 and < 1000), "plan and problems do not go together");
        if (plan is null || !whole || order.Items.Sum(i => i.Quantity) > MostPieces || order.Items.Length > 6)
        {
            return plan is null ? Depth.Refused : Depth.Taken;
        }

        var solved = SolvedOrder.Of("fuzz", Estuary.Value, plan, null, 1);
        solved = solved with
        {
            Items = [.. solved.Items.Select(i => i with { Variants = [.. i.Variants.Select(v => v with { Solution = v.Solution! with { Checks = [.. v.Solution.Checks.Where(c => c.Passes)] } })] })],
        };
        foreach (var (name, bytes) in OrderFiles.Of(solved, QrPicture.ModulesOf, 1))
        {
            OutputAudit.Of(name, bytes);
        }

        return Depth.Through;
    }

    private static Depth Kept(FuzzCase input)
    {
        if (Line.Solving.Made.Read(input.Bytes) is not { } made)
        {
            return Depth.Refused;
        }

        // As LineRun uses what it finds: only where it is that of the combination, made from the same.
        var family = Estuary.Value;
        var combination = FamilyCombinations.Of(family).Offered[0];
        var (numbers, _) = NumberPlan.Of(family.Family.Name, family.Family.Numbers, [combination], Line.Numbering.Register.Empty(family.Family.Name));
        var inputs = new CombinationInputs(family, "fuzz");
        _ = new CombinationSolver(family, inputs, numbers!, null, null).IsStill(combination, made);
        _ = made.Files.All(f => Path.Combine("folder", f.Name).Length > 0 && f.Hash.Length >= 0);
        foreach (var part in LineParts.Of(family, [combination], [made]))
        {
            Require(double.IsFinite(part.Bracket.Mass), "a mass that is no number");
        }

        return Depth.Through;
    }

    private static Depth Readings(FuzzCase input)
    {
        var depth = Depth.Refused;
        var values = new List<double>();
        foreach (var line in Encoding.UTF8.GetString(input.Bytes).Split('\n').Take(40))
        {
            foreach (var kind in (ReadingKind[])[ReadingKind.Length, ReadingKind.Voltage])
            {
                var (value, error) = ReadingText.Parse(line, kind);
                Require(value is null == (error is not null) && (error is null || ProfileErrorText.OfReading(error).Length > 0) && (value is null || double.IsFinite(value.Value)), "value and problem do not go together");
                values.AddRange(value is { } good ? [good] : []);
            }
        }

        foreach (var group in values.Take(16).Chunk(4).Where(g => g.Length == 4))
        {
            var readings = new FittedReadings { StopVolts = group[0], ClosedVolts = group[0], FlooredVolts = group[1], FreePlay = group[2], PadTravel = group[3] };
            var text = new StringWriter();
            AnswerTable.PrintFindings(new(text, Screen.MinWidth, hasColour: false), Plover.Value.Job, FittedCheck.Of(Plover.Value.Job, Plover.Value.Mechanism!, readings)!.Value);
            OutputAudit.Text("screen", text.ToString(), "");
            depth = Depth.Through;
        }

        return depth;
    }

    private static Depth Answers(FuzzCase input)
    {
        var text = Encoding.UTF8.GetString(input.Bytes);
        var depth = Depth.Refused;
        foreach (var interview in Interviews)
        {
            // More lines than any interview asks for only take time.
            using var lines = new StringReader(string.Join('\n', text.Split('\n').Take(120)));
            using var screen = new StringWriter();
            Draft? kept = null;
            if (new Interviewer(interview, new(lines, screen)).Run(null, d => kept = d) is { } profile)
            {
                Require(interview.Read(profile).IsEmpty, "a profile that the program wrote cannot be read");
                Require(Resumed(interview, kept!) == profile, "a draft gives another profile than the answers it was made of");
                depth = Depth.Through;
            }
            else if (kept is not null)
            {
                _ = Resumed(interview, kept);
            }
        }

        return depth;
    }

    private static readonly ImmutableArray<ProfileInterview> Interviews =
    [
        .. ProfileInterview.Alone,
        ProfileInterview.Job("jobs/new.toml", Corpus.Tree, new(["../vehicles/plover.toml", "../vehicles/whimbrel.toml"], ["../throttle-bodies/alder-58.toml"], ["../shops/saltmarsh-fabrication.toml"])),
    ];

    // What a kept draft comes to without a further answer.
    private static string? Resumed(ProfileInterview interview, Draft kept)
    {
        using var none = new StringReader("");
        using var screen = new StringWriter();
        var read = Draft.Parse(kept.Compose());
        Require(read is not null && read.Compose() == kept.Compose(), "a draft that reads other than it was written");
        return new Interviewer(interview, new(none, screen)).Run(read);
    }

    private static Depth Drafts(FuzzCase input)
    {
        if (Draft.Parse(Encoding.UTF8.GetString(input.Bytes)) is not { } draft)
        {
            return Depth.Refused;
        }

        foreach (var interview in Interviews)
        {
            using var none = new StringReader("");
            using var screen = new StringWriter();
            if (new Interviewer(interview, new(none, screen)).Run(draft) is { } profile)
            {
                Require(interview.Read(profile).IsEmpty, "a profile made from a draft cannot be read");
                return Depth.Through;
            }
        }

        return Depth.Taken;
    }

    private static readonly Lazy<LoadedFamily> Estuary = new(() => FamilyReader.Read("families/estuary.toml", Corpus.Tree).Value!);

    private static readonly Lazy<Solution> Plover = new(() => Designer.Solve(ProfileReader.ReadJob("jobs/plover-alder-58.toml", Corpus.Tree).Value!));

    private static readonly Lazy<KitJob> Bare = new(() => ProfileReader.ReadKit("jobs/plover-alder-58-bare.toml", Corpus.Tree).Value!);

    private static readonly Lazy<PartSelection> Sold = new(() =>
    {
        var family = Estuary.Value;
        var all = FamilyCombinations.Of(family).Offered;
        var (numbers, _) = NumberPlan.Of(family.Family.Name, family.Family.Numbers, all, Line.Numbering.Register.Empty(family.Family.Name));
        ImmutableArray<Combination> offered = [.. all.Where(c => numbers!.NumberOf(c) is "SF-PLVA58-S" or "SF-PLVA58-L" or "SF-WHIR64-S" or "SF-DUNR64-S" or "SF-WHIH70-S")];
        var solver = new CombinationSolver(family, new CombinationInputs(family, "fuzz"), numbers!, null, null);
        return FewestParts.Own(LineParts.Of(family, offered, [.. offered.Select(c => solver.Solve(c).Made)]));
    });

    private static readonly Lazy<KeptLine> MadeLine = new(() => KeptLine.Of(new(Estuary.Value, new([], []), [], Sold.Value, [], Line.Numbering.Register.Empty("fuzz"))));

    private static void Require(bool holds, string what)
    {
        if (!holds)
        {
            throw new InvalidDataException(what);
        }
    }
}
