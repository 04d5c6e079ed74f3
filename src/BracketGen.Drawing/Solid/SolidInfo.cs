using System.Collections.Immutable;
using BracketGen.Design.Study;
using BracketGen.Words.Checks;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Solid;

/// <summary>What the files of a solid say beside its shape.</summary>
public sealed record SolidInfo
{
    /// <summary>Identification number of the part.</summary>
    public required string PartNumber { get; init; }

    /// <summary>Revision index.</summary>
    public required string Revision { get; init; }

    /// <summary>Title.</summary>
    public required string Title { get; init; }

    /// <summary>The sheet as on the order: designation and thickness.</summary>
    public required string Sheet { get; init; }

    /// <summary>Designation of the material with temper.</summary>
    public required string Material { get; init; }

    /// <summary>Density of the material (t/mm³).</summary>
    public required double Density { get; init; }

    /// <summary>Mass of the blank (t): what the formed part weighs too.</summary>
    public required double Mass { get; init; }

    /// <summary>Volume of the solid (mm³), a little more than the blank's: see <see cref="FormedVolume"/>.</summary>
    public required double Volume { get; init; }

    /// <summary>Colour to show it in.</summary>
    public required SheetColour Colour { get; init; }

    /// <summary>Date of issue, never from the clock; null where the job has none.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Who drew it; empty where the job does not say.</summary>
    public string Creator { get; init; } = "";

    /// <summary>Who approved it; empty where the job does not say.</summary>
    public string Approver { get; init; } = "";

    /// <summary>The shop.</summary>
    public string Organisation { get; init; } = "";

    /// <summary>Failed safety checks, a sentence each; empty where none failed.</summary>
    public ImmutableArray<string> Warnings { get; init; } = [];

    /// <summary>The info of a solution's bracket.</summary>
    /// <exception cref="ArgumentException">The solution has no bracket.</exception>
    public static SolidInfo Of(Solution solution)
    {
        var bracket = solution.Bracket ?? throw new ArgumentException("The solution has no bracket.", nameof(solution));
        var (document, units) = (solution.Job.Document, solution.Job.Units);
        return new()
        {
            PartNumber = document.PartNumber,
            Revision = document.Revision,
            Title = document.Title,
            Sheet = DrawingText.Sheet(bracket, units),
            Material = bracket.Stock.Material.Designation,
            Density = bracket.Stock.Material.Density,
            Mass = bracket.Mass,
            Volume = FormedVolume.Of(bracket.Folded.Flat),
            Colour = SheetColour.Of(bracket.Stock.Material),
            Date = document.Date,
            Creator = document.Creator ?? "",
            Approver = document.Approver ?? "",
            Organisation = solution.Job.Shop.Name,
            Warnings = [.. solution.Dangers.Select(d => WarningText.Headline(d, units))],
        };
    }

    /// <inheritdoc/>
    public bool Equals(SolidInfo? other) => other is not null
        && (PartNumber, Revision, Title, Sheet, Colour, Date, Creator, Approver, Organisation)
            == (other.PartNumber, other.Revision, other.Title, other.Sheet, other.Colour, other.Date, other.Creator, other.Approver, other.Organisation)
        && (Material, Density, Mass, Volume) == (other.Material, other.Density, other.Mass, other.Volume)
        && Warnings.SequenceEqual(other.Warnings);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(PartNumber, Revision, Title, Sheet, Date);
}
