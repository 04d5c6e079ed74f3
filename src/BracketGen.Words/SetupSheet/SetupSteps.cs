using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Standards;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Words.SetupSheet;

/// <summary>The order of fitting, step by step.</summary>
/// <param name="solution">A solution.</param>
/// <param name="bracket">Its bracket.</param>
/// <param name="hardware">Its bolts.</param>
public sealed class SetupSteps(Solution solution, Bracket bracket, SetupHardware hardware)
{
    private readonly SetupUnits _units = new(solution.Job.Units);

    private Cable Cable => solution.Job.Vehicle.Cable;

    private string Stop => bracket.Stop.Name;

    /// <summary>The steps; free play, sensor and checks have tables of their own.</summary>
    public IEnumerable<string> All()
    {
        yield return "Engine off, key out, wheels chocked. Remove the old bracket and the end of the cable. The springs alone must snap the valve shut on its closed stop. If they do not, repair that first.";
        yield return $"Hold the bracket against template and drawing: holes, bend lines, flanges the right way round. Leave no burr, above all at {hardware.Opening} {Stop}.";
        if (!bracket.Flat.Bends.IsEmpty)
        {
            yield return $"Measure the bends with a protractor: {BendStepText.Measured(bracket, solution.Job.Units)}. A bracket that is off by more holds the outer askew: do not fit it.";
        }

        if (solution.Job.Body.Mount.Ring is not null)
        {
            yield return ShopDrawing.RingText.Fit(solution.Job.Body.Mount, solution.Job.Units);
        }

        foreach (var (bolt, holes) in hardware.Bolts)
        {
            if (bolt.Fixing is ThroughHole through)
            {
                yield return $"Clean the mount face and the back of the flange at {Phrases.List(holes)}. Push a bare {bolt.Thread.Name} bolt through {(holes.Length == 1 ? "the hole" : "each hole")}: it must go in by hand. Washer and nut must lie flat behind the flange"
                    + (through.Room is null ? $", and {_units.Length(bolt.RoomNeeded(bracket.Stock.Thickness))} behind it must be free: measure." : ".");
                continue;
            }

            if (bolt.Fixing is MountStud)
            {
                yield return $"Clean the mount face and the {(holes.Length == 1 ? "stud" : "studs")} at {Phrases.List(holes)}. Run a bare nut down {(holes.Length == 1 ? "it" : "each stud")} by hand to {_units.Length(bracket.Stock.Thickness)} above the face{(bolt.Spacer is null ? "" : ", spacer in place")}. A stud that turns with the nut is loose, and one that is bent or pulled is spent: replace it before you go on.";
                continue;
            }

            yield return $"Clean the mount face and the threads at {Phrases.List(holes)}. Turn a bare {bolt.Thread.Name} bolt in by hand: it must go in {_units.Length(bolt.ThreadNeeded)} or more before it stops ({Turns(bolt.ThreadNeeded, bolt.Thread)} turns).";
        }

        foreach (var (bolt, holes) in hardware.Bolts.Where(b => b.Bolt.Spacer is not null))
        {
            yield return $"Put a spacer {_units.Length(bolt.Spacer!.Length)} long under the bracket at {Phrases.List(holes)}. Lay a straight edge over the spacer and the other bosses before you bolt: a feeler gauge of {_units.Fine(solution.Job.Body.Mount.Flatness ?? MountFace.UsualFlatness)} must not go under it anywhere. If it does, face the spacer, or lay a shim ring under it.";
        }

        if (hardware.IsSlotted)
        {
            foreach (var step in Slotted())
            {
                yield return step;
            }
        }

        if (bracket.SecondBend is { } bend)
        {
            var second = Phrases.List([.. bracket.Holes.Where(h => h.Flange == bend.To).Select(h => h.Name)]);
            yield return $"Offer the bracket up: mount flange on its face, all bolts turned in by hand, pushed against the second face at {second}. Feel under the second mount flange on either side of each bolt with a feeler gauge of {_units.Fine(SecondFace.LeftGap)}. "
                + $"Where it goes in on one side only, take the bracket off and correct bend {bend.To.ToString(CultureInfo.InvariantCulture)} by hand, in a vice with soft jaws. Where it goes in all round, fill the gap with shim rings, {_units.Length(SecondFace.MostShim)} at most. Never draw a gap together with the bolts.";
            yield return "Both faces must belong to parts that are bolted together. A bracket between parts that move against each other cracks: do not fit it there.";
        }

        yield return $"Bolt the bracket on by hand, a washer under each {Washed()}, then tighten in two rounds: "
            + string.Join(", ", hardware.Bolts.Select(b => $"{Phrases.List(b.Holes)} to {_units.Torque(b.Bolt.Torque)}"))
            + $". Draw a line of paint across {(hardware.Bolts.Any(b => b.Bolt.HasNut) ? "head or nut" : "head")}, washer and sheet: it shows later if a {(hardware.Bolts.Any(b => b.Bolt.HasNut) ? "bolt or nut" : "bolt")} has turned.";
        if (hardware.IsSlotted)
        {
            yield return $"Paint a line across the edge of the bracket and the casting beside {Phrases.List(SlottedNames)}: it shows later if the bracket has slid. A bracket that slides moves the stop: the throttle can stick, or open no longer. Where the line is broken, do not drive: find out why, set the bracket again, and do every check again.";
        }

        yield return "Turn the quadrant by hand from stop to stop. It must touch nothing"
            + (solution.Checks.Where(c => c.Id is CheckId.MovingParts or CheckId.QuadrantClearance or CheckId.OuterMoving).MinBy(c => c.Value) is { } gap
                ? $"; by design everything keeps at least {_units.Length(gap.Value)} from it." : ".");
        if (solution.Mechanism?.Sensor is not null)
        {
            yield return "With the cable still off and the valve on its closed stop, set the sensor as in the table. Tighten its screws, read it again and write the reading down.";
        }

        yield return CableIn();
        yield return "Lay the end fitting into the pocket of the quadrant and the wire into the groove. Push the wire back by hand: the fitting must stay in its pocket.";
        yield return FreePlay();
        yield return $"Route the outer in wide bends, none tighter than a radius of {_units.Size(Cable.MinBendRadius)}, clear of the exhaust and of everything that moves, and long enough for the engine to rock on its mounts.";
        yield return "Do every check that has a box, cold and hot. Do not start the engine with the pedal connected while any box is empty.";
    }

