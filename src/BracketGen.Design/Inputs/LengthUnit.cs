namespace BracketGen.Design.Inputs;

/// <summary>The unit of length in which a job's outputs are written.</summary>
public enum LengthUnit
{
    /// <summary>Millimetres.</summary>
    Millimetre,

    /// <summary>Inches.</summary>
    Inch,
}
