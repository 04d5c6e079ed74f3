using BracketGen.Geometry;

namespace BracketGen.Profiles.Units;

/// <summary>What a value measures.</summary>
internal enum UnitKind
{
    Number,
    Length,
    Angle,
    Force,
    Torque,
    Stress,
    Density,
    Stiffness,
    Voltage,
}
