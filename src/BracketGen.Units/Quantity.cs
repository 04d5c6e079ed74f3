namespace BracketGen.Units;

/// <summary>What a number measures.</summary>
/// <remarks>The internal unit of each is named beside it; a number without a unit in the code is in that.</remarks>
public enum Quantity
{
    /// <summary>A plain number.</summary>
    Number,

    /// <summary>mm.</summary>
    Length,

    /// <summary>rad.</summary>
    Angle,

    /// <summary>A part of one, written in percent.</summary>
    Fraction,

    /// <summary>N.</summary>
    Force,

    /// <summary>N·mm.</summary>
    Torque,

    /// <summary>MPa.</summary>
    Stress,

    /// <summary>t.</summary>
    Mass,

    /// <summary>t/mm³.</summary>
    Density,

    /// <summary>N/mm.</summary>
    Stiffness,

    /// <summary>V.</summary>
    Voltage,

    /// <summary>Hz.</summary>
    Frequency,

    /// <summary>mm².</summary>
    Area,

    /// <summary>s.</summary>
    Time,

    /// <summary>1/min, of a shaft.</summary>
    Speed,

    /// <summary>t·mm², a moment of inertia.</summary>
    Inertia,
}
