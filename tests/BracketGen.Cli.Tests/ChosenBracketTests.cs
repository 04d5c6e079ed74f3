using BracketGen.Cli.Terminal;

namespace BracketGen.Cli.Tests;

/// <summary>A bracket that was chosen is kept in the job and made again as it was, by the command and by the page.</summary>
public class ChosenBracketTests
{
    private const string Job = "dunlin-rowan-64";

    [Fact]
    public void A_choice_that_is_kept_is_made_again_to_the_byte_and_the_rest_of_the_job_stays()
    {
        using var place = new Workplace();
        var before = File.ReadAllText(place.Job(Job));
        foreach (var number in (int[])[2, 3])
        {
            Assert.Equal(ExitCode.NotProven, place.Make(Job, "--choice", $"{number}").ExitCode);
            var asked = Made(place);
            var kept = place.Make(Job, "--choice", $"{number}", "--keep-choice");
            Assert.Equal(ExitCode.NotProven, kept.ExitCode);
            Assert.Contains("chosen bracket written into", kept.Output, StringComparison.Ordinal);
            var text = File.ReadAllText(place.Job(Job));
            Assert.Equal(before, string.Concat(text.Split('\n').Where(l => !l.StartsWith("chosen = ", StringComparison.Ordinal)).Select((l, i) => i == 0 ? l : "\n" + l)));
            var again = place.Make(Job);
            Assert.Equal(ExitCode.NotProven, again.ExitCode);
            Assert.Contains("This is the bracket that was chosen for the job.", again.Output, StringComparison.Ordinal);
            Assert.Equal(asked, Made(place));
            Assert.Equal(ExitCode.NotProven, place.Make(Job, "--keep-choice").ExitCode);
            Assert.Equal(text, File.ReadAllText(place.Job(Job)));
        }
    }

    // Less give is allowed than the chosen one has: it is made all the same, and the exit code is that of a check that fails.
    [Fact]
    public void A_chosen_bracket_that_fails_is_made_and_fails()
    {
        using var place = new Workplace();
        Assert.Equal(ExitCode.NotProven, place.Make(Job, "--keep-choice").ExitCode);
        var text = File.ReadAllText(place.Job(Job));
        File.WriteAllText(place.Job(Job), text.Replace("[preferences]", "[preferences]\nmax_give = 0.022", StringComparison.Ordinal));
        var again = place.MakeStrong(Job);
        Assert.Equal(ExitCode.CheckFailed, again.ExitCode);
        Assert.Contains("does not pass any more", again.Output, StringComparison.Ordinal);
        Assert.NotEmpty(Made(place));
    }

    private static byte[] Made(Workplace place) => File.ReadAllBytes(place.Made(Job, Workplace.CutFile));
}
