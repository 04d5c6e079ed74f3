using System.Globalization;
using BracketGen.Profiles.Interview;

namespace BracketGen.Words.Interview;

/// <summary>The questions about a job as sentences.</summary>
internal static class JobQuestionText
{
    private const string Listed = "Those that lie near are listed; any other by its path from this file's folder.";

    /// <summary>The question, and what the answer is.</summary>
    public static (string Ask, string Explain) Of(Question question)
    {
        var item = question.Item.ToString(CultureInfo.InvariantCulture);
        return question.Id switch
        {
            <= QuestionId.ViewLayout => OfFiles(question.Id),
            <= QuestionId.PartFinishThickness => OfPart(question.Id),
            <= QuestionId.CornerRadius => OfLimits(question.Id),
            <= QuestionId.CrankshaftPoint => OfEngine(question.Id, item),
            _ => OfCable(question.Id, question.About),
        };
    }

    private static (string Ask, string Explain) OfFiles(QuestionId id) => id switch
    {
        QuestionId.JobBody => ("Which throttle body?", Listed),
        QuestionId.JobVehicle => ("Which vehicle?", Listed),
        QuestionId.JobShop => ("Which shop makes it?", Listed),
        QuestionId.JobUnits => ("Units of the outputs?", "Inputs have the units written with them."),
        QuestionId.PartNumber => ("Part number?", "It stands in the title block and on the part."),
        QuestionId.Revision => ("Revision?", "It stands behind the part number."),
        QuestionId.DrawingTitle => ("Title of the drawing?", "For example: Throttle cable bracket, Plover, Alder 58."),
        QuestionId.IssueDate => ("Date of issue?", "Written 2026-03-31. Leave empty for a blank field."),
        QuestionId.Creator => ("Who drew it?", "Leave empty for a blank field."),
        QuestionId.Approver => ("Who approved it?", "Leave empty for a blank field."),
        _ => ("How are the views laid out?", "First angle in most of the world, third angle in North America (ISO 5456-2)."),
    };

    private static (string Ask, string Explain) OfPart(QuestionId id) => id switch
    {
        QuestionId.FreePlayWanted => ("Free play wanted?", "Slack in the wire with the pedal released: 2 +/- 0.5. Leave empty for that."),
        QuestionId.MaterialsAllowed => ("Which materials may it be made of?", "Designations of the shop with commas between. Leave empty for all that it stocks."),
        QuestionId.MinSheetThickness => ("Minimum thickness of the sheet?", "Thinner sheet is not tried."),
        QuestionId.MaxSheetThickness => ("Maximum thickness of the sheet?", "Thicker sheet is not tried."),
        QuestionId.StopOpening => ("Which opening in the stop?", "A hole, or an open slot into which the outer end slides; as the outer end needs it unless you say."),
        QuestionId.PartFinish => ("Finish of this bracket?", "Leave empty for that of its material in the shop's file."),
        _ => ("Maximum thickness of the layer?", "On each face."),
    };

    private static (string Ask, string Explain) OfLimits(QuestionId id) => id switch
    {
        QuestionId.Limits => ("Limits of the checks?", "Usual, or your own: then each is asked. A limit on the unsafe side hides a danger."),
        QuestionId.MinFreePlay => ("Minimum free play?", "With which the valve surely closes."),
        QuestionId.MinOverTravel => ("Minimum over-travel?", "Pull left at the floor with the valve wide open."),
        QuestionId.MaxOverTravel => ("Maximum over-travel?", "Above it the pedal needs a pedal stop."),
        QuestionId.MinWrap => ("Minimum wrap angle?", "At the wide-open stop."),
        QuestionId.FittingClearance => ("Clearance of the end fitting?", "To the stop with everything that sticks out of it."),
        QuestionId.SweepClearance => ("Clearance of moving parts?", "To the bracket, the casting and the keep-outs."),
        QuestionId.OuterClearance => ("Clearance of the outer?", "To all that it passes on its route."),
        QuestionId.KeepOutClearance => ("Clearance of the bracket?", "With the outer end, to the casting and the keep-outs."),
        QuestionId.DirtAndCold => ("How many times does measured drag count?", "For dirt and cold; 1 if it was measured cold and on a worn cable; no unit."),
        QuestionId.AdjusterReserve => ("Which part of the adjuster's half range stays unused?", "0 to 1; no unit."),
        QuestionId.MinYieldFactor => ("Minimum yield strength over stress?", "With the pedal stamped on; no unit."),
        QuestionId.MinEnduranceFactor => ("Minimum safety factor against cracking?", "Over all openings; no unit."),
        QuestionId.MinFrequencyRatio => ("Minimum natural frequency over firing frequency?", "At maximum speed; no unit."),
        QuestionId.MaxGive => ("Maximum give of the stop?", "Along the wire, at the largest tension of an opening."),
        _ => ("Radius at outline corners?", "Larger ones are kinder to hands and to cracks."),
    };

