using BracketGen.Cli.Commands;
using BracketGen.Cli.Terminal;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Words.Report;

namespace BracketGen.Cli.Tests;

/// <summary>Completions, as the shells themselves carry them out.</summary>
public class ShellCompletionTests
{
    private static string Script(string shell)
    {
        var result = BracketGenProgram.Run("completions", shell);
        Assert.Equal(0, result.ExitCode);
        return result.Output;
    }

    [SkippableTheory]
    [InlineData("", "demo make line order travel inspect check kit fitted worksheet test-bend begin page completions --help --version")]
    [InlineData("ma", "make")]
    [InlineData("make --pa", "--paper")]
    [InlineData("make --paper ", "A A3 A4 B")]
    [InlineData("make job.toml --dxf r1", "r12")]
    [InlineData("make ", "jobs plain.txt")]
    [InlineData("make --into ", "jobs")]
    [InlineData("make --date ", "")]
    [InlineData("make jobs/with", "jobs/with space.toml")]
    [InlineData("begin ", "job shop throttle-body vehicle")]
    [InlineData("begin vehicle pl", "plain.txt")]
    [InlineData("completions f", "fish")]
    public void Bash_offers_what_the_program_takes(string typed, string offered)
    {
        var folder = Directory.CreateTempSubdirectory("bracketgen-bash-").FullName;
        try
        {
            Directory.CreateDirectory(Path.Combine(folder, "jobs"));
            File.WriteAllText(Path.Combine(folder, "plain.txt"), "");
            File.WriteAllText(Path.Combine(folder, "jobs", "with space.toml"), "");
            var words = ("bracketgen " + typed).Split(' ');
            var script = Script("bash") + $"""

                COMP_WORDS=({string.Join(' ', words.Select(w => $"'{w}'"))}); COMP_CWORD={words.Length - 1}
                _bracketgen
                printf '%s\n' "@REPLY@"
                """.Replace("@REPLY@", "${COMPREPLY[@]}", StringComparison.Ordinal).ReplaceLineEndings("\n");
            var answer = OutsideTool.Require("bash").RunOrFail(["-u"], script, folder);
            var expected = offered.Contains("with space", StringComparison.Ordinal) ? [offered] : offered.Split(' ').Order(StringComparer.Ordinal).ToArray();
            Assert.Equal(expected, answer.TrimEnd('\n').Split('\n').Order(StringComparer.Ordinal));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // Every command and option of the help, in every shell's script.
    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    public void No_command_or_option_is_left_out(string shell)
    {
        var script = Script(shell);
        foreach (var command in CommandTree.Create().Subcommands)
        {
            Assert.Matches($@"\b{command.Name}\b", script);
            Assert.All(command.Options, o => Assert.Matches($@"{(shell == "fish" ? "-l " : "--")}{o.Name.TrimStart('-')}\b", script));
        }

        Assert.DoesNotContain('\r', script);
        Assert.EndsWith("\n", script, StringComparison.Ordinal);
    }

    [SkippableTheory]
    [InlineData("bash", "-n")]
    [InlineData("zsh", "-n")]
    [InlineData("fish", "--no-execute")]
    public void The_shell_can_read_it(string shell, string check)
    {
        var result = OutsideTool.Require(shell).Run([check], Script(shell));
        Assert.Equal("", result.Errors);
        Assert.Equal(0, result.ExitCode);
    }

    [Fact]
    public void The_version_is_that_of_the_project()
    {
        var result = BracketGenProgram.RunAlone("--version");
        Assert.Equal(0, result.ExitCode);
        Assert.Contains($"<Version>{result.Output.Trim()}</Version>", File.ReadAllText(RepositoryRoot.PathOf("Directory.Build.props")), StringComparison.Ordinal);
    }
}
