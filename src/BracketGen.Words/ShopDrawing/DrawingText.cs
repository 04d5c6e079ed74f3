using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Standards;
using BracketGen.Units;
using BracketGen.Words.CutFile;

namespace BracketGen.Words.ShopDrawing;

/// <summary>What a bracket's drawing says: title block, headings, notes.</summary>
public static class DrawingText
{
    /// <summary>Said if there is no bracket.</summary>
    public const string NoBracket = "There is no bracket to draw: no shape was found for this job.";

    /// <summary>Said if no scale is small enough.</summary>
    public const string TooLarge = "The part is too large for a drawing.";

    /// <summary>Kind of document.</summary>
    public const string DocumentType = "Part drawing";

    /// <summary>The finish, as in the title block.</summary>
    public static string Finish(Finish finish, UnitSystem units) => finish.Kind switch
    {
        FinishKind.NotStated => "as agreed",
        FinishKind.Bare => "bare",
        _ => $"{(finish.Kind switch { FinishKind.Zinc => "zinc plated", FinishKind.PowderCoat => "powder coated", _ => "anodised" })}, max. {units.WriteFine(Quantity.Length, finish.Thickness)}",
    };

    // How far an edge may be broken (mm; common practice, no source).
    private const double BrokenEdge = 0.3;

    // ISO 13715: a minus is metal taken off (from memory). Inch drawings say it in words.
    private static string Edges(UnitSystem units) => units == UnitSystem.Inch
        ? $"Break sharp edges {Phrases.Tied(units.WriteSize(BrokenEdge))}"
        : string.Create(CultureInfo.InvariantCulture, $"Edges ISO 13715: -{BrokenEdge}, no more than {BrokenEdge} mm taken off");

    // What the maker must know of it; empty where nothing is put on.
    private static string FinishNote(Finish finish) => finish.Kind switch
    {
        FinishKind.NotStated or FinishKind.Bare => "",
        FinishKind.PowderCoat => " Dimensions before the finish. Keep powder off the mount face, the seat, and where bolt heads and nuts bear: a clamped layer creeps, and bolts come loose.",
        _ => " Dimensions before the finish.",
    };

    /// <summary>Heading of the safety note.</summary>
    public const string Safety = "Safety";

    /// <summary>Heading of the notes.</summary>
    public const string NotesHeading = "Notes";

    /// <summary>Heading of the notes beside the flat pattern.</summary>
    public const string FlatNotesHeading = "Cutting and bending";

    /// <summary>The side that the flat pattern shows.</summary>
    public const string SeenFrom = "seen from the side away from the mount face";

    /// <summary>Beside the arrow of the rolling direction.</summary>
    public const string Grain = "GRAIN";

    /// <summary>Letter of the datum that is the mount face.</summary>
    public const string MountDatum = "A";

    /// <summary>Letter of the seat.</summary>
    public const string Seat = "S";

    /// <summary>On later sheets of an unsafe part.</summary>
    public const string SeeSheetOne = "See sheet 1.";

    /// <summary>What the part is for.</summary>
    public static string Subject(Job job) => $"{job.Vehicle.Name}, throttle body {job.Body.Name}";

    /// <summary>General tolerances of the title block.</summary>
    public static string Tolerances(int toleranceClass, UnitSystem units) =>
        units == UnitSystem.Inch ? $"see note 1; ISO 9013, class {toleranceClass}" : $"ISO 8015; ISO 2768-m; ISO 9013, class {toleranceClass}";

    // An inch shop has no table of ISO 2768 at hand: its limits up to the longest that a bracket has, each rounded down to a thousandth, so that what it lets pass the
    // probabilities count.
    private static string GeneralLimits(UnitSystem units)
    {
        if (units != UnitSystem.Inch)
        {
            return "Tolerancing ISO 8015. Untoleranced dimensions ISO 2768-m";
        }

        double[] steps = [6, 30, 120, 400, 1000];
        static string Down(double length, int decimals) =>
            (Math.Floor(length / UnitTable.InchLength.Factor * Math.Pow(10, decimals)) / Math.Pow(10, decimals)).ToString($"F{decimals}", CultureInfo.InvariantCulture).TrimStart('0');
        return $"Tolerancing ASME Y14.5-2018. Untoleranced dimensions: {string.Join(", ", steps.Select(s => $"to {Down(s, 2)} ±{Down(GeneralTolerance.Linear(s), 3)}"))}";
    }

