using BracketGen.Mechanism.Grooves;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[quadrant.pocket]</c> of a throttle body: a bore for a barrel, a socket for a ball, a recess for a nipple.</summary>
internal static class PocketSection
{
    private static readonly Key<double> Diameter = new("diameter", QuantityForm.Length(1, 40), "Inside diameter.");

    private static readonly Key<double> Width = new("width", QuantityForm.Length(1, 40), "Width across the wire.");

    private static readonly Key<double> Length = new("length", QuantityForm.Length(1, 80), "Length along the wire.");

    private static readonly Key<double> Depth = new(
        "depth", QuantityForm.Length(0.5, 80), "Depth from the quadrant's face to the bottom, or through the quadrant where it has none.");

    private static readonly Key<bool> Axis = new(
        "axis", new WordForm<bool>(("along the shaft", true), ("across the shaft", false)), "Direction of the bore's axis; a barrel can turn with the wire only along the shaft.");

    public static Variants<FittingPocket> Form { get; } = new(
        "kind",
        "The fitting it is made for.",
        ("barrel", new([Diameter, Depth, Axis], v => new(PocketKind.Bore, v.Get(Diameter), v.Get(Diameter), v.Get(Depth), v.Get(Axis)))),
        ("ball", new([Diameter, Depth], v => new(PocketKind.Socket, v.Get(Diameter), v.Get(Diameter), v.Get(Depth), true))),
        ("nipple", new([Width, Length, Depth], v => new(PocketKind.Recess, v.Get(Width), v.Get(Length), v.Get(Depth), false))));
}
