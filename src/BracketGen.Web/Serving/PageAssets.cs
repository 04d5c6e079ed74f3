using System.Text;
using BracketGen.Drawing.Report;

namespace BracketGen.Web.Serving;

/// <summary>The page's files, which ship within the program.</summary>
internal static class PageAssets
{
    private const string Prefix = "page/";

    private static readonly Lazy<Dictionary<string, (byte[] Bytes, string Type)>> All = new(Load);

    /// <summary>The file at a path of the address, «/workbench.js»; null where there is none.</summary>
    public static (byte[] Bytes, string Type)? Find(string path) => All.Value.TryGetValue(path, out var found) ? found : null;

    /// <summary>All paths.</summary>
    public static IEnumerable<string> Paths => All.Value.Keys;

    private static Dictionary<string, (byte[] Bytes, string Type)> Load()
    {
        var assembly = typeof(PageAssets).Assembly;
        var all = new Dictionary<string, (byte[] Bytes, string Type)>();
        foreach (var name in assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)))
        {
            using var stream = assembly.GetManifestResourceStream(name)!;
            using var copy = new MemoryStream();
            stream.CopyTo(copy);
            all["/" + name[Prefix.Length..]] = (copy.ToArray(), TypeOf(name));
        }

        all["/"] = all["/index.html"];
        all["/report.css"] = (Encoding.UTF8.GetBytes(ReportParts.Style), TypeOf(".css"));
        all["/looks.css"] = (Encoding.UTF8.GetBytes(ReportParts.Looks), TypeOf(".css"));
        all["/report.js"] = (Encoding.UTF8.GetBytes(ReportParts.Module), TypeOf(".js"));
        return all;
    }

    private static string TypeOf(string name) => Path.GetExtension(name) switch
    {
        ".html" => "text/html; charset=utf-8",
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".svg" => "image/svg+xml",
        var other => throw new InvalidOperationException($"There is no type for {other}."),
    };
}
