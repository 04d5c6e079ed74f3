using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Profiles.Sections;

/// <summary><c>finish</c> of a material or a job.</summary>
internal static class FinishSection
{
    private static readonly Key<FinishKind> Kind = new(
        "kind",
        new WordForm<FinishKind>(
            ("bare", FinishKind.Bare), ("zinc plated", FinishKind.Zinc), ("powder coated", FinishKind.PowderCoat), ("anodised", FinishKind.Anodised)),
        "What protects the surface.");

    private static readonly Key<double> Thickness = new(
        "thickness", QuantityForm.Length(0.001, 0.5), "Maximum thickness of the layer on each face; left out for a bare part, wanted for any other.", isRequired: false);

    public static Section<Finish> Form { get; } = new(
        [Kind, Thickness],
        v => new(v.Get(Kind), v.OrNull(Thickness) ?? 0),
        [new([Kind, Thickness], CheckThickness)],
        shareAs: "finish");

    // A layer of unknown thickness would leave holes too small; one on a bare part says nothing.
    private static void CheckThickness(SectionValues values)
    {
        var isBare = values.Get(Kind) == FinishKind.Bare;
        if (isBare && values.Has(Thickness))
        {
            values.Report(Thickness, new Contradiction(Contradictory.ThicknessOfBare));
        }
        else if (!isBare && !values.Has(Thickness))
        {
            values.Report(Kind, new Contradiction(Contradictory.FinishWithoutThickness));
        }
    }
}
