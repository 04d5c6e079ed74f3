using System.Text;

namespace BracketGen.Drawing.Report;

/// <summary>The page's style and script, which ship with the program.</summary>
internal static class PageFiles
{
    /// <summary>In the order in which they are put together.</summary>
    private static readonly string[] Scripts = ["sweep.js", "surface.js", "solid.js", "charts.js", "report.js"];

    private static readonly Lazy<string> StyleText = new(() => Read("style.css") + Read("print.css"));

    // One function round all of it: nothing of it is left in the page's own scope.
    private static readonly Lazy<string> ScriptText = new(() => "(() => {\n'use strict';\n" + string.Concat(Scripts.Select(Read)) + "})();\n");

    private static readonly Lazy<string> ModuleText = new(() =>
        string.Concat(Scripts[..^1].Select(Read)) + "export { chartReaders, solidPicture, sweepMotion, sweepPicture };\n");

    /// <summary>The style sheet.</summary>
    public static string Style => StyleText.Value;

    /// <summary>The script.</summary>
    public static string Script => ScriptText.Value;

    /// <summary>What the script is made of, as a module for another page that shows the same pictures.</summary>
    public static string Module => ModuleText.Value;

    /// <summary>The script's sum, as a content security policy wants it (W3C, Content Security Policy Level 3, 6.7.3.3).</summary>
    /// <remarks>A constant, so that no run needs the system's library of ciphers; a test finds it anew.</remarks>
    public const string ScriptSum = "sha256-dSq6ZsLdU/XF1lMfKOAaMKUWUAu5KTWKYbXvlFvd56Q=";

    private static string Read(string name)
    {
        using var stream = typeof(PageFiles).Assembly.GetManifestResourceStream($"BracketGen.Drawing.Report.Page.{name}")
            ?? throw new InvalidOperationException($"The page's file {name} is missing from the program.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
