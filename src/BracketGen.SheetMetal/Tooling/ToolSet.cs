using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Tooling;

/// <summary>What a shop bends with, apart from its dies.</summary>
public sealed record ToolSet
{
    /// <summary>The press brake; null if there is none.</summary>
    public required PressBrake? Press { get; init; }

    /// <summary>The punches of the press brake.</summary>
    public required ImmutableArray<Punch> Punches { get; init; }

    /// <summary>Folders, hand brakes and bars of the vice.</summary>
    public required ImmutableArray<BendingClamp> Clamps { get; init; }

    /// <summary>A press brake with a straight punch of 88°, an assumed one: nothing that a shop might well not have.</summary>
    public static ToolSet Assumed { get; } = new()
    {
        Press = new(),
        Punches = [Punch.Straight("straight 88°", 100, Angle.FromDegrees(88), 1, 16) with { Evidence = Evidence.Assumed }],
        Clamps = [],
    };

    /// <summary>The usual punches, for a shop that says it has them: straight and gooseneck, square and acute.</summary>
    public static ImmutableArray<Punch> UsualPunches { get; } =
    [
        Punch.Straight("straight 88°", 100, Angle.FromDegrees(88), 1, 16),
        Punch.Straight("straight 30°", 100, Angle.FromDegrees(30), 1, 16) with { MaxForce = 500 },
        Punch.Gooseneck("gooseneck 88°", 120, Angle.FromDegrees(88), 1) with { MaxForce = 500 },
    ];

    /// <summary>A vice with bars of the usual radii and nothing else (mm).</summary>
    public static ToolSet ViceOnly(params double[] radii) => new()
    {
        Press = null,
        Punches = [],
        Clamps = [.. radii.Select(r => new BendingClamp(ClampKind.Vice, "bar", r))],
    };

    /// <inheritdoc/>
    public bool Equals(ToolSet? other) => other is not null && Equals(Press, other.Press)
        && Punches.SequenceEqual(other.Punches) && Clamps.SequenceEqual(other.Clamps);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Press, Punches.Length, Clamps.Length);
}
