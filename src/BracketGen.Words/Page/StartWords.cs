namespace BracketGen.Words.Page;

/// <summary>The first screen: begin a new job, or open one.</summary>
internal static class StartWords
{
    public static Dictionary<string, string> All { get; } = new()
    {
        ["newHeading"] = "New job",
        ["newExplain"] = "The vehicle has the pedal and the cable; the engine has the throttle body. Measure both, and the program designs the bracket.",
        ["body"] = "Throttle body",
        ["vehicle"] = "Vehicle",
        ["shop"] = "Shop",
        ["name"] = "Its name",
        ["measureNow"] = "measure it now, step by step",
        ["fromFolder"] = "{name} ({path})",
        ["fromExamples"] = "{name}, example",
        ["nameBody"] = "Give the throttle body a name with letters or digits.",
        ["nameVehicle"] = "Give the vehicle a name with letters or digits.",
        ["begin"] = "Begin",
        ["jobsHeading"] = "Jobs in the folder {folder}",
        ["unsaved"] = "not saved yet",
        ["noJobs"] = "No jobs yet.",
        ["examplesHeading"] = "Examples",
        ["worksheetHeading"] = "Worksheet",
        ["worksheetExplain"] = "What to measure, from where, with blanks to fill in: print it and take it to the vehicle.",
        ["paper"] = "Paper",
        ["a4"] = "A4, millimetres",
        ["a"] = "A, 8.5 x 11 in, inches",
        ["worksheet"] = "Download the worksheet",
        ["sharedHeading"] = "Job from elsewhere",
        ["shared"] = "Packed job, or a job with the files it names (.toml)",
        ["sharedExplain"] = "You can also drop the files anywhere on the page. What the job names and you do not drop is taken from the folder.",
        ["back"] = "Back to the open job",
    };
}
