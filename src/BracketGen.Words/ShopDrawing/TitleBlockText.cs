using BracketGen.Units;

namespace BracketGen.Words.ShopDrawing;

/// <summary>Names of the title block's fields (ISO 7200).</summary>
public static class TitleBlockText
{
    /// <summary>Identification number.</summary>
    public const string Number = "Drawing and part number";

    /// <summary>Revision index.</summary>
    public const string Revision = "Revision";

    /// <summary>Date of issue.</summary>
    public const string Date = "Date of issue";

    /// <summary>Sheet size.</summary>
    public const string Format = "Format";

    /// <summary>Number of the sheet.</summary>
    public const string Sheet = "Sheet";

    /// <summary>Legal owner.</summary>
    public const string Owner = "Legal owner";

    /// <summary>Title.</summary>
    public const string Title = "Title";

    /// <summary>Projection method.</summary>
    public const string Projection = "Projection";

    /// <summary>Creator.</summary>
    public const string Creator = "Created by";

    /// <summary>Approval person.</summary>
    public const string Approver = "Approved by";

    /// <summary>Kind of document.</summary>
    public const string DocumentType = "Document type";

    /// <summary>Unit of lengths.</summary>
    public const string LengthsIn = "Lengths in";

    /// <summary>Scale.</summary>
    public const string Scale = "Scale";

    /// <summary>Material.</summary>
    public const string Material = "Material";

    /// <summary>General tolerances.</summary>
    public const string Tolerances = "General tolerances";

    /// <summary>Finish.</summary>
    public const string Finish = "Finish";

    /// <summary>Mass.</summary>
    public const string Mass = "Mass";

    /// <summary>The unit of lengths as a word.</summary>
    public static string Lengths(UnitSystem units) => units == UnitSystem.Inch ? "inches" : "mm";
}
