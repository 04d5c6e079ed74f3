namespace BracketGen.Mechanism.Numerics;

/// <summary>Where the mechanism's iterations stop and what they take for zero, with the reason for each size.</summary>
internal static class MechanismTolerance
{
    /// <summary>
    /// A step this small (rad) is the last: near the solution the error falls with the square of the step, so it is round-off by now.
    /// </summary>
    public const double LastStep = 1e-9;

    /// <summary>A root is found to this part of the interval searched: three digits above round-off.</summary>
    public const double Root = 1e-13;

    /// <summary>About twice the round-off of a double, as a part of it: what a difference of two equal distances may come to.</summary>
    public const double RoundOff = 4e-16;

    /// <summary>
    /// An interval this narrow (rad), or a number of order one this near to zero, holds nothing but round-off.
    /// </summary>
    public const double Nothing = 1e-15;

    /// <summary>Below this, (eˣ - 1)/x is 1 + x/2 to x²/6 = 2e-11, and more exact than the difference.</summary>
    public const double FewTerms = 1e-5;

    /// <summary>
    /// Two unit vectors whose sum or cross product is no longer than this point along one line: far above the round-off of
    /// such a vector, and far below what a direction is measured to.
    /// </summary>
    public const double OneLine = 1e-12;

    /// <summary>A sum of unit vectors shorter than this gives no direction worth starting from: other starts cover it.</summary>
    public const double NoStart = 1e-6;

    /// <summary>A route's equations are solved until what is missed is this part of its size: well above round-off, far below what matters.</summary>
    public const double RouteSolved = 1e-11;

    /// <summary>A route that misses by more than this part of its size is none: a micrometre on 100 m.</summary>
    public const double RouteMissed = 1e-8;

    /// <summary>Straight length between the bends of a route, as a part of its size, that may be negative by round-off.</summary>
    public const double RouteStraight = 1e-9;

    /// <summary>A determinant smaller than this part of the size squared says nothing of the way to turn.</summary>
    public const double RouteSingular = 1e-14;

    /// <summary>Accuracy of the largest bend radius of a route, as a part of it: below what anyone can lay.</summary>
    public const double RouteRadius = 1e-6;
}
