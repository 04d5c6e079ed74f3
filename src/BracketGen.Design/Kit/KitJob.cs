using System.Collections.Immutable;
using BracketGen.Design.Inputs;

namespace BracketGen.Design.Kit;

/// <summary>A job with the parts that are at hand for it.</summary>
/// <param name="Job">The job, as measured.</param>
/// <param name="Parts">The parts of all its lists, in order.</param>
public sealed record KitJob(Job Job, ImmutableArray<KitPart> Parts)
{
    /// <summary>Whether the job names a list of parts.</summary>
    public bool HasLists { get; init; }

    /// <summary>What becomes of the idle valve's passages for water; null where the job does not say.</summary>
    public WaterUse? Water { get; init; }

    /// <summary>What this vehicle does not need.</summary>
    public ImmutableArray<KitNeedKind> Without { get; init; } = [];
}

/// <summary>What becomes of passages for water under the idle valve.</summary>
public enum WaterUse
{
    /// <summary>Water runs through them.</summary>
    Used,

    /// <summary>They are capped.</summary>
    Capped,
}
