namespace BracketGen.Mechanism.Rods;

/// <summary>Where the search for an elastic line stops and what it takes for zero, with the reason for each size. Length of the rod one.</summary>
internal static class RodTolerance
{
    /// <summary>Newton steps after which a start is given up: one that leads anywhere takes 8 to 30.</summary>
    public const int MostSteps = 50;

    /// <summary>Largest turn of a link in one step (rad): beyond it the step's straight line says nothing of the sphere.</summary>
    public const double MostTurn = 0.7;

    /// <summary>A step this small (rad) is the last: the error falls with its square.</summary>
    public const double LastTurn = 1e-7;

    /// <summary>A step below this (rad) that is not half the one before is round-off, and small enough.</summary>
    public const double RoundOffTurn = 2e-5;

    /// <summary>Steps below this (rad) are taken whole: Newton's method converges from there on.</summary>
    public const double SurelyNear = 0.02;

    /// <summary>With a step below this (rad) a line that lies along one already known will end in it.</summary>
    public const double SurelySame = 0.005;

    /// <summary>Part of the expected decrease that a step must bring (Armijo's rule; usual value).</summary>
    public const double Decrease = 1e-4;

    /// <summary>
    /// Spring on each link that is always there: it holds the free turn about the axis of a rod between ends on one line, and changes no
    /// solution. The softest real modes that matter are ten million times as stiff.
    /// </summary>
    public const double LeastShift = 1e-6;

    /// <summary>First spring to be tried where the energy has no minimum: about the softest mode of a straight rod, π².</summary>
    public const double FirstShift = 3;

    /// <summary>How the spring grows and falls.</summary>
    public const double ShiftUp = 4;

    /// <inheritdoc cref="ShiftUp"/>
    public const double ShiftDown = 3;

    /// <summary>What stands in for a pivot of exactly zero.</summary>
    public const double Pivot = 1e-15;

    /// <summary>Below this part of a link's stiffness a pivot costs too many figures: the system is factored again with another spring.</summary>
    public const double WeakPivot = 1e-6;

    /// <summary>The other spring: a hundredth of what matters, and enough to move the pivots.</summary>
    public const double OtherShift = 0.05;

    /// <summary>A gap smaller than this part of the rod gives no direction to lay the first line along.</summary>
    public const double NoGap = 1e-6;

    /// <summary>A part of a direction smaller than this gives no frame.</summary>
    public const double NoFrame = 1e-6;

    /// <summary>Skew of every start, which keeps symmetric ones off the saddles.</summary>
    public const double Skew = 0.01;

    /// <summary>Links a span in the search from all starts.</summary>
    public const int CoarseLinks = 24;

    /// <summary>Links a span of the line that is reported, at a minimum.</summary>
    public const int FineLinks = 96;

    /// <summary>Links a span at a maximum: enough for an end that turns within a hundredth of the rod.</summary>
    public const int MostLinks = 768;

    /// <summary>
    /// A link is short enough if it turns no more than this (rad), and if the force's own length, √(EI/F), is as many times longer. The answer, extrapolated
    /// from two such chains, is then right to a few parts in a hundred thousand.
    /// </summary>
    public const double LinkTurn = 0.16;

    /// <summary>Two lines with no point farther apart than this part of the rod are one.</summary>
    public const double OneLine = 0.004;

    /// <summary>Part of its length by which a rod must be longer than its gap to have a line at all; closer, it is a straight one or too short.</summary>
    public const double Straight = 1e-9;

    /// <summary>Largest √F times length (F for a bending stiffness of one) that is solved: a tauter rod has its bends within a few thousandths of its ends.</summary>
    public const double Tautest = 200;

    /// <summary>Directions nearer to one line than this (rad) are on it.</summary>
    public const double StraightDirection = 1e-6;

    /// <summary>Two lines of a rod that can turn freely are one where their energies differ by less than this part.</summary>
    public const double SameEnergy = 1e-5;

    /// <summary>Length moved between two spans that no longer matters, as a part of the rod: a twentieth of a millimetre on half a metre.</summary>
    public const double Slid = 1e-4;

    /// <summary>First length that is tried, as a part of what can be moved.</summary>
    public const double FirstSlide = 0.05;

    /// <summary>What a span is longer than its gap at least where the rod slides.</summary>
    public const double Hair = 1e-5;

    /// <summary>Part of a span at each end over which a turned line goes over into the clamp.</summary>
    public const double TurnedEnd = 0.15;

    /// <summary>How far links are moved to leave a line that is not stable (rad).</summary>
    public const double Aside = 0.05;
}
