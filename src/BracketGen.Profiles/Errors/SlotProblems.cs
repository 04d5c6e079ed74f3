using BracketGen.Geometry;

namespace BracketGen.Profiles.Errors;

/// <summary>A key that says nothing without another one.</summary>
/// <param name="Needed">The key that is missing.</param>
/// <param name="Description">What it is, as the schema says it.</param>
/// <param name="Key">The key that is there.</param>
public sealed record KeyNeedsKey(string Needed, string Description, string Key) : ProfileProblem;

/// <summary>A direction of slotted mount holes that is square to the mount face.</summary>
/// <param name="Normal">Normal of the face.</param>
/// <param name="Body">Code of the throttle body in a family; null in a job.</param>
public sealed record SlotSquareToFace(Vector3 Normal, string? Body) : ProfileProblem;
