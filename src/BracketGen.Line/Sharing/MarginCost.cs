using BracketGen.Geometry;
using BracketGen.Line.Solving;

namespace BracketGen.Line.Sharing;

/// <summary>What a combination gives up in margin by being served with another's part.</summary>
/// <param name="Service">The service.</param>
/// <param name="OwnTightest">The tightest check with its own part.</param>
/// <param name="SharedTightest">The tightest check with the other's.</param>
/// <param name="Dearest">The check that loses most, as it is with the other's part; null where none loses.</param>
/// <param name="DearestBefore">The same check with its own part.</param>
public sealed record MarginCost(Service Service, FitMargin OwnTightest, FitMargin SharedTightest, FitMargin? Dearest, FitMargin? DearestBefore)
{
    /// <summary>That of a shared service.</summary>
    public static MarginCost Of(Service service)
    {
        var own = service.Served.Made.Fit!;
        var before = own.Margins.GroupBy(m => m.Code).ToDictionary(g => g.Key, g => g.First());
        var dearest = service.Fit.Margins
            .Where(m => before.TryGetValue(m.Code, out var b) && m.Spare < b.Spare - Tolerance.SameSize)
            .MinBy(m => m.Spare - before[m.Code].Spare);
        return new(service, own.Tightest!, service.Fit.Tightest!, dearest, dearest is null ? null : before[dearest.Code]);
    }
}
