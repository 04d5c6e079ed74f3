using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[cable.fitting]</c> of a vehicle.</summary>
internal static class EndFittingSection
{
    private static readonly Key<double> Diameter = new("diameter", QuantityForm.Length(1, 30), "Diameter of the end fitting.");

    private static readonly Key<double> Length = new("length", QuantityForm.Length(1, 60), "Length of the end fitting along its own axis.");

    public static Variants<EndFitting> Form { get; } = new(
        "kind",
        "Its shape: a barrel lies across the wire, a nipple along it.",
        ("barrel", Cylinder(EndFittingKind.Barrel)),
        ("nipple", Cylinder(EndFittingKind.Nipple)),
        ("ball", new([Diameter], v => new(EndFittingKind.Ball, v.Get(Diameter), v.Get(Diameter)))));

    private static Section<EndFitting> Cylinder(EndFittingKind kind) =>
        new([Diameter, Length], v => new(kind, v.Get(Diameter), v.Get(Length)));
}
