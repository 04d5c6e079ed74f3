using System.Globalization;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Units;

namespace BracketGen.Words.Profiles;

/// <summary>Entries that do not go together: what is allowed, and what to do.</summary>
internal static class ConflictText
{
    // Holes that differ by less (mm) were measured wrong, or lie on one face: no spacer is so short.
    private const double LeastSpacer = 1;

    public static string Allowed(ProfileProblem problem, UnitSystem units) => problem switch
    {
        PlusMinusWithoutUnit => "a quantity with a unit, as the value has one",
        Compared compared => $"{RelationOf(compared.Relation)} {Other(compared)}, {units.WriteLimit(compared.Quantity, compared.Limit)}",
        WrongOrder { IsAtMin: true } order =>
            $"{(order.MayBeEqual ? "at most" : "less than")} {order.Max}, {units.WriteLimit(order.Quantity, order.MaxValue)}",
        WrongOrder order => $"{(order.MayBeEqual ? "at least" : "more than")} {order.Min}, {units.WriteLimit(order.Quantity, order.MinValue)}",
        GivenTwice twice => twice.What switch
        {
            Repeated.Thickness => "each thickness once",
            Repeated.Designation => "each designation once",
            Repeated.Code => "each code once; capital and small letters count as the same",
            Repeated.Cable => "each cable once",
            Repeated.Groove => "each groove once",
            Repeated.Part => "each part once",
            Repeated.Bundle => "each bundle once",
            Repeated.PartsFile => "each list of parts once",
            _ => "each path once",
        },
        SecondCable => "one table [cable]: the cable from the pedal",
        NameUnknown { Known.IsEmpty: true, What: NamedThing.Cable } => "nothing: the vehicle's file has no other cable",
        NameUnknown { Known.IsEmpty: true, What: NamedThing.Bundle } => "nothing: the list has no bundle",
        NameUnknown { Known.IsEmpty: true, What: NamedThing.Groove } => "nothing: the throttle body's file has no other groove",
        NameUnknown { Known.IsEmpty: true } => "nothing: the family has no such choice",
        NameUnknown name => AllowedText.Choice(name.Known),
        LengthUnknown length => $"{(length.What == ShopLength.Thickness ? "a thickness in stock" : "the inside radius of one of the dies or clamps")}: "
            + string.Join(", ", length.Known.Select(k => Length(units, k))),
        HoleOffFace hole => $"a point on the face {(hole.IsFitted ? "that fits all holes best" : "through hole 1")}, within {Length(units, hole.Tolerance)}",
        HolesOverlap holes => string.Create(CultureInfo.InvariantCulture, $"a point more than {Length(units, holes.Min)} from hole {holes.Other}"),
        SecondFaceWrong wrong => SecondFaceText.Allowed(wrong, units),
        RingWrong wrong => RingText.Allowed(wrong, units),
        SpacerUnderAll => "one hole or more without a spacer: the bracket lies on the highest",
        SheetUnknown sheet => $"a sheet in the library: {string.Join(", ", sheet.Known)}; any other sheet with its numbers",
        KindNeedsKey needs => $"{needs.Name} in a hole with kind = \"{needs.Kind}\"",
        SlotsOnTwoFaces => "slotted mount holes only on a mount of one face",
        SlotSquareToFace => "a direction along the mount face, at least 6° off its normal",
        KeyOfOtherKind other => $"{other.Name} only with kind = \"{other.Belongs}\"",
        HoleNotForBolt hole => $"a diameter from {Length(units, hole.From)} to {Length(units, hole.To)} for the bolt {hole.Thread}",
        GrooveOutsideRim groove => $"an outer_radius of at least {Length(units, groove.Farthest)}, the groove's farthest point",
        GrooveNotConvex => "points by rising angle on a convex curve",
        SpringsDoNotAddUp springs => $"{units.WriteRange(Quantity.Torque, Math.Max(0, springs.From), springs.To)}, near what the springs alone add up to",
        PunchBodyWrong punch => $"corners counter-clockwise from one flank to the other, the highest {Length(units, punch.Height)} up",
        PedalTableWrong => "rows that rise from pad 0, pull 0",
        PedalTableShort pedal => $"available_pull, {Length(units, pedal.Pull)}",
        NumbersAlike numbers => $"a rule with {string.Join(" and ", numbers.Missing)}, or with {{serial}}",
        BracketShapeWrong shape => ShapeText.Allowed(shape.Mistake, units),
        DxfWrong dxf => DxfText.Allowed(dxf, units),
        DrawnWrong drawn => DxfText.Allowed(drawn.Fault),
        OffcutWrong offcut => OffcutText.Allowed(offcut, units),
        Contradiction { What: var what } => what switch
        {
            Contradictory.BoxCorners => "a corner beyond min in x, y and z",
            Contradictory.TiltedBoxEdge => "a corner away from the first one",
            Contradictory.TiltedBoxSquare => "edges square to each other, within 5°",
            Contradictory.CylinderEnds => "a point other than from",
            Contradictory.OffcutSides => "length and width together, or an outline",
            Contradictory.Quantities => "more than the one before",
            Contradictory.PriceWithoutRates => "a price only in a shop with [rates]",
            Contradictory.ThicknessOfBare => "no thickness with a bare part",
            Contradictory.FinishWithoutThickness => "a thickness with each finish that is not bare",
            Contradictory.AnodisedSteel => "anodised only for aluminium",
            Contradictory.PressWithoutDies => "only in a shop with [[dies]]",
            Contradictory.SensorVolts => "a reading at least 0.1 V from closed_volts",
            Contradictory.ShakingTwice => "mounted_on alone, or sine and random",
            Contradictory.Frequencies => "a frequency above the one before",
            Contradictory.IdleSpeed => "an idle speed below max_speed",
            Contradictory.BendLineEnds => "two points apart from each other",
            Contradictory.PriceInBundle => "no price on a part of a bundle",
            Contradictory.OneReading => "closed_volts and open_volts, or neither",
            Contradictory.GroovesOverlap => "a z that leaves metal between any two grooves, the first one at z = 0",
            Contradictory.CableNotMeasured => "a cable with [other_cables.cable] and stroke in the vehicle's file",
            Contradictory.GrooveOfOtherWork => "a kick-down cable in a groove whose cable is pulled, any other in one whose cable opens",
            _ => "the path of one of the files",
        },
        _ => throw new ArgumentException($"No words for {problem}.", nameof(problem)),
    };

