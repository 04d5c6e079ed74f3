namespace BracketGen.Cli.Completions;

/// <summary>The completions for zsh, as the file <c>_bracketgen</c> of a folder in its <c>fpath</c>.</summary>
/// <remarks>zsh manual, chapter Completion System, <c>_arguments</c> and <c>_describe</c>.</remarks>
internal static class ZshCompletions
{
    public static string Write(IReadOnlyList<CompletedCommand> commands) =>
        $$"""
        #compdef bracketgen
        # zsh completion for bracketgen; name it _bracketgen and put it into a folder of $fpath.
        _bracketgen() {
          local context state state_descr line
          typeset -A opt_args
          _arguments -C '(- *)--help[Show help]' '(- *)--version[Show the version]' '1: :->command' '*:: :->rest'
          case $state in
            command)
              local -a commands=(
        {{string.Join('\n', commands.Select(c => $"        '{c.Name}:{Quoted(c.Description)}'"))}}
              )
              _describe 'command' commands ;;
            rest)
              case $words[1] in
        {{string.Join('\n', commands.Select(Command))}}
              esac ;;
          esac
        }
        _bracketgen "$@"

        """.ReplaceLineEndings("\n");

    private static string Command(CompletedCommand command) =>
        $"        {command.Name}) _arguments {string.Join(' ', command.Options.Select(Option).Concat(command.Arguments.Select((a, i) => $"'{i + 1}:{a.Name}:{Action(a)}'")))} ;;";

    private static string Option(CompletedValue option) =>
        $"'{option.Name}[{Quoted(option.Description)}]{(option.Wanted == Wanted.Nothing ? "" : $":{option.Name.TrimStart('-')}:{Action(option)}")}'";

    private static string Action(CompletedValue value) => value.Wanted switch
    {
        Wanted.Word => $"({string.Join(' ', value.Words)})",
        Wanted.File => "_files",
        Wanted.Folder => "_files -/",
        _ => "",
    };

    private static string Quoted(string text) => text
        .Replace("'", "'\\''", StringComparison.Ordinal).Replace("[", "\\[", StringComparison.Ordinal).Replace("]", "\\]", StringComparison.Ordinal).Replace(":", "\\:", StringComparison.Ordinal);
}
