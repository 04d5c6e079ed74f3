namespace BracketGen.Strength.Model;

/// <summary>What the strength calculation takes for zero, with the reason for each size.</summary>
internal static class StrengthTolerance
{
    /// <summary>
    /// A triangle whose area is a smaller part of its sides squared has none: its thickness is lost in the round-off of its corners.
    /// </summary>
    public const double NoArea = 1e-14;

    /// <summary>
    /// Round-off of the in-circle determinant, as a part of the sum of its terms' sizes: about ten operations of 1.1e-16 each, and ten
    /// times as much for safety. A smaller determinant is computed again in whole numbers.
    /// </summary>
    public const double InCircle = 1e-14;

    /// <summary>Nodes that the mesher put on a rim lie within this part of its radius of it: far more than the mesher
    /// rounds by, far less than an edge of the mesh.</summary>
    public const double OnRim = 1e-3;

    /// <summary>A pivot this small against its diagonal is what rounding leaves of zero.</summary>
    public const double Singular = 1e-14;

    /// <summary>A vector of which no more than this part lies outside the space spanned so far adds nothing but round-off to it.</summary>
    public const double Dependent = 1e-12;

    /// <summary>The same for a shape that serves a bound: leaving it out can only raise the bound.</summary>
    public const double DependentShape = 1e-9;

    /// <summary>
    /// How much of something structureless is mixed into likely mode shapes, as a part of their largest entry: enough that no mode is missed, little enough that
    /// they stay likely.
    /// </summary>
    public const double Structureless = 0.02;

    /// <summary>
    /// Accuracy of an eigenvector, as a part of it; its eigenvalue is then accurate to about the square of this.
    /// </summary>
    public const double Eigenvector = 1e-6;

    /// <summary>Points lie in one line when the determinant of their moments of inertia is this part of its size: off the line by less than 1e-6 of their spread.</summary>
    public const double Line = 1e-12;

    /// <summary>A matrix is diagonal when the squares off its diagonal are this part of all: entries of 1e-15, round-off.</summary>
    public const double OffDiagonal = 1e-30;
}