    public static string Advice(ProfileProblem problem, string key, UnitSystem units) => problem switch
    {
        PlusMinusWithoutUnit plusMinus => $"If it is in the same unit, write \"{plusMinus.Bare} {plusMinus.Unit}\".",
        Compared compared => ComparedAdvice(compared, key),
        WrongOrder order => $"{order.Min} is {units.WriteLimit(order.Quantity, order.MinValue)} and {order.Max} is {units.WriteLimit(order.Quantity, order.MaxValue)}. "
            + (order.IsOneDefault ? "A key that is left out has its default. " : "") + "Correct one of the two.",
        GivenTwice twice => twice.What switch
        {
            Repeated.Thickness => "Delete one of the two.",
            Repeated.Designation => "Put all thicknesses of one material in one entry.",
            Repeated.Code => "Two parts would have the same number. Choose another code.",
            Repeated.Part => "Give each part a name of its own, and say with quantity how many there are.",
            Repeated.Bundle => "Give each bundle a name of its own.",
            Repeated.PartsFile => "Delete one of the two.",
            Repeated.Groove => "Give each groove a name of its own, and let one cable work in it.",
            Repeated.Cable => "Give each cable a name of its own, and say once what becomes of it.",
            _ => "Pack the job again.",
        },
        NameUnknown { Nearest: { } nearest } => $"Did you mean \"{nearest}\"?",
        NameUnknown { What: NamedThing.BracketMaterial } name => $"{name.Shop} stocks no such material. Where the sheet is not known, write its class: a magnet tells steel, a scratch aluminium.",
        SecondCable => "A throttle cable from the pedal goes under [cable], once. Write every other cable under [[other_cables]]: name, what it does, where it comes from. The job says what becomes of it.",
        NameUnknown { What: NamedThing.Cable, Known.IsEmpty: true } => "Add the cable under [[other_cables]] of the vehicle's file, or delete it here.",
        NameUnknown { What: NamedThing.Cable } => "Name it as the vehicle's file does.",
        NameUnknown { What: NamedThing.Groove, Known.IsEmpty: true } => "Add the groove under [[other_grooves]] of the throttle body's file. If the quadrant has one groove only, the cable is left out: lay it by.",
        NameUnknown { What: NamedThing.Bundle, Known.IsEmpty: true } => "Add the bundle under [[bundles]] with its name and price, or delete the line.",
        NameUnknown { What: NamedThing.Bundle } => "Name it as [[bundles]] does.",
        NameUnknown { What: NamedThing.Groove } => "Name it as the throttle body's file does.",
        NameUnknown { What: NamedThing.Code } => "Name it by its code.",
        NameUnknown { Shop: null } => "Name one of the shop's materials.",
        NameUnknown name => $"{name.Shop} does not stock it. Name a material that is in stock.",
        LengthUnknown { What: ShopLength.Thickness } => "Correct the thickness, or add it to the material's thicknesses.",
        LengthUnknown => "Correct the test bend, or give the die or clamp the radius you measured.",
        HoleOffFace hole => $"The hole is {Length(units, Math.Abs(hole.Height))} {(hole.Height > 0 ? "above" : "below")} the face. "
            + (hole.IsFitted ? "Its ± does not explain that. " : "")
            + $"Correct the hole or the normal; the nearest point on the face is {Point(units, hole.Nearest)}."
            + (Math.Abs(hole.Height) >= LeastSpacer ? $" If the holes lie at two heights, add to {(hole.Height < 0 ? "this hole" : "the lower ones")} the line spacer = {(units == UnitSystem.Inch ? $"\"{Length(units, Math.Abs(hole.Height))}\"" : UnitSystems.Decimals(Math.Abs(hole.Height), "0.##"))}." : "")
            + (hole.FreeNormal is { } normal ? $" The plane nearest to all holes has the normal {Direction(normal)}." : ""),
        HolesOverlap holes => $"The two holes overlap: their centres are {Length(units, holes.Distance)} apart. Measure them again.",
        SecondFaceWrong wrong => SecondFaceText.Advice(wrong, units),
        RingWrong wrong => RingText.Advice(wrong, units),
        SpacerUnderAll => "Delete the spacer of the highest hole, and make the others shorter by it.",
        SheetUnknown sheet => $"{(sheet.Nearest is { } near ? $"Did you mean \"{near}\"? If not, give" : "Give")} the numbers of the sheet: {string.Join(", ", sheet.Numbers)}.",
        KindNeedsKey needs => $"Add the line {needs.Name} = … : {needs.Description}",
        SlotsOnTwoFaces two => $"A bracket on two faces{(two.Body is { } code ? $", as on {code}," : "")} cannot be shifted along one without leaving the other. Take mount_slots out, or the second face out of the throttle body.",
        SlotSquareToFace square => $"The bracket is shifted along the mount face alone, whose normal is {Direction(square.Normal)}{(square.Body is { } body ? $" on {body}" : "")}. Give a direction square to it.",
        KeyOfOtherKind other => $"Delete the line, or write kind = \"{other.Belongs}\".",
        HoleNotForBolt => "Measure the hole again, or choose the bolt that fills it: its head and washer must bear round the hole.",
        GrooveOutsideRim => "Measure outer_radius and the groove again: the groove lies inside the rims.",
        GrooveNotConvex groove => groove.Detail,
        SpringsDoNotAddUp springs => $"The springs alone add up to {units.Write(Quantity.Torque, springs.Sum)}. Measure all together again, then each with the others unhooked.",
        PunchBodyWrong => "Draw the section with the tip at 0, 0 and the gauge on the right. List the corners above the tip, beginning at the upper end of the right flank.",
        PedalTableWrong pedal => pedal.Detail,
        PedalTableShort => "The last row is the floor. Measure it again, or correct available_pull.",
        NumbersAlike => "Several parts would have the same number. Add what is missing to the rule.",
        BracketShapeWrong shape => ShapeText.Advice(shape.Mistake, units),
        DxfWrong dxf => DxfText.Advice(dxf, units),
        DrawnWrong drawn => DxfText.Advice(drawn.Fault),
        OffcutWrong offcut => OffcutText.Advice(offcut, units),
        Contradiction { What: var what } => what switch
        {
            Contradictory.BoxCorners => "Swap the coordinates that are the wrong way round.",
            Contradictory.TiltedBoxEdge => "Measure the corner at the other end of the edge.",
            Contradictory.TiltedBoxSquare => "Measure the three corners that are joined to the first one by an edge.",
            Contradictory.CylinderEnds => "Give the centres of the two ends of the cylinder.",
            Contradictory.OffcutSides => "Add the other side of the rectangle. With an outline delete length and width: the drawing has them.",
            Contradictory.Quantities => "Write the batches from small to large, each once.",
            Contradictory.PriceWithoutRates => "Add [rates] with the currency, or leave the price out.",
            Contradictory.ThicknessOfBare => "Leave the thickness out, or write another kind.",
            Contradictory.FinishWithoutThickness => "Add the maximum thickness of the layer on each face.",
            Contradictory.AnodisedSteel => "Write zinc plated, powder coated or bare.",
            Contradictory.PressWithoutDies => "Add the dies of the press brake, or leave the press brake out.",
            Contradictory.ShakingTwice => "Delete mounted_on to use your own profile, or sine and random to use the published test.",
            Contradictory.Frequencies => "Write the corners from low to high frequency, each frequency once.",
            Contradictory.PriceInBundle => "Delete the price here, or the bundle: the bundle has one price for all that comes with it.",
            Contradictory.OneReading => "Read the sensor on both stops of this throttle body, cable off.",
            Contradictory.BendLineEnds => "Give the two ends of the bend on the corner line.",
            Contradictory.GroovesOverlap => "Measure z again: from the middle of the first groove to the middle of this one, along the throttle shaft.",
            Contradictory.CableNotMeasured => "Measure the cable as the one from the pedal, and its stroke; or lay it by.",
            Contradictory.GrooveOfOtherWork => "Correct the groove's name here, or the key does of the groove in the throttle body's file.",
            Contradictory.IdleSpeed => "Correct one of the two. If idle_speed is left out, 600 is assumed.",
            Contradictory.SensorVolts => "A sensor that reads the same at both stops does not turn with the throttle shaft. Measure again.",
            _ => "Pack the job again.",
        },
        _ => throw new ArgumentException($"No words for {problem}.", nameof(problem)),
    };

    private static string ComparedAdvice(Compared compared, string key) => compared.Reason switch
    {
        CompareReason.Contains => $"Measure {key[(key.LastIndexOf('.') + 1)..]} and {compared.Other} again: one contains the other.",
        CompareReason.FittingHoldsWire => "Measure the wire and the end fitting again: the fitting holds the wire.",
        CompareReason.WireThroughOuterEnd => "Measure the wire and the outer end again: the wire runs through the outer end.",
        CompareReason.Positive => "The true value cannot be zero or less. Measure again, or correct the number.",
        CompareReason.ShaftInsideGroove => "The throttle shaft lies inside the groove's circle. Measure again.",
        CompareReason.DieRadius => "A V die cannot bend to a radius this large; about 0.16 of the opening is usual.",
        CompareReason.PunchWedge => "The flanks run apart until they reach the width of the body. Measure height, angle and width again.",
        CompareReason.Tensile => "Sheet yields before it breaks. Swap the two numbers, or look them up again.",
        _ => "Sheet cracks sooner with the bend line along the grain. Swap the two numbers.",
    };

    private static string Other(Compared compared) => compared.Reason switch
    {
        CompareReason.FittingHoldsWire => "the end fitting's diameter",
        CompareReason.WireThroughOuterEnd => "the diameter of the outer end",
        CompareReason.Positive => "the value",
        CompareReason.DieRadius => "half the opening",
        CompareReason.PunchWedge => "the height of the wedge",
        _ => compared.Other,
    };

    private static string RelationOf(Relation relation) => relation switch
    {
        Relation.MoreThan => "more than",
        Relation.AtLeast => "at least",
        _ => "less than",
    };

    private static string Length(UnitSystem units, double length) => units.WriteLimit(Quantity.Length, length);

    private static string Direction(Vector3 d)
    {
        static string Part(double value) => UnitSystems.Decimals(value, "0.####");
        return $"[{Part(d.X)}, {Part(d.Y)}, {Part(d.Z)}]";
    }

    // As one writes it in a profile: bare numbers are in mm, others carry their unit in quotes.
    private static string Point(UnitSystem units, ThrottlePoint point)
    {
        string Coordinate(double value) => units == UnitSystem.Metric
            ? UnitSystems.Decimals(value, "0.###")
            : $"\"{units.WriteLimit(Quantity.Length, value)}\"";
        return $"[{Coordinate(point.X)}, {Coordinate(point.Y)}, {Coordinate(point.Z)}]";
    }
}
