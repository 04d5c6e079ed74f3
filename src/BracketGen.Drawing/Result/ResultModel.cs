namespace BracketGen.Drawing.Result;

/// <summary>The machine's copy of a solution. Lengths in mm, angles in degrees, masses in g, whatever the job's unit.</summary>
public sealed record ResultModel(
    string Format, int Version, string Verdict, IReadOnlyList<string> ToProve, ResultJob Job, ResultTravel Travel, ResultStop? Stop, ResultBracket? Bracket,
    ResultMechanism? Mechanism, ResultStrength? Strength, IReadOnlyList<ResultOffer> Offers, int? Choice, IReadOnlyList<string> Reasons, ResultSearch? Search, ResultDiagnosis? Diagnosis,
    IReadOnlyList<ResultCheck> Checks, IReadOnlyList<string> AllowedByName, IReadOnlyList<string> Cautions)
{
    /// <summary>Paths of numbers that could not be calculated and are null; empty in every result of a job that could be solved.</summary>
    public required IReadOnlyList<string> NotCalculated { get; init; }

    /// <summary>The adapter ring under the bracket; null where there is none.</summary>
    public ResultAdapterRing? AdapterRing { get; init; }
}

/// <summary>An adapter ring, flat; coordinates from the lower left corner of its blank, as in its cut file.</summary>
public sealed record ResultAdapterRing(
    string Material, double Thickness, double Mass, double BlankWidth, double BlankHeight, IReadOnlyList<double> BoreCentre, double BoreDiameter, IReadOnlyList<ResultRingHole> Holes, IReadOnlyList<ResultFlangeBolt> Bolts);

/// <summary>A hole of an adapter ring.</summary>
public sealed record ResultRingHole(string Name, string Purpose, IReadOnlyList<double> Centre, double Diameter, string Thread);

/// <summary>A flange bolt as it is with the ring: torque in N·m.</summary>
public sealed record ResultFlangeBolt(string Name, string Thread, double Length, double Engagement, bool IsLonger, double Torque);

/// <summary>What was asked.</summary>
public sealed record ResultJob(
    string Vehicle, string ThrottleBody, string Opens, string Shop, string PartNumber, string Revision, string? Date, string Units);

/// <summary>The travel.</summary>
public sealed record ResultTravel(
    double FreePlay, double AvailablePull, double PullToWideOpen, double OverTravel, double Rotation, double Reached, bool ReachesWideOpen,
    double PedalAtFirstMove, double PedalAtWideOpen, double WrapClosed, double WrapWideOpen);

/// <summary>Where the stop is, in the throttle frame as measured.</summary>
public sealed record ResultStop(
    IReadOnlyList<double> Seat, IReadOnlyList<double> Direction, double LeavingAngle, double StraightWire, double AdjusterShift, double FreePlay);

/// <summary>The bracket.</summary>
public sealed record ResultBracket(
    string Material, double Thickness, double Mass, double BlankArea, double CutLength, double BlankWidth, double BlankHeight,
    string SeatSide, double? DieOpening, IReadOnlyList<ResultBend> Bends, IReadOnlyList<ResultBendStep>? BendSteps, IReadOnlyList<ResultHole> Holes, IReadOnlyList<IReadOnlyList<double>> MountFrame);

/// <summary>A bend; coordinates of the flat pattern from the blank's lower left corner, the strip lies to the left of start-end.</summary>
public sealed record ResultBend(
    int From, int To, IReadOnlyList<double> Start, IReadOnlyList<double> End, string Direction, double Angle, double InsideRadius,
    double Allowance, string Rule, double Relief);

/// <summary>One step of the order of bends; forces in N, per length in N/mm; bend is an index into bends.</summary>
public sealed record ResultBendStep(
    int Bend, bool TopUp, bool NewFlangeInFront, double? DieOpening, string? Punch, bool PunchReversed, double? ToolLength, string? Clamp,
    double SpringbackAllowance, string PlacedBy, IReadOnlyList<ResultFinger> Fingers, double PlusMinus, double? Force, double? ForcePerLength, double? MaxForcePerLength,
    double? SheetInFront);

/// <summary>A finger of the back gauge: distance from the middle of the bend, and its middle along the bend from the left as seen from the front.</summary>
public sealed record ResultFinger(double Distance, double Along);

/// <summary>A hole or slot; coordinates of the flat pattern from the blank's lower left corner.</summary>
public sealed record ResultHole(
    string Name, string Purpose, IReadOnlyList<double> Centre, double Diameter, bool OpenSlot, string? Thread, ResultHoleOutline? Outline);

/// <summary>The outline of a hole that is neither round nor an open slot; the direction that it is laid out by, and the one measure of its kind.</summary>
public sealed record ResultHoleOutline(string Kind, IReadOnlyList<double> Along, double? CornerRadius, double? AcrossFlats, double? Travel);

/// <summary>A check.</summary>
public sealed record ResultCheck(
    string Id, string Title, string Kind, string Unit, double? Value, string Bound, double Limit, double? Margin, double? Spare, string State,
    double? Worst, IReadOnlyList<ResultInput> Inputs, string Source,
    string Consequence);

/// <summary>An input that a check rests on, and how it is known: measured, given or assumed; null if that is not recorded.</summary>
public sealed record ResultInput(string Name, string? Evidence);

/// <summary>A passing bracket worth offering, in the order of its number.</summary>
public sealed record ResultOffer(
    int Number, string Material, double Thickness, IReadOnlyList<double> BendAngles, double Mass, double Give, string Tightest, double Spare, ResultCost Cost);

/// <summary>What a bracket costs: unit the shop's currency, or min for minutes of work.</summary>
public sealed record ResultCost(string Unit, int Batch, double Total, double Bill, IReadOnlyList<ResultCostPart> Parts);

/// <summary>A part of the cost: of the bill, or a preference.</summary>
public sealed record ResultCostPart(string What, bool IsPreference, double Cost);

/// <summary>Why no bracket passes, and what would open a way.</summary>
public sealed record ResultDiagnosis(IReadOnlyList<ResultObstacle> Obstacles, IReadOnlyList<ResultWay> Ways, bool CutShort);

/// <summary>How far the search went.</summary>
public sealed record ResultSearch(int Shapes, int? AllShapes, int Solves, bool Certain);

/// <summary>A check in the way, as the nearest shape misses it.</summary>
public sealed record ResultObstacle(ResultCheck Nearest, int Stopped, int Of);

/// <summary>The smallest change of one input, or of two together, that was tried and opens a way; the check that then decides.</summary>
public sealed record ResultWay(IReadOnlyList<ResultChange> Changes, ResultCheck? Decides);

/// <summary>The change of one input.</summary>
public sealed record ResultChange(string Input, string What, double From, double To);
