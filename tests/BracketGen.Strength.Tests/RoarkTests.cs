namespace BracketGen.Strength.Tests;

/// <summary>
/// Roark's Formulas for Stress and Strain, 7th edition, section 8.11 (cantilever plates of infinite length): concentrated load P at the
/// free edge, after T. J. Jaramillo, Journal of Applied Mechanics 17 (1950) 67-72, ν = 0.3. Deflection under the load
/// K_y P a² / (π D), K_y = 0.524; stress at the clamped edge K_m 6 P / t², K_m = 0.509. A quarter and a half overhang along the edge:
/// K_m = 0.474 and 0.390, K_y = 0.470 and 0.380. Coefficients from memory of the table.
/// </summary>
public sealed class RoarkTests
{
    [Fact]
    public void EdgeLoadedCantileverPlate()
    {
        var at = PlateCases.EdgeLoaded(24).At;
        foreach (var (beside, ky, km) in new[] { (0.0, 0.524, 0.509), (0.25, 0.470, 0.474), (0.5, 0.380, 0.390) })
        {
            var (deflection, stress) = at(beside);
            Assert.InRange(deflection / ky, 0.98, 1.02);
            Assert.InRange(stress / km, 0.95, 1.05);
        }
    }
}
