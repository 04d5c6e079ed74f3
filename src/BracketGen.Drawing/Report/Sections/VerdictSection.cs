using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Measuring;
using BracketGen.Drawing.Report.Html;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.SheetMetal;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>The answer in plain words: pass or fail, what a failure means, what would mend it, and the main numbers.</summary>
internal static class VerdictSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        var solution = scene.Solution;
        var dangers = solution.Dangers.ToList();
        using (html.Open("div", ("class", "verdict " + (dangers.Count > 0 ? "danger" : solution.Passes ? "pass" : "fail"))))
        {
            html.Line("p", Word(solution), ("class", "word"));
            html.Line("p", Capital(VerdictText.Of(solution.Verdict)));
            html.Line("p", TravelText.Summary(scene.Job, solution.Travel));
        }

        Failures(html, scene);
        Remedies(html, scene);
        if (solution.Diagnosis is { } diagnosis)
        {
            Diagnosed(html, scene, diagnosis);
        }

        html.Line("h3", "At a glance");
        HtmlTable.Facts(html, Facts(scene));
    }

    /// <summary>The verdict in a word or two.</summary>
    public static string Word(Solution solution) =>
        solution.Dangers.Any() ? "Not safe as it is" : solution.Passes ? "Passes" : solution.Bracket is null ? "No bracket" : "Does not pass";

    private static void Failures(HtmlWriter html, ReportScene scene)
    {
        var failed = scene.Solution.Checks.Where(c => !c.Passes).OrderBy(c => c.Kind).ToList();
        if (failed.Count == 0)
        {
            return;
        }

        html.Line("h3", failed.All(c => c.Kind == CheckKind.Advice) ? "What is left to do" : "What failed, and what it means");
        using var list = html.Open("ul", ("class", "failures"));
        foreach (var check in failed)
        {
            using var item = html.Open("li", ("class", check.Kind == CheckKind.Advice ? "advice" : check.IsDanger ? "danger" : "fail"));
            using (html.Open("p"))
            {
                html.Line("strong", CheckText.Mark(check));
                html.Text(" ");
                html.Line("a", check.Title(), ("href", "#" + ChecksSection.Anchor(check)));
                html.Text($": {CheckText.Value(check, scene.Units)}, {CheckText.Limit(check, scene.Units)}.");
            }

            html.Line("p", check.Consequence());
        }
    }

    private static void Remedies(HtmlWriter html, ReportScene scene)
    {
        if (TravelText.Remedies(scene.Job, scene.Solution.Remedy) is { Count: > 0 } remedies)
        {
            html.Line("h3", "What would open the valve fully");
            html.Line("p", "Any one of these:");
            List(html, remedies);
        }
        else if (TravelText.PedalStop(scene.Job, scene.Solution.Travel) is { } stop)
        {
            html.Line("p", stop);
        }
    }

    private static void Diagnosed(HtmlWriter html, ReportScene scene, Diagnosis diagnosis)
    {
        html.Line("h3", "What stands in the way of a bracket");
        List(html, diagnosis.Obstacles.Select(o => DiagnosisText.Obstacle(o, scene.Units)));
        html.Line("h3", "What would open a way");
        if (diagnosis.Ways.IsEmpty)
        {
            html.Line("p", "No single change of quadrant, adjuster, free inner length, keep-out or sheet was found that opens a way.");
            return;
        }

        html.Line("p", "Any one of these:");
        List(html, diagnosis.Ways.Select(w => DiagnosisText.Way(w, scene.Units)));
    }

    private static void List(HtmlWriter html, IEnumerable<string> items)
    {
        using var list = html.Open("ul");
        foreach (var item in items)
        {
            html.Line("li", item);
        }
    }

    private static IEnumerable<Fact> Facts(ReportScene scene)
    {
        var solution = scene.Solution;
        var travel = solution.Travel;
        yield return new("Valve opens to", scene.Angle(travel.Reached), $"of {scene.Angle(travel.Rotation)}");
        yield return travel.ReachesWideOpen
            ? new("Over-travel", scene.Length(travel.OverTravel), $"wide open at {scene.Part(travel.PedalAtWideOpen)} of the pedal")
            : new("Missing pull", scene.Length(-travel.OverTravel), $"the pedal gives {scene.Length(travel.AvailablePull)}");
        yield return new("Free play", scene.Length(travel.FreePlay), $"the valve moves from {scene.Part(travel.PedalAtFirstMove)} of the pedal");
        if (solution.Mechanism is { } mechanism)
        {
            if (!mechanism.FootForces.IsEmpty)
            {
                yield return new("Largest foot force", scene.Force(mechanism.FootForces.Max(f => f.Pressing)), "pedal going down");
            }

            if (!mechanism.Returns.IsEmpty)
            {
                yield return new("Springs left to close", scene.Part(ReturnMargin.Least(mechanism.Returns).Fraction), "least over the sweep; weakest springs, most friction");
            }
        }

        if (solution.Placement is { } placement)
        {
            yield return new(
                "Stop's seat", $"x {Bare(placement.Seat.X)}, y {Bare(placement.Seat.Y)}, z {scene.Length(placement.Seat.Z)}",
                "from the throttle shaft, in the groove's plane");
            yield return new(
                "Wire leaves towards", placement.Direction.XY.Polar.Degrees.ToString("0.0", CultureInfo.InvariantCulture) + "°",
                "counter-clockwise from x");
            yield return new("Free wire", scene.Length(placement.Straight), "from groove to seat, valve closed");
        }

        if (solution.Bracket is { } bracket)
        {
            var bounds = bracket.Flat.Blank.Outline.Bounds;
            yield return new(
                "Sheet", $"{bracket.Stock.Material.Designation}, {scene.Length(bracket.Stock.Thickness)}",
                bracket.Flat.Bends.Length switch { 0 => "flat plate, no bend", 1 => "one bend", var n => $"{n} bends" });
            yield return new("Blank", $"{scene.Length(bounds.Width)} x {scene.Length(bounds.Height)}", $"mass {scene.Mass(bracket.Mass)}");
        }

        if (solution.Offers.IsEmpty)
        {
            yield return new("Shapes looked at", solution.CandidateCount.ToString("#,0", CultureInfo.InvariantCulture), "none of them passes every check");
        }

        string Bare(double value) => scene.LengthQuantity.Bare(value);
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
