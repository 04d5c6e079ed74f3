using System.Collections.Immutable;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;

namespace BracketGen.Mechanism.Forces;

/// <summary>The valve that falls shut from wide open: how long it takes.</summary>
/// <remarks>
/// Energy: ½ J(θ) ω² at an opening is what the torque left over has done since wide open. Between two openings of a sweep that torque is taken as linear
/// and the angular acceleration as constant: exact for a constant torque, and within 0.1 % for a preloaded spring on 48 steps. The air on the plate is left out.
/// </remarks>
public static class ClosingMotion
{
    /// <summary>Time from the wide-open to the closed stop (s); infinity if no torque is left somewhere on the way.</summary>
    /// <param name="margins">Torque at equal steps of opening, from closed to wide open.</param>
    /// <param name="inertia">Moment of inertia about the shaft at an opening (t·mm²), by the number of its margin.</param>
    public static double Time(ImmutableArray<ReturnMargin> margins, Func<int, double> inertia)
    {
        var (time, energy, speed) = (0.0, 0.0, 0.0);
        for (var i = margins.Length - 1; i > 0; i--)
        {
            var (here, next) = (margins[i], margins[i - 1]);
            if (!(here.Left > 0 && next.Left > 0))
            {
                return double.PositiveInfinity;
            }

            var step = (here.Opening - next.Opening).Radians;
            energy += step * (here.Left + next.Left) / 2;
            var reached = Math.Sqrt(2 * energy / inertia(i - 1));
            time += 2 * step / (speed + reached);
            speed = reached;
        }

        return time;
    }

    /// <summary>What the pedal adds to the inertia at the shaft at each margin (t·mm²): its mass at the pad times the square of pad travel for one radian.</summary>
    /// <param name="travel">The travel.</param>
    /// <param name="margins">The margins of its sweep.</param>
    /// <param name="pedal">The pedal.</param>
    public static ImmutableArray<double> InertiaOfPedal(LoadedTravel travel, ImmutableArray<ReturnMargin> margins, Pedal pedal)
    {
        var lever = pedal.Lever;
        return
        [
            .. margins.Select(m =>
            {
                var padPerRadian = m.Arm / lever.PullPerTravel(lever.PadAt(travel.PullAt(m.Opening)));
                return pedal.PadMass * padPerRadian * padPerRadian;
            }),
        ];
    }
}
