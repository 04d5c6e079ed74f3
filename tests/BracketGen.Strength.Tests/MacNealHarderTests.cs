namespace BracketGen.Strength.Tests;

/// <summary>The slender and twisted beams of MacNeal and Harder (1985), section 3 and tables 4 and 5, on a fine mesh.</summary>
public sealed class MacNealHarderTests
{
    // Straight beam: length 6, depth 0.2 in its plane, thickness 0.1, E = 1e7, ν = 0.3, unit load at the tip. The published tip
    // displacements are those of beam theory.
    [Theory]
    [InlineData(BeamCase.Extension, 3e-5)]
    [InlineData(BeamCase.InPlaneShear, 0.1081)]
    [InlineData(BeamCase.OutOfPlaneShear, 0.4321)]
    public void StraightBeam(BeamCase load, double published) =>
        Assert.InRange(BeamCases.Straight(load, 120, 8) / published, 0.98, 1.02);

    // The published twist is 6 % below Saint-Venant's: T L / (G J), BeamCases.SaintVenantTwist. A shell with shear comes to the latter as the mesh resolves the edges.
    [Fact]
    public void StripTwistsAsSaintVenantSays()
    {
        var twist = BeamCases.Straight(BeamCase.Twist, 360, 24);
        Assert.InRange(twist / BeamCases.SaintVenantTwist, 0.98, 1.02);
        Assert.InRange(twist / 0.03208, 1.04, 1.07);
    }

    // Curved beam: a quarter ring, radii 4.12 and 4.32, thickness 0.1, E = 1e7, ν = 0.25, unit load at the tip.
    [Theory]
    [InlineData(BeamCase.InPlaneShear, 0.08734)]
    [InlineData(BeamCase.OutOfPlaneShear, 0.5022)]
    public void CurvedBeam(BeamCase load, double published) =>
        Assert.InRange(BeamCases.Curved(load, 240, 8) / published, 0.98, 1.02);

    // Twisted beam: length 12, width 1.1, thickness 0.32, a quarter turn, E = 29e6, ν = 0.22, unit load at the tip.
    [Theory]
    [InlineData(BeamCase.InPlaneShear, 0.005424)]
    [InlineData(BeamCase.OutOfPlaneShear, 0.001754)]
    public void TwistedBeam(BeamCase load, double published) =>
        Assert.InRange(BeamCases.Twisted(load, 96, 16) / published, 0.98, 1.02);

    // Not of the set: the sheet itself is bent, as in a bend zone.
    [Fact]
    public void BentSheetActsAsACurvedBar() => Assert.InRange(BeamCases.BentSheet(32), 0.99, 1.01);
}
