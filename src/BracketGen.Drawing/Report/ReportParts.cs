using System.Collections.Immutable;
using BracketGen.Design.Study;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Model;
using BracketGen.Drawing.Report.Pictures;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Drawing.Report.Sections;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Geometry;
using BracketGen.Words.Report;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.Report;

/// <summary>The report's sections one by one, for a page that shows them as the numbers change: same words, same numbers, same pictures.</summary>
/// <remarks>The same solution gives the same text. All of it is well-formed XML, and whatever a user wrote is escaped.</remarks>
public static class ReportParts
{
    /// <summary>The style of the sections.</summary>
    public static string Style => PageFiles.Style;

    /// <summary>The same colours for a page that lets the reader choose light or dark: by <c>data-look</c> of the root element, whatever the system has.</summary>
    public static string Looks
    {
        get
        {
            const string root = ":root {";
            var light = Style.IndexOf(root, StringComparison.Ordinal) + root.Length;
            var dark = Style.IndexOf(root, light, StringComparison.Ordinal) + root.Length;
            string Colours(int from) => Style[from..Style.IndexOf('}', from)].Replace("color-scheme: light dark;", "", StringComparison.Ordinal);
            return $":root[data-look=\"light\"] {{ color-scheme: light;{Colours(light)}}}\n:root[data-look=\"dark\"] {{ color-scheme: dark;{Colours(dark)}}}\n";
        }
    }

    /// <summary>An ECMAScript module with what moves and turns the pictures.</summary>
    public static string Module => PageFiles.Module;

    /// <summary>The inside of each section that the report of <paramref name="solution"/> has, by its id, without its heading; and the data of its moving pictures as JSON.</summary>
    /// <param name="solution">The solution.</param>
    /// <param name="allowed">Failed safety checks that the user accepted by name.</param>
    public static (ImmutableArray<(string Id, string Html)> Parts, string Data) Of(Solution solution, IReadOnlyList<string> allowed) => Of(new ReportScene(solution, allowed));

    /// <summary>The same, written only where it is wanted.</summary>
    /// <param name="solution">The solution.</param>
    /// <param name="allowed">Failed safety checks that the user accepted by name.</param>
    /// <param name="wanted">Ids of the sections wanted; empty where all are. Of the others the text is null.</param>
    public static (ImmutableArray<(string Id, string? Html)> Parts, string Data) Of(Solution solution, IReadOnlyList<string> allowed, IReadOnlyList<string> wanted)
    {
        var scene = new ReportScene(solution, allowed);
        return ([.. Sections(scene).Select(s => (s.Id, wanted.Count == 0 || wanted.Contains(s.Id) ? Html(s, scene) : null))], PageData.Json(scene));
    }

    /// <summary>The same of a bracket that is there already. Where it does not go on, only what the command tells of it and its flat pattern; then there is no data.</summary>
    /// <param name="tried">The bracket, tried on its job.</param>
    public static (ImmutableArray<(string Id, string Html)> Parts, string? Data) Of(TriedBracket tried)
    {
        if (tried.Trial.Solution is { } solution)
        {
            return Of(new ReportScene(solution, []) { Tried = tried });
        }

        var (told, flat) = (new HtmlWriter(), new HtmlWriter());
        TrialSection.Write(told, tried);
        FlatSection.Alone(flat, tried.Shape, tried.Trial.Job.Units);
        return ([("trial", told.ToString()), ("flat", flat.ToString())], null);
    }

    private static (ImmutableArray<(string Id, string Html)> Parts, string Data) Of(ReportScene scene)
    {
        return ([.. Sections(scene).Select(s => (s.Id, Html(s, scene)))], PageData.Json(scene));
    }

    // The picture of the bracket in its place takes longer to draw than the verdict beside which the report has it: a part of its own.
    private static IEnumerable<(string Id, Action<HtmlWriter, ReportScene> Write)> Sections(ReportScene scene) =>
        ReportPage.All.Where(s => s.Id is not ("solid" or "inputs") && (s.Has?.Invoke(scene) ?? true))
            .SelectMany(s => s.Id == "verdict" ? ((string, Action<HtmlWriter, ReportScene>)[])[("verdict", VerdictSection.WithoutPicture), ("fitted", VerdictSection.Fitted)] : [(s.Id, s.Write)]);