    /// <summary>The sheet as on the order.</summary>
    public static string Sheet(Bracket bracket, UnitSystem units) => Sheet(bracket.Stock, units);

    /// <summary>A sheet: material and thickness.</summary>
    public static string Sheet(Stock stock, UnitSystem units) => $"{stock.Material.Designation}, {units.WriteSize(stock.Thickness)}";

    /// <summary>Heading of the flat pattern.</summary>
    public static string FlatHeading(bool isPlate, string scale) => $"{(isPlate ? "Plate" : "Flat pattern")}, scale {scale}";

    /// <summary>Up or down in capitals, as at a bend line.</summary>
    public static string Direction(Bend bend) => bend.IsUp ? "UP" : "DOWN";

    /// <summary>Said in the notes if the template is left out.</summary>
    public static string TemplateLeftOut(int sheets) => $"The full-size template would take {sheets} sheets and is left out.";

    /// <summary>What is written at a bend line.</summary>
    /// <param name="name">The bend's number.</param>
    /// <param name="bend">The bend.</param>
    /// <param name="angle">The bend angle as text.</param>
    public static string BendNote(string name, Bend bend, string angle) => $"{BendName(name)} {Direction(bend)}, bend angle {angle}";

    /// <summary>A bend in a view.</summary>
    /// <param name="name">Its number.</param>
    public static string BendName(string name) => $"bend {name}";

    /// <summary>The angle between two flanges in a view.</summary>
    /// <param name="angle">The included angle as text.</param>
    public static string Included(string angle) => $"included {angle}";

    /// <summary>Heading of the view that shows the stop flange true.</summary>
    public const string StopView = "Stop flange, seen square on";

    /// <summary>Heading of the geometrical tolerances.</summary>
    /// <param name="units">Units of the job.</param>
    public static string Geometrical(UnitSystem units) =>
        units == UnitSystem.Inch ? "Geometrical tolerances, ASME Y14.5-2018" : "Geometrical tolerances, ISO 1101, datums ISO 5459";

    /// <summary>The stop's hole or slot in the list of geometrical tolerances.</summary>
    /// <param name="name">Its name.</param>
    public static string StopHole(string name) => $"{name}, at the seat";

    /// <summary>The seat in the list of geometrical tolerances.</summary>
    public const string SeatFace = "Seat S";

    /// <summary>What the letters of the datums stand for.</summary>
    /// <param name="bracket">The bracket.</param>
    public static string Datums(Bracket bracket) => bracket.MountBolts.Length > 1
        ? $"Datum A: the mount face. Datum B: hole H1{Middle(bracket.Holes[0])}. Datum C: hole H2{Middle(bracket.Holes[1])}."
        : $"Datum A: the mount face. Datum B: hole H1{Middle(bracket.Holes[0])}.";

    // A slotted hole is located by its width and its length.
    private static string Middle(BracketHole hole) => hole.IsSlotted ? ", middle of its slot" : "";

    /// <summary>Notes on the whole part.</summary>
    /// <param name="solution">The solution.</param>
    /// <param name="bracket">Its bracket.</param>
    /// <param name="toleranceClass">Class of the cut (ISO 9013).</param>
    public static IReadOnlyList<string> PartNotes(Solution solution, Bracket bracket, int toleranceClass)
    {
        var (job, bends) = (solution.Job, bracket.Flat.Bends);
        var units = job.Units;
        List<string> notes =
        [
            $"Lengths in {TitleBlockText.Lengths(units)}. {GeneralLimits(units)}; {Process(job.Shop.Process)} cut edges ISO 9013, tolerance class {toleranceClass}{(bends.IsEmpty ? "" : "; bend angles as in the bend table")}.",
            Datums(bracket),
            $"Deburr. {Edges(units)}. No burr on the mount face and on the seat.",
            $"Material {bracket.Stock.Material.Designation}; mass {Phrases.Tied(units.Write(Quantity.Mass, bracket.Mass))}, bare. Finish: {Phrases.Tied(Finish(bracket.Stock.Material.Finish, units))}.{FinishNote(bracket.Stock.Material.Finish)}",
            $"The seat is the side marked {Seat}: the {(bracket.SeatOnTop ? "side seen" : "far side")} in the flat pattern.",
            .. Spacers(job, bracket),
            .. RingShape.Of(job.Body.Mount) is { } ring ? new[] { $"Supply with it the {RingText.Name}: {RingText.Size(ring, units)}, cut file {FileNames.AdapterRing}; it has a sheet of its own." } : [],
        ];
        return notes;
    }

