using BracketGen.Drawing.Dxf.Model;
using BracketGen.Drawing.Sheet;
using BracketGen.SheetMetal.Cutting;

namespace BracketGen.Drawing;

/// <summary>What the user chose about the files, beside the job itself.</summary>
/// <param name="Dxf">Release of the cut files.</param>
/// <param name="Paper">Sheet of the drawing; null for what the job says.</param>
/// <param name="CutPath">Beam path for the compensated cut file; null where none is wanted.</param>
public sealed record FileChoices(DxfVersion Dxf, PageFormat? Paper, CutPath? CutPath);
