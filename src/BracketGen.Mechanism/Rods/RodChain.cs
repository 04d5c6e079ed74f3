using BracketGen.Geometry;
using BracketGen.Mechanism.Numerics;

namespace BracketGen.Mechanism.Rods;

/// <summary>An elastic rod as a chain of straight links: clamped in direction at both ends, held at points between, with or without a direction.</summary>
/// <remarks>
/// Unknown are the links' directions t_i and the force F_k in each span. A joint bends with the energy w (1 - t_i · t_{i+1}), w one over the
/// distance between the links' middles: half the square of the curvature times that distance, to second order. The spans' gaps are kept by
/// Σ l t_i = D_k, whose multiplier is the force on the span's far end. Newton's method on both: the system is block-tridiagonal, two turns a link,
/// with three borders a span. Its inertia says whether the energy has a minimum along the constraint (J. Nocedal and S. J. Wright,
/// <i>Numerical Optimization</i>, theorem 16.3 and section 18.4); where it has none, each link gets a spring until it has (inertia correction).
/// Bending stiffness one, any unit of length; mutable, used by one thread.
/// </remarks>
internal sealed class RodChain
{
    private readonly Vector3[] _gaps;
    private readonly double[] _spans;
    private readonly Vector3[] _links;
    private readonly Vector3[] _forces;
    private readonly double[] _length;
    private readonly int[] _span;

    // At each joint the clamp's direction, zero where the rod is free to turn.
    private readonly Vector3[] _clamps;
    private readonly Vector3[] _trial;
    private readonly Vector3[] _missed;
    private readonly Vector3[] _e1;
    private readonly Vector3[] _e2;
    private readonly double[] _diagonal;
    private readonly double[] _factor;
    private readonly double[] _columns;
    private readonly double[] _schur;
    private readonly double[] _right;

    /// <summary>A chain of which the links are still to be laid.</summary>
    /// <param name="way">What it has to reach.</param>
    /// <param name="links">Number of links in each span.</param>
    public RodChain(RodWay way, int links)
    {
        int spans = way.Gaps.Length, n = links * spans, borders = 3 * spans;
        (_gaps, _spans, LinksASpan) = (way.Gaps, [.. way.Lengths], links);
        (_links, _trial, _e1, _e2) = (new Vector3[n], new Vector3[n], new Vector3[n], new Vector3[n]);
        (_length, _span, _forces, _missed) = (new double[n], new int[n], new Vector3[spans], new Vector3[spans]);
        (_diagonal, _factor, _columns) = (new double[n], new double[7 * n], new double[2 * n * (borders + 1)]);
        (_schur, _right) = (new double[borders * borders], new double[borders]);
        _clamps = new Vector3[n + 1];
        for (var k = 0; k <= spans; k++)
        {
            _clamps[k * links] = way.Directions[k];
        }

        for (var i = 0; i < n; i++)
        {
            _span[i] = i / links;
        }

        SetLengths(_spans);
    }

    /// <summary>Number of links in each span.</summary>
    public int LinksASpan { get; }

    /// <summary>Length of each span.</summary>
    public ReadOnlySpan<double> Spans => _spans;

    /// <summary>Lets the rod slide along: other lengths of the spans, with the links as they lie.</summary>
    public void SetLengths(ReadOnlySpan<double> spans)
    {
        spans.CopyTo(_spans);
        for (var i = 0; i < _length.Length; i++)
        {
            _length[i] = _spans[_span[i]] / LinksASpan;
        }
    }

    /// <summary>The links' directions, length one: laid from outside before the first solving.</summary>
    public Span<Vector3> Links => _links;

    /// <summary>Force on the far end of each span.</summary>
    public Span<Vector3> Forces => _forces;

    /// <summary>The span of each link.</summary>
    public ReadOnlySpan<int> SpanOf => _span;

    /// <summary>Length of each link.</summary>
    public ReadOnlySpan<double> LengthOf => _length;

    /// <summary>Negative modes at the last solution: 0 for a stable line.</summary>
    public int Index { get; private set; }

    /// <summary>Bending energy.</summary>
    public double Energy => EnergyOf(_links);

    /// <summary>Bending moment at the joint before link <paramref name="i"/>, on its side of a clamp: curvature times binormal.</summary>
    public Vector3 MomentBefore(int i) => WeightBefore(i) * Before(_links, i).Cross(_links[i]);

