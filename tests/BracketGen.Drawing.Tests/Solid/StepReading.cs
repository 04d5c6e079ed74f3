using System.Text.Json;
using BracketGen.Drawing.Tests.Sheet;
using BracketGen.TestSupport;

namespace BracketGen.Drawing.Tests.Solid;

/// <summary>What tests/readers/step.mjs found in a file (mm).</summary>
internal sealed record StepReading(
    string[] Complaints, bool IsOneSolid, int Shells, int Faces, int Edges, int Corners, bool IsClosed, bool IsValid, double Volume, double Area,
    double[] Centre, string Name, double[] Colour, string Material, double Density, double StatedVolume)
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web);

    /// <summary>Whether it is one valid, closed solid with its outside out, in a file that keeps to its schema.</summary>
    public bool IsSound => Complaints.Length == 0 && IsOneSolid && Shells == 1 && IsClosed && IsValid && Volume > 0 && Area > 0;

    public static IReadOnlyDictionary<string, StepReading> Of(IEnumerable<(string Name, byte[] Bytes)> files)
    {
        var node = OutsideTool.RequireNode("opencascade.js", "occt-import-js");
        using var folder = new TemporaryFolder();
        foreach (var (name, bytes) in files)
        {
            File.WriteAllBytes(folder[name + ".step"], bytes);
        }

        var script = RepositoryRoot.PathOf("tests", "readers", "step.mjs");
        return JsonSerializer.Deserialize<Dictionary<string, StepReading>>(
            node.RunOrFail([script, folder[""]]), Options)!;
    }
}
