using BracketGen.Geometry;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.SheetMetal.Tests.Forming;

/// <summary>Springback and force against worked examples.</summary>
public class SpringbackTests
{
    /// <summary>
    /// Kalpakjian and Schmid, worked example of springback (from memory): 20-gauge steel of 0.0359 in bent to 0.5 in, Y = 40 000 psi, E = 29 000 000 psi: Ri/Rf = 0.942, Rf = 0.531 in.
    /// </summary>
    [Fact]
    public void The_textbooks_example()
    {
        var ratio = Springback.RadiusRatio(0.5, 40_000, 29e6, 0.0359);
        Assert.Equal(0.942, ratio, 5e-4);
        Assert.Equal(0.531, 0.5 / ratio, 1e-3);

        // Ks = (2 · 0.5/0.0359 + 1)/(2 · 0.531/0.0359 + 1).
        Assert.Equal(0.944, Springback.AngleRatio(0.5, 0.5 / ratio, 0.0359), 1e-3);
    }

    [Fact]
    public void The_allowance_makes_up_for_the_springback()
    {
        var turn = Angle.FromDegrees(90);
        var allowance = Springback.Allowance(turn, 5, BentStrip.Steel, 2);
        Assert.InRange(allowance.Degrees, 0.1, 1.5);

        // The radius that springs back to 5 mm.
        var before = 5.0;
        for (var i = 0; i < 50; i++)
        {
            before = 5 * Springback.RadiusRatio(before, BentStrip.Steel.Yield, BentStrip.Steel.Modulus, 2);
        }

        Assert.Equal(90, (turn + allowance).Degrees * Springback.AngleRatio(before, 5, 2), 1e-9);
        Assert.Equal(allowance, Springback.Allowance(-turn, 5, BentStrip.Steel, 2));
        Assert.Equal(0, Springback.RadiusRatio(5, 100, 100, 1));
    }

    /// <summary>Schuler, "Metal Forming Handbook": F = C Rm b s²/w, C = 1 + 4 s/w (from memory). 3 mm of 450 MPa on V 24: 253 N/mm; the trade's tables say 250 kN/m.</summary>
    [Fact]
    public void Air_bending_force()
    {
        Assert.Equal(253, BendForce.PerLength(450, 3, 24), 0.2);
        Assert.Equal(1.33 * 450 * 9 / 60, BendForce.PerLength(450, 3, 60), 1e-9);
        Assert.Equal(410, BendForce.TensileOf(BentStrip.Steel));
        Assert.Equal(490, BendForce.TensileOf(BentStrip.Steel with { MaxTensile = null }));
    }
}
