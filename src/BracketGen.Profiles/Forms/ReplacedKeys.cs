namespace BracketGen.Profiles.Forms;

/// <summary>Keys whose meaning changed: the present key takes another value, so an old file is an error wherever it is read from.</summary>
public static class ReplacedKeys
{
    /// <summary>The key that stands in place of one that was once called <paramref name="name"/>; null where it never was.</summary>
    public static string? NowOf(string name) => name == "outer_stiffness" ? "outer_axial_stiffness" : null;
}
