using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[engine_movement]</c> of a job: how far the throttle body moves against the bulkhead.</summary>
internal static class EngineMovementSection
{
    private static readonly Key<double> X = Along("x");

    private static readonly Key<double> Y = Along("y");

    private static readonly Key<double> Z = Along("z");

    private static readonly Key<double> Roll = new(
        "roll", QuantityForm.Angle(0, 20), "How far the throttle body turns about the direction of the crankshaft, each way from rest.");

    private static readonly Key<Vector3> Direction = new(
        "crankshaft_direction", VectorForm.Direction, "Direction of the crankshaft, throttle frame; of any length. If left out, x, y and z are each tried.", isRequired: false);

    private static readonly Key<Vector3> Point = new(
        "crankshaft_point", new VectorForm(QuantityForm.Length(-4000, 4000), isDirection: false),
        "A point on the crankshaft's axis, throttle frame. If left out, the body turns about its own origin, and x, y and z hold what the turn moves it.", isRequired: false);

    public static Section<EngineMovement> Form { get; } = new(
        [X, Y, Z, Roll, Direction, Point],
        v => new()
        {
            X = v.Get(X),
            Y = v.Get(Y),
            Z = v.Get(Z),
            Roll = new(v.Get(Roll)),
            Direction = v.Has(Direction) ? v.Get(Direction).Unit : null,
            Crankshaft = v.Has(Point) ? new(v.Get(Point)) : null,
        });

    private static Key<double> Along(string axis) => new(
        axis, QuantityForm.Length(0, 100), $"How far the throttle body moves along {axis}, each way from rest, throttle frame.");
}
