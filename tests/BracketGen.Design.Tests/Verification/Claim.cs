using System.Globalization;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Design.Tests.Verification;

/// <summary>A number that somebody outside this project published, and what this program makes of it.</summary>
/// <param name="Subject">Chapter of the table.</param>
/// <param name="What">What the number is.</param>
/// <param name="Source">Where it is published.</param>
/// <param name="Published">The published number.</param>
/// <param name="Unit">Its unit; empty where it has none.</param>
/// <param name="Within">Largest difference accepted, as a part of the published number: what its digits, or the mesh, are worth.</param>
/// <param name="Ours">This program's number.</param>
internal sealed record Claim(string Subject, string What, string Source, double Published, string Unit, double Within, Func<double> Ours)
{
    public override string ToString() => $"{What} ({Source})";

    /// <summary>A row of the table.</summary>
    public string Row()
    {
        var ours = Ours();
        var difference = 100 * (ours / Published - 1);

        // Four figures, and a tenth of a percent: what does not depend on the machine.
        return string.Create(CultureInfo.InvariantCulture, $"| {What} | {Source} | {Text(Published)} | {Text(ours)} | {difference + 0.0:+0.0;-0.0;0.0} % | {100 * Within:0.##} % |");
    }

    private string Text(double value) => $"{Digits(value)}{(Unit.Length > 0 ? " " + Unit : "")}";

    private static string Digits(double value)
    {
        var decimals = Math.Clamp(3 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 9);
        return value.ToString(Math.Abs(value) < 1e-3 ? "0.000e0" : "0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }
}
