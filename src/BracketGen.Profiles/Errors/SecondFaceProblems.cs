using BracketGen.Geometry;

namespace BracketGen.Profiles.Errors;

/// <summary>Why a second face cannot take a flange of the bracket.</summary>
public enum SecondFaceMistake
{
    /// <summary>It stands as the mount face does: a step, which spacers bridge.</summary>
    Parallel,

    /// <summary>It faces so far the other way that no press brake bends to it.</summary>
    TooSharp,

    /// <summary>Its holes lie before the line where the faces meet and those of the mount face behind it, or the other way round: a bracket would have to pass through metal.</summary>
    OtherSide,

    /// <summary>A hole lies so near the line that its boss reaches over it.</summary>
    NearLine,

    /// <summary>The line where the faces meet is farther from a hole than a bracket reaches.</summary>
    FarLine,

    /// <summary>Neither a direction, nor three points of the face away from one line.</summary>
    NoDirection,
}

/// <summary>A second face that does not go with the mount face.</summary>
/// <param name="Mistake">What is wrong.</param>
/// <param name="Turn">Bend angle from the mount face to it.</param>
/// <param name="Hole">The hole of it or of the mount face, counted from 1; zero where it is no matter of one hole.</param>
/// <param name="IsOnSecond">Whether that hole lies on the second face.</param>
/// <param name="Distance">Distance (mm) of the hole from the line; for parallel faces how far the second lies above the mount face.</param>
/// <param name="Limit">What is allowed (mm).</param>
public sealed record SecondFaceWrong(SecondFaceMistake Mistake, Angle Turn = default, int Hole = 0, bool IsOnSecond = false, double Distance = 0, double Limit = 0) : ProfileProblem;
