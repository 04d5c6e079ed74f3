using BracketGen.Design.Inputs;
using BracketGen.Drawing.Sheet;
using BracketGen.Units;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>What a bracket's drawing holds beside the first sheet.</summary>
public sealed record DrawingOptions
{
    /// <summary>Everything.</summary>
    public static readonly DrawingOptions Standard = new();

    /// <summary>Sheet of the drawing, landscape A3 or B or upright A4 or A; null for what the job says.</summary>
    public PageFormat? Format { get; init; }

    /// <summary>Whether a cut file compensated for the kerf goes with it: then a note tells the two apart.</summary>
    public bool WithKerfCompensated { get; init; }

    /// <summary>Whether the 1:1 template follows.</summary>
    public bool WithTemplate { get; init; } = true;

    /// <summary>The sheet for a job: the option's, else the job's own, else the usual one of its unit.</summary>
    public PageFormat FormatFor(Job job) => Format ?? job.Document.Paper switch
    {
        Paper.A3 => PageFormat.A3,
        Paper.A4 => PageFormat.A4,
        Paper.B => PageFormat.AnsiB,
        Paper.A => PageFormat.AnsiA,
        _ => job.Units == UnitSystem.Inch ? PageFormat.AnsiB : PageFormat.A3,
    };
}
