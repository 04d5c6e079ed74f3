using BracketGen.Design.Inputs;
using BracketGen.Profiles.Family;

namespace BracketGen.Line.Combinations;

/// <summary>Makes the job of a combination.</summary>
public static class CombinationJob
{
    /// <summary>The job.</summary>
    /// <param name="family">The family.</param>
    /// <param name="combination">A combination whose profiles could be read.</param>
    /// <param name="partNumber">Part number for the title block.</param>
    /// <param name="revision">Revision for the title block.</param>
    public static Job Of(LoadedFamily family, Combination combination, string partNumber, string revision)
    {
        var document = family.Family.Document;
        var preferences = combination.Option.Option.Preferences;
        var title = document.Title
            .Replace("{vehicle}", combination.VehicleName, StringComparison.Ordinal)
            .Replace("{throttle_body}", combination.BodyName, StringComparison.Ordinal);
        return new()
        {
            Vehicle = combination.Vehicle.Value!,
            Body = combination.Body.Value!,
            Shop = family.Shop,
            Preferences = combination.Material.Designations.IsEmpty ? preferences : preferences with { Materials = combination.Material.Designations },
            Life = family.Family.Life,
            Units = family.Family.Units,
            Document = new(partNumber, revision, title, document.Date, document.Creator, document.Approver, document.Projection),
        };
    }
}
