using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;

namespace BracketGen.Design.Tests;

public sealed class ProbeTests
{
    [Theory]
    [MemberData(nameof(Examples.Names), MemberType = typeof(Examples))]
    public void Probe(string name)
    {
        var s = Designer.Solve(Examples.Read(name), SearchEffort.Whole);
        using var w = File.AppendText("/tmp/w/wks.probe");
        w.WriteLine($"== {name} {s.Bracket?.Stock.Material.Designation} {s.Bracket?.Stock.Thickness} offers {s.Offers.Length}");
        foreach (var c in s.Strength?.Checks ?? []) w.WriteLine($"{c.Code} {c.Subject} {c.Value:0.####} lim {c.Limit:0.###} unf {c.Unfavourable} {c.State}");
        if (s.Strength is { } r)
        {
            w.WriteLine($"tension op {r.Opening.Tension} st {r.Stamped.Tension} stress {r.Opening.LargestStress} {r.Stamped.LargestStress} life {r.Life}");
            foreach (var j in r.Joints) w.WriteLine($"{j.Hole} op {j.Opening} st {j.Stamped} sh {j.Shaken} max {j.Joint.MaxPreload:0} clamp {j.Joint.MinClamp:0} embed {j.Joint.EmbeddingLoss:0} phi {j.Joint.LoadFactor:0.##} len {j.Joint.Screw.Length} T {j.Joint.Screw.Torque} maxF {j.Joint.MaxScrewForce(j.Stamped):0}");
        }
        foreach (var g in (s.Search is null ? [] : s.Checks.Where(c => c.Fails))) w.WriteLine("FAILS " + g.Code + g.Value);
    }
}
