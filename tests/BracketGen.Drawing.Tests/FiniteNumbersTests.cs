using System.Text.Json.Nodes;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Drawing.Result;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Pedals;
using BracketGen.Profiles;
using BracketGen.TestSupport;

namespace BracketGen.Drawing.Tests;

/// <summary>The result is written whole, whatever could not be calculated.</summary>
public class FiniteNumbersTests
{
    private static readonly Job Plover = ProfileReader.ReadJob(RepositoryRoot.PathOf("profiles", "jobs", "plover-alder-58.toml"), new DiskFileSource()).Value!;

    /// <summary>A pedal that hardly moves the wire near the floor, on a quadrant a little too large for it.</summary>
    [Fact]
    public void A_pedal_table_that_flattens_gives_a_whole_result()
    {
        TabulatedLever table = new([new(0, 0), new(60, 25), new(120, 47), new(170, 51)]);
        var job = Plover with
        {
            Vehicle = Plover.Vehicle with { Pedal = Plover.Vehicle.Pedal with { AvailablePull = new(51, 0.5), LeverRatio = 170 / 51.0, Table = table, PadLoad = 0 } },
            Body = Plover.Body with { Quadrant = Plover.Body.Quadrant with { Groove = new CircularGroove(new Measured(33.6, 0.2)), OuterRadius = 37 } },
        };
        var result = JsonNode.Parse(ResultJson.Write(Designer.Solve(job), []))!;
        Assert.Empty(result["notCalculated"]!.AsArray());
        Assert.All(result["mechanism"]!["return"]!["points"]!.AsArray(), p => Assert.True(double.IsFinite((double)p!["needed"]!)));
    }

    [Fact]
    public void What_is_no_number_is_null_and_named()
    {
        var model = ResultJson.ModelOf(Designer.Solve(Plover), []);
        var broken = model with { Travel = model.Travel with { OverTravel = double.NaN }, Checks = [.. model.Checks.Select((c, i) => i == 2 ? c with { Limit = double.PositiveInfinity } : c)] };
        var result = JsonNode.Parse(ResultJson.Write(broken))!;
        Assert.Null(result["travel"]!["overTravel"]);
        Assert.Null(result["checks"]![2]!["limit"]);
        Assert.Equal(["travel.overTravel", "checks[2].limit"], result["notCalculated"]!.AsArray().Select(p => (string)p!));
        Assert.Empty(JsonNode.Parse(ResultJson.Write(model))!["notCalculated"]!.AsArray());
    }
}
