using BracketGen.Strength.Elements;
using BracketGen.Strength.Model;
using BracketGen.Strength.Solving;

namespace BracketGen.Strength.Analysis;

/// <summary>What of a model can move: nodes held in all six freedoms are left out of every matrix.</summary>
internal sealed class FreeNodes
{
    private const int Block = Block6.Order;

    private readonly bool[] _held;
    private readonly int[] _numbers;
    private readonly int[] _nodes;
    private readonly bool _someArePartlyHeld;

    public FreeNodes(ShellModel model)
    {
        var (nodes, triangles) = model.Mesh;
        _held = new bool[nodes.Length * Block];
        Given = new double[_held.Length];
        foreach (var h in model.Held)
        {
            _held[h.Node * Block + (int)h.Freedom] = true;
            Given[h.Node * Block + (int)h.Freedom] = h.Value;
        }

        _numbers = new int[nodes.Length];
        var free = new List<int>(nodes.Length);
        for (var n = 0; n < nodes.Length; n++)
        {
            var held = _held.AsSpan(n * Block, Block);
            _numbers[n] = held.Contains(false) ? free.Count : -1;
            if (_numbers[n] >= 0)
            {
                free.Add(n);
                _someArePartlyHeld |= held.Contains(true);
            }
        }

        _nodes = [.. free];
        HasGiven = Given.AsSpan().ContainsAnyExcept(0.0);
        var corners = new Triangle[triangles.Length];
        for (var t = 0; t < corners.Length; t++)
        {
            corners[t] = new(_numbers[triangles[t].A], _numbers[triangles[t].B], _numbers[triangles[t].C]);
        }

        Pattern = BlockPattern.For(_nodes.Length, corners);
    }

    /// <summary>The blocks of matrices on the free nodes, by their numbers.</summary>
    public BlockPattern Pattern { get; }

    /// <summary>Displacement of every held freedom of the model, six a node; zero where it is free.</summary>
    public double[] Given { get; }

    /// <summary>Whether a held freedom moves by something other than zero.</summary>
    public bool HasGiven { get; }

    /// <summary>Number of a node among the free ones; -1 where it is held in all freedoms.</summary>
    public int NumberOf(int node) => _numbers[node];

    /// <summary>The node of a number among the free ones.</summary>
    public int NodeOf(int number) => _nodes[number];

    /// <summary>Whether a freedom is held.</summary>
    public bool IsHeld(int node, int freedom) => _held[node * Block + freedom];

    /// <summary>Whether a node has a held freedom.</summary>
    public bool HasHeld(int node) => _held.AsSpan(node * Block, Block).Contains(true);

    /// <summary>Whether nothing of a triangle can move, or is moved.</summary>
    public bool IsAtRest(Triangle t) => _numbers[t.A] < 0 && _numbers[t.B] < 0 && _numbers[t.C] < 0;

    /// <summary>Empties the rows and columns of held freedoms in the matrix of a triangle, but for <paramref name="diagonal"/> times their own diagonal.</summary>
    public void Restrict(Triangle t, double diagonal, Span<double> blocks)
    {
        if (!_someArePartlyHeld)
        {
            return;
        }

        for (var pair = 0; pair < CornerBlocks.Pairs; pair++)
        {
            var (i, j) = CornerBlocks.Corners(pair);
            for (var entry = 0; entry < Block6.Size; entry++)
            {
                int r = entry / Block, c = entry % Block;
                if (IsHeld(t[i], r) || IsHeld(t[j], c))
                {
                    blocks[Block6.Size * pair + Block6.At(r, c)] *= i == j && r == c ? diagonal : 0;
                }
            }
        }
    }

    /// <summary>The free nodes' part of a vector with six numbers a node, zero where a freedom is held.</summary>
    public double[] Reduced(ReadOnlySpan<double> whole)
    {
        var part = new double[_nodes.Length * Block];
        for (var k = 0; k < _nodes.Length; k++)
        {
            whole.Slice(_nodes[k] * Block, Block).CopyTo(part.AsSpan(k * Block));
        }

        for (var i = 0; _someArePartlyHeld && i < part.Length; i++)
        {
            if (_held[_nodes[i / Block] * Block + i % Block])
            {
                part[i] = 0;
            }
        }

        return part;
    }

    /// <summary>The whole vector of a free nodes' part: what is not in it is zero.</summary>
    public double[] Whole(ReadOnlySpan<double> part)
    {
        var whole = new double[_numbers.Length * Block];
        for (var k = 0; k < _nodes.Length; k++)
        {
            part.Slice(k * Block, Block).CopyTo(whole.AsSpan(_nodes[k] * Block));
        }

        return whole;
    }
}
