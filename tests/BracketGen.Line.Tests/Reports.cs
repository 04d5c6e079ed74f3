using System.Collections.Immutable;
using BracketGen.Line.Combinations;
using BracketGen.Line.Lists;
using BracketGen.Line.Nesting;
using BracketGen.Line.Numbering;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;

namespace BracketGen.Line.Tests;

/// <summary>The report of a line that was made in a rig.</summary>
internal static class Reports
{
    public static LineReport Of(LineRig rig, LineRig.Run run)
    {
        var combinations = FamilyCombinations.Of(run.Family);
        ImmutableArray<Made> made = [.. run.Made.Select(m => m!)];
        var (selection, register) = SharedNumbers.Issue(
            FewestParts.Of(run.Family, LineParts.Of(run.Family, run.Offered, made), null, 2), rig.Register, new(run.Family, "1"), run.Family.Family);
        var plan = run.Family.Family.Cutting;
        return new(run.Family, combinations, made, selection, CuttingPlanner.Of(selection, CuttingOrder.OfAll(selection, plan), plan, 1), register);
    }
}
