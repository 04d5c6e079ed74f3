namespace BracketGen.Words.Page;

/// <summary>What the page writes into the files of a new job.</summary>
internal static class NewJobWords
{
    public static Dictionary<string, string> All { get; } = new()
    {
        ["unitsRemark"] = "Numbers without a unit are in mm, degrees, N, N m and V.",
        ["title"] = "Throttle cable bracket, {vehicle}, {body}",
    };
}