    private static (string Ask, string Explain) OfEngine(QuestionId id, string item) => id switch
    {
        QuestionId.Temperature => ("Temperature of the bracket?", "With the engine hot, in degrees Celsius. Leave empty if you did not measure it: strength must then hold at 20 and at 100."),
        QuestionId.Openings => ("Pedal openings over the whole life?", "No unit. Leave empty for the usual number."),
        QuestionId.EngineHours => ("Hours that the engine runs over the whole life?", "No unit. Leave empty for the usual number."),
        QuestionId.Up => ("Which way is up?", "With the engine in its place, by a plumb line beside the quadrant. Leave empty if you do not know: the picture of the fitted bracket then shows y upwards."),
        QuestionId.BulkheadWay => ("Which way is the bulkhead?", "From the throttle body, with the engine in its place. Later questions may then be answered with to the bulkhead. Leave empty if you do not need that."),
        QuestionId.BulkheadPoint => ("Where does the outer come out of the bulkhead?", "x, y, z from the throttle shaft's axis and the middle of the groove. Leave empty if you did not measure it: the route is then not checked."),
        QuestionId.BulkheadDirection => ("Direction out of the bulkhead?", "The way the outer comes out, towards the engine."),
        QuestionId.ClipCount => ("How many clips hold the outer?", "Clips and grommets, from the stop to the bulkhead."),
        QuestionId.ClipPoint => ($"Where does clip {item} hold the outer?", "x, y, z of the middle of the outer."),
        QuestionId.ClipDirection => ($"Direction of the outer in clip {item}?", "From the stop to the bulkhead. Leave empty if it lets the outer turn."),
        QuestionId.ClipAlong => ($"Length of outer from the stop's seat to clip {item}?", "Only if it grips the outer. Leave empty if the outer slides through."),
        QuestionId.MovementX => ("How far does the throttle body move along x?", "Each way from rest, as a second person rocks the engine. Leave empty if you did not measure it: 10 mm along each axis and 3 degrees are then assumed."),
        QuestionId.MovementY => ("How far does it move along y?", "Each way from rest."),
        QuestionId.MovementZ => ("How far does it move along z?", "Each way from rest."),
        QuestionId.Roll => ("How far does it turn about the crankshaft?", "Each way from rest."),
        QuestionId.CrankshaftDirection => ("Direction of the crankshaft?", "Either way along it. Leave empty if you do not know it: x, y and z are each tried."),
        _ => ("A point on the crankshaft's axis?", "x, y, z. Leave empty if x, y and z above hold what the turn moves the body."),
    };

    private static (string Ask, string Explain) OfCable(QuestionId id, string cable) => id switch
    {
        QuestionId.CableBecomes => ($"What becomes of {cable}?", "A cable of the vehicle that does not come from the pedal. Leave empty if it is not decided: the job is then not proven."),
        QuestionId.CablePedalEnd => ($"Pedal end of {cable}?", "Off, or still hooked. Leave empty if the vehicle's file says that it is not on the pedal."),
        QuestionId.CableActuator => ($"What pulls {cable}?", "Dead: unplugged, its vacuum hose off and capped. For cruise control and idle-up. Leave empty for other cables."),
        QuestionId.CableServedBy => ($"What does the work of {cable} instead?", "Leave empty if nothing does."),
        QuestionId.CableTo => ($"What is {cable} hooked to?", "And what holds its outer there."),
        QuestionId.CableGroove => ($"In which groove does {cable} work?", "As the throttle body's file names it."),
        QuestionId.CableStopAt => ($"Where is the outer of {cable} held?", "x, y, z of its seat. Leave empty: the place where the cable would want it is then calculated."),
        _ => ($"What holds the outer of {cable} there?", "No bracket of this program does. Leave empty if nothing does yet."),
    };
}