    private string[] SlottedNames => [.. bracket.Holes.Where(h => h.IsSlotted).Select(h => h.Name)];

    private IEnumerable<string> Slotted()
    {
        var (names, travel) = (SlottedNames, SlotPositions.Farthest(bracket));
        var proven = solution.Checks.Any(c => c is { IsAtSlotEnd: true, Passes: false, Kind: not CheckKind.Advice })
            ? "Not every position in the slots is proven: read the verdict before you fit it."
            : "The middle and every end of the slots are calculated.";
        yield return $"{Phrases.List(names)} {(names.Length == 1 ? "is" : "are")} slotted: the bracket can be shifted {_units.Length(travel)} each way from the middle. Nothing but friction holds it along the slots. "
            + "Face and bracket must be dry, free of oil and loose paint where they meet, and as they were when the friction was tried.";
        yield return $"Set each screw in the middle of its slot, so that both ends show alike past the washer. Shift the bracket only if the wire does not run straight into the stop. {proven} After every shift tighten as below and set the free play again.";
    }

    private string Washed() => (hardware.Bolts.Any(b => b.Bolt.Fixing is not MountStud), hardware.Bolts.Any(b => b.Bolt.HasNut)) switch
    {
        (true, true) => "head and each nut",
        (true, false) => "head",
        _ => "nut",
    };

