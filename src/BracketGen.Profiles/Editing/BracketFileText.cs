using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BracketGen.Design.Part;
using BracketGen.Geometry;

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
        foreach (var hole in bracket.Holes)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n[[holes]]\nat = {Point(hole.At.Vector)}\ndiameter = {Number(hole.Diameter)}\n");
        }

        foreach (var bend in bracket.Bends)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n[[bends]]\nfrom = {bend.From}\nline = [{Point(bend.Start.Vector)}, {Point(bend.End.Vector)}]\n");
            text.Append(CultureInfo.InvariantCulture, $"included_angle = {Number(bend.Included.Degrees)}\n");
            text.Append(CultureInfo.InvariantCulture, $"goes = {Quoted(bend.IsUp ? "up" : "down")}\n");
            text.Append(CultureInfo.InvariantCulture, $"inside_radius = {Number(bend.InsideRadius)}\n");
            if (bend.Relief > 0)
            {
                text.Append(CultureInfo.InvariantCulture, $"relief = {Number(bend.Relief)}\n");
            }

            text.Append(CultureInfo.InvariantCulture, $"outline = {Corners(bend.Outline)}\n");
        }

        var stop = bracket.Stop;
        text.Append(CultureInfo.InvariantCulture, $"\n[stop]\nat = [{Number(stop.At.On.X)}, {Number(stop.At.On.Y)}, {Number(stop.At.Height)}]\nplus_minus = {Number(stop.PlusMinus)}\n");
        text.Append(CultureInfo.InvariantCulture, $"{(stop.SlotTowards is null ? "diameter" : "slot_width")} = {Reading(stop.Size)}\n");
        if (stop.SlotTowards is { } towards)
        {
            text.Append(CultureInfo.InvariantCulture, $"slot_towards = {Point(towards)}\n");
        }

        if (stop.Direction is { } direction)
        {
            text.Append(CultureInfo.InvariantCulture, $"direction = [{Number(direction.X)}, {Number(direction.Y)}, {Number(direction.Z)}]\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"direction_plus_minus = {Number(stop.DirectionPlusMinus.Degrees)}\n");
        if (stop.Flange is { } flange)
        {
            text.Append(CultureInfo.InvariantCulture, $"flange = {flange}\n");
        }

        return text.ToString();
    }

    private static string Corners(ImmutableArray<FlangeCorner> corners) => "[" + string.Join(", ", corners.Select(c =>
        c.Radius > 0 ? $"[{Number(c.At.X)}, {Number(c.At.Y)}, {Number(c.Radius)}]" : Point(c.At.Vector))) + "]";

    private static string Point(Vector2 at) => $"[{Number(at.X)}, {Number(at.Y)}]";

    private static string Reading(Measured reading) => reading.PlusMinus > 0 ? $"{{ value = {Number(reading.Value)}, plus_minus = {Number(reading.PlusMinus)} }}" : Number(reading.Value);

    // So exact that what lies on a limit by design lies on it when it is read again.
    private static string Number(double value) => (Math.Round(value, 10) + 0.0).ToString("0.##########", CultureInfo.InvariantCulture);

    private static string Quoted(string text) => "\"" + text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"";
}
