using BracketGen.Geometry;
using BracketGen.Strength.Parts;

namespace BracketGen.Design.Checks;

/// <summary>A tension of the wire and what it does to the bracket.</summary>
/// <remarks>
/// The numbers have six figures: what lies beyond is the solver's round-off, which may differ from processor to processor.
/// </remarks>
/// <param name="Tension">Tension of the wire at the stop (N).</param>
/// <param name="Give">Give of the stop along the wire (mm).</param>
/// <param name="LargestStress">Largest von Mises stress on either surface (MPa).</param>
/// <param name="At">Where that is, on the flat pattern (mm).</param>
/// <param name="Response">Displacements and stresses everywhere.</param>
public sealed record LoadCase(double Tension, double Give, double LargestStress, FlatPoint At, SeatResponse Response) : IMirrored<LoadCase>
{
    /// <inheritdoc/>
    public LoadCase Mirrored() => this with { At = At.MirroredInX, Response = Response.Mirrored() };

    /// <summary>The case of a response.</summary>
    public static LoadCase Of(PreparedPart part, SeatResponse response) => new(
        response.Force.Length, SixFigures(Math.Max(0, response.AlongForce)), SixFigures(response.Solution.LargestStress),
        part.Flat.Nodes[response.Solution.MostStressed], response);

    /// <summary>A number rounded to six figures.</summary>
    internal static double SixFigures(double value)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value;
        }

        var scale = Math.Pow(10, 5 - Math.Floor(Math.Log10(Math.Abs(value))));
        return Math.Round(value * scale) / scale;
    }
}
