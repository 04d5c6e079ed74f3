using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Throttles;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[return_springs]</c> of a throttle body.</summary>
internal static class ReturnSpringsSection
{
    /// <summary>How far the springs alone may add up to something else than their torque together, as a part of it: each reading has the shaft's drag in it (our judgement, no source).</summary>
    private const double Apart = 0.25;

    private static readonly Key<Measured> TorqueClosed = new(
        "torque_closed", Torque(), "Closing torque of all springs at the throttle shaft on the closed stop, read as the valve closes.");

    private static readonly Key<Measured> TorqueOpen = new(
        "torque_open", Torque(), "Closing torque of all springs at the throttle shaft on the wide-open stop, read as the valve closes.");

    private static readonly Key<int> Count = new(
        "count", new CountForm(1, 6), "Number of springs that each close the valve alone, where they were not measured one by one: then all count as equally strong.", isRequired: false);

    private static readonly Key<Measured> AloneClosed = new("torque_closed", Torque(), "Its closing torque on the closed stop, the others unhooked.");

    private static readonly Key<Measured> AloneOpen = new("torque_open", Torque(), "Its closing torque on the wide-open stop, the others unhooked.");

    private static readonly Key<ImmutableArray<ReturnSpring>> Each = new(
        "each",
        new ListForm<ReturnSpring>(new Section<ReturnSpring>([AloneClosed, AloneOpen], v => new(v.Get(AloneClosed), v.Get(AloneOpen))), 1, 6),
        "The springs that each close the valve alone, one by one, instead of count.",
        isRequired: false);

    public static Section<ReturnSprings> Form { get; } = new(
        [TorqueClosed, TorqueOpen, Count, Each],
        v => v.Has(Each)
            ? ReturnSprings.Of(v.Get(Each), (v.Get(TorqueClosed), v.Get(TorqueOpen)))
            : new(v.Get(TorqueClosed), v.Get(TorqueOpen), v.Get(Count)),
        [
            new([Each, TorqueClosed], v => CheckSum(v, TorqueClosed, s => s.TorqueClosed)),
            new([Each, TorqueOpen], v => CheckSum(v, TorqueOpen, s => s.TorqueOpen)),
        ],
        oneOf: [Count, Each]);

    private static MeasuredForm Torque() => new(new QuantityForm(UnitTable.NewtonMetre, 0.01, 50), 20);

    private static void CheckSum(SectionValues values, Key<Measured> together, Func<ReturnSpring, Measured> alone)
    {
        if (!values.Has(Each))
        {
            return;
        }

        var (all, sum) = (values.Get(together), values.Get(Each).Sum(s => alone(s).Value));
        var known = all.PlusMinus + values.Get(Each).Sum(s => alone(s).PlusMinus) + Apart * sum;
        if (Math.Abs(all.Value - sum) > known)
        {
            values.Report(together, new SpringsDoNotAddUp(sum, sum - known, sum + known));
        }
    }
}