    private string CableIn() => Cable.OuterEnd switch
    {
        ThreadedAdjuster a when bracket.Stop.IsSlot =>
            $"Turn the locknuts of the adjuster ({_units.Size(a.AcrossFlats)} across flats) apart and lay it into slot {Stop} from the open side, one nut on each side of the sheet.{Flats(a)}",
        ThreadedAdjuster a =>
            $"Take the locknut on the quadrant's side off the adjuster and pass it over the end fitting. {Passage(a)}Bring the fitting through hole {Stop} and put the nut on again: one nut on each side of the sheet.{Flats(a)}",
        BulkheadFerrule b when bracket.Stop.IsSlot =>
            $"Turn the nuts of the ferrule ({_units.Size(b.AcrossFlats)} across flats) apart, lay it into slot {Stop} from the open side, one nut on each side of the sheet, and tighten them against each other. They set nothing.{Flats(b)}",
        BulkheadFerrule b =>
            $"Take the nut on the quadrant's side off the ferrule and pass it over the end fitting. {Passage(b)}Bring the fitting through hole {Stop}, put the nut on again, one nut on each side of the sheet, and tighten them against each other. They set nothing.{Flats(b)}",
        ClippedFerrule when bracket.Stop.IsSlot =>
            $"Lay the nose of the ferrule into slot {Stop} from the open side, its shoulder on the side marked S on the drawing, away from the quadrant. Push the clip into its groove on the quadrant's side. Use a new clip.",
        ClippedFerrule =>
            $"Bring the end fitting through hole {Stop} from the side marked S on the drawing, away from the quadrant, and seat the shoulder of the ferrule on that side. Push the clip into its groove on the quadrant's side. Use a new clip.",
        PushInEnd p =>
            $"Take all burrs off hole {Stop}{(p.Corner is null ? "" : " and out of its corners")}. Bring the end fitting through it from the side marked S on the drawing, away from the quadrant, and push the end in until its barbs spring open behind the sheet ({_units.Size(p.LeastSheet)} to {_units.Size(p.MostSheet)} thick). Pull at the outer: it must not come out.",
        SlottedClip =>
            $"Push the neck of the clip into slot {Stop} from the open side until it rests on the bottom of the slot. Secure it so that it cannot climb out when the wire is slack.",
        _ when bracket.Stop.IsSlot =>
            $"Lay the nose of the ferrule into slot {Stop} from the open side, its shoulder on the side marked S on the drawing, away from the quadrant. Secure it with a clip so that it cannot climb out when the wire is slack.",
        _ => $"Bring the end fitting through hole {Stop} from the side marked S on the drawing, away from the quadrant, and seat the shoulder of the ferrule on that side.",
    };

    private string Flats(NuttedEnd end) => end.ThreadFlats is null ? "" : $" The flats of the thread lie along the flats of {Stop}: it must not turn.";

    private string Passage(NuttedEnd end)
    {
        var needed = Cable.Fitting.PassageDiameter(Cable.WireDiameter) + StopSeat.FittingPlay;
        return needed <= end.NutBore
            ? ""
            : $"The fitting needs {_units.Length(needed)} to pass and the nut leaves {_units.Length(end.NutBore)}: this cable does not go on. Make the stop an open slot. Never cut a swaged end off to fit it. ";
    }

    private string FreePlay() => Cable.OuterEnd switch
    {
        ThreadedAdjuster => "Set the free play as in the table. Then tighten the two locknuts against the sheet with two spanners, firmly and no more: the adjuster is hollow (common practice, no source).",
        { AdjusterRange: > 0 } => "Set the free play as in the table at the adjuster in the outer, and tighten its locknut.",
        _ => "There is no adjuster: measure the free play, and do not go on unless it is as in the table.",
    };

    private static string Turns(double length, FastenerThread thread) => Math.Ceiling(length / thread.Pitch).ToString("0", CultureInfo.InvariantCulture);
}
