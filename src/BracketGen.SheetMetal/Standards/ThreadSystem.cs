namespace BracketGen.SheetMetal.Standards;

/// <summary>The system of standards that a thread and what goes with it belong to.</summary>
public enum ThreadSystem
{
    /// <summary>ISO metric threads; screws, nuts and washers of ISO standards.</summary>
    Metric,

    /// <summary>Unified inch threads; screws, nuts and washers of ASME standards.</summary>
    Inch,
}
