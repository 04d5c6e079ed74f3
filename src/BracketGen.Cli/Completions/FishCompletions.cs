namespace BracketGen.Cli.Completions;

/// <summary>The completions for fish, as the file <c>bracketgen.fish</c> of its completions' folder.</summary>
/// <remarks>fish documentation, <c>complete</c>.</remarks>
internal static class FishCompletions
{
    public static string Write(IReadOnlyList<CompletedCommand> commands)
    {
        var lines = new List<string>
        {
            "# fish completion for bracketgen; put it into ~/.config/fish/completions.",
            "complete -c bracketgen -f",
            "complete -c bracketgen -n __fish_use_subcommand -l version -d 'Show the version'",
            "complete -c bracketgen -l help -d 'Show help'",
        };
        lines.AddRange(commands.Select(c => $"complete -c bracketgen -n __fish_use_subcommand -a {c.Name} -d {Quoted(c.Description)}"));
        foreach (var command in commands)
        {
            var here = $"complete -c bracketgen -n '__fish_seen_subcommand_from {command.Name}'";
            lines.AddRange(command.Options.Where(o => o.Name != "--help").Select(o => $"{here} -l {o.Name.TrimStart('-')}{Value(o, isOption: true)} -d {Quoted(o.Description)}"));
            lines.AddRange(command.Arguments.Where(a => a.Wanted is Wanted.Word or Wanted.File).Select(a => here + Value(a, isOption: false)));
        }

        return string.Join('\n', lines) + "\n";
    }

    private static string Value(CompletedValue value, bool isOption) => value.Wanted switch
    {
        Wanted.Nothing => "",
        Wanted.Word => $"{(isOption ? " -x" : "")} -a '{string.Join(' ', value.Words)}'",
        Wanted.File => isOption ? " -r -F" : " -F",
        Wanted.Folder => " -x -a '(__fish_complete_directories)'",
        _ => " -x",
    };

    private static string Quoted(string text) =>
        $"'{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal)}'";
}
