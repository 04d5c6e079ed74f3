using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[engine]</c> of a throttle body: what shakes the bracket.</summary>
internal static class EngineSection
{
    private static readonly Key<int> Cylinders = new("cylinders", new CountForm(1, 24), "Number of cylinders.");

    private static readonly Key<double> MaxSpeed = new(
        "max_speed", QuantityForm.Number(500, 25000), "Maximum speed of the crankshaft, in revolutions a minute; no unit.");

    private static readonly Key<Measured> IdleSpeed = Key<Measured>.WithDefault(
        "idle_speed", new MeasuredForm(QuantityForm.Number(100, 5000), 1000),
        "Idle speed of the crankshaft, in revolutions a minute; no unit (default: assumed, common practice, no source).", new(Engine.UsualIdleSpeed, 0, Evidence.Assumed));

    private static readonly Key<int> Strokes = Key<int>.WithDefault(
        "cycle", new WordForm<int>(("four-stroke", 4), ("two-stroke", 2)), "Working cycle.", 4);

    public static Section<Engine> Form { get; } = new(
        [Cylinders, MaxSpeed, IdleSpeed, Strokes],
        v => new(v.Get(Cylinders), v.Get(MaxSpeed), v.Get(Strokes)) { IdleSpeed = v.Get(IdleSpeed) },
        [new([MaxSpeed, IdleSpeed], CheckIdle)]);

    private static void CheckIdle(SectionValues values)
    {
        if (values.Get(IdleSpeed).Value >= values.Get(MaxSpeed))
        {
            values.Report(values.Has(IdleSpeed) ? IdleSpeed : MaxSpeed, new Contradiction(Contradictory.IdleSpeed));
        }
    }
}