    /// <summary>Bending moment at the joint after link <paramref name="i"/>, on its side of a clamp.</summary>
    public Vector3 MomentAfter(int i) => WeightAfter(i) * _links[i].Cross(After(_links, i));

    /// <summary>Direction at joint <paramref name="joint"/>.</summary>
    public Vector3 DirectionAt(int joint) => IsClamped(joint)
        ? _clamps[joint]
        : (_length[joint] * _links[joint - 1] + _length[joint - 1] * _links[joint]).Unit;

    /// <summary>Change of the energy with the length of each span, the points it has to reach kept.</summary>
    /// <remarks>A joint's energy is w (1 - cos) with w as one over a length, and the gap Σ l t = D weighs with the force.</remarks>
    public void EnergyByLength(Span<double> change)
    {
        for (var k = 0; k < change.Length; k++)
        {
            change[k] = -_forces[k].Dot(_gaps[k]) / _spans[k];
        }

        for (var i = 0; i < _links.Length; i++)
        {
            // A joint's length is half from each side; a clamp's is all from one.
            Vector3 before = _links[i] - Before(_links, i), after = _links[i] - After(_links, i);
            double b = WeightBefore(i), a = WeightAfter(i);
            change[_span[i]] -= (b * b * before.Dot(before) + a * a * after.Dot(after)) / 4 / LinksASpan;
        }
    }

    /// <summary>Lays this chain along a coarser one with half as many links.</summary>
    public void LayAlong(RodChain coarse)
    {
        for (var i = 0; i < _links.Length; i++)
        {
            var near = i / 2;
            var joint = i % 2 == 0 ? near : near + 1;
            var other = i % 2 == 0 ? Before(coarse._links, coarse._clamps, near) : After(coarse._links, coarse._clamps, near);
            _links[i] = ((coarse.IsClamped(joint) ? 1 : 3) * coarse._links[near] + other).Unit;
        }

        coarse._forces.CopyTo(_forces, 0);
        SetLengths(coarse._spans);
    }

