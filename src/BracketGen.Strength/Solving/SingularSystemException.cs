namespace BracketGen.Strength.Solving;

/// <summary>A motion of the part meets no stiffness.</summary>
internal sealed class SingularSystemException(int node, int freedom)
    : Exception($"Nothing resists freedom {freedom} of node {node}.")
{
    public int Node { get; } = node;

    public int Freedom { get; } = freedom;
}
