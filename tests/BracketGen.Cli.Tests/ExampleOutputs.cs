using BracketGen.Line.Solving;
using BracketGen.TestSupport;

namespace BracketGen.Cli.Tests;

/// <summary>What <c>make</c> gives for every job that ships with the program, made once for all tests, each in a process of its own.</summary>
public sealed class ExampleOutputs : IDisposable
{
    private readonly Workplace _place = new();

    public ExampleOutputs() => Results = Workplace.Jobs.ToDictionary(job => job, job => _place.MakeAlone(job));

    /// <summary>What the program said, by job.</summary>
    public IReadOnlyDictionary<string, ToolResult> Results { get; }

    /// <summary>Folder with one folder a job.</summary>
    public string Folder => _place.Output;

    /// <summary>Full path of a file of a job.</summary>
    public string PathOf(string job, string file) => _place.Made(job, file);

    /// <summary>Every file made.</summary>
    internal string[] Files() => _place.OutputFiles();

    public void Dispose() => _place.Dispose();
}

/// <summary>Shares the outputs among the test classes.</summary>
[CollectionDefinition(Name)]
public sealed class ExampleOutputsCollection : ICollectionFixture<ExampleOutputs>
{
    public const string Name = "Example outputs";
}
