namespace BracketGen.Strength.Elements;

/// <summary>
/// How a 6 x 6 block lies in memory: nine fours, rows first, for the nine pairs of axes; in each four displacement by displacement, displacement by
/// rotation, rotation by displacement, rotation by rotation.
/// </summary>
/// <remarks>One axis turns displacements and rotations alike, so that all four are worked on at once.</remarks>
internal static class Block6
{
    /// <summary>Freedoms of a node: three displacements, three rotations.</summary>
    public const int Order = 6;

    /// <summary>Numbers of a block.</summary>
    public const int Size = Order * Order;

    /// <summary>Where an entry lies.</summary>
    public static int At(int row, int column) => 4 * (3 * (row % 3) + column % 3) + 2 * (row / 3) + column / 3;
}
