using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Units;

namespace BracketGen.Words.Results;

/// <summary>The engine's movement in words.</summary>
public static class MovementText
{
    /// <summary>Name of the row.</summary>
    public const string Left = "Free play left as the engine moves";

    /// <summary>"±10.0, 10.0, 10.0 mm along x, y, z and ±3.0°, assumed".</summary>
    public static string Of(EngineMovement movement, UnitSystem units) =>
        $"±{units.Number(Quantity.Length, movement.X)}, {units.Number(Quantity.Length, movement.Y)}, {units.Write(Quantity.Length, movement.Z)} along x, y, z and ±{units.Write(Quantity.Angle, movement.Roll.Radians)}"
        + (movement.Evidence == Evidence.Assumed ? ", assumed" : "");

    /// <summary>What it comes from.</summary>
    public static string Remark(MovementStudy study, UnitSystem units) =>
        $"at the worst corner of {Of(study.Movement, units)}: the outer's bends change by "
        + (study.Change is { } change ? $"up to {units.Write(Quantity.Angle, change.Radians)}" : $"{units.Write(Quantity.Angle, MovementStudy.UsualChange.Radians)} (assumed, its line is not known)")
        + (study.Left == study.LeftAtWorst ? "" : $"; {units.Write(Quantity.Length, study.LeftAtWorst)} if the bore, which was not measured, is as wide as it may be");
}
