using System.Text;
using BracketGen.Drawing.Report;

namespace BracketGen.Web.Serving;

/// <summary>The page's files as they ship in the program; its document is filled in by <see cref="PageDocument"/>.</summary>
internal static class PageAssets
{
    private const string Prefix = "page/";

    private static readonly Lazy<Dictionary<string, (byte[] Bytes, string Type)>> All = new(Load);

    /// <summary>The file at a path of the address, such as <c>/page.js</c>; null if there is none.</summary>
    public static (byte[] Bytes, string Type)? Find(string path) => All.Value.TryGetValue(path, out var found) ? found : null;

    /// <summary>The paths of all files.</summary>
    public static IEnumerable<string> Paths => All.Value.Keys;

    /// <summary>The text of one of the page's files.</summary>
    /// <param name="name">Its name: <c>index.html</c>.</param>
    public static string Text(string name)
    {
        using var reader = new StreamReader(Open(Prefix + name), Encoding.UTF8);
        return reader.ReadToEnd();
    }

    private static Dictionary<string, (byte[] Bytes, string Type)> Load()
    {
        var all = new Dictionary<string, (byte[] Bytes, string Type)>();
        var names = typeof(PageAssets).Assembly.GetManifestResourceNames();
        foreach (var name in names.Where(n => n.StartsWith(Prefix, StringComparison.Ordinal) && !n.EndsWith(".html", StringComparison.Ordinal)))
        {
            using var stream = Open(name);
            using var copy = new MemoryStream();
            stream.CopyTo(copy);
            all["/" + name[Prefix.Length..]] = (copy.ToArray(), TypeOf(name));
        }

        all["/report.css"] = (Encoding.UTF8.GetBytes(ReportParts.Style), TypeOf(".css"));
        all["/looks.css"] = (Encoding.UTF8.GetBytes(ReportParts.Looks), TypeOf(".css"));
        all["/report.js"] = (Encoding.UTF8.GetBytes(ReportParts.Module), TypeOf(".js"));
        return all;
    }

    private static Stream Open(string resource) => typeof(PageAssets).Assembly.GetManifestResourceStream(resource)!;

    private static string TypeOf(string name) => Path.GetExtension(name) switch
    {
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".svg" => "image/svg+xml",
        var other => throw new InvalidOperationException($"There is no type for {other}."),
    };
}
