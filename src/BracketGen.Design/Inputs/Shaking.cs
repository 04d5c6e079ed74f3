using BracketGen.Geometry;
using BracketGen.Strength.Shaking;

namespace BracketGen.Design.Inputs;

/// <summary>Where an acceleration of the mount comes from.</summary>
public enum ShakingProfile
{
    /// <summary>Measured, or a profile of the user's own.</summary>
    Own,

    /// <summary>ISO 16750-3:2023, test XI: solid intake manifold, sine and random at once.</summary>
    SolidManifold,

    /// <summary>ISO 16750-3:2023, test III: flexible plenum chamber, sine.</summary>
    FlexiblePlenum,
}

/// <summary>How the mount shakes: a test that stands in for what the engine does to it.</summary>
/// <remarks>
/// The two published profiles are those of ISO 16750-3:2023, tables 25 to 27, as a public list of test profiles gives them; the standard itself was not seen. They are written for electric
/// parts on the engine, shaken along one axis at a time for 30 hours. Accelerations in mm/s². Equality by value.
/// </remarks>
public sealed record Shaking
{
    /// <summary>Standard gravity (mm/s²), the unit of accelerations in profiles.</summary>
    public const double Gravity = 9806.65;

    /// <summary>Damping ratio of a bolted sheet where nobody measured it, and its spread downwards; upwards it reaches 0.03 (common practice, no source).</summary>
    public const double UsualDamping = 0.01, DampingSpread = 0.005;

    /// <summary>How far the frequencies that were found may be off, as a part (our judgement, no source): they lie within 3 % of solids, and a real mount gives.</summary>
    public const double FrequencySpread = 0.05;

    /// <summary>Which profile.</summary>
    public required ShakingProfile Profile { get; init; }

    /// <summary>Amplitude of the sine (mm/s² over Hz); null for none.</summary>
    public SpectrumCurve? Sine { get; init; }

    /// <summary>Spectral density of the random acceleration ((mm/s²)²/Hz over Hz); null for none.</summary>
    public SpectrumCurve? Random { get; init; }

    /// <summary>How the profile came to be known.</summary>
    public Evidence Evidence { get; init; } = Evidence.Given;

    /// <summary>Damping ratio of the bracket's vibrations.</summary>
    public Measured Damping { get; init; } = new(UsualDamping, DampingSpread, Evidence.Assumed);

    /// <summary>On a solid intake manifold.</summary>
    public static Shaking SolidManifold { get; } = new()
    {
        Profile = ShakingProfile.SolidManifold,
        Sine = new(new(100, 50e3), new(150, 100e3), new(200, 150e3), new(240, 150e3), new(300, 75e3), new(440, 75e3)),
        Random = new(new(10, 10e6), new(100, 10e6), new(200, 2e6), new(500, 20e6), new(2000, 20e6)),
    };

    /// <summary>On a flexible plenum chamber.</summary>
    public static Shaking FlexiblePlenum { get; } = new()
    {
        Profile = ShakingProfile.FlexiblePlenum,
        Sine = new(new(100, 90e3), new(200, 180e3), new(325, 180e3), new(500, 80e3), new(1500, 80e3)),
    };

    /// <summary>What is taken where nothing is said: a solid manifold; what holds there must hold on a flexible plenum too before it counts.</summary>
    public static Shaking Usual { get; } = SolidManifold with { Evidence = Evidence.Assumed };

    /// <summary>Whether profile or damping is assumed.</summary>
    public bool IsAssumed => Evidence == Evidence.Assumed || Damping.Evidence == Evidence.Assumed;

    /// <summary>The largest acceleration to be met (mm/s²): the sine's and three times the root mean square of the random one.</summary>
    public double Peak => (Sine?.MaximumBetween(Sine.From, Sine.To) ?? 0) + ShakingStress.Sigmas * (Random?.RootOfArea ?? 0);

    /// <summary>The base as it shakes, at the damping as it stands.</summary>
    public BaseShaking Base => With(Damping.Value);

    /// <summary>The unfavourable ends of what is assumed; empty where nothing is.</summary>
    public IEnumerable<BaseShaking> Unfavourable
    {
        get
        {
            var damping = Damping.Evidence == Evidence.Assumed ? Damping.Min : Damping.Value;
            if (IsAssumed)
            {
                yield return With(damping);
            }

            if (Evidence == Evidence.Assumed)
            {
                yield return FlexiblePlenum.With(damping);
            }
        }
    }

    private BaseShaking With(double damping) => new(Sine, Random, damping) { FrequencySpread = FrequencySpread };
}
