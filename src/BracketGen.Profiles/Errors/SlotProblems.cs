using BracketGen.Geometry;

namespace BracketGen.Profiles.Errors;

/// <summary>A direction of slotted mount holes that is square to the mount face.</summary>
/// <param name="Normal">Normal of the face.</param>
/// <param name="Body">Code of the throttle body in a family; null in a job.</param>
public sealed record SlotSquareToFace(Vector3 Normal, string? Body) : ProfileProblem;

/// <summary>Slotted mount holes on a mount of two faces: what a bracket shifted along one of them does on the other is not looked at.</summary>
/// <param name="Body">Code of the throttle body in a family; null in a job.</param>
public sealed record SlotsOnTwoFaces(string? Body) : ProfileProblem;
