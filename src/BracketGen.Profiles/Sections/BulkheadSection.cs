using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[bulkhead]</c> of a job: in the throttle frame it depends on where the engine sits, so on both vehicle and engine.</summary>
internal static class BulkheadSection
{
    private static readonly Key<Vector3> Point = new(
        "point", new VectorForm(QuantityForm.Length(-4000, 4000), isDirection: false), "Where the outer comes out of the bulkhead, throttle frame.");

    private static readonly Key<Vector3> Direction = new(
        "direction", VectorForm.Direction, "Direction out of the bulkhead, towards the engine; of any length.");

    public static Section<Bulkhead> Form { get; } = new(
        [Point, Direction], v => new(new(v.Get(Point)), v.Get(Direction).Unit));
}
