using System.Text;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.TestSupport;

namespace BracketGen.Design.Tests.Verification;

/// <summary>Published numbers against this program's, and the table of them in the documentation.</summary>
public class VerificationTests
{
    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Claims.All.Length)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Ours_is_what_was_published(int number)
    {
        var claim = Claims.All[number];
        var ours = claim.Ours();
        Assert.True(Math.Abs(ours / claim.Published - 1) <= claim.Within, $"{claim}: published {claim.Published}, ours {ours}");
    }

    // Written anew by: BRACKETGEN_TABLES=<folder> dotnet test tests/BracketGen.Design.Tests --filter VerificationTests
    [Fact]
    public void The_table_in_the_documentation_is_of_these_numbers()
    {
        var table = Table();
        if (Environment.GetEnvironmentVariable("BRACKETGEN_TABLES") is { Length: > 0 } folder)
        {
            File.WriteAllText(Path.Combine(folder, "verification-table.md"), table);
            return;
        }

        Assert.Equal(table, File.ReadAllText(RepositoryRoot.PathOf("docs", "verification-table.md")).ReplaceLineEndings("\n"));
    }

    private static string Table()
    {
        var text = new StringBuilder("# Published numbers and ours\n\nWritten by `VerificationTests` from what the tests compute; do not edit. What it means: [verification.md](verification.md).\n");
        foreach (var subject in Claims.All.GroupBy(c => c.Subject))
        {
            text.Append($"\n## {subject.Key}\n\n| claim | published by | published | ours | difference | accepted |\n|---|---|---|---|---|---|\n");
            foreach (var claim in subject)
            {
                text.Append(claim.Row()).Append('\n');
            }
        }

        return text.ToString();
    }
}
