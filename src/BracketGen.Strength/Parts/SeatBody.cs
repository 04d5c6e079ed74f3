namespace BracketGen.Strength.Parts;

/// <summary>A body fixed to a seat, round about the line through the seat's centre square to the sheet.</summary>
/// <param name="Mass">Mass (tonne), zero or more.</param>
/// <param name="Height">Centre of gravity over the sheet's middle surface (mm): positive on its top, the eye's side of the flat pattern.</param>
/// <param name="AboutAxis">Moment of inertia about that line (tonne·mm²).</param>
/// <param name="AboutAcross">Moment of inertia about any line across it through the centre of gravity (tonne·mm²).</param>
public readonly record struct SeatBody(double Mass, double Height, double AboutAxis, double AboutAcross);
