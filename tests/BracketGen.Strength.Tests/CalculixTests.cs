using System.Globalization;
using BracketGen.Geometry;
using BracketGen.TestSupport;

namespace BracketGen.Strength.Tests;

/// <summary>The L-bracket against CalculiX 2.20 (solid quadratic wedges), deck and answers kept in Data.</summary>
public sealed class CalculixTests
{
    private static string Data(string name) => Path.Combine(AppContext.BaseDirectory, "Data", name);

    [Fact]
    public void DeflectionAndFrequenciesAgree()
    {
        var (deflection, frequencies) = Kept();
        var part = LBracket.Part.Prepare(3, 1.5);
        Assert.InRange(part.Under(LBracket.Force).AlongForce / deflection, 0.97, 1.03);
        var modes = part.LowestModes(3);
        for (var i = 0; i < 3; i++)
        {
            Assert.InRange(modes[i].Frequency / frequencies[i], 0.97, 1.03);
        }
    }

    [SkippableFact]
    public void KeptAnswersAreThoseOfTheKeptDeck()
    {
        var calculix = OutsideTool.Require("ccx");
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            File.Copy(Data("l-bracket.inp"), Path.Combine(folder.FullName, "l-bracket.inp"));
            calculix.RunOrFail(["l-bracket"], folder: folder.FullName);
            var (deflection, frequencies) = CalculixDeck.Read(
                File.ReadAllText(Data("l-bracket.inp")), File.ReadAllText(Path.Combine(folder.FullName, "l-bracket.dat")));
            var kept = Kept();
            Assert.Equal(kept.Deflection, deflection, 1e-4 * kept.Deflection);
            Assert.Equal(3, frequencies.Length);
            for (var i = 0; i < 3; i++)
            {
                Assert.Equal(kept.Frequencies[i], frequencies[i], 1e-4 * kept.Frequencies[i]);
            }
        }
        finally
        {
            folder.Delete(true);
        }
    }

    [Fact]
    public void KeptDeckIsTheTestedBracket()
    {
        // Whatever mesh the deck was made from, force and outer measures are the bracket's.
        var lines = File.ReadAllLines(Data("l-bracket.inp"));
        var force = Vector3.Zero;
        foreach (var f in lines.SkipWhile(l => l != "*CLOAD").Skip(1).TakeWhile(l => l[0] != '*').Select(l => l.Split(", ")))
        {
            var value = double.Parse(f[2], CultureInfo.InvariantCulture);
            force += f[1] == "1" ? new Vector3(value, 0, 0) : f[1] == "2" ? new(0, value, 0) : new(0, 0, value);
        }

        Assert.True(force.DistanceTo(LBracket.Force) < 1e-6);
        var nodes = lines.Skip(2).TakeWhile(l => l[0] != '*')
            .Select(l => l.Split(", ").Skip(1).Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray()).ToList();
        Assert.Equal(-LBracket.Thickness / 2, nodes.Min(n => n[2]), 1e-6);
        Assert.Equal(-15, nodes.Min(n => n[1]), 1e-6);
        Assert.Equal(2 * LBracket.HalfWidth, nodes.Max(n => n[0]) - nodes.Min(n => n[0]), 1e-6);
        Assert.Equal(LBracket.Fold(new(0, 80)).Z, nodes.Max(n => n[2]), 1e-6);
    }

    private static (double Deflection, double[] Frequencies) Kept()
    {
        var values = File.ReadAllLines(Data("l-bracket.answers.txt")).Where(l => !l.StartsWith('#'))
            .Select(l => double.Parse(l.Split(' ')[1], CultureInfo.InvariantCulture)).ToArray();
        return (values[0], values[1..]);
    }
}
