namespace BracketGen.Design.Inputs;

/// <summary>What the search for a bracket takes for equal, with the reason for each size.</summary>
internal static class DesignTolerance
{
    /// <summary>
    /// Round-off of the cosine of an angle that lies on a limit. Near 0° it stands for 1.4e-6 rad: a micrometre on 700 mm.
    /// </summary>
    public const double Cosine = 1e-12;

    /// <summary>Two faces whose normals span less than this (sine of their angle) are parallel: no bend line is defined between them.</summary>
    public const double NoBendLine = 1e-6;

    /// <summary>A distance that changes by less than this (mm for a millimetre) cannot be set by moving the middle flange.</summary>
    public const double StandsStill = 1e-9;

    /// <summary>Two places of the middle flange closer than this (mm) make the same bracket.</summary>
    public const double SamePlace = 1e-6;

    /// <summary>A bound on the cost is lowered by this: the cost itself, summed in another order, may round off below it.</summary>
    public const double CostRounding = 1e-9;

    /// <summary>A bound on an area is lowered by this part of it, for the same reason.</summary>
    public const double AreaRounding = 1e-12;

    /// <summary>Step (rad) of a difference quotient by an angle: it errs by about half of this part, and round-off over it by far less.</summary>
    public const double AngleStep = 1e-4;

    /// <summary>Step (mm) of a difference quotient by a length: what moves, moves evenly with the length, so only round-off counts, about 1e-10.</summary>
    public const double LengthStep = 1e-3;

    /// <summary>Step (mm) of the tangent of a distance at a point: round-off over it is 1e-8.</summary>
    public const double TangentStep = 1e-5;

    /// <summary>Allowance (mm) for the error of that tangent over a box: a fifth of what a clearance is found to anyway.</summary>
    public const double TangentError = 1e-4;

    /// <summary>Part of a step by which round-off may keep an angle from the limit it lies on.</summary>
    public const double OnStep = 1e-9;

    /// <summary>A give (mm) or a stress (MPa) of nothing: keeps ratios finite, and is below any that a bracket has.</summary>
    public const double Nothing = 1e-12;
}
