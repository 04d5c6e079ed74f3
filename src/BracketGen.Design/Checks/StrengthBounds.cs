using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Strength.Model;
using BracketGen.Strength.Parts;

namespace BracketGen.Design.Checks;

/// <summary>Bounds on stress, give and first frequency of a folded sheet that is held at its bolts and pulled at its stop, from the straight cuts between them.</summary>
/// <remarks>
/// They hold for thin sheet as the elements take it, linear and the same in every direction. Every cut passes the whole force and its moment, whatever happens elsewhere.
/// The strips are integrated at their middles, and a mesh has its own error: <see cref="JudgeTolerance"/> says how much of a margin that asks for.
/// </remarks>
internal sealed class StrengthBounds
{
    private readonly List<StraightCut> _cuts;
    private readonly Vector3 _stop;
    private readonly Vector3 _top;
    private readonly double _thickness;
    private readonly SheetMaterial _material;

    /// <summary>The bounds of a bracket, as the strength calculation sees it.</summary>
    public static StrengthBounds Of(Bracket bracket, FoldedPart part)
    {
        var (folded, stop) = (bracket.Folded, bracket.Stop);
        var onMount = bracket.Holes.All(h => h.Thread is null || h.Flange == 0);
        return new(
            onMount && !part.Washers.IsEmpty ? StraightCuts.Of(folded, part.Washers, part.Seat, stop.Flange) : [],
            folded.Fold(stop.Centre, part.Thickness / 2).Vector, folded.TopAt(stop.Centre), part.Thickness, part.Material);
    }

    /// <summary>The bounds of a sheet.</summary>
    /// <param name="cuts">Its cuts, those nearest the bolts first.</param>
    /// <param name="stop">Where the force acts: the seat's centre on the middle surface (mm).</param>
    /// <param name="top">Out of the sheet's top there, length one.</param>
    /// <param name="thickness">Thickness of the sheet (mm).</param>
    /// <param name="material">Its metal.</param>
    public StrengthBounds(List<StraightCut> cuts, Vector3 stop, Vector3 top, double thickness, SheetMaterial material) =>
        (_cuts, _stop, _top, _thickness, _material) = (cuts, stop, top, thickness, material);

    /// <summary>Whether there are cuts to go by.</summary>
    public bool AreKnown => _cuts.Count > 0;

    private double Bending => _material.YoungsModulus * _thickness * _thickness * _thickness / (12 * (1 - _material.PoissonsRatio * _material.PoissonsRatio));

    /// <summary>The largest von Mises stress is never below this (MPa).</summary>
    /// <remarks>
    /// Over a cut of length b the normal stress at the surfaces is n/t ± 6 m/t², so its larger magnitude is |n|/t + 6|m|/t². Its mean is at least 6|M|/(b t²) + |N|/(b t), because a mean of
    /// magnitudes is no less than the magnitude of the mean; with n weighted by s over its farthest end instead of by one, at least 6|M|/(b t²) + |M'|/(b t s_max), M' in
    /// the plane; and |M'| ≤ max|n| ∫|s| ds (the plastic modulus). The maximum is no less than the mean. Von Mises stress is at least √3/2 of any normal stress: σ² - σσ' + σ'² + 3τ² is least at σ' = σ/2.
    /// Equilibrium and plate theory as in S. P. Timoshenko, S. Woinowsky-Krieger, Theory of Plates and Shells, chapters 1 and 2.
    /// </remarks>
    /// <param name="force">The force (N).</param>
    public double StressAtLeast(Vector3 force)
    {
        var largest = 0.0;
        foreach (var cut in _cuts)
        {
            double out_ = Math.Abs(cut.OutOfPlane(_stop, force)), in_ = Math.Abs(cut.InPlane(_stop, force)), across = Math.Abs(cut.Across(force));
            var mean = (6 * out_ / _thickness + Math.Max(across, in_ / cut.Reach)) / (cut.Metal * _thickness);
            largest = Math.Max(largest, Math.Max(mean, in_ / (_thickness * cut.FirstMoment)));
        }

        return Math.Sqrt(3) / 2 * largest;
    }

    /// <summary>The give of the stop along the force is never below this (mm for 1 N).</summary>
    /// <remarks>
    /// The strain energy of a plate for a moment m across the cut is least with m' = ν m along it, when it is m²/(2D) an area, D = E t³/(12(1 - ν²)); in the plane likewise (1 - ν²) n²/(2 E t). By
    /// Schwarz's inequality ∫m² ds ≥ M²/b and ∫n² ds ≥ N²/b + M'²/∫s² ds. The energy is half of force times give (Clapeyron; Timoshenko and Goodier, Theory of Elasticity, chapter 8).
    /// </remarks>
    /// <param name="direction">Direction of the force, length one.</param>
    public double GiveAtLeast(Vector3 direction)
    {
        double bending = Bending, stretching = _material.YoungsModulus * _thickness / (1 - _material.PoissonsRatio * _material.PoissonsRatio);
        var give = 0.0;
        foreach (var cut in _cuts)
        {
            double out_ = cut.OutOfPlane(_stop, direction), in_ = cut.InPlane(_stop, direction), across = cut.Across(direction);
            give += cut.Width * (out_ * out_ / (bending * cut.Metal) + (across * across / cut.Metal + in_ * in_ / cut.SecondMoment) / stretching);
        }

        return give;
    }

