using System.Text.Json;
using BracketGen.TestSupport;

namespace BracketGen.Drawing.Tests.Dxf;

/// <summary>What ezdxf, an independent reader, understood of a file.</summary>
internal sealed record ReadBack(
    string Version,
    int Units,
    int Measurement,
    double[][] Extents,
    string[] Problems,
    Dictionary<string, JsonElement[]> Layers,
    ReadEntity[] Entities)
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web);

    /// <summary>Reads all files, given as name and bytes, in one run.</summary>
    public static IReadOnlyDictionary<string, ReadBack> Of(IEnumerable<(string Name, byte[] Bytes)> files)
    {
        var python = OutsideTool.RequirePython("ezdxf");
        var folder = Directory.CreateTempSubdirectory("bracketgen-dxf-").FullName;
        try
        {
            foreach (var (name, bytes) in files)
            {
                File.WriteAllBytes(Path.Combine(folder, name + ".dxf"), bytes);
            }

            var script = RepositoryRoot.PathOf("tests", "BracketGen.Drawing.Tests", "Dxf", "read_back.py");
            return JsonSerializer.Deserialize<Dictionary<string, ReadBack>>(python.RunOrFail([script, folder]), Options)!;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Reads one file.</summary>
    public static ReadBack Of(byte[] bytes) => Of([("only", bytes)])["only"];
}

/// <summary>One entity as read; lengths in the file's unit, area positive where it runs counter-clockwise.</summary>
internal sealed record ReadEntity(
    string Kind, string Layer, bool Closed, double Gap, double Shortest, double Length, double Area, int Arcs, double[] Start, double[] End)
{
    /// <summary>What a text says; null if it is none.</summary>
    public string? Text { get; init; }

    /// <summary>Height of a text's capitals; 0 if it is none.</summary>
    public double Height { get; init; }
}
