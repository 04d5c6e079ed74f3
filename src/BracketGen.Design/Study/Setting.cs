using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Pedals;
using BracketGen.Units;

namespace BracketGen.Design.Study;

/// <summary>An input that a person can set in steps, one way.</summary>
/// <param name="Input">Which input.</param>
/// <param name="What">Which one of several; null where the input says it.</param>
/// <param name="From">Its value today.</param>
/// <param name="Step">The step in which it is set; every value tried is a multiple of it.</param>
/// <param name="Sign">1 for more, -1 for less.</param>
/// <param name="Most">How many steps are within reason.</param>
/// <param name="Apply">The job with another value.</param>
internal sealed record Setting(ChangedInput Input, string? What, double From, double Step, int Sign, int Most, Func<Job, double, Job> Apply)
{
    // A value that stands on a step up to round-off stands on it.
    private const double OnStep = 1e-6;

    /// <summary>The value <paramref name="steps"/> steps on, 1 or more: the first multiple of the step beyond today's value is one step on.</summary>
    public double At(int steps) => Step * (Sign > 0 ? Math.Floor(From / Step + OnStep) + steps : Math.Ceiling(From / Step - OnStep) - steps);

    /// <summary>The job at that value.</summary>
    public Job Applied(Job job, int steps) => Apply(job, At(steps));

    /// <summary>The change at that value.</summary>
    public InputChange Change(int steps) => new(Input, What, From, At(steps));

    /// <summary>All that can be set in steps for a job.</summary>
    public static IEnumerable<Setting> Of(Job job)
    {
        // 0.02 in is what comes nearest to half a millimetre.
        var step = job.Units == UnitSystem.Inch ? 0.508 : 0.5;
        IEnumerable<Setting> Both(ChangedInput input, double from, double by, double least, double most, Func<Job, double, Job> apply) =>
            new[] { 1, -1 }.Select(sign => new Setting(input, null, from, by, sign, (int)Math.Floor((sign > 0 ? most - from : from - least) / by), apply));
        var vehicle = job.Vehicle;
        var length = vehicle.Cable.FreeInnerLength.Value;
        var all = Both(ChangedInput.FreeInnerLength, length, step, Math.Max(step, length - 80), length + 80, (j, to) =>
            WithCable(j, j.Vehicle.Cable with { FreeInnerLength = j.Vehicle.Cable.FreeInnerLength with { Value = to } }));
        var range = vehicle.Cable.OuterEnd.AdjusterRange;
        all = all.Append(new(ChangedInput.AdjusterRange, null, range, step, 1, (int)(60 / step), (j, to) =>
            WithCable(j, j.Vehicle.Cable with { OuterEnd = WithRange(j.Vehicle.Cable.OuterEnd, to) })));
        var radius = job.Body.Quadrant.Groove.Support(job.Body.Quadrant.PocketNormal);
        all = all.Concat(Both(ChangedInput.QuadrantRadius, radius, step, 0.6 * radius, 1.4 * radius, (j, to) => Grown(j, to - radius)));
        var freePlay = job.Preferences.FreePlay.Value;
        all = all.Concat(Both(ChangedInput.FreePlay, freePlay, step, Math.Max(0.1, job.Preferences.MinFreePlay), freePlay + 10, (j, to) =>
            j with { Preferences = j.Preferences with { FreePlay = j.Preferences.FreePlay with { Value = to } } }));
        all = all.Concat(Both(ChangedInput.PedalHole, 1, 0.01, 0.6, 1.5, WithHoleAt));
        var pull = vehicle.Pedal.AvailablePull.Value;
        all = all.Append(new(ChangedInput.PedalStop, null, pull, step, -1, (int)Math.Floor(0.6 * pull / step), WithPedalStop));
        if (vehicle.Cable.OuterAxialStiffness is { Evidence: Evidence.Assumed } assumed)
        {
            // Measured without a spread: what is found is the stiff end that a measurement with its ± must not pass.
            const double by = 10_000;
            all = all.Append(new(ChangedInput.OuterStiffness, null, assumed.Max, by, -1, (int)((assumed.Max - assumed.Min) / by), (j, to) =>
                WithCable(j, j.Vehicle.Cable with { OuterAxialStiffness = new(to) })));
        }

        if (job.Preferences.MountSlots is { } slots)
        {
            // Down to round holes.
            all = all.Append(new(ChangedInput.SlotTravel, null, slots.Travel, step, -1, (int)Math.Ceiling(slots.Travel / step - OnStep), (j, to) =>
                j with { Preferences = j.Preferences with { MountSlots = to >= step - OnStep ? slots with { Travel = to } : null } }));
        }

        all = all.Concat(job.Body.KeepOuts.Select(k => new Setting(ChangedInput.KeepOut, k.Name, 0, step, 1, (int)(60 / step), (j, by) => Smaller(j, k, by))));
        return all.Where(s => s.Most > 0);
    }

