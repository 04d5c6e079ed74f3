namespace BracketGen.Words.Page;

/// <summary>Head, foot and dialogs of the page.</summary>
internal static class FrameWords
{
    public static Dictionary<string, string> All { get; } = new()
    {
        ["program"] = "BracketGen",
        ["title"] = "Throttle cable brackets",
        ["skip"] = "Skip to the main part",
        ["tools"] = "Job",
        ["jobs"] = "Jobs",
        ["undo"] = "Undo",
        ["redo"] = "Redo",
        ["save"] = "Save",
        ["share"] = "Share",
        ["keys"] = "Keys",
        ["jobTitle"] = "{vehicle} on {body}",
        ["newVehicle"] = "New vehicle",
        ["newBody"] = "new throttle body",
        ["unsavedTitle"] = "• {title}",
        ["toInches"] = "mm: change units to inches",
        ["toMillimetres"] = "in: change units to millimetres",
        ["look"] = "Colours",
        ["lookSystem"] = "Colours: as the system",
        ["light"] = "Light",
        ["lookLight"] = "Light: colours",
        ["dark"] = "Dark",
        ["lookDark"] = "Dark: colours",
        ["aid"] = "A design aid. A competent person checks the finished installation.",
        ["answered"] = "Calculated in {time} ms. A design aid: a competent person checks the finished installation.",
        ["saved"] = "Saved.",
        ["close"] = "Close",
        ["noAnswer"] = "The program does not answer: what is shown is from before. Check that it is still running. What you typed is kept and sent again.",
        ["refused"] = "This change cannot be written into the profile here: {keys}. Change it under \"As text\".",
        ["unsavedHeading"] = "Some changes are not saved",
        ["discard"] = "Go on without saving",
        ["stay"] = "Stay",
        ["overwriteHeading"] = "Overwrite the files?",
        ["changedOnDisk"] = "These files have changed in the folder since the page read them: {files}.",
        ["differences"] = "{file}: - in the folder, + on the page",
        ["moreLines"] = "{count} more lines differ.",
        ["saveAside"] = "Save under another name",
        ["savedAs"] = "Saved as {files}.",
        ["overwrite"] = "Overwrite",
        ["leave"] = "Leave them",
    };
}