    // They are made with the bracket and belong to it.
    private static IEnumerable<string> Spacers(Job job, Bracket bracket) => bracket.Holes.Where(h => h.SpacerLength > 0)
        .GroupBy(h => new Spacer(h.SpacerLength, h.Thread!))
        .Select(g => $"Supply with it {Phrases.Count(g.Count())} {(g.Count() == 1 ? "spacer" : "spacers")} for {Phrases.List([.. g.Select(h => h.Name)])}: {ScrewText.Spacer(g.Key, job.Units)}.");

    /// <summary>Notes on cutting and bending.</summary>
    /// <param name="solution">The solution.</param>
    /// <param name="bracket">Its bracket.</param>
    /// <param name="isCompensated">Whether a cut file compensated for the kerf goes with the drawing.</param>
    /// <param name="corner">H1 from the lower left corner of the flat pattern, as text.</param>
    public static IReadOnlyList<string> FlatNotes(Solution solution, Bracket bracket, bool isCompensated, string corner)
    {
        var (job, bends) = (solution.Job, bracket.Flat.Bends);
        var units = job.Units;
        List<string> notes =
        [
            $"x and y count from H1{(bracket.MountBolts.Length > 1 ? ", the x axis through H1 and H2" : "")}. The cut file counts from the lower left corner: H1 is at {Phrases.Tied(corner)} there.",
            "The table of points gives the whole outline: each point, the edge to the next one, and the centre of an arc. Hollow: the metal is outside the arc.",
            isCompensated
                ? $"The contour is the finished edge. Only {FileNames.BeamPath} is compensated, for a kerf of {Phrases.Tied(units.WriteFine(Quantity.Length, job.Shop.Kerf))}: switch compensation off at the machine when you cut from it."
                : "The contour is the finished edge: kerf is not compensated.",
            CutFileText.LeftToTheCutter,
        ];
        if (CutFileText.Drilled(bracket, job) is { Length: > 0 } drilled)
        {
            notes.Add(drilled);
        }

        if (!bends.IsEmpty)
        {
            notes.Add(AreParallel(bends) ? "Grain direction across the bend." : "Grain direction across bend 1.");
            notes.Add($"Bend allowance: {string.Join("; ", bends.Select(b => b.Rule.Name).Distinct())}. Bend a test strip first. UP is towards the viewer. The bend angle is how far the sheet is bent from flat.");
            notes.AddRange(bends.Select((bend, i) => (bend, i)).Where(b => b.bend.Relief > 0).Select(b =>
                $"Bend {b.i + 1} {(bracket.Die is null ? "over a bar or an edge" : "with a punch and a die")} from {Phrases.Tied(units.Write(Quantity.Length, b.bend.Length))} to {Phrases.Tied(units.Write(Quantity.Length, b.bend.Length + b.bend.Relief))} long: the wings beside it stay flat."));
        }

        notes.Add("Etch marks of the cut file (part number, ends of bends up): on the side seen in the flat pattern, or left out. Mark no bend on its stretched side.");
        return notes;
    }

    /// <summary>How the shop cuts.</summary>
    public static string Process(CuttingProcess process) => process switch
    {
        CuttingProcess.Laser => "laser",
        CuttingProcess.Plasma => "plasma",
        _ => "water jet",
    };

    private static bool AreParallel(IReadOnlyList<Bend> bends) => bends.All(b => Math.Abs(b.Along.Cross(bends[0].Along)) < Parallel);

    // Sine of the angle between two bend lines that a press brake cannot tell from parallel.
    private const double Parallel = 1e-6;
}