    private static Job WithCable(Job job, Cable cable) => job with { Vehicle = job.Vehicle with { Cable = cable } };

    private static OuterEnd WithRange(OuterEnd end, double range) => end switch
    {
        ThreadedAdjuster a => a with { Range = range },
        PlainFerrule f => f with { Range = range },
        SlottedClip c => c with { Range = range },
        BulkheadFerrule b => b with { Range = range },
        ClippedFerrule f => f with { Range = range },
        PushInEnd p => p with { Range = range },
        _ => end,
    };

    private static Job Grown(Job job, double by)
    {
        var quadrant = job.Body.Quadrant;
        return job with { Body = job.Body with { Quadrant = quadrant with { Groove = quadrant.Groove.Grown(by), OuterRadius = quadrant.OuterRadius + by } } };
    }

    private static Job WithPedal(Job job, Pedal pedal) => job with { Vehicle = job.Vehicle with { Pedal = pedal } };

    // The pad's stroke stays; the wire moves more by as much as its hole is farther from the pivot. The load on the wire falls by as much.
    private static Job WithHoleAt(Job job, double scale)
    {
        var pedal = job.Vehicle.Pedal;
        return WithPedal(job, pedal with
        {
            AvailablePull = pedal.AvailablePull with { Value = scale * pedal.AvailablePull.Value },
            LeverRatio = pedal.LeverRatio / scale,
            Table = pedal.Table is { } table ? new(table.Points.Select(p => new PedalPoint(p.Pad, scale * p.Pull))) : null,
        });
    }

    private static Job WithPedalStop(Job job, double pull)
    {
        var pedal = job.Vehicle.Pedal;
        return WithPedal(job, pedal with
        {
            AvailablePull = pedal.AvailablePull with { Value = pull },
            Table = pedal.Table is { } table ? new(table.Points.Where(p => p.Pull < pull - 0.01).Append(new(table.PadAt(pull), pull))) : null,
        });
    }

    // As somebody would write it down: every side of the box, or ends and radius of the cylinder, drawn in. What is smaller than nothing is gone.
    private static Job Smaller(Job job, KeepOut keepOut, double by)
    {
        // Another one that was made smaller before may be gone: the number of this one has changed with it.
        var keepOuts = job.Body.KeepOuts;
        var index = keepOuts.IndexOf(keepOut);
        KeepOut? smaller = keepOut switch
        {
            KeepOutBox box => Math.Min(box.Max.X - box.Min.X, Math.Min(box.Max.Y - box.Min.Y, box.Max.Z - box.Min.Z)) > 2 * by
                ? box with { Min = box.Min + by * Ones, Max = box.Max - by * Ones }
                : null,
            KeepOutTiltedBox box => Math.Min(box.Size.X, Math.Min(box.Size.Y, box.Size.Z)) > 2 * by
                ? box with { Corner = box.Corner.Shift(by * Ones), Size = box.Size - 2 * by * Ones }
                : null,
            KeepOutCylinder c => c.Radius > by && (c.To - c.From).Length > 2 * by
                ? c with { From = c.From + by * (c.To - c.From).Unit, To = c.To - by * (c.To - c.From).Unit, Radius = c.Radius - by }
                : null,
            var other => throw new ArgumentOutOfRangeException(nameof(keepOut), other, "A keep-out is a box, a tilted box or a cylinder."),
        };
        return job with { Body = job.Body with { KeepOuts = smaller is null ? keepOuts.RemoveAt(index) : keepOuts.SetItem(index, smaller) } };
    }

    private static readonly Vector3 Ones = new(1, 1, 1);
}
