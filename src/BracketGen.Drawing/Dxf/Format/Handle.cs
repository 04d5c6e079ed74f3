namespace BracketGen.Drawing.Dxf.Format;

/// <summary>The number by which a DXF file knows an object; written in base 16.</summary>
internal readonly record struct Handle(int Value)
{
    /// <summary>Owner of what has none.</summary>
    public static readonly Handle None = new(0);
}

/// <summary>Gives out handles in order, so that the same drawing gets the same ones.</summary>
internal sealed class HandleSource
{
    private int _last;

    /// <summary>The next free one, for $HANDSEED.</summary>
    public Handle Seed => new(_last + 1);

    public Handle Next() => new(++_last);
}
