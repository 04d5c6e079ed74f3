using System.Globalization;
using BracketGen.Profiles.Interview;

namespace BracketGen.Words.Interview;

/// <summary>The questions about a shop as sentences.</summary>
internal static class ShopQuestionText
{
    private const string LeaveOut = "Leave empty for the usual one, assumed.";

    /// <summary>The question, and what the answer is.</summary>
    public static (string Ask, string Explain) Of(Question question)
    {
        var item = question.Item.ToString(CultureInfo.InvariantCulture);
        return question.Id switch
        {
            <= QuestionId.BatchSize => OfShop(question.Id),
            <= QuestionId.FinishThickness => OfMaterial(question.Id, item, question.About),
            <= QuestionId.PunchForce => OfTools(question.Id, item),
            <= QuestionId.PressForceOnLength => OfPress(question.Id),
            <= QuestionId.MinClamped => OfClamp(question.Id, item),
            _ => OfTestBend(question.Id, item),
        };
    }

    private static (string Ask, string Explain) OfShop(QuestionId id) => id switch
    {
        QuestionId.ShopName => ("Name of the shop?", "It stands in the title block."),
        QuestionId.CuttingProcess => ("How does the shop cut?", "Its sheet, from the cut file."),
        QuestionId.Kerf => ("Kerf?", "Width of metal that the beam removes: measure a slot cut in one pass, or ask the shop. A laser takes about 0.2 mm (common practice, no source)."),
        QuestionId.BendRule => ("Which published bend rule holds where no test bend fits?", "Test bends of this shop come later; they are better than either rule."),
        QuestionId.BendMarks => ("Which marks at the ends of bends?", "Etched on the side that the bend presses together, or none."),
        QuestionId.Currency => ("Code of the currency?", "EUR, USD. Leave empty if you know no prices: brackets are then compared by minutes of work."),
        QuestionId.CuttingRate => ("Cutting machine with its operator, an hour?", "In the currency. " + LeaveOut),
        QuestionId.BendingRate => ("Bending with its operator, an hour?", "In the currency. " + LeaveOut),
        QuestionId.BendTime => ("Seconds for one bend?", "A bar in the vice takes minutes. " + LeaveOut),
        QuestionId.SheetPerKilogram => ("Price of a kilogram of sheet?", "For sheets whose own price you do not give. " + LeaveOut),
        _ => ("How many pieces are made together?", "They share the set-up. Leave empty for one."),
    };

    private static (string Ask, string Explain) OfMaterial(QuestionId id, string item, string name) => id switch
    {
        QuestionId.MaterialCount => ("How many materials does the shop stock?", "Sheet that a bracket may be made of, 1 to 12."),
        QuestionId.Designation => ($"Designation of material {item}?", "As on the order: a sheet of the library by its number or name, or any other, whose numbers are then asked for."),
        QuestionId.Density => ($"Density of {name}?", "It is no sheet of the library: give its numbers from the standard or the certificate."),
        QuestionId.Modulus => ($"Young's modulus of {name}?", "Steel about 210 GPa, aluminium 70."),
        QuestionId.Poisson => ($"Poisson's ratio of {name}?", "No unit."),
        QuestionId.YieldStrength => ($"Yield strength of {name}?", "Or 0.2 % proof strength: the minimum of the standard."),
        QuestionId.MinTensile => ($"Minimum tensile strength of {name}?", "Leave empty if the standard does not say: the yield strength then counts."),
        QuestionId.MaxTensile => ($"Maximum tensile strength of {name}?", "For the force of a bend. Leave empty for 3.5 times the yield strength, assumed."),
        QuestionId.Endurance => ($"Endurance of {name}?", "Fully reversed stress amplitude that it withstands for the life of the vehicle: 0.4 of the minimum tensile strength for steel, 0.3 for aluminium (common practice, no source)."),
        QuestionId.RadiusAcrossGrain => ($"Minimum inside radius of {name} over its thickness, across the grain?", "Bend line across the grain; no unit: 1 for one thickness."),
        QuestionId.RadiusAlongGrain => ($"Minimum inside radius of {name} over its thickness, along the grain?", "Bend line along the grain; no unit."),
        QuestionId.BendGroup => ($"Bend group of {name}?", "Row of the bend allowance table in Machinery's Handbook."),
        QuestionId.MaterialSource => ($"Where do the numbers of {name} come from?", "The standard, or the certificate with its date."),
        QuestionId.SheetThicknesses => ($"Thicknesses in stock of material {item}?", "All of them, with commas and blanks between: 2, 2.5, 3."),
        QuestionId.MaterialPrice => ($"Price of a kilogram of material {item}?", "In the currency. Leave empty for the price of a kilogram of any sheet."),
        QuestionId.FinishKind => ($"Finish of parts made of material {item}?", "Leave empty if it is agreed job by job: the drawing then says as agreed."),
        _ => ($"Maximum thickness of the layer on material {item}?", "On each face: zinc about 0.008 mm, powder 0.1 mm (common practice, no source). Holes are made larger by it."),
    };

