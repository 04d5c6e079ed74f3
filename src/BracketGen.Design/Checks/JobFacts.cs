using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using BracketGen.Design.Inputs;

namespace BracketGen.Design.Checks;

/// <summary>What is the same for every bracket and every stop of one job: each worked out when it is first asked for, and then once.</summary>
internal sealed class JobFacts
{
    private static readonly ConditionalWeakTable<Job, JobFacts> Known = [];

    private readonly Lazy<ImmutableArray<Check>> _body, _quadrant;
    private readonly Lazy<MovingParts> _moving;
    private readonly Lazy<ImmutableArray<OtherCableWire>> _others;
    private readonly Lazy<ImmutableArray<Standing>> _standing, _springs;

    private readonly Lazy<RingBase?> _ring;

    private JobFacts(Job job)
    {
        _ring = new(() => RingBase.Of(job));
        _body = new(() => [.. BodyChecks.Of(job.Body)]);
        _quadrant = new(() => [.. ObstacleChecks.OfQuadrant(job.Body, Moving, job.Preferences)]);
        _moving = new(() => MovingParts.Of(job));
        _standing = new(() => [.. Standing.Of(job.Body), .. OtherWires.SelectMany(w => w.Standing)]);
        _others = new(() => OtherCableWire.Of(job));
        _springs = new(() => [.. Standing.Springs(job.Body)]);
    }

    /// <summary>The facts of a job.</summary>
    public static JobFacts Of(Job job) => Known.GetValue(job, j => new(j));

    /// <summary>The checks of the throttle body as it is described.</summary>
    public ImmutableArray<Check> Body => _body.Value;

    /// <summary>Quadrant and end fitting against casting and keep-outs.</summary>
    public ImmutableArray<Check> Quadrant => _quadrant.Value;

    /// <summary>Quadrant and end fitting over the sweep.</summary>
    public MovingParts Moving => _moving.Value;

    /// <summary>The cables that work in grooves of their own.</summary>
    public ImmutableArray<OtherCableWire> OtherWires => _others.Value;

    /// <summary>The casting, the keep-outs, and the wires of other cables whose stops are given.</summary>
    public ImmutableArray<Standing> Stands => _standing.Value;

    /// <summary>The adapter ring; null where the mount has none.</summary>
    public RingBase? Ring => _ring.Value;

    /// <summary>The spaces of the return springs.</summary>
    public ImmutableArray<Standing> Springs => _springs.Value;
}