    private static string Html((string Id, Action<HtmlWriter, ReportScene> Write) section, ReportScene scene)
    {
        var html = new HtmlWriter();
        section.Write(html, scene);
        return html.ToString();
    }

    /// <summary>What in the picture has a name, and which numbers of the files can be seen in it, as JSON; null where there is no bracket to show.</summary>
    public static string? Marks(Solution solution) => solution.Bracket is null ? null : SolidMarks.Json(solution);

    /// <summary>The edges of each bracket that the job offers, to be laid over the picture: throttle frame as measured, mm, six numbers each line.</summary>
    public static ImmutableArray<ImmutableArray<double>> Outlines(Solution solution) =>
    [
        .. solution.Offers.Select(offer => FoldedMesh.Of(offer.Candidate.Bracket.Folded, Chord)).Select(mesh => (ImmutableArray<double>)
        [
            .. mesh.Edges.Where(e => e.Kind != MeshEdgeKind.Smooth).SelectMany(e => e.Points.Zip(e.Points.Skip(1))).SelectMany(line => (Vector3[])[mesh.Vertices[line.First], mesh.Vertices[line.Second]])
                .SelectMany(p => (double[])[SolidShapes.Short(p.X), SolidShapes.Short(p.Y), SolidShapes.Short(p.Z)]),
        ]),
    ];

    /// <summary>The verdict in a word or two: the first line of the report.</summary>
    public static string Verdict(Solution solution) => VerdictSection.Word(solution);

    /// <summary>The brackets that a job offers side by side, each with a picture and what tells it apart.</summary>
    /// <param name="solution">The solution, with its offers.</param>
    public static string Offers(Solution solution)
    {
        var html = new HtmlWriter();
        html.Line("p", OfferText.IntroSideBySide(solution));
        OffersSection.Reasons(html, solution);
        using (html.Open("div", ("class", "offers")))
        {
            for (var i = 0; i < solution.Offers.Length; i++)
            {
                Card(html, solution, i);
            }
        }

        return html.ToString();
    }

    private const double Chord = 0.3;

    private static void Card(HtmlWriter html, Solution solution, int i)
    {
        var offer = solution.Offers[i];
        var bracket = offer.Candidate.Bracket;
        var mesh = FoldedMesh.Of(bracket.Folded, Chord);
        var isTaken = i + 1 == solution.Choice;
        var name = OfferText.Name(i + 1);
        using var card = html.Open("article", ("class", isTaken ? "offer taken" : "offer"), ("aria-label", name));
        html.Line("h3", name);
        Picture(html, mesh, name);
        var row = OfferText.Row(offer, i + 1, solution.Job);
        using (html.Open("dl"))
        {
            foreach (var (head, value) in OfferText.Heads.Zip(row).Skip(1))
            {
                using var pair = html.Open("div");
                html.Line("dt", head);
                html.Line("dd", value);
            }
        }

        if (isTaken)
        {
            html.Line("p", OfferText.Shown, ("class", "shown"));
        }
        else
        {
            html.Line("button", OfferText.Show(i + 1), ("type", "button"), ("data-choice", PathData.Number(i + 1)));
        }
    }

    private static void Picture(HtmlWriter html, FoldedMesh mesh, string name)
    {
        var view = SolidSection.Corner;
        var bounds = Bounds.Around(mesh.Vertices.Select(v => SolidSvg.On(view, v))).Grow(4);
        var box = $"{PathData.Number(bounds.Min.X)} {PathData.Number(bounds.Min.Y)} {PathData.Number(bounds.Width)} {PathData.Number(bounds.Height)}";
        using var svg = html.Open("svg", ("viewBox", box), ("role", "img"), ("aria-label", SolidText.OfferSpoken(name)));
        SolidSvg.Write(html, mesh, view);
    }
}