    /// <summary>Whether a line in balance was found from the links as they lie, that is not one of those known.</summary>
    public bool Solve(IReadOnlyList<RodChain>? known = null)
    {
        double shift = RodTolerance.LeastShift, penalty = 0, turnBefore = double.MaxValue;
        for (var step = 0; step < RodTolerance.MostSteps; step++)
        {
            FindFrames();
            FindMissed(_links);
            if (!FactorUntilMinimum(ref shift))
            {
                return false;
            }

            SolveBorders();
            double turn = 0, slope = 0;
            for (var i = 0; i < _links.Length; i++)
            {
                double a = _columns[2 * i], b = _columns[2 * i + 1];
                turn = Math.Max(turn, a * a + b * b);
                slope -= Pull(i).Dot(a * _e1[i] + b * _e2[i]);
            }

            turn = Math.Sqrt(turn);
            if (!(turn < double.MaxValue))
            {
                return false;
            }

            var missed = Norm(_missed);
            penalty = Math.Max(penalty, 1.5 * Norm(_right));
            var part = Math.Min(1, RodTolerance.MostTurn / turn);
            if (turn > RodTolerance.SurelyNear || Index > 0)
            {
                double energy = EnergyOf(_links), merit = energy + penalty * missed, expected = slope - penalty * missed;
                var half = 0;
                for (; half < 12; half++, part /= 2)
                {
                    Move(part);
                    FindMissed(_trial);
                    if (EnergyOf(_trial) + penalty * Norm(_missed) <= merit + RodTolerance.Decrease * part * expected)
                    {
                        break;
                    }
                }
            }

            Move(part);
            _trial.CopyTo(_links, 0);
            for (var k = 0; k < _forces.Length; k++)
            {
                _forces[k] += part * (new Vector3(_right[3 * k], _right[3 * k + 1], _right[3 * k + 2]) - _forces[k]);
            }

            if (turn < RodTolerance.SurelySame && Index == 0 && known is not null && IsAmong(known))
            {
                return false;
            }

            // Where a pivot happens to be small, round-off keeps the steps from getting any smaller.
            var isLast = turn < RodTolerance.LastTurn || (turn < RodTolerance.RoundOffTurn && turn > turnBefore / 2);
            turnBefore = turn;
            if (isLast)
            {
                FindFrames();
                Index = Factor(RodTolerance.LeastShift);
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether this line is one of those known, but for a thousandth of its length.</summary>
    public bool IsAmong(IReadOnlyList<RodChain> known)
    {
        foreach (var other in known)
        {
            Vector3 apart = Vector3.Zero;
            double most = 0;
            for (var i = 0; i < _links.Length && most <= RodTolerance.OneLine; i++)
            {
                apart += _length[i] * (_links[i] - other._links[i]);
                most = Math.Max(most, apart.Length);
            }

            if (most <= RodTolerance.OneLine)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Length that a span needs to reach, and a hair more: about a degree of bend in a straight one.</summary>
    public double LeastLength(int span) => _gaps[span].Length * (1 + RodTolerance.Hair) + RodTolerance.Hair;

    /// <summary>Links, forces and lengths as they are.</summary>
    public (Vector3[] Links, Vector3[] Forces, double[] Spans) Save() => ([.. _links], [.. _forces], [.. _spans]);

    /// <summary>Puts them back.</summary>
    public void Restore((Vector3[] Links, Vector3[] Forces, double[] Spans) kept)
    {
        kept.Links.CopyTo(_links, 0);
        kept.Forces.CopyTo(_forces, 0);
        SetLengths(kept.Spans);
        Index = 0;
    }

    /// <summary>Moves the links a little, each another way.</summary>
    public void Skew()
    {
        FindFrames();
        for (var i = 0; i < _links.Length; i++)
        {
            var s = (i + 0.5) / LinksASpan;
            _links[i] = (_links[i] + RodTolerance.Aside * (Math.Sin(2.3 * s + 0.4) * _e1[i] + Math.Sin(5 * s) * _e2[i])).Unit;
        }
    }

    private bool IsClamped(int joint) => _clamps[joint] != Vector3.Zero;

    private Vector3 Before(Vector3[] links, int i) => Before(links, _clamps, i);

    private Vector3 After(Vector3[] links, int i) => After(links, _clamps, i);

    private static Vector3 Before(Vector3[] links, Vector3[] clamps, int i) => clamps[i] != Vector3.Zero ? clamps[i] : links[i - 1];

    private static Vector3 After(Vector3[] links, Vector3[] clamps, int i) => clamps[i + 1] != Vector3.Zero ? clamps[i + 1] : links[i + 1];

    // One over the distance between the middles of the links at a joint; at a clamp the clamp itself is the neighbour.
    private double WeightBefore(int i) => IsClamped(i) ? 2 / _length[i] : 2 / (_length[i - 1] + _length[i]);

    private double WeightAfter(int i) => IsClamped(i + 1) ? 2 / _length[i] : 2 / (_length[i] + _length[i + 1]);

    private Vector3 Pull(int i) => WeightBefore(i) * Before(_links, i) + WeightAfter(i) * After(_links, i);

    // Half the square of the chord between two directions: 1 - cos without loss of figures.
    private double EnergyOf(Vector3[] links)
    {
        double sum = 0;
        for (var i = 0; i < links.Length; i++)
        {
            var change = links[i] - Before(links, i);
            sum += WeightBefore(i) * change.Dot(change) / 2;
            if (IsClamped(i + 1))
            {
                change = links[i] - _clamps[i + 1];
                sum += WeightAfter(i) * change.Dot(change) / 2;
            }
        }

        return sum;
    }

    private void FindMissed(Vector3[] links)
    {
        for (var k = 0; k < _missed.Length; k++)
        {
            _missed[k] = -_gaps[k];
        }

        for (var i = 0; i < links.Length; i++)
        {
            _missed[_span[i]] += _length[i] * links[i];
        }
    }

    private static double Norm(Vector3[] values)
    {
        double sum = 0;
        foreach (var value in values)
        {
            sum += value.Dot(value);
        }

        return Math.Sqrt(sum);
    }

    private static double Norm(double[] values)
    {
        double sum = 0;
        foreach (var value in values)
        {
            sum += value * value;
        }

        return Math.Sqrt(sum);
    }

    private void FindFrames()
    {
        for (var i = 0; i < _links.Length; i++)
        {
            var t = _links[i];
            double x = Math.Abs(t.X), y = Math.Abs(t.Y), z = Math.Abs(t.Z);
            var helper = x <= y && x <= z ? new Vector3(1, 0, 0) : y <= z ? new Vector3(0, 1, 0) : new(0, 0, 1);
            _e1[i] = t.Cross(helper).Unit;
            _e2[i] = t.Cross(_e1[i]);
            _diagonal[i] = t.Dot(Pull(i) + _length[i] * _forces[_span[i]]);
        }
    }

    // Factors with the springs each link needs for a minimum along the constraint; false if no spring is enough.
    private bool FactorUntilMinimum(ref double shift)
    {
        Index = Factor(RodTolerance.LeastShift);
        if (Index == 0)
        {
            shift = Math.Max(RodTolerance.LeastShift, shift / RodTolerance.ShiftDown);
            return true;
        }

        shift = Math.Max(shift / RodTolerance.ShiftDown, RodTolerance.FirstShift);
        for (var i = 0; i < 14; i++)
        {
            if (Factor(shift) == 0)
            {
                return true;
            }

            shift *= RodTolerance.ShiftUp;
        }

        return false;
    }

    /// <summary>Factors the system with a spring of <paramref name="shift"/> a length on each link; returns its negative modes along the constraint.</summary>
    /// <remarks>
    /// The columns hold for each link the force that turns it and the borders; after factoring they are solved. The index is the number of
    /// negative eigenvalues of the whole system less the number of constraints.
    /// </remarks>
    private int Factor(double shift)
    {
        var index = Factor(shift, out var least);
        return least < RodTolerance.WeakPivot ? Factor(shift + RodTolerance.OtherShift, out _) : index;
    }

    private int Factor(double shift, out double least)
    {
        least = 1;
        int n = _links.Length, borders = 3 * _gaps.Length, columns = borders + 1, row = 2 * columns, negative = 0;
        double p11 = 0, p12 = 0, p22 = 0;
        for (var i = 0; i < n; i++)
        {
            Vector3 e1 = _e1[i], e2 = _e2[i];
            double d11 = _diagonal[i] + shift * _length[i], d22 = d11, d12 = 0;
            double o11 = 0, o12 = 0, o21 = 0, o22 = 0, l11 = 0, l12 = 0, l21 = 0, l22 = 0;
            if (!IsClamped(i))
            {
                // Block (i, i-1), and that times the inverse of the pivot before.
                Vector3 b1 = _e1[i - 1], b2 = _e2[i - 1];
                var w = -WeightBefore(i);
                (o11, o12, o21, o22) = (w * e1.Dot(b1), w * e1.Dot(b2), w * e2.Dot(b1), w * e2.Dot(b2));
                (l11, l12) = (o11 * p11 + o12 * p12, o11 * p12 + o12 * p22);
                (l21, l22) = (o21 * p11 + o22 * p12, o21 * p12 + o22 * p22);
                d11 -= l11 * o11 + l12 * o12;
                d12 -= l11 * o21 + l12 * o22;
                d22 -= l21 * o21 + l22 * o22;
            }

            var det = d11 * d22 - d12 * d12;
            if (det < 0)
            {
                negative++;
            }
            else if (d11 + d22 < 0)
            {
                negative += 2;
            }

            // About the smaller of the two pivots, compared with the link's own stiffness.
            least = Math.Min(least, Math.Abs(det) / ((Math.Abs(d11) + Math.Abs(d22)) * (WeightBefore(i) + WeightAfter(i))));
            det = det == 0 ? RodTolerance.Pivot : det;
            (p11, p12, p22) = (d22 / det, -d12 / det, d11 / det);
            var f = 7 * i;
            (_factor[f], _factor[f + 1], _factor[f + 2]) = (p11, p12, p22);
            (_factor[f + 3], _factor[f + 4], _factor[f + 5], _factor[f + 6]) = (l11, l12, l21, l22);

            // Forward elimination of the right sides: the pull of the neighbours, and the borders.
            var pull = Pull(i);
            var at = row * i;
            (_columns[at], _columns[at + 1]) = (pull.Dot(e1), pull.Dot(e2));
            Array.Clear(_columns, at + 2, row - 2);
            var own = at + 2 + 6 * _span[i];
            var l = _length[i];
            (_columns[own], _columns[own + 1]) = (l * e1.X, l * e2.X);
            (_columns[own + 2], _columns[own + 3]) = (l * e1.Y, l * e2.Y);
            (_columns[own + 4], _columns[own + 5]) = (l * e1.Z, l * e2.Z);
            if (!IsClamped(i))
            {
                for (var c = 0; c < row; c += 2)
                {
                    double a = _columns[at - row + c], b = _columns[at - row + c + 1];
                    _columns[at + c] -= l11 * a + l12 * b;
                    _columns[at + c + 1] -= l21 * a + l22 * b;
                }
            }
        }

        // S = A H⁻¹ Aᵀ from the half-solved columns alone: the pivots' inverse between them.
        Array.Clear(_schur);
        Array.Clear(_right);
        for (var i = 0; i < n; i++)
        {
            int f = 7 * i, at = row * i;
            (p11, p12, p22) = (_factor[f], _factor[f + 1], _factor[f + 2]);
            for (var r = 0; r < borders; r++)
            {
                double a = _columns[at + 2 + 2 * r], b = _columns[at + 3 + 2 * r];
                double u = p11 * a + p12 * b, v = p12 * a + p22 * b;
                _right[r] += u * _columns[at] + v * _columns[at + 1];
                for (var c = 0; c <= r; c++)
                {
                    _schur[r * borders + c] += u * _columns[at + 2 + 2 * c] + v * _columns[at + 3 + 2 * c];
                }
            }
        }

        return negative - FactorSchur();
    }

    // LDLᵀ without pivoting of the small matrix; the number of its negative pivots.
    private int FactorSchur()
    {
        int size = _right.Length, negative = 0;
        for (var j = 0; j < size; j++)
        {
            var pivot = _schur[j * size + j];
            for (var k = 0; k < j; k++)
            {
                pivot -= _schur[j * size + k] * _schur[j * size + k] * _schur[k * size + k];
            }

            pivot = pivot == 0 ? RodTolerance.Pivot : pivot;
            _schur[j * size + j] = pivot;
            negative += pivot < 0 ? 1 : 0;
            for (var i = j + 1; i < size; i++)
            {
                var sum = _schur[i * size + j];
                for (var k = 0; k < j; k++)
                {
                    sum -= _schur[i * size + k] * _schur[j * size + k] * _schur[k * size + k];
                }

                _schur[i * size + j] = sum / pivot;
            }
        }

        return negative;
    }

    /// <summary>Solves for the new forces (left in the right side) and the links' turns (left in the first column of each link).</summary>
    private void SolveBorders()
    {
        int n = _links.Length, borders = _right.Length, columns = borders + 1, row = 2 * columns;
        for (var r = 0; r < borders; r++)
        {
            var missed = _missed[r / 3];
            _right[r] = -(r % 3 == 0 ? missed.X : r % 3 == 1 ? missed.Y : missed.Z) - _right[r];
        }

        for (var r = 0; r < borders; r++)
        {
            for (var k = 0; k < r; k++)
            {
                _right[r] -= _schur[r * borders + k] * _right[k];
            }
        }

        for (var r = 0; r < borders; r++)
        {
            _right[r] /= _schur[r * borders + r];
        }

        for (var r = borders - 1; r >= 0; r--)
        {
            for (var k = r + 1; k < borders; k++)
            {
                _right[r] -= _schur[k * borders + r] * _right[k];
            }
        }

        // Right side of the links with the forces in it, then backward substitution.
        double nextA = 0, nextB = 0;
        for (var i = n - 1; i >= 0; i--)
        {
            var at = row * i;
            double a = _columns[at], b = _columns[at + 1];
            for (var r = 0; r < borders; r++)
            {
                a += _columns[at + 2 + 2 * r] * _right[r];
                b += _columns[at + 3 + 2 * r] * _right[r];
            }

            var f = 7 * i;
            double x = _factor[f] * a + _factor[f + 1] * b, y = _factor[f + 1] * a + _factor[f + 2] * b;
            if (i + 1 < n)
            {
                var g = f + 7;
                x -= _factor[g + 3] * nextA + _factor[g + 5] * nextB;
                y -= _factor[g + 4] * nextA + _factor[g + 6] * nextB;
            }

            (nextA, nextB) = (x, y);
            (_columns[at], _columns[at + 1]) = (x, y);
        }

        // Close together for what reads them.
        for (var i = 1; i < n; i++)
        {
            (_columns[2 * i], _columns[2 * i + 1]) = (_columns[row * i], _columns[row * i + 1]);
        }
    }

    private void Move(double part)
    {
        for (var i = 0; i < _links.Length; i++)
        {
            var turn = part * (_columns[2 * i] * _e1[i] + _columns[2 * i + 1] * _e2[i]);
            var size = turn.Length;
            _trial[i] = size < MechanismTolerance.OneLine
                ? (_links[i] + turn).Unit
                : (Math.Cos(size) * _links[i] + Math.Sin(size) / size * turn).Unit;
        }
    }
}
