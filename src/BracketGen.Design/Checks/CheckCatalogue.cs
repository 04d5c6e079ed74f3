using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Units;
using static BracketGen.Design.Checks.Bound;
using static BracketGen.Design.Checks.CheckKind;
using static BracketGen.Design.Checks.CheckScope;

namespace BracketGen.Design.Checks;

/// <summary>The one catalogue of all checks; docs/checks.md is made from it.</summary>
public static class CheckCatalogue
{
    /// <summary>Every check, in the order of <see cref="CheckId"/>.</summary>
    public static ImmutableArray<CheckDefinition> All { get; } =
    [
        Of(CheckId.FreePlay, "free-play", Safety, Quantity.Length, AtLeast, LimitSource.Preference, BeyondTheBracket, InputId.FreePlay, InputId.FreeInnerLength),
        Of(CheckId.ReturnSprings, "return-springs", Safety, Quantity.Number, AtLeast, LimitSource.TwoSprings, BeyondTheBracket, InputId.ReturnSprings),
        Of(CheckId.WideOpen, "wide-open", Function, Quantity.Length, AtLeast, LimitSource.Preference, BeyondTheBracket, InputId.AvailablePull, InputId.FreePlay, InputId.Groove, InputId.Rotation),
        Of(CheckId.OverTravel, "over-travel", Advice, Quantity.Length, AtMost, LimitSource.Preference, BeyondTheBracket, InputId.AvailablePull, InputId.FreePlay, InputId.Groove, InputId.Rotation),
        Of(CheckId.PlatePastSquare, "plate-past-square", Advice, Quantity.Angle, AtMost, LimitSource.Geometry, BeyondTheBracket, InputId.Rotation, InputId.Valve),
        Of(CheckId.MomentArm, "moment-arm", Safety, Quantity.Length, AtLeast, LimitSource.CommonPractice, StopPlace, InputId.Groove, InputId.Rotation, InputId.Pocket),
        Of(CheckId.WrapWideOpen, "wrap-wide-open", Safety, Quantity.Angle, AtLeast, LimitSource.Preference, StopPlace, InputId.Groove, InputId.Rotation, InputId.Pocket),
        Of(CheckId.GrooveLength, "groove-length", Safety, Quantity.Angle, AtLeast, LimitSource.PocketPlusMinus, StopPlace, InputId.GrooveExtent, InputId.Groove, InputId.Pocket),
        Of(CheckId.WireInGroove, "wire-in-groove", Safety, Quantity.Length, AtLeast, LimitSource.CommonPractice, BeyondTheBracket, InputId.GrooveWidth, InputId.Wire),
        Of(CheckId.WireInSlot, "wire-in-slot", Function, Quantity.Length, AtLeast, LimitSource.CommonPractice, BeyondTheBracket, InputId.GrooveWidth, InputId.Wire),
        Of(CheckId.PocketShape, "pocket-shape", Function, Quantity.Number, AtLeast, LimitSource.Geometry, BeyondTheBracket, InputId.PocketShape, InputId.EndFitting),
        Of(CheckId.PocketPlay, "pocket-play", Function, Quantity.Length, AtLeast, LimitSource.CommonPractice, BeyondTheBracket, InputId.PocketShape, InputId.EndFitting),
        Of(CheckId.PocketHold, "pocket-hold", Safety, Quantity.Length, AtLeast, LimitSource.CommonPractice, BeyondTheBracket, InputId.PocketShape, InputId.GrooveWidth, InputId.EndFitting),
        Of(CheckId.PocketTurn, "pocket-turn", Safety, Quantity.Number, AtLeast, LimitSource.Geometry, BeyondTheBracket, InputId.PocketShape, InputId.EndFitting),
        Of(CheckId.PocketDepth, "pocket-depth", Safety, Quantity.Length, AtLeast, LimitSource.Geometry, BeyondTheBracket, InputId.PocketShape, InputId.EndFitting),
        Of(CheckId.WireBend, "wire-bend", Advice, Quantity.Number, AtLeast, LimitSource.SheaveRatio, BeyondTheBracket, InputId.Groove, InputId.Wire, InputId.WireConstruction),
        Of(CheckId.GrooveLoose, "groove-loose", Advice, Quantity.Number, AtMost, LimitSource.CommonPractice, BeyondTheBracket, InputId.GrooveWidth, InputId.Wire),
        Of(CheckId.OuterBoreTight, "outer-bore-tight", Advice, Quantity.Length, AtLeast, LimitSource.CommonPractice, BeyondTheBracket, InputId.OuterDiameter, InputId.Wire),
        Of(CheckId.OuterBoreLoose, "outer-bore-loose", Advice, Quantity.Number, AtMost, LimitSource.CommonPractice, BeyondTheBracket, InputId.OuterDiameter, InputId.Wire),
        Of(CheckId.QuadrantOverlap, "quadrant-overlap", Safety, Quantity.Length, AtLeast, LimitSource.Geometry, BeyondTheBracket, InputId.QuadrantSize, InputId.EndFitting, InputId.KeepOuts, InputId.BodyShape),
        Of(CheckId.QuadrantClearance, "quadrant-clearance", Function, Quantity.Length, AtLeast, LimitSource.Preference, BeyondTheBracket, InputId.QuadrantSize, InputId.EndFitting, InputId.KeepOuts, InputId.BodyShape),
        Of(CheckId.WireOverlap, "wire-overlap", Safety, Quantity.Length, AtLeast, LimitSource.Geometry, StopPlace, InputId.Groove, InputId.FreeInnerLength, InputId.KeepOuts, InputId.BodyShape, InputId.SpringRooms),
        Of(CheckId.WireClearance, "wire-clearance", Function, Quantity.Length, AtLeast, LimitSource.Preference, StopPlace, InputId.Groove, InputId.FreeInnerLength, InputId.KeepOuts, InputId.BodyShape, InputId.SpringRooms),
        Of(CheckId.OuterSideLoad, "outer-side-load", Function, Quantity.Angle, AtMost, LimitSource.Profile, StopPlace, InputId.WireAngles, InputId.Groove, InputId.FreeInnerLength),
        Of(CheckId.OuterRoute, "outer-route", Function, Quantity.Number, AtLeast, LimitSource.Geometry, StopPlace, InputId.Bulkhead, InputId.OuterBendRadius),
        Of(CheckId.OuterLength, "outer-length", Function, Quantity.Length, AtLeast, LimitSource.Profile, StopPlace, InputId.OuterLength, InputId.Bulkhead, InputId.OuterBendRadius),
        Of(CheckId.FittingClearance, "fitting-clearance", Safety, Quantity.Length, AtLeast, LimitSource.Preference, StopPlace, InputId.FreeInnerLength, InputId.EndFitting, InputId.OuterEnd),
        Of(CheckId.FleetAngle, "fleet-angle", Safety, Quantity.Angle, AtMost, LimitSource.Profile, StopPlace, InputId.WireAngles, InputId.FreeInnerLength),
        Of(CheckId.AdjusterReserve, "adjuster-reserve", Function, Quantity.Length, AtLeast, LimitSource.Preference, StopPlace, InputId.OuterEnd, InputId.FreeInnerLength),
        Of(CheckId.BodyDescribed, "body-described", Function, Quantity.Number, AtLeast, LimitSource.Geometry, BeyondTheBracket, InputId.BodyShape, InputId.KeepOuts),
        Of(CheckId.MountNormal, "mount-normal", Making, Quantity.Number, AtLeast, LimitSource.Geometry, BeyondTheBracket, InputId.Mount, InputId.BodyShape),
        Of(CheckId.BracketShape, "bracket-shape", Function, Quantity.Number, AtLeast, LimitSource.Geometry, ShapeAndPlace, InputId.Mount, InputId.FreeInnerLength),
        Of(CheckId.BoltHoleEdge, "bolt-hole-edge", Making, Quantity.Length, AtLeast, LimitSource.EdgeDistance, ShapeAndPlace, InputId.Mount, InputId.Sheet),
        Of(CheckId.StopHoleEdge, "stop-hole-edge", Making, Quantity.Length, AtLeast, LimitSource.EdgeDistance, ShapeAndPlace, InputId.OuterEnd, InputId.Sheet),
        Of(CheckId.SlotEdge, "slot-edge", Making, Quantity.Length, AtLeast, LimitSource.CommonPractice, ShapeAndPlace, InputId.OuterEnd, InputId.Sheet),
        Of(CheckId.SmallestHole, "smallest-hole", Making, Quantity.Length, AtLeast, LimitSource.CommonPractice, ShapeAndPlace, InputId.Shop, InputId.Sheet),
        Of(CheckId.HoleBend, "hole-bend", Making, Quantity.Length, AtLeast, LimitSource.CommonPractice, ShapeAndPlace, InputId.Shop, InputId.Sheet),
        Of(CheckId.BendRadius, "bend-radius", Making, Quantity.Length, AtLeast, LimitSource.Material, ShapeAndPlace, InputId.Shop, InputId.Sheet),
        Of(CheckId.ShortestFlange, "shortest-flange", Making, Quantity.Length, AtLeast, LimitSource.VDie, ShapeAndPlace, InputId.Shop, InputId.Sheet),
        Of(CheckId.BendAngle, "bend-angle", Making, Quantity.Angle, AtMost, LimitSource.CommonPractice, ShapeAndPlace, InputId.Shop),
        Of(CheckId.BendOrder, "bend-order", Making, Quantity.Number, AtLeast, LimitSource.Geometry, ShapeAndPlace, InputId.Shop, InputId.Sheet),
        Of(CheckId.DieShoulders, "die-shoulders", Making, Quantity.Fraction, AtLeast, LimitSource.CommonPractice, ShapeAndPlace, InputId.Shop, InputId.Sheet),
        Of(CheckId.HoleOverDie, "hole-over-die", Making, Quantity.Length, AtLeast, LimitSource.VDie, ShapeAndPlace, InputId.Shop, InputId.Sheet),
        Of(CheckId.BendGauge, "bend-gauge", Advice, Quantity.Length, AtMost, LimitSource.CommonPractice, ShapeAndPlace, InputId.Shop),
        Of(CheckId.Finish, "finish", Advice, Quantity.Number, AtLeast, LimitSource.CommonPractice, ShapeAndPlace, InputId.Shop, InputId.Sheet),
        Of(CheckId.ClipNeck, "clip-neck", Function, Quantity.Length, AtMost, LimitSource.Profile, ShapeAndPlace, InputId.OuterEnd, InputId.Sheet),
        Of(CheckId.FittingThroughStop, "fitting-through-stop", Function, Quantity.Length, AtLeast, LimitSource.Geometry, ShapeAndPlace, InputId.EndFitting, InputId.OuterEnd),
        Of(CheckId.KeepOut, "keep-out", Function, Quantity.Length, AtLeast, LimitSource.Preference, ShapeAndPlace, InputId.KeepOuts, InputId.Mount),
        Of(CheckId.BodyClearance, "body-clearance", Function, Quantity.Length, AtLeast, LimitSource.Preference, ShapeAndPlace, InputId.BodyShape, InputId.Mount),
        Of(CheckId.OuterClearance, "outer-clearance", Function, Quantity.Length, AtLeast, LimitSource.Preference, ShapeAndPlace, InputId.Bulkhead, InputId.OuterLength, InputId.OuterDiameter, InputId.KeepOuts, InputId.BodyShape, InputId.SpringRooms),
        Of(CheckId.OuterEndClearance, "outer-end-clearance", Function, Quantity.Length, AtLeast, LimitSource.Preference, ShapeAndPlace, InputId.OuterEnd, InputId.KeepOuts, InputId.BodyShape, InputId.SpringRooms),
        Of(CheckId.OuterMoving, "outer-moving", Safety, Quantity.Length, AtLeast, LimitSource.Preference, ShapeAndPlace, InputId.QuadrantSize, InputId.EndFitting, InputId.OuterEnd, InputId.Bulkhead, InputId.OuterLength),
        Of(CheckId.MovingParts, "moving-parts", Safety, Quantity.Length, AtLeast, LimitSource.Preference, ShapeAndPlace, InputId.QuadrantSize, InputId.EndFitting, InputId.Wire, InputId.SpringRooms),
        Of(CheckId.BoltRoom, "bolt-room", Making, Quantity.Length, AtLeast, LimitSource.CommonPractice, ShapeAndPlace, InputId.Mount),
        Of(CheckId.StopRoom, "stop-room", Making, Quantity.Length, AtLeast, LimitSource.CommonPractice, ShapeAndPlace, InputId.OuterEnd),
        Of(CheckId.LipApart, "lip-apart", Making, Quantity.Length, AtLeast, LimitSource.CommonPractice, ShapeAndPlace, InputId.Sheet),
        Of(CheckId.FlangesApart, "flanges-apart", Making, Quantity.Length, AtLeast, LimitSource.CommonPractice, ShapeAndPlace, InputId.Sheet),
        Of(CheckId.SheetAllowed, "sheet-allowed", Making, Quantity.Number, AtLeast, LimitSource.Preference, ExistingBracket, InputId.Sheet),
        Of(CheckId.MountPattern, "mount-pattern", Making, Quantity.Length, AtMost, LimitSource.CommonPractice, ExistingBracket, InputId.Mount),
        Of(CheckId.MountThreads, "mount-threads", Making, Quantity.Number, AtLeast, LimitSource.Geometry, ExistingBracket, InputId.Mount),
        Of(CheckId.MountBosses, "mount-bosses", Making, Quantity.Length, AtLeast, LimitSource.Geometry, ExistingBracket, InputId.Mount),
        Of(CheckId.StopOpening, "stop-opening", Function, Quantity.Length, AtLeast, LimitSource.Geometry, ExistingBracket, InputId.OuterEnd),
        Of(CheckId.StopPlay, "stop-play", Function, Quantity.Length, AtMost, LimitSource.CommonPractice, ExistingBracket, InputId.OuterEnd),
        Of(CheckId.StopSlot, "stop-slot", Function, Quantity.Number, AtLeast, LimitSource.Geometry, ExistingBracket, InputId.OuterEnd),
        Of(CheckId.StopMetal, "stop-metal", Making, Quantity.Length, AtLeast, LimitSource.Geometry, ExistingBracket, InputId.OuterEnd),
        Of(CheckId.StopSquare, "stop-square", Function, Quantity.Angle, AtMost, LimitSource.Profile, ExistingBracket, InputId.WireAngles, InputId.Mount),
        Of(CheckId.StopPlace, "stop-place", Function, Quantity.Length, AtMost, LimitSource.CommonPractice, ExistingBracket, InputId.FreeInnerLength),
        Of(CheckId.OuterBendRadius, "outer-bend-radius", Function, Quantity.Length, AtLeast, LimitSource.Profile, WholeMechanism, InputId.Bulkhead, InputId.OuterLength, InputId.OuterBendRadius, InputId.EngineMovement),
        Of(CheckId.OuterSpare, "outer-spare", Advice, Quantity.Angle, AtMost, LimitSource.Judgement, WholeMechanism, InputId.Bulkhead, InputId.OuterLength),
        Of(CheckId.OuterLine, "outer-line", Advice, Quantity.Number, AtLeast, LimitSource.Geometry, WholeMechanism, InputId.Bulkhead),
        Of(CheckId.FreePlayMoving, "free-play-moving", Safety, Quantity.Length, AtLeast, LimitSource.Geometry, WholeMechanism, InputId.FreePlay, InputId.EngineMovement, InputId.OuterBore, InputId.Wire, InputId.Bulkhead, InputId.OuterLength),
        Of(CheckId.OuterReach, "outer-reach", Safety, Quantity.Fraction, AtLeast, LimitSource.Geometry, WholeMechanism, InputId.EngineMovement, InputId.Bulkhead, InputId.OuterLength, InputId.OuterBendRadius),
        Of(CheckId.WideOpenLoaded, "wide-open-loaded", Function, Quantity.Length, AtLeast, LimitSource.Preference, WholeMechanism, InputId.AvailablePull, InputId.FreePlay, InputId.Groove, InputId.Rotation, InputId.ReturnSprings, InputId.Wire, InputId.OuterStiffness, InputId.OuterLength, InputId.Friction, InputId.OpeningDrag, InputId.ShaftDrag),
        Of(CheckId.ReturnMargin, "return-margin", Safety, Quantity.Fraction, AtLeast, LimitSource.CommonPractice, WholeMechanism, InputId.ReturnSprings, InputId.Friction, InputId.ClosingDrag, InputId.ShaftDrag, InputId.OuterBends, InputId.EngineMovement, InputId.PadLoad, InputId.PedalLever),
        Of(CheckId.ReturnOneFailed, "return-one-failed", Safety, Quantity.Fraction, AtLeast, LimitSource.TwoSprings, WholeMechanism, InputId.ReturnSprings, InputId.Friction, InputId.ClosingDrag, InputId.ShaftDrag, InputId.OuterBends, InputId.EngineMovement, InputId.PadLoad, InputId.PedalLever),
        Of(CheckId.ClosingTime, "closing-time", Advice, Quantity.Time, AtMost, LimitSource.ClosingTime, WholeMechanism, InputId.ReturnSprings, InputId.Friction, InputId.ClosingDrag, InputId.ShaftDrag, InputId.OuterBends, InputId.EngineMovement, InputId.PadLoad, InputId.PedalLever, InputId.Inertia),
        Of(CheckId.FootForce, "foot-force", Advice, Quantity.Force, AtMost, LimitSource.CommonPractice, WholeMechanism, InputId.ReturnSprings, InputId.Friction, InputId.OpeningDrag, InputId.ShaftDrag, InputId.OuterBends, InputId.EngineMovement, InputId.PedalLever),
        Of(CheckId.Suddenness, "suddenness", Advice, Quantity.Number, AtMost, LimitSource.CommonPractice, WholeMechanism, InputId.Groove, InputId.PedalLever, InputId.Valve),
        Of(CheckId.ProbabilityCloses, "probability-closes", Safety, Quantity.Fraction, AtLeast, LimitSource.Judgement, WholeMechanism, InputId.FreeInnerLength, InputId.FreePlay, InputId.Groove, InputId.Pocket, InputId.Mount, InputId.Shop),
        Of(CheckId.ProbabilityWideOpen, "probability-wide-open", Function, Quantity.Fraction, AtLeast, LimitSource.Judgement, WholeMechanism, InputId.AvailablePull, InputId.FreePlay, InputId.Groove, InputId.Rotation, InputId.ReturnSprings, InputId.OuterStiffness),
        Of(CheckId.ProbabilityAdjuster, "probability-adjuster", Function, Quantity.Fraction, AtLeast, LimitSource.Judgement, WholeMechanism, InputId.FreeInnerLength, InputId.OuterEnd, InputId.Mount, InputId.Shop),
        Of(CheckId.ProbabilityInGroove, "probability-in-groove", Safety, Quantity.Fraction, AtLeast, LimitSource.Judgement, WholeMechanism, InputId.GrooveExtent, InputId.Pocket, InputId.Groove, InputId.Mount, InputId.Shop),
        Of(CheckId.FreePlayMost, "free-play-max", Advice, Quantity.Length, AtMost, LimitSource.Judgement, WholeMechanism, InputId.FreePlay, InputId.FreeInnerLength, InputId.OuterEnd, InputId.Mount, InputId.Shop),
        Of(CheckId.MountHolesFit, "mount-holes-fit", Advice, Quantity.Length, AtMost, LimitSource.BoltPlay, BeyondTheBracket, InputId.Mount),
        Of(CheckId.DeadBand, "dead-band", Function, Quantity.Angle, AtMost, LimitSource.CommonPractice, WholeMechanism, InputId.Sensor, InputId.Controller),
        Of(CheckId.ControllerZero, "controller-zero", Function, Quantity.Angle, AtMost, LimitSource.CommonPractice, WholeMechanism, InputId.Sensor, InputId.Controller),
        Of(CheckId.SensorClosed, "sensor-closed", Function, Quantity.Voltage, AtMost, LimitSource.CommonPractice, WholeMechanism, InputId.Sensor, InputId.Controller),
        Of(CheckId.SensorLow, "sensor-min", Function, Quantity.Voltage, AtLeast, LimitSource.Profile, WholeMechanism, InputId.Sensor, InputId.Controller),
        Of(CheckId.SensorHigh, "sensor-max", Function, Quantity.Voltage, AtMost, LimitSource.Profile, WholeMechanism, InputId.Sensor, InputId.Controller),
        Of(CheckId.StampedYield, "stamped-yield", Safety, Quantity.Number, AtLeast, LimitSource.Preference, OwnStrength, InputId.Sheet, InputId.OuterStiffness, InputId.OuterLength, InputId.Wire, InputId.AvailablePull, InputId.PedalLever),
        Of(CheckId.Endurance, "endurance", Safety, Quantity.Number, AtLeast, LimitSource.Preference, OwnStrength, InputId.Sheet, InputId.ReturnSprings),
        Of(CheckId.StopGive, "stop-give", Function, Quantity.Length, AtMost, LimitSource.Preference, OwnStrength, InputId.Sheet, InputId.ReturnSprings),
        Of(CheckId.Resonance, "resonance", Function, Quantity.Frequency, AtLeast, LimitSource.CommonPractice, OwnStrength, InputId.Sheet, InputId.Engine, InputId.OuterEnd),
    ];

    /// <summary>What a check is.</summary>
    public static CheckDefinition Of(CheckId id) => All[(int)id];

    private static CheckDefinition Of(
        CheckId id, string code, CheckKind kind, Quantity unit, Bound bound, LimitSource source, CheckScope scope, params ImmutableArray<InputId> inputs) =>
        new(id, code, kind, unit, bound, source, scope, inputs);
}
