namespace BracketGen.Words.Page;

/// <summary>What the page's server says when it refuses a request or cannot do what was asked.</summary>
public static class ServerWords
{
    /// <summary>The request names another host.</summary>
    public const string OtherHost = "This is not the page's address. Use the address that the program printed.";

    /// <summary>The request comes from another page.</summary>
    public const string OtherPage = "Requests from other pages are refused.";

    /// <summary>There is nothing at the address.</summary>
    public const string NoAddress = "There is nothing at this address.";

    /// <summary>The body is too long.</summary>
    public const string TooLong = "The request is too long.";

    /// <summary>The request is malformed.</summary>
    public const string Malformed = "The request cannot be read.";

    /// <summary>The body is not JSON.</summary>
    public const string NotJson = "Requests must carry JSON.";

    /// <summary>The body is JSON but not a message of the page.</summary>
    public const string NotOfThePage = "This is not a request that the page sends.";

    /// <summary>The job's files are too many, too long, or have paths that are not allowed.</summary>
    /// <param name="maxFiles">Maximum number of files.</param>
    public static string BadJob(int maxFiles) =>
        $"A job has 1 to {maxFiles} profiles. Each has a path in the folder that ends in .toml, and is at most 1 MiB long.";

    /// <summary>The kit's files are too many, too long, or have paths that are not allowed.</summary>
    /// <param name="maxFiles">Maximum number of the job's files.</param>
    /// <param name="maxParts">Maximum number of lists, brackets and drawings.</param>
    public static string BadKit(int maxFiles, int maxParts) => $"{BadJob(maxFiles)} It names at most {maxParts} lists of parts, brackets and drawings.";

    /// <summary>No such profile.</summary>
    public static string NoFile(string path) => $"{path}: no such file in the working folder.";

    /// <summary>A file of the folder that cannot be read.</summary>
    public const string NotReadable = "This file cannot be read: it may be too long, or no UTF-8 text.";

    /// <summary>A job names a file that is not there.</summary>
    /// <param name="path">Path of the missing file.</param>
    public static string NamesMissing(string path) => $"It names {path}: no such file in the folder.";

    /// <summary>The path cannot be a profile of the folder.</summary>
    public static string BadPath(string path) => $"{path} is not the path of a profile in the folder.";

    /// <summary>The files could not be written.</summary>
    /// <param name="reason">What the system says.</param>
    public static string NotWritten(string reason) => $"The files could not be written: {reason}";

    /// <summary>What the page is to remember could not be written.</summary>
    /// <param name="reason">What the system says.</param>
    public static string NotRemembered(string reason) => $"The page works, but its settings could not be saved: {reason}";

    /// <summary>The colours asked for are none of those there are.</summary>
    /// <param name="allowed">The names allowed.</param>
    public static string BadLook(IEnumerable<string> allowed) => $"Colours are one of {string.Join(", ", allowed)}.";

    /// <summary>A packed job with files that are not profiles.</summary>
    public const string BadPackedJob = "The packed job holds files that are not profiles.";

    /// <summary>More than one job was handed over.</summary>
    public static string SeveralJobs(IReadOnlyList<string> names) => $"These are {names.Count} jobs: {string.Join(", ", names)}. Take one job at a time, with the files it names.";

    /// <summary>A single file that is another profile.</summary>
    public static string NoJobBut(string name, string kind) => $"{name} is a {kind}, not a job. Take a job file, or put this file into the folder of the page and name it in a job.";

    /// <summary>A single file that is no profile.</summary>
    public static string NoJobIn(string name) => $"{name} is not a job of this program. Take a job file or a packed job (.toml).";

    /// <summary>Several files and none is a job.</summary>
    public const string NoJobAmong = "None of these files is a job. Take a job file, or a packed job (.toml).";

    /// <summary>Questions are wanted of another profile.</summary>
    public const string NoQuestions = "There are questions for a vehicle and for a throttle body only.";

    /// <summary>A file is withheld.</summary>
    public static string Withheld(string name) => $"{name} is withheld: a safety check fails, or there is no bracket.";

    /// <summary>No such output.</summary>
    public const string NoOutput = "There is no such file.";

    /// <summary>The beam path cannot be made.</summary>
    /// <param name="reason">Why.</param>
    public static string NoBeamPath(string reason) => $"There is no file with the beam path: {reason}";

    /// <summary>A defect of the program.</summary>
    /// <param name="error">Kind of the error.</param>
    /// <param name="message">Its message.</param>
    public static string Defect(string error, string message) => $"This is a defect of the program: {error}: {message}";
}
