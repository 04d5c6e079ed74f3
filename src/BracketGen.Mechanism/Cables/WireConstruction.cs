namespace BracketGen.Mechanism.Cables;

/// <summary>How a wire is stranded.</summary>
public enum WireConstruction
{
    /// <summary>A single wire.</summary>
    Single,

    /// <summary>1×19: one strand of nineteen wires.</summary>
    OneStrand,

    /// <summary>7×7: seven strands of seven wires.</summary>
    SevenBySeven,

    /// <summary>7×19: seven strands of nineteen wires.</summary>
    SevenByNineteen,
}

/// <summary>How tightly a wire may be bent over a groove.</summary>
public static class WireBending
{
    /// <summary>Minimum diameter of the groove's bottom over the wire's diameter.</summary>
    /// <remarks>
    /// Machinery's Handbook, wire rope, minimum sheave diameters: 42 for 6×7 and 34 for 6×19 (from memory); 7×7 and 7×19 have a
    /// strand in place of the core and outer wires of the same sizes. What is not made to run over a sheave has no value there: 1×19
    /// and a single wire are given the bending stress of 6×7, which goes with the diameter of one wire over that of the groove: a ninth of the
    /// whole in 6×7, a fifth in 1×19 (our judgement).
    /// </remarks>
    public static double LeastRatio(WireConstruction construction) => construction switch
    {
        WireConstruction.SevenByNineteen => 34,
        WireConstruction.SevenBySeven => SixBySeven,
        WireConstruction.OneStrand => SixBySeven * 9 / 5,
        _ => SixBySeven * 9,
    };

    private const double SixBySeven = 42;
}
