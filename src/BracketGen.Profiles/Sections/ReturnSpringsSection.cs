using BracketGen.Geometry;
using BracketGen.Mechanism.Throttles;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[return_springs]</c> of a throttle body.</summary>
internal static class ReturnSpringsSection
{
    private static readonly Key<Measured> TorqueClosed = new("torque_closed", Torque(), "Closing torque at the throttle shaft on the closed stop.");

    private static readonly Key<Measured> TorqueOpen = new("torque_open", Torque(), "Closing torque at the throttle shaft on the wide-open stop.");

    private static readonly Key<int> Count = new(
        "count", new CountForm(1, 6), "Number of springs that each close the valve alone.");

    public static Section<ReturnSprings> Form { get; } = new(
        [TorqueClosed, TorqueOpen, Count],
        v => new(v.Get(TorqueClosed), v.Get(TorqueOpen), v.Get(Count)));

    private static MeasuredForm Torque() => new(new QuantityForm(UnitTable.NewtonMetre, 0.01, 50), 20);
}
