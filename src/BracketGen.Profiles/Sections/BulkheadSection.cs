using System.Collections.Immutable;
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

    private static readonly Key<ImmutableArray<OuterClip>> Clips = Key<ImmutableArray<OuterClip>>.WithDefault(
        "clip", new ListForm<OuterClip>(ClipSection.Form, 0, 8), "Clips and grommets that hold the outer, in order from the stop to the bulkhead.", []);

    public static Section<Bulkhead> Form { get; } = new(
        [Point, Direction, Clips], v => new(new(v.Get(Point)), v.Get(Direction).Unit) { Clips = v.Get(Clips) });
}

/// <summary>One <c>[[bulkhead.clip]]</c> of a job.</summary>
internal static class ClipSection
{
    private static readonly Key<Vector3> Point = new(
        "point", new VectorForm(QuantityForm.Length(-4000, 4000), isDirection: false), "Where it holds the middle of the outer, throttle frame.");

    private static readonly Key<Vector3> Direction = new(
        "direction", VectorForm.Direction, "Direction of the outer in it, from the stop to the bulkhead; of any length. Leave out if it lets the outer turn.", isRequired: false);

    private static readonly Key<double> Along = new(
        "outer_before", QuantityForm.Length(1, 5000), "Length of outer from the stop's seat to the clip, if the clip grips it. Leave out if the outer slides through.", isRequired: false);

    public static Section<OuterClip> Form { get; } = new(
        [Point, Direction, Along],
        v => new(new(v.Get(Point)), v.Has(Direction) ? v.Get(Direction).Unit : null, v.OrNull(Along)));
}
