using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Mechanism;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Drawing.Setup;

/// <summary>The order of fitting, step by step.</summary>
internal sealed class SetupSteps(Solution solution, Bracket bracket, SetupHardware hardware, SetupWords words)
{
    private Cable Cable => solution.Job.Vehicle.Cable;

    private string Stop => bracket.Stop.Name;

    /// <summary>The steps; free play, sensor and checks have tables of their own.</summary>
    public IEnumerable<string> All()
    {
        yield return "Engine off, key out, wheels chocked. Take the old bracket and the cable's end off. The valve must fall shut on its closed stop by its springs alone: if it does not, mend that first.";
        yield return $"Hold the bracket against template and drawing: holes, bend lines, flanges the right way. No burr may be left, least of all at {hardware.Opening} {Stop}.";
        foreach (var (screw, holes) in hardware.Screws)
        {
            yield return $"Clean the mount face and the threads at {SetupHardware.List(holes)}. Turn a bare {screw.Thread.Name} screw in by hand: it must go in {words.Length(screw.ThreadNeeded)} or more before it stops ({Turns(screw.ThreadNeeded, screw.Thread)} turns).";
        }

        yield return "Bolt the bracket on, a washer under each head, by hand at first; then tighten in two rounds: "
            + string.Join(", ", hardware.Screws.Select(s => $"{SetupHardware.List(s.Holes)} to {words.Torque(s.Screw.Torque)}"))
            + ". Draw a line of paint across head, washer and sheet: it shows later whether one has turned.";
        yield return "Turn the quadrant by hand from stop to stop. Nothing may touch"
            + (solution.Checks.FirstOrDefault(c => c.Id == "moving-parts") is { } gap ? $"; the least gap to the bracket is {words.Length(gap.Value)} by the design." : ".");
        yield return CableIn();
        yield return "Lay the end fitting into the quadrant's pocket and the wire into its groove. Push the wire back by hand: the fitting must stay where it is.";
        yield return FreePlay();
        if (solution.Mechanism?.Sensor is not null)
        {
            yield return "Set the sensor as tabled.";
        }

        yield return $"Lead the outer in wide bends, none tighter than {words.Size(Cable.MinBendRadius)} radius, clear of the exhaust and of all that moves, with enough of it to let the engine rock on its mounts.";
        yield return "Do every check that has a box, cold and hot. With one box empty the engine is not started with the pedal connected.";
    }

    private string CableIn() => Cable.OuterEnd switch
    {
        ThreadedAdjuster a when bracket.Stop.IsSlot =>
            $"Turn the adjuster's nuts ({words.Size(a.AcrossFlats)} across flats) apart and lay it into slot {Stop} from the open side, one nut on either side of the sheet.",
        ThreadedAdjuster a =>
            $"Take the nut on the quadrant's side off the adjuster and lead it over the end fitting. {Passage(a)} Bring the fitting through hole {Stop}, put the nut on again: one nut on either side of the sheet.",
        SlottedClip =>
            $"Push the outer's ring groove into slot {Stop} from the open side until it stands on the slot's bottom. Secure it with its clip, so that it cannot climb out when the wire is slack.",
        _ when bracket.Stop.IsSlot =>
            $"Lay the ferrule's nose into slot {Stop} from the open side, its shoulder on the side marked S on the drawing, away from the quadrant. Secure it with a clip, so that it cannot climb out when the wire is slack.",
        _ => $"Bring the end fitting through hole {Stop} from the side marked S on the drawing, away from the quadrant, and set the ferrule's shoulder on that side.",
    };

    private string Passage(ThreadedAdjuster adjuster)
    {
        // The nut's core hole D1 = d - 5/4 H, H = √3/2 P (ISO 724).
        var core = adjuster.Thread - 1.25 * Math.Sqrt(3) / 2 * adjuster.Pitch;
        var needed = Cable.Fitting.PassageDiameter(Cable.WireDiameter);
        return needed < core
            ? ""
            : $"The fitting needs {words.Length(needed)} to pass and the nut leaves {words.Length(core)}: draw the inner out of the outer first and lead it back through bracket and nut, or make the stop an open slot.";
    }

    private string FreePlay() => Cable.OuterEnd switch
    {
        ThreadedAdjuster => "Set the free play as tabled. Then tighten the two nuts against the sheet with two spanners, firmly and no more: the adjuster is hollow (common practice, no source).",
        { AdjusterRange: > 0 } => "Set the free play as tabled at the adjuster in the outer, and tighten its lock nut.",
        _ => "There is no adjuster: measure the free play, and do not go on unless it is as tabled.",
    };

    private static string Turns(double length, MetricThread thread) =>
        Math.Ceiling(length / thread.Pitch).ToString("0", System.Globalization.CultureInfo.InvariantCulture);
}
