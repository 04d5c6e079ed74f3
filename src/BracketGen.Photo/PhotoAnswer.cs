using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Photo;

/// <summary>Why a photograph tells nothing, or less than was asked.</summary>
public enum PhotoProblem
{
    /// <summary>Fewer than four marks, or three of the four in line.</summary>
    TooFewMarks,

    /// <summary>The marks lie as in a mirror, or as no camera sees them: numbers are mixed up.</summary>
    Mirrored,

    /// <summary>A mark lies far from where the others say.</summary>
    MarkOff,

    /// <summary>The lens bends straight lines more than can be taken out.</summary>
    LensBends,

    /// <summary>Something lies off the face, and the camera's distance is neither given nor found well enough to take that out.</summary>
    DistanceUnknown,

    /// <summary>The clicks of a circle lie in line or are too few.</summary>
    NoCircle,

    /// <summary>Something is marked as high as the camera or higher.</summary>
    AboveCamera,
}

/// <summary>What a photograph tells, or why it does not.</summary>
/// <param name="Problem">Why not; null where it tells.</param>
/// <param name="Mark">The mark that it is about; 0 for none.</param>
/// <param name="Off">How far that mark is off, or lines are bent (mm).</param>
/// <param name="Findings">What it tells; null where there is a problem.</param>
public sealed record PhotoAnswer(PhotoProblem? Problem, int Mark, double Off, PhotoFindings? Findings);

/// <summary>A point of a cam's edge.</summary>
/// <param name="Angle">Polar angle about the shaft, counter-clockwise from the x axis.</param>
/// <param name="Radius">Distance of the wire's middle from the shaft's axis, or of the edge where the way to the wire is not known (mm).</param>
public readonly record struct CamPoint(Angle Angle, double Radius);

/// <summary>What a photograph tells of a throttle body, in the throttle frame.</summary>
/// <remarks>Each ± holds the true value in at least 95 of 100 photographs, given that every ± that went in holds.</remarks>
public sealed record PhotoFindings
{
    /// <summary>Height of the lens over the face (mm), with its ±.</summary>
    public required Measured CameraHeight { get; init; }

    /// <summary>Between the camera's axis and the face's normal.</summary>
    public required Angle Tilt { get; init; }

    /// <summary>How far the lens's distortion shifts a mark at most (mm on the face); taken out.</summary>
    public required double Bend { get; init; }

    /// <summary>How far a mark is off where the others say, at most (mm on the face).</summary>
    public required double MarksOff { get; init; }

    /// <summary>Standard deviation of a click (mm on the face).</summary>
    public required double Click { get; init; }

    /// <summary>Whether repeated clicks tell how well was clicked; assumed otherwise.</summary>
    public required bool IsClickMeasured { get; init; }

    /// <summary>Number of marks.</summary>
    public required int Marks { get; init; }

    /// <summary>Radius of the quadrant's edge (mm); null where it was not marked or is a cam.</summary>
    public Measured? OuterRadius { get; init; }

    /// <summary>Radius of the wire's middle (mm); null where it is not known.</summary>
    public Measured? PitchRadius { get; init; }

    /// <summary>From the shaft's axis to the middle of the edge's circle (mm); a circle about the shaft has zero within the ±.</summary>
    public Measured? EdgeOffset { get; init; }

    /// <summary>Points of the cam by rising angle; empty without one.</summary>
    public ImmutableArray<CamPoint> Cam { get; init; } = [];

    /// <summary>± of the radii of the cam (mm).</summary>
    public double CamPlusMinus { get; init; }

    /// <summary>Whether the cam's radii are those of the wire's middle, not of the edge.</summary>
    public bool IsCamOfWire { get; init; }

    /// <summary>Polar angle of the pocket with its ±, radians; null where it was not marked.</summary>
    public MeasuredAngle? PocketAngle { get; init; }

    /// <summary>Each hole of the mount; null where it was not marked.</summary>
    public ImmutableArray<FoundHole?> Holes { get; init; } = [];

    /// <summary>Outlines of all that was found, to lay over the photograph (pixels).</summary>
    public ImmutableArray<Overlay> Overlays { get; init; } = [];

    /// <summary>Where the photograph shows the plane of the quadrant's edge, to lay it square-on under a sketch.</summary>
    public PhotoGrid? Grid { get; init; }
}

/// <summary>Where the photograph shows the points of a square grid about the shaft, in a plane along the face.</summary>
/// <param name="Half">Half the side of the grid (mm).</param>
/// <param name="Count">Points along a side.</param>
/// <param name="Seen">Where each is seen (pixels): row by row from the lowest y, each from the lowest x of the throttle frame.</param>
public sealed record PhotoGrid(double Half, int Count, ImmutableArray<Vector2> Seen);

/// <summary>A hole of the mount that was found.</summary>
/// <param name="At">Its centre on the face.</param>
/// <param name="PlusMinus">± of each coordinate.</param>
public readonly record struct FoundHole(ThrottlePoint At, PointPlusMinus PlusMinus);

/// <summary>What a line over the photograph shows.</summary>
public enum Shown
{
    /// <summary>The end of the throttle shaft.</summary>
    Shaft,

    /// <summary>The x axis of the throttle frame.</summary>
    Axis,

    /// <summary>The edge of the quadrant.</summary>
    Edge,

    /// <summary>The middle of the wire in the groove.</summary>
    Wire,

    /// <summary>The pocket.</summary>
    Pocket,

    /// <summary>A hole of the mount.</summary>
    Hole,
}

/// <summary>A line over the photograph.</summary>
/// <param name="What">What it shows.</param>
/// <param name="Line">Its points (pixels).</param>
public sealed record Overlay(Shown What, ImmutableArray<Vector2> Line);
