using System.Globalization;
using BracketGen.SheetMetal.Fasteners;

namespace BracketGen.Words;

/// <summary>A screw of the mount in words.</summary>
public static class ScrewText
{
    /// <summary>"M6 x 16".</summary>
    public static string Size(BossScrew bolt) => string.Create(CultureInfo.InvariantCulture, $"{bolt.Thread.Name} x {bolt.Length:0}");
}
