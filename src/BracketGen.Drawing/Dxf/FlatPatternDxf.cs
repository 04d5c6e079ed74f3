using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;
using BracketGen.Words.CutFile;

namespace BracketGen.Drawing.Dxf;

/// <summary>The cut file of a bracket: contours to cut, fold lines, and marks.</summary>
public static class FlatPatternDxf
{
    private const double NoteHeight = 3, TickLength = 2.5, PilotArm = 1.5;

    /// <summary>The drawing of a bracket's flat pattern, seen from the top of the sheet, its lower left corner at the origin.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="job">Its job: units and part number.</param>
    /// <param name="warnings">Lines for the head of the file, such as failed safety checks the user allowed.</param>
    /// <param name="quantity">How many to cut: part number, revision, material, thickness and quantity then stand as text below the part; null for no text.</param>
    public static DxfDrawing Compose(Bracket bracket, Job job, IReadOnlyList<string> warnings, int? quantity = null)
    {
        var flat = FromCorner(bracket);
        var place = MarkPlace.For(Label(job), flat);
        return Draw(
            bracket, job, DxfLayers.All, CutBlank(bracket, job), [.. Marks(flat, Label(job), place, job.Shop.BendMarks == BendMarks.Etched), .. PilotMarks(bracket, job)],
            quantity, [.. Heading(bracket, job, place, quantity), CutFileText.FinishedEdge, .. warnings]);
    }

    /// <summary>
    /// The same with the contours moved by half the kerf to the middle of the beam. The origin stays where it is, in the lower left
    /// corner of the finished part; a note that is not cut says on the drawing itself what it is.
    /// </summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="job">Its job: units and part number.</param>
    /// <param name="path">The beam path as <see cref="PathRound"/> gives it.</param>
    /// <param name="warnings">Lines for the head of the file, such as failed safety checks the user allowed.</param>
    /// <param name="quantity">How many to cut, as text below the note; null for no text.</param>
    /// <exception cref="ArgumentException">The beam does not fit the contours.</exception>
    public static DxfDrawing ComposeCompensated(Bracket bracket, Job job, CutPath path, IReadOnlyList<string> warnings, int? quantity = null)
    {
        var contours = path.Contours ?? throw new ArgumentException("The beam does not fit the contours.", nameof(path));
        var flat = FromCorner(bracket);
        var place = MarkPlace.For(Label(job), flat);
        return Draw(
            bracket, job, [.. DxfLayers.All, DxfLayers.Note], contours,
            [.. Marks(flat, Label(job), place, job.Shop.BendMarks == BendMarks.Etched), .. PilotMarks(bracket, job), .. Note(path.Kerf, job.Units, contours.Outline.Bounds)],
            quantity, [.. Heading(bracket, job, place, quantity), .. KerfText.InFile(path, job.Units), .. warnings]);
    }

    /// <summary>The beam path round a bracket, the lower left corner of the finished flat pattern at the origin.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="job">Its job: holes that its shop drills are not on the path.</param>
    /// <param name="kerf">Width of the cut (mm), positive.</param>
    public static CutPath PathRound(Bracket bracket, Job job, double kerf) => CutPath.Of(CutBlank(bracket, job), kerf);

    /// <summary>The same with the kerf of the job's shop; null where that is 0, or there is no bracket.</summary>
    /// <param name="solution">The solution.</param>
    public static CutPath? PathFor(Solution solution) =>
        solution.Bracket is { } bracket && solution.Job.Shop.Kerf > 0 ? PathRound(bracket, solution.Job, solution.Job.Shop.Kerf) : null;

    /// <summary>What the cut file of a bracket draws, without text for reading, the lower left corner of its flat pattern at the origin: marks first, then what is cut.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="job">Its job: part number, and how its shop marks and drills.</param>
    public static IReadOnlyList<DxfEntity> Entities(Bracket bracket, Job job)
    {
        var flat = FromCorner(bracket);
        return
        [
            .. Marks(flat, Label(job), MarkPlace.For(Label(job), flat), job.Shop.BendMarks == BendMarks.Etched), .. PilotMarks(bracket, job),
            .. RegionEntities.Of(CutBlank(bracket, job), DxfLayers.CutThrough),
        ];
    }

    private static FlatPattern FromCorner(Bracket bracket) =>
        bracket.Flat.Shift(-bracket.Flat.Blank.Outline.Bounds.Min);

