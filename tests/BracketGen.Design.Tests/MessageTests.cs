using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Cables;
using BracketGen.Words.Worksheet;

namespace BracketGen.Design.Tests;

/// <summary>The text of a record follows its properties; one that returns its own type would never end.</summary>
public class MessageTests
{
    [Theory]
    [MemberData(nameof(Examples.Names), MemberType = typeof(Examples))]
    public void A_whole_job_and_its_answer_can_be_put_in_a_message(string name)
    {
        var job = Examples.Read(name);
        var solution = Designer.Solve(job);
        Assert.Contains(job.Body.Name, job.ToString(), StringComparison.Ordinal);
        Assert.Contains(job.Vehicle.Cable.ToString(), job.ToString(), StringComparison.Ordinal);
        Assert.Contains("Offers", solution.ToString(), StringComparison.Ordinal);
        Assert.Contains("Blank", solution.Bracket!.ToString(), StringComparison.Ordinal);
        Assert.All(job.Body.KeepOuts, k => Assert.Contains(k.Name, k.ToString(), StringComparison.Ordinal));
        Assert.Contains("Holes", job.Body.Mount.ToString(), StringComparison.Ordinal);
    }
}
