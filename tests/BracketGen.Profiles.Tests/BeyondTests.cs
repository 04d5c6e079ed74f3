using BracketGen.Words.Profiles;

namespace BracketGen.Profiles.Tests;

/// <summary>Who asks for what the program cannot do is told so, and what to do instead.</summary>
public sealed class BeyondTests
{
    [Theory]
    [InlineData(Samples.Job, "[document]", "[stop]\nat = [1, 2, 3]\n\n[document]", "use check")]
    [InlineData(Samples.Body, "bore = 58", "bore = 58\ndrive_by_wire = true", "has no cable")]
    [InlineData(Samples.Body, "bore = 58", "bore = 58\ndiaphragm = \"vacuum\"", "not calculated")]
    [InlineData(Samples.Vehicle, "\"threaded adjuster\"", "\"square snap-in clip\"", "square push-in end")]
    [InlineData(Samples.Vehicle, "\"threaded adjuster\"", "\"set screw\"", "makes sheet")]
    public void The_answer_says_what_to_do_instead(string file, string old, string changed, string says) =>
        Assert.Contains(Samples.ReadWith(file, old, changed).Errors, e => ProfileErrorText.Format(e) is var text
            && text.Contains(says, StringComparison.Ordinal) && text.Contains(BeyondText.Chapter, StringComparison.Ordinal));

    [Fact]
    public void No_word_has_two_answers()
    {
        var words = BeyondText.All.SelectMany(b => b.Words).ToList();
        Assert.Equal(words.Distinct().Order(), words.Order());
    }
}
