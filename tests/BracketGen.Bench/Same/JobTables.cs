using BracketGen.Design.Inputs;
using BracketGen.Profiles.Toml;
using BracketGen.SheetMetal.Shops;
using Tomlyn.Model;

namespace BracketGen.Bench.Same;

/// <summary>The four profiles of one job, each a table under the key names of the release before.</summary>
/// <param name="Name">Name of the job's file.</param>
/// <param name="Job">The job.</param>
/// <param name="Body">Its throttle body.</param>
/// <param name="Vehicle">Its vehicle.</param>
/// <param name="Shop">Its shop.</param>
internal sealed record JobTables(string Name, TomlTable Job, TomlTable Body, TomlTable Vehicle, TomlTable Shop)
{
    /// <summary>The job as it is shipped.</summary>
    public static JobTables Shipped(string name, IReadOnlyDictionary<string, string> newNames)
    {
        var job = Toml.Shipped(newNames, "jobs", $"{name}.toml");
        TomlTable Beside(string key) => Toml.Shipped(newNames, ((string)job[key]).Split('/')[1..]);
        return new(name, job, Beside("throttle_body"), Beside("vehicle"), Beside("shop"));
    }

    /// <summary>Writes the four files into a folder.</summary>
    /// <param name="folder">The folder; it is made.</param>
    /// <param name="names">Old key to the one the program knows.</param>
    /// <returns>Path of the job's file.</returns>
    public string Write(string folder, IReadOnlyDictionary<string, string> names)
    {
        Directory.CreateDirectory(folder);
        var (job, path) = (Copy(Job), Path.Combine(folder, $"{Name}.toml"));
        foreach (var (key, table) in new[] { ("throttle_body", Body), ("vehicle", Vehicle), ("shop", Shop) })
        {
            var file = $"{key.Replace('_', '-')}.profile.toml";
            job[key] = file;
            File.WriteAllText(Path.Combine(folder, file), Toml.Text(table, names));
        }

        File.WriteAllText(path, Toml.Text(job, names));
        return path;
    }

    private static TomlTable Copy(TomlTable table)
    {
        var copy = new TomlTable(inline: false);
        foreach (var (key, value) in table)
        {
            copy[key] = value;
        }

        return copy;
    }
}
