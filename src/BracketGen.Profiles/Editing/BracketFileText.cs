using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Profiles.Editing;

/// <summary>Writes a bracket's file, millimetres and degrees.</summary>
public static class BracketFileText
{
    /// <summary>The file's text; line ends are line feeds.</summary>
    /// <param name="bracket">The bracket.</param>
    public static string Of(MeasuredBracket bracket)
    {
        var text = new StringBuilder().Append(CultureInfo.InvariantCulture, $"#:schema ../schemas/{ProfileKind.Bracket.SchemaFile}\n").Append(CultureInfo.InvariantCulture, $"profile = {Quoted(ProfileKind.Bracket.Word)}\n");
        text.Append(CultureInfo.InvariantCulture, $"name = {Quoted(bracket.Name)}\nsource = {Quoted(bracket.Source)}\n");
        if (bracket.Price is { } price)
        {
            text.Append(CultureInfo.InvariantCulture, $"price = {Number(price)}\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"material = {Quoted(bracket.Material)}\nthickness = {Reading(bracket.Thickness)}\n");
        text.Append(CultureInfo.InvariantCulture, $"outline = {Corners(bracket.MountFlange)}\n");
        PlusMinus(text, "outline_plus_minus", bracket.OutlinePlusMinus, bracket.IsOutlineAssumed);
        foreach (var hole in bracket.Holes)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n[[holes]]\nat = {Point(hole.At.Vector)}\n");
            PlusMinus(text, "plus_minus", hole.PlusMinus, hole.IsAssumed);
            text.Append(CultureInfo.InvariantCulture, $"diameter = {Reading(new(hole.Diameter, hole.DiameterPlusMinus))}\n");
            if (hole.Slot is { } slot)
            {
                text.Append(CultureInfo.InvariantCulture, $"slot = {{ length = {Reading(new(slot.Travel + hole.Diameter, hole.SlotPlusMinus))}, along = {Point(slot.Along)} }}\n");
            }
        }

        foreach (var bend in bracket.Bends)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n[[bends]]\nfrom = {bend.From}\nline = [{Point(bend.Start.Vector)}, {Point(bend.End.Vector)}]\n");
            PlusMinus(text, "line_plus_minus", bend.LinePlusMinus, bend.IsAssumed.Line);
            text.Append(CultureInfo.InvariantCulture, $"included_angle = {Stated(bend.Included.Degrees, bend.IncludedPlusMinus.Degrees, bend.IsAssumed.Angle)}\n");
            text.Append(CultureInfo.InvariantCulture, $"goes = {Quoted(bend.IsUp ? "up" : "down")}\n");
            text.Append(CultureInfo.InvariantCulture, $"inside_radius = {Stated(bend.InsideRadius, bend.RadiusPlusMinus, bend.IsAssumed.Radius)}\n");
            if (bend.Relief > 0)
            {
                text.Append(CultureInfo.InvariantCulture, $"relief = {Number(bend.Relief)}\n");
            }

            text.Append(CultureInfo.InvariantCulture, $"outline = {Corners(bend.Outline)}\n");
            PlusMinus(text, "outline_plus_minus", bend.OutlinePlusMinus, bend.IsAssumed.Outline);
        }

        var stop = bracket.Stop;
        text.Append(CultureInfo.InvariantCulture, $"\n[stop]\nat = [{Number(stop.At.On.X)}, {Number(stop.At.On.Y)}, {Number(stop.At.Height)}]\n");
        PlusMinus(text, "plus_minus", stop.PlusMinus, stop.IsAssumed.Place);
        var size = stop.SlotTowards is not null ? "slot_width" : stop.Outline is SquareHole ? "side" : "diameter";
        text.Append(CultureInfo.InvariantCulture, $"{size} = {Reading(stop.Size)}\n");
        text.Append(stop.Outline switch
        {
            SquareHole square => $"corner_radius = {Number(square.Corner)}\nalong = {Point(square.Along)}\n",
            FlatSidedHole flats => $"flats = {Number(flats.AcrossFlats)}\nalong = {Point(flats.Along)}\n",
            _ => "",
        });
        if (stop.SlotTowards is { } towards)
        {
            text.Append(CultureInfo.InvariantCulture, $"slot_towards = {Point(towards)}\n");
        }

        if (stop.Direction is { } direction)
        {
            text.Append(CultureInfo.InvariantCulture, $"direction = [{Number(direction.X)}, {Number(direction.Y)}, {Number(direction.Z)}]\n");
        }

        PlusMinus(text, "direction_plus_minus", stop.DirectionPlusMinus.Degrees, stop.IsAssumed.Direction);
        if (stop.Flange is { } flange)
        {
            text.Append(CultureInfo.InvariantCulture, $"flange = {flange}\n");
        }

        return text.ToString();
    }

    // What is assumed where nobody gives it is not written.
    private static void PlusMinus(StringBuilder text, string key, double plusMinus, bool isAssumed)
    {
        if (!isAssumed)
        {
            text.Append(CultureInfo.InvariantCulture, $"{key} = {Number(plusMinus)}\n");
        }
    }

    private static string Stated(double value, double plusMinus, bool isAssumed) =>
        isAssumed ? Number(value) : $"{{ value = {Number(value)}, plus_minus = {Number(plusMinus)} }}";

    private static string Corners(ImmutableArray<FlangeCorner> corners) => "[" + string.Join(", ", corners.Select(c =>
        c.Radius > 0 ? $"[{Number(c.At.X)}, {Number(c.At.Y)}, {Number(c.Radius)}]" : Point(c.At.Vector))) + "]";

    private static string Point(Vector2 at) => $"[{Number(at.X)}, {Number(at.Y)}]";

    private static string Reading(Measured reading) => reading.PlusMinus > 0 ? $"{{ value = {Number(reading.Value)}, plus_minus = {Number(reading.PlusMinus)} }}" : Number(reading.Value);

    // So exact that what lies on a limit by design lies on it when it is read again.
    private static string Number(double value) => (Math.Round(value, 10) + 0.0).ToString("0.##########", CultureInfo.InvariantCulture);

    private static string Quoted(string text) => "\"" + text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"";
}