    // What the beam cuts: the blank without the holes that are drilled.
    private static Region CutBlank(Bracket bracket, Job job)
    {
        var corner = bracket.Flat.Blank.Outline.Bounds.Min;
        Vector2[] drilled = [.. HoleMaking.Drilled(bracket, job).Select(h => h.Centre - new FlatPoint(corner))];
        var blank = FromCorner(bracket).Blank;
        return drilled.Length == 0 ? blank : new(blank.Outline, blank.Holes.Where(h => !drilled.Any(d => d.DistanceTo(h.Bounds.Centre) < Tolerance.SameSize)));
    }

    // A cross at the middle of each hole that is drilled: two strokes that meet there, to set the centre punch on.
    private static IEnumerable<DxfEntity> PilotMarks(Bracket bracket, Job job)
    {
        var corner = bracket.Flat.Blank.Outline.Bounds.Min;
        foreach (var hole in HoleMaking.Drilled(bracket, job))
        {
            var at = hole.Centre.Vector - corner;
            foreach (var arm in (Vector2[])[new(PilotArm, 0), new(0, PilotArm)])
            {
                yield return new DxfLine(DxfLayers.SurfaceMark, at - arm, at + arm);
            }
        }
    }

    private static DxfDrawing Draw(
        Bracket bracket, Job job, IEnumerable<DxfLayer> layers, Region contours, IEnumerable<DxfEntity> marks, int? quantity, IEnumerable<string> comment)
    {
        DxfEntity[] drawn = [.. RegionEntities.Of(contours, DxfLayers.CutThrough), .. marks];
        DxfEntity[] texts = quantity is { } count ? [.. Texts(PartText.Lines(bracket, job, count), drawn.Min(e => e.Bounds.Min.Y))] : [];
        return new(
            job.Units == UnitSystem.Inch ? DxfUnits.Inches : DxfUnits.Millimetres,
            texts.Length == 0 ? layers : layers.Append(DxfLayers.PartText), [.. drawn, .. texts], string.Join('\n', comment));
    }

    private static IEnumerable<string> Heading(Bracket bracket, Job job, MarkPlace? place, int? quantity) =>
        [.. CutFileText.Heading(Label(job), bracket, job, place is not null), .. quantity is null ? [] : new[] { PartText.Layer }];

    private static string Label(Job job) =>
        string.Concat($"{job.Document.PartNumber} {job.Document.Revision}".Where(StrokeFont.Knows)).Trim();

    private static IEnumerable<DxfEntity> Marks(FlatPattern flat, string label, MarkPlace? place, bool areEtched)
    {
        foreach (var bend in flat.Bends)
        {
            var (start, end) = (bend.CentreLine.Start.Vector, bend.CentreLine.End.Vector);
            yield return new DxfLine(DxfLayers.FoldLine, start, end);
            if (areEtched && bend.IsUp)
            {
                // On the side that the bend presses together: a mark on the stretched side starts a crack.
                yield return new DxfLine(DxfLayers.SurfaceMark, start, start + TickLength * bend.Along);
                yield return new DxfLine(DxfLayers.SurfaceMark, end, end - TickLength * bend.Along);
            }
        }

        if (place is { } at)
        {
            foreach (var stroke in StrokeText.Of(label, at.At.Vector, at.Height, at.Along, DxfLayers.SurfaceMark))
            {
                yield return stroke;
            }
        }
    }

    // A comment at the head of the file is seen in an editor only; whoever looks at the drawing must see it too.
    private static IEnumerable<DxfEntity> Note(double kerf, UnitSystem units, Bounds contours) => KerfText.OnDrawing(kerf, units)
        .SelectMany((line, i) => StrokeText.Of(
            line, Below(contours.Min.Y, i), NoteHeight, Angle.Zero, DxfLayers.Note));

    // As text and not as strokes: a program that nests the part can read it, and nobody marks it.
    private static IEnumerable<DxfEntity> Texts(IEnumerable<string> lines, double lowest) =>
        lines.Select((line, i) => new DxfText(DxfLayers.PartText, Below(lowest, i), NoteHeight, line));

    // Where a line of text begins under all that reaches down to a height.
    private static Vector2 Below(double lowest, int line) => new(0, lowest - (line + 1) * 2 * NoteHeight);
}
