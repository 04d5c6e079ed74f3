using System.Diagnostics;
using Xunit;

namespace BracketGen.TestSupport;

/// <summary>A program from outside the project that tests ask for a second opinion.</summary>
/// <remarks>
/// On a developer's machine a missing tool skips the test; where the environment variable CI is <c>true</c> it fails it, so
/// that a check cannot go missing unseen.
/// </remarks>
public sealed class OutsideTool
{
    private OutsideTool(string path) => FilePath = path;

    /// <summary>Full path of the program.</summary>
    public string FilePath { get; }

    // A busy machine is slow: this ends a hang and measures nothing.
    private static readonly TimeSpan Hang = TimeSpan.FromMinutes(10);

    private static bool MustBeThere => Environment.GetEnvironmentVariable("CI") == "true";

    /// <summary>The first of <paramref name="names"/> that is found: a full path, or a name on PATH.</summary>
    public static OutsideTool Require(params string[] names)
    {
        var found = names.Select(Find).FirstOrDefault(path => path is not null);
        if (found is not null)
        {
            return new(found);
        }

        Missing($"This test needs {string.Join(" or ", names)}, which is not on this machine.");
        throw new UnreachableException();
    }

    /// <summary>
    /// A Python that can import <paramref name="modules"/>: the system's own first, because that is where a distribution
    /// installs its modules.
    /// </summary>
    public static OutsideTool RequirePython(params string[] modules)
    {
        foreach (var path in new[] { "/usr/bin/python3", "python3", "python" }.Select(Find))
        {
            if (path is not null
                && new OutsideTool(path).Run(["-c", string.Concat(modules.Select(m => $"import {m}\n"))]).ExitCode == 0)
            {
                return new(path);
            }
        }

        Missing($"This test needs a Python with {string.Join(", ", modules)}, which is not on this machine.");
        throw new UnreachableException();
    }

    /// <summary>A Node.js beside which <paramref name="packages"/> of tests/readers are installed.</summary>
    public static OutsideTool RequireNode(params string[] packages)
    {
        var missing = packages.FirstOrDefault(p => !Directory.Exists(RepositoryRoot.PathOf("tests", "readers", "node_modules", p)));
        if (missing is not null)
        {
            Missing($"This test needs {missing}: run 'npm ci --ignore-scripts' in tests/readers.");
        }

        return Require("node", "nodejs");
    }

    /// <summary>Runs it to its end and returns what it said.</summary>
    /// <exception cref="TimeoutException">It did not end within ten minutes.</exception>
    public ToolResult Run(IEnumerable<string> arguments, string input = "", string? folder = null, TimeSpan? timeout = null)
    {
        var start = new ProcessStartInfo(FilePath)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder ?? Path.GetTempPath(),
        };
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{FilePath} does not start.");

        // Both pipes are read while it runs: a full pipe would stop it.
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        try
        {
            process.StandardInput.Write(input);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // It ended without reading its input; its exit code says whether that is bad.
        }

        if (!process.WaitForExit(timeout ?? Hang))
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"{FilePath} did not end in time.");
        }

        return new(process.ExitCode, output.Result, errors.Result);
    }

    /// <summary>Runs it, and fails the test with all it said unless it ends with exit code 0.</summary>
    public string RunOrFail(IEnumerable<string> arguments, string input = "", string? folder = null, TimeSpan? timeout = null)
    {
        var result = Run(arguments, input, folder, timeout);
        Assert.True(result.ExitCode == 0, $"{FilePath} ended with {result.ExitCode}:\n{result.Output}\n{result.Errors}");
        return result.Output;
    }

    /// <summary>Skips the test, or fails it where everything must be there.</summary>
    public static void Refused(string message) => Missing(message);

    internal static void Missing(string message)
    {
        Assert.False(MustBeThere, message);
        Skip.If(true, message);
    }

    private static string? Find(string name)
    {
        if (Path.IsPathRooted(name))
        {
            return File.Exists(name) ? name : null;
        }

        string[] endings = OperatingSystem.IsWindows() ? [".exe", ".cmd", ".bat"] : [""];
        return (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .SelectMany(folder => endings.Select(ending => Path.Combine(folder, name + ending)))
            .FirstOrDefault(File.Exists);
    }
}

/// <summary>What a tool said.</summary>
/// <param name="ExitCode">Its exit code.</param>
/// <param name="Output">Its standard output.</param>
/// <param name="Errors">Its standard error.</param>
public sealed record ToolResult(int ExitCode, string Output, string Errors);