    /// <summary>The first natural frequency is never above this (Hz).</summary>
    /// <remarks>
    /// Rayleigh and Ritz: the quotient of strain and kinetic energy of any motion that keeps the washers still is no less than the first eigenvalue (S. P. Timoshenko, D. H. Young,
    /// W. Weaver, Vibration Problems in Engineering, chapter 5). The motions bend each strip to a cylinder of curvature M/(D b), M from a unit force at the stop along each axis: then strain energy and
    /// the stop's displacement both come from C_kl = Σ M_k M_l w/(D b). The sheet from the last strip on is flat and moves as one, so what hangs on the stop moves and turns with it, exactly as in the
    /// quotient; the strips' own mass moves with their middles, their turning left out, which can only raise the quotient.
    /// </remarks>
    /// <param name="end">What hangs on the stop.</param>
    public double FrequencyAtMost(SeatBody end)
    {
        // Row k: what the unit force along axis k does; the motion so far as a turn and a shift.
        Span<double> energy = stackalloc double[9], mass = stackalloc double[9];
        Span<Vector3> turn = stackalloc Vector3[3], shift = stackalloc Vector3[3], axes = [new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)];
        energy.Clear();
        mass.Clear();
        turn.Clear();
        shift.Clear();
        var perArea = _material.Density * _thickness;
        foreach (var cut in _cuts)
        {
            if (cut.Width == 0)
            {
                continue;
            }

            // What a strip bends does not move its own middle.
            for (var k = 0; k < 3; k++)
            {
                var angle = cut.OutOfPlane(_stop, axes[k]) * cut.Width / (Bending * cut.Metal) * cut.Along;
                turn[k] += angle;
                shift[k] -= angle.Cross(cut.Centre);
            }

            AddMass(turn, shift, cut.Centre, perArea * cut.Metal * cut.Width, mass);
            for (var k = 0; k < 3; k++)
            {
                for (var l = 0; l < 3; l++)
                {
                    energy[3 * k + l] += cut.OutOfPlane(_stop, axes[k]) * cut.OutOfPlane(_stop, axes[l]) * cut.Width / (Bending * cut.Metal);
                }
            }
        }

        AddMass(turn, shift, _stop + end.Height * _top, end.Mass, mass);
        AddInertia(turn, _top, end, mass);
        return Math.Sqrt(LowestQuotient(energy, mass)) / (2 * Math.PI);
    }

    private static void AddMass(ReadOnlySpan<Vector3> turn, ReadOnlySpan<Vector3> shift, Vector3 at, double mass, Span<double> sum)
    {
        for (var k = 0; k < 3; k++)
        {
            for (var l = 0; l < 3; l++)
            {
                sum[3 * k + l] += mass * (shift[k] + turn[k].Cross(at)).Dot(shift[l] + turn[l].Cross(at));
            }
        }
    }

    private static void AddInertia(ReadOnlySpan<Vector3> turn, Vector3 axis, SeatBody end, Span<double> sum)
    {
        for (var k = 0; k < 3; k++)
        {
            for (var l = 0; l < 3; l++)
            {
                sum[3 * k + l] += end.AboutAcross * turn[k].Dot(turn[l]) + (end.AboutAxis - end.AboutAcross) * turn[k].Dot(axis) * turn[l].Dot(axis);
            }
        }
    }

    // Every combination gives a bound: a few steps of the power method with (energy + a little)⁻¹ mass come near to the lowest.
    private static double LowestQuotient(ReadOnlySpan<double> energy, ReadOnlySpan<double> mass)
    {
        var little = Regular * (energy[0] + energy[4] + energy[8]);
        Vector3 e0 = new(energy[0], energy[1], energy[2]), e1 = new(energy[3], energy[4], energy[5]), e2 = new(energy[6], energy[7], energy[8]);
        Vector3 r0 = e0 + new Vector3(little, 0, 0), r1 = e1 + new Vector3(0, little, 0), r2 = e2 + new Vector3(0, 0, little);
        var determinant = r0.Dot(r1.Cross(r2));
        Vector3 m0 = new(mass[0], mass[1], mass[2]), m1 = new(mass[3], mass[4], mass[5]), m2 = new(mass[6], mass[7], mass[8]);
        var lowest = double.PositiveInfinity;
        foreach (var start in new Vector3[] { new(1, 0, 0), new(0, 1, 0), new(0, 0, 1) })
        {
            var q = start;
            for (var step = 0; step < 8; step++)
            {
                Vector3 kinetic = new(m0.Dot(q), m1.Dot(q), m2.Dot(q)), elastic = new(e0.Dot(q), e1.Dot(q), e2.Dot(q));

                // A motion that bends next to nothing is round-off: both its energies are.
                if (elastic.Dot(q) > little && kinetic.Dot(q) > 0)
                {
                    lowest = Math.Min(lowest, elastic.Dot(q) / kinetic.Dot(q));
                }

                var next = (kinetic.X * r1.Cross(r2) + kinetic.Y * r2.Cross(r0) + kinetic.Z * r0.Cross(r1)) / determinant;
                if (!(next.Length > 0 && double.IsFinite(next.Length)))
                {
                    break;
                }

                q = next.Unit;
            }
        }

        return lowest;
    }

    // Part of the sum of the diagonal. Keeps the matrix regular where all cuts turn about one axis, and tells a motion from round-off (1e-16 of that sum).
    private const double Regular = 1e-9;
}
