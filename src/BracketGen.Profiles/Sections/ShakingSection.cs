using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Strength.Shaking;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[shaking]</c> of a throttle body: how its mount face shakes.</summary>
internal static class ShakingSection
{
    private static readonly Key<double> Frequency = new("frequency", new QuantityForm(UnitTable.Hertz, 1, 20000), "Frequency of this corner.");

    private static readonly Key<double> Acceleration = new("acceleration", QuantityForm.Number(0.01, 1000), "Amplitude there, in g (9.80665 m/s²); no unit.");

    private static readonly Key<double> Density = new("density", QuantityForm.Number(1e-8, 100), "Spectral density there, in g²/Hz; no unit.");

    private static readonly Key<Shaking> MountedOn = new(
        "mounted_on",
        new WordForm<Shaking>(("solid manifold", Shaking.SolidManifold), ("flexible plenum", Shaking.FlexiblePlenum)),
        "What carries the throttle body: a published test of parts mounted there stands in for the engine (ISO 16750-3:2023, test XI or III). Leave it out where sine or random is given.",
        isRequired: false);

    private static readonly Key<ImmutableArray<SpectrumPoint>> Sine = Curve(
        "sine", Acceleration, "Amplitude of a sine at the mount over frequency, corner by corner, straight between them on logarithmic axes; in place of mounted_on.");

    private static readonly Key<ImmutableArray<SpectrumPoint>> Random = Curve(
        "random", Density, "Spectral density of a random acceleration at the mount over frequency, likewise; acts together with sine.");

    private static readonly Key<Evidence> Source = Key<Evidence>.WithDefault(
        "source", new WordForm<Evidence>(("measured", Evidence.Measured), ("given", Evidence.Given)), "Whether sine and random were measured on this engine, or come from elsewhere.", Evidence.Given);

    private static readonly Key<Measured> Damping = Key<Measured>.WithDefault(
        "damping", new MeasuredForm(QuantityForm.Number(0.0005, 0.3), 0.2),
        "Damping ratio of the bracket's vibrations, bolted on and with its cable; no unit (default: assumed, 0.01, at worst 0.005; common practice, no source).",
        Shaking.Usual.Damping);

    public static Section<Shaking> Form { get; } = new(
        [MountedOn, Sine, Random, Source, Damping],
        v => Of(v) with { Damping = v.Get(Damping) },
        [new([MountedOn, Sine, Random], CheckOneProfile), new([Sine], v => CheckRising(v, Sine)), new([Random], v => CheckRising(v, Random))]);

    private static Key<ImmutableArray<SpectrumPoint>> Curve(string name, Key<double> value, string help) => new(
        name, new ListForm<SpectrumPoint>(new Section<SpectrumPoint>([Frequency, value], v => new(v.Get(Frequency), v.Get(value))), 2, 60), help, isRequired: false);

    private static Shaking Of(SectionValues values) => values.Has(Sine) || values.Has(Random)
        ? new()
        {
            Profile = ShakingProfile.Own,
            Sine = values.Has(Sine) ? In(values.Get(Sine), Shaking.Gravity) : null,
            Random = values.Has(Random) ? In(values.Get(Random), Shaking.Gravity * Shaking.Gravity) : null,
            Evidence = values.Get(Source),
        }
        : values.Has(MountedOn) ? values.Get(MountedOn) : Shaking.Usual;

    private static SpectrumCurve In(ImmutableArray<SpectrumPoint> points, double unit) => new([.. points.Select(p => p with { Value = unit * p.Value })]);

    private static void CheckOneProfile(SectionValues values)
    {
        if (values.Has(MountedOn) && (values.Has(Sine) || values.Has(Random)))
        {
            values.Report(MountedOn, new Contradiction(Contradictory.ShakingTwice));
        }
    }

    private static void CheckRising(SectionValues values, Key<ImmutableArray<SpectrumPoint>> curve)
    {
        if (!values.Has(curve))
        {
            return;
        }

        var points = values.Get(curve);
        for (var i = 1; i < points.Length; i++)
        {
            if (!(points[i].Frequency > points[i - 1].Frequency))
            {
                values.ReportItem(curve, i, Frequency.Name, new Contradiction(Contradictory.Frequencies));
            }
        }
    }
}
