namespace BracketGen.Design.Checks;

/// <summary>Where limits come from, in the words that every output prints.</summary>
internal static class Sources
{
    public const string CommonPractice = "common practice, no source";
    public const string Judgement = "our judgement, no source";
    public const string Preference = "job preferences (default: common practice, no source)";
    public const string Profile = "profile";
    public const string Geometry = "geometry";
    public const string TwoSprings = "49 CFR 571.124 S5";
    public const string EdgeDistance = "EN 1993-1-8, table 3.3 (1.2 d)";
}
