using BracketGen.Drawing.Dxf.Model;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Solid.Step;
using BracketGen.SheetMetal.Cutting;

namespace BracketGen.Drawing;

/// <summary>What the user chose about the files, beside the job itself.</summary>
/// <param name="Dxf">Release of the cut files.</param>
/// <param name="Paper">Sheet of the drawing; null for what the job says.</param>
/// <param name="CutPath">Beam path for the compensated cut file; null where none is wanted.</param>
public sealed record FileChoices(DxfVersion Dxf, PageFormat? Paper, CutPath? CutPath)
{
    /// <summary>How many parts to cut, for the text below the part in the cut files; null for no text.</summary>
    public int? TextQuantity { get; init; }

    /// <summary>Schema of the STEP file.</summary>
    public StepSchema Step { get; init; } = StepSchema.Ap214;
}
