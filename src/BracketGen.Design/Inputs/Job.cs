using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;

namespace BracketGen.Design.Inputs;

/// <summary>One bracket for one vehicle and one throttle body, made by one shop.</summary>
public sealed record Job : IMirrored<Job>
{
    /// <summary>The throttle body.</summary>
    public required ThrottleBody Body { get; init; }

    /// <summary>The vehicle.</summary>
    public required Vehicle Vehicle { get; init; }

    /// <summary>The shop.</summary>
    public required Shop Shop { get; init; }

    /// <summary>What is wanted.</summary>
    public required Preferences Preferences { get; init; }

    /// <summary>Unit of the outputs.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>Title block.</summary>
    public required DocumentData Document { get; init; }

    /// <summary>Where the outer comes out of the bulkhead; null where its way is not looked at.</summary>
    public Bulkhead? Bulkhead { get; init; }

    /// <summary>How far the throttle body moves against the bulkhead.</summary>
    public EngineMovement Movement { get; init; } = EngineMovement.Usual;

    /// <summary>Which way is up with the engine in its place, throttle frame, length one; null where the job does not say.</summary>
    public Vector3? Up { get; init; }

    /// <summary>How long the bracket must last, and how hot it gets.</summary>
    public ServiceLife Life { get; init; } = new();

    /// <summary>The bracket that was chosen; null to take the best.</summary>
    public ChosenBracket? Chosen { get; init; }

    /// <summary>What becomes of the vehicle's other cables, as far as the job says.</summary>
    public ImmutableArray<CableUse> CableUses { get; init; } = [];

    /// <summary>What becomes of one of the vehicle's other cables.</summary>
    public CableUse UseOf(OtherCable cable) => CableUses.FirstOrDefault(u => u.Name == cable.Name) ?? new(cable.Name, CableFate.NotSaid);

    /// <inheritdoc/>
    /// <remarks>Everything that has coordinates is mirrored; the body opens the other way.</remarks>
    public Job Mirrored() => this with { Body = Body.Mirrored(), Preferences = Preferences.Mirrored(), Bulkhead = Bulkhead?.Mirrored(), Movement = Movement.Mirrored(), Up = Up?.MirroredInY, CableUses = [.. CableUses.Select(u => u.Mirrored())] };

    /// <summary>The job as the solvers take it: itself, or its mirror image where its body opens clockwise.</summary>
    public Job OpeningCounterClockwise() => Body.Turned(this);
}
