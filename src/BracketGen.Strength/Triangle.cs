namespace BracketGen.Strength;

/// <summary>Three nodes of a mesh by number, counter-clockwise seen from the sheet's top side.</summary>
/// <param name="A">First node.</param>
/// <param name="B">Second node.</param>
/// <param name="C">Third node.</param>
public readonly record struct Triangle(int A, int B, int C)
{
    /// <summary>The same triangle on a mirrored mesh, counter-clockwise there.</summary>
    public Triangle Mirrored() => new(A, C, B);

    /// <summary>The node at corner 0, 1 or 2.</summary>
    public int this[int corner] => corner switch
    {
        0 => A,
        1 => B,
        2 => C,
        _ => throw new ArgumentOutOfRangeException(nameof(corner), corner, "A triangle has corners 0, 1 and 2."),
    };
}