    private static (string Ask, string Explain) OfTools(QuestionId id, string item) => id switch
    {
        QuestionId.BendsWith => ("What does the shop bend with?", "A press brake with V dies; a folder, a hand brake or bars in a vice; or both of these."),
        QuestionId.ToolDetail => ("Did you measure the tools?", "Usual: only what decides the bend is asked, the rest is assumed. Measured: all that decides whether a flange clears the tools, each of which you may leave out."),
        QuestionId.DieCount => ("How many V dies are there?", "1 to 12."),
        QuestionId.DieOpening => ($"Opening of die {item}?", "Width of the V."),
        QuestionId.DieRadius => ($"Inside radius that die {item} gives?", "In air bending: measure a bend with radius gauges, or take 0.16 of the opening (common practice, no source)."),
        QuestionId.DieAngle => ($"Included angle of the V of die {item}?", LeaveOut),
        QuestionId.DieWidth => ($"Width of die {item} across the bend?", "At its top. " + LeaveOut),
        QuestionId.ShoulderHeight => ($"Height of the shoulders of die {item}?", "Over the bed of the press. " + LeaveOut),
        QuestionId.ShoulderRadius => ($"Radius of the shoulders of die {item}?", "Between the V and the top. " + LeaveOut),
        QuestionId.DieForce => ($"Force per length that die {item} stands?", "It is stamped on the die. " + LeaveOut),
        QuestionId.PunchCount => ("How many punches are there?", "0 for a straight punch of 88 degrees, assumed."),
        QuestionId.PunchName => ($"Name of punch {item}?", "The bend table speaks of it by this name."),
        QuestionId.PunchKind => ($"Kind of punch {item}?", "A gooseneck is set back to make room for a flange. You can write another section into the file later."),
        QuestionId.PunchHeight => ($"Height of punch {item}?", "From the tip to the beam."),
        QuestionId.TipAngle => ($"Included angle of the tip of punch {item}?", "Stamped on the punch."),
        QuestionId.TipRadius => ($"Radius of the tip of punch {item}?", "Stamped on the punch."),
        QuestionId.PunchWidth => ($"Thickness of punch {item}?", "Of its body, front to back."),
        _ => ($"Force per length that punch {item} stands?", "Stamped on the punch. " + LeaveOut),
    };

    private static (string Ask, string Explain) OfPress(QuestionId id) => id switch
    {
        QuestionId.OpenHeight => ("Open height of the press?", "Between beam and bed with the beam up. Leave empty if you did not measure the press: usual dimensions are then assumed."),
        QuestionId.Stroke => ("Stroke of the beam?", "From the plate of the press."),
        QuestionId.PressForce => ("Force of the press?", "From its plate: 600 kN. " + LeaveOut),
        QuestionId.PressBeamWidth => ("Thickness of the beam that carries the punch?", "Front to back. " + LeaveOut),
        QuestionId.BedWidth => ("Thickness of the bed under the die?", "Front to back. " + LeaveOut),
        QuestionId.GaugeMin => ("Minimum distance of the back gauge?", "From the middle of the bend. " + LeaveOut),
        QuestionId.GaugeMax => ("Maximum distance of the back gauge?", "From the middle of the bend. " + LeaveOut),
        QuestionId.FingerWidth => ("Width of a finger of the back gauge?", "Along the bend. " + LeaveOut),
        QuestionId.FingerHeight => ("Height of a finger over the top of the die?", LeaveOut),
        QuestionId.FingerDepth => ("How far does a finger reach below the top of the die?", "0 if it can stand over the die. " + LeaveOut),
        QuestionId.GaugeInBend => ("Does the back gauge move back before the beam bends?", "If it stays, a flange must not swing into it."),
        QuestionId.ToolSections => ("In which steps are punches and dies made up?", "Length of the shortest section. Leave empty if they come in one piece."),
        _ => ("Force per length that bed and beam stand?", "From the plate of the press. " + LeaveOut),
    };

    private static (string Ask, string Explain) OfClamp(QuestionId id, string item) => id switch
    {
        QuestionId.ClampCount => ("How many folders, hand brakes and bars are there?", "Each bar for the vice is one. 1 to 12."),
        QuestionId.ClampKind => ($"What is number {item}?", "A folder, a hand brake, or a bar for the vice."),
        QuestionId.ClampName => ($"Name of number {item}?", "The bend table speaks of it by this name."),
        QuestionId.ClampRadius => ($"Radius of number {item}?", "Of the edge or bar that the sheet is bent over, by radius gauges."),
        QuestionId.ClampDepth => ($"How far does number {item} reach back over the sheet?", "Its upper clamp or bar. " + LeaveOut),
        QuestionId.ClampHeight => ($"Height of number {item}?", "Of its upper clamp or bar at the front. " + LeaveOut),
        QuestionId.NoseAngle => ($"Nose angle of number {item}?", "Between the front of the upper clamp and the sheet. " + LeaveOut),
        QuestionId.ClampBelow => ($"How far does number {item} reach down below the sheet?", "Table or jaws. " + LeaveOut),
        QuestionId.ClampBeamWidth => ($"Width of the beam of number {item}?", "That turns the flange up; 0 for none. " + LeaveOut),
        QuestionId.ClampLength => ($"Length of number {item}?", "Along the bend. " + LeaveOut),
        QuestionId.ClampMaxThickness => ($"Thickest sheet that number {item} bends?", LeaveOut),
        _ => ($"Minimum width that number {item} clamps?", "Of the flange that is clamped. " + LeaveOut),
    };

    private static (string Ask, string Explain) OfTestBend(QuestionId id, string item) => id switch
    {
        QuestionId.TestBendCount => ("How many test bends are there?", "Strips of known length, bent and measured: bracketgen test-bend works out their K factor, now or later."),
        QuestionId.TestBendMaterial => ($"Material of test bend {item}?", "One of those above."),
        QuestionId.TestBendThickness => ($"Thickness of test bend {item}?", "One that the shop stocks of it."),
        QuestionId.TestBendRadius => ($"Inside radius of test bend {item}?", "That of a die, clamp or bar above."),
        _ => ($"K factor of test bend {item}?", "As test-bend prints it; no unit."),
    };
}
