using System.Text.Json;
using System.Text.Json.Serialization;
using BracketGen.Drawing.Report.Model;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Drawing.Result;

namespace BracketGen.Drawing.Report;

/// <summary>What the page's script moves and turns; all numbers that are shown stand in the page's tables.</summary>
/// <param name="Sweep">The moving picture.</param>
/// <param name="Solid">The picture to turn; null without a bracket.</param>
internal sealed record PageData(SweepData Sweep, SolidData? Solid)
{
    /// <summary>As JSON that may stand in an HTML page: no character in it can end a script element or begin a comment.</summary>
    public static string Json(ReportScene scene) => FiniteNumbers.WithoutMarks(JsonSerializer.Serialize(
        new PageData(scene.Motion.Data(), scene.Mesh is null ? null : JobSolid.Of(scene)), PageContext.Default.PageData));
}

/// <summary>Serialization of the page's data without reflection.</summary>
/// <remarks>The default encoder escapes &lt;, &gt;, &amp; and quotes in texts, which the page relies on.</remarks>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, Converters = [typeof(FiniteNumbers)])]
[JsonSerializable(typeof(PageData))]
internal sealed partial class PageContext : JsonSerializerContext;
