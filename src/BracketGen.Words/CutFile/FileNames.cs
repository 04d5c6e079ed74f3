namespace BracketGen.Words.CutFile;

/// <summary>Names of the cut files, which sentences tell apart.</summary>
public static class FileNames
{
    /// <summary>The flat pattern as cut: the finished edge.</summary>
    public const string FinishedEdge = "flat-pattern.dxf";

    /// <summary>The beam path, half the kerf off the finished edge.</summary>
    public const string BeamPath = "flat-pattern-kerf.dxf";

    /// <summary>The adapter ring as cut: the finished edge.</summary>
    public const string AdapterRing = "adapter-ring.dxf";
}
