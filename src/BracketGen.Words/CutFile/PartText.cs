using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Units;

namespace BracketGen.Words.CutFile;

/// <summary>What a cut file says beside the part, for whoever sorts and nests the files of an order.</summary>
public static class PartText
{
    /// <summary>What the layer is for, at the head of the file.</summary>
    public const string Layer = "PART_TEXT: for reading. Do not cut, do not mark.";

    /// <summary>One line for each: part number, revision, material, thickness, quantity. What the job does not say is left out.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="job">Its job.</param>
    /// <param name="quantity">How many to cut.</param>
    public static IEnumerable<string> Lines(Bracket bracket, Job job, int quantity) =>
        new (string Name, string Value)[]
        {
            ("PART", job.Document.PartNumber),
            ("REVISION", job.Document.Revision),
            ("MATERIAL", bracket.Stock.Material.Designation),
            ("THICKNESS", job.Units.WriteSize(bracket.Stock.Thickness)),
            ("QUANTITY", quantity.ToString(CultureInfo.InvariantCulture)),
        }.Where(line => line.Value.Length > 0).Select(line => $"{line.Name}: {line.Value}");
}
