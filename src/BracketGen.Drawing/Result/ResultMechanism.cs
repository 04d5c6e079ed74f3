namespace BracketGen.Drawing.Result;

/// <summary>
/// The whole mechanism. Lengths in mm, angles in degrees, forces in N, torques in N·mm, voltages in V; parts of a whole from 0 to 1.
/// </summary>
public sealed record ResultMechanism(
    ResultOuter Outer, ResultLoaded? UnderLoad, IReadOnlyList<ResultForce> Forces, ResultReturn? Return, IReadOnlyList<ResultFailure> Failures, ResultProgression? Progression,
    ResultSensor? Sensor, ResultUncertainty? Uncertainty);

/// <summary>The outer: friction, and its way to the bulkhead where the job gives one.</summary>
public sealed record ResultOuter(
    double TotalBend, double Friction, double FrictionPlusMinus, double Wander, double? BendRadius, double? RouteLength, double? Spare,
    double? SpareBend, bool? IsTooLong, double? LengthToOrder, string? Problem, IReadOnlyList<ResultOuterLine>? Lines,
    IReadOnlyList<IReadOnlyList<double>>? Points);

/// <summary>A stable line in which the outer can lie at its length; a piece of it where clips fix length and direction.</summary>
public sealed record ResultOuterLine(int Piece, double Length, double Bend, double? MinRadius, double TightestAt, double Turning, bool IsLooped);

/// <summary>The travel with the wire under tension.</summary>
public sealed record ResultLoaded(
    double LostMotionPerNewton, double LostAtFirstMove, double LostWideOpen, double OverTravel, double Reached, double TensionOnFloor);

/// <summary>The foot's force at one opening.</summary>
public sealed record ResultForce(double Opening, double PadTravel, double Tension, double Pressing, double Releasing);

/// <summary>What is left of the springs, minimum over the sweep: weakest springs, most friction and drag.</summary>
public sealed record ResultReturn(
    double? MinPart, double AtOpening, double? MinPartOneFailed, ResultDrag ClosingDrag, ResultDrag OpeningDrag, ResultDrag ShaftDrag, double? MaxClosingDrag,
    double? ClosingTime, IReadOnlyList<ResultReturnPoint> Points);

/// <summary>A drag as it was given or assumed, and what it may be where it was assumed.</summary>
public sealed record ResultDrag(double Value, double PlusMinus, string Evidence, double? Worst);

/// <summary>A part that breaks or comes loose, and what the valve does then.</summary>
public sealed record ResultFailure(
    string Id, string What, string Rule, string State, double? TorqueLeft, double? ClosingTime, string Keeps);

/// <summary>Closing torque at one opening and what friction and pedal take of it.</summary>
public sealed record ResultReturnPoint(double Opening, double Spring, double? Needed);

/// <summary>Pedal to valve to flow area, each as a part of its full range.</summary>
public sealed record ResultProgression(double PedalAtFirstMove, double Suddenness, IReadOnlyList<ResultProgressionPoint> Points);

/// <summary>One point of the progression.</summary>
public sealed record ResultProgressionPoint(double Pedal, double Valve, double Area, double? Volts);

/// <summary>The position sensor and its set-up target.</summary>
public sealed record ResultSensor(double ClosedVolts, double OpenVolts, double ClosedTarget, double TurnToTarget, double? DeadBand);

/// <summary>How sure the travel is.</summary>
public sealed record ResultUncertainty(
    int Samples, double Closes, double ReachesWideOpen, double? WithinAdjuster, double StaysInGroove, ResultSamplings Sampling, double? AdjusterRangeNeeded, double? AdjusterRangeWorstCase,
    ResultSpread FreePlayUntouched, ResultSpread OverTravel, ResultSpread AdjusterNeed, string NearestToFailing,
    IReadOnlyList<ResultContribution> Contributions);

/// <summary>What sampling leaves open of each probability.</summary>
public sealed record ResultSamplings(ResultSampling Closes, ResultSampling ReachesWideOpen, ResultSampling? WithinAdjuster, ResultSampling StaysInGroove);

/// <summary>Standard error of a probability, and the part of it that is proven with 95 % confidence.</summary>
public sealed record ResultSampling(double StandardError, double Proven);

/// <summary>How an output is spread: with every input at its value, worst cases, and where 98 of 100 lie.</summary>
public sealed record ResultSpread(double Nominal, double Min, double Max, double From1Percent, double To99Percent);

/// <summary>One quantity's part of the variance of what is nearest to failing.</summary>
public sealed record ResultContribution(string Name, double Share, bool CanBeMeasuredAgain);
