using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;

namespace BracketGen.Design.Checks;

/// <summary>An end fitting in a pocket.</summary>
/// <param name="Fitting">The fitting.</param>
/// <param name="Pocket">The pocket.</param>
public readonly record struct FittingInPocket(EndFitting Fitting, FittingPocket Pocket)
{
    /// <summary>Whether the fitting's shape belongs in it: a barrel or a ball in a bore, a ball in a socket, a nipple in a recess.</summary>
    public bool Belongs => Fitting.Kind switch
    {
        EndFittingKind.Barrel => Pocket.Kind == PocketKind.Bore,
        EndFittingKind.Ball => Pocket.Kind is PocketKind.Bore or PocketKind.Socket,
        _ => Pocket.Kind == PocketKind.Recess,
    };

    /// <summary>Play in the direction with the smallest (mm); negative if the fitting does not go in.</summary>
    public double Play => Pocket.Kind == PocketKind.Recess
        ? Math.Min(Pocket.Width - Fitting.Diameter, Pocket.Length - Fitting.Length)
        : Pocket.Width - Fitting.Diameter;

    /// <summary>How far the fitting lies below the quadrant's face (mm), resting on the bottom; negative if it sticks out.</summary>
    public double BelowFace => Pocket.Depth - (Pocket.Kind == PocketKind.Bore && Fitting.Kind == EndFittingKind.Barrel ? Fitting.Length : Fitting.Diameter);

    /// <summary>Whether the fitting can turn in it about the throttle shaft's direction, as the wire's direction asks.</summary>
    public bool LetsTurn => Fitting.Kind == EndFittingKind.Ball ? Pocket.Kind != PocketKind.Recess : Pocket.AlongShaft && Fitting.Kind == EndFittingKind.Barrel;
}
