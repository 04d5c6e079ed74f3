using System.Globalization;
using BracketGen.Geometry;
using BracketGen.Units;
using BracketGen.Words;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Sheet;

/// <summary>The title block's fields, ISO 7200.</summary>
/// <remarks>Any field but owner, title and number may be empty.</remarks>
public sealed record TitleBlock
{
    /// <summary>Legal owner: the shop.</summary>
    public required string Owner { get; init; }

    /// <summary>What the part is.</summary>
    public required string Title { get; init; }

    /// <summary>What it is for, below the title.</summary>
    public string SupplementaryTitle { get; init; } = "";

    /// <summary>Identification number: drawing and part number.</summary>
    public required string Number { get; init; }

    /// <summary>Revision index.</summary>
    public string Revision { get; init; } = "";

    /// <summary>Date of issue.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>This sheet, from 1.</summary>
    public int Sheet { get; init; } = 1;

    /// <summary>How many sheets there are.</summary>
    public int Sheets { get; init; } = 1;

    /// <summary>Who made it.</summary>
    public string Creator { get; init; } = "";

    /// <summary>Who approved it.</summary>
    public string Approver { get; init; } = "";

    /// <summary>Kind of document.</summary>
    public string DocumentType { get; init; } = "";

    /// <summary>Scale of the sheet.</summary>
    public string Scale { get; init; } = "";

    /// <summary>Unit of lengths.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>Arrangement of views.</summary>
    public Projection Projection { get; init; }

    /// <summary>General tolerances.</summary>
    public string GeneralTolerances { get; init; } = "";

    /// <summary>Material, with its thickness.</summary>
    public string Material { get; init; } = "";

    /// <summary>Surface treatment.</summary>
    public string Finish { get; init; } = "";

    /// <summary>Mass of the part.</summary>
    public string Mass { get; init; } = "";

    /// <summary>Width of the title block (mm), ISO 7200: 180, the drawing space of an A4 sheet.</summary>
    public const double Width = 180;

    /// <summary>
    /// The block for a sheet of <paramref name="format"/>, lower left corner at the origin. Where the frame is narrower than 180 mm it
    /// still is 180 mm wide. Put it into the frame's lower right corner with <see cref="SheetBlock.LowerRightAt"/>.
    /// </summary>
    public SheetBlock Draw(PageFormat format)
    {
        var drawn = new TitleBlockPainter();
        const double row = 10, tall = 20;

        // From the foot up: identification, owner and title, responsibility, technical fields.
        var date = Date is { } d ? Phrases.Date(d) : "";
        drawn.Cell(TitleBlockText.Number, Number, 0, 0, 72, row, TextHeight.Normal, FontWeight.Bold);
        drawn.Cell(TitleBlockText.Revision, Revision, 72, 0, 22, row, TextHeight.Normal, FontWeight.Bold);
        drawn.Cell(TitleBlockText.Date, date, 94, 0, 32, row);
        drawn.Cell(TitleBlockText.Format, format.Name, 126, 0, 18, row);
        drawn.Cell(TitleBlockText.Sheet, string.Create(CultureInfo.InvariantCulture, $"{Sheet}/{Sheets}"), 144, 0, 36, row);

        drawn.Cell(TitleBlockText.Owner, Owner, 0, row, 54, tall, TextHeight.Normal, FontWeight.Regular);
        drawn.TitleCell(Title, SupplementaryTitle, 54, row, 90, tall);
        drawn.Cell(TitleBlockText.Projection, "", 144, row, 36, tall);
        drawn.Add(ProjectionSymbol.Draw(Projection).CentredAt(new(162, row + tall / 2 - 1.2)));

        var y = row + tall;
        drawn.Cell(TitleBlockText.Creator, Creator, 0, y, 36, row);
        drawn.Cell(TitleBlockText.Approver, Approver, 36, y, 36, row);
        drawn.Cell(TitleBlockText.DocumentType, DocumentType, 72, y, 48, row);
        drawn.Cell(TitleBlockText.LengthsIn, TitleBlockText.Lengths(Units), 120, y, 24, row);
        drawn.Cell(TitleBlockText.Scale, Scale, 144, y, 36, row);

        y += row;
        drawn.Cell(TitleBlockText.Material, Material, 0, y, 54, row);
        drawn.Cell(TitleBlockText.Tolerances, GeneralTolerances, 54, y, 66, row);
        drawn.Cell(TitleBlockText.Finish, Finish, 120, y, 36, row);
        drawn.Cell(TitleBlockText.Mass, Mass, 156, y, 24, row);
        y += row;

        drawn.Outline(new(Vector2.Zero, new(Width, y)));
        return new(drawn.Items, new(Vector2.Zero, new(Width, y)));
    }
}
