namespace BracketGen.Cli.Completions;

/// <summary>The completions for bash, as a script to source.</summary>
/// <remarks>Plain bash 4: it needs no package of completion helpers. GNU Bash Reference Manual, chapter Programmable Completion.</remarks>
internal static class BashCompletions
{
    public static string Write(IReadOnlyList<CompletedCommand> commands) =>
        $$"""
        # bash completion for bracketgen; put it into /etc/bash_completion.d or source it from ~/.bashrc.
        _bracketgen() {
          local cur=${COMP_WORDS[COMP_CWORD]} prev=${COMP_WORDS[COMP_CWORD-1]} command='' words='' kind='' i
          for ((i = 1; i < COMP_CWORD; i++)); do
            case ${COMP_WORDS[i]} in
              {{string.Join(" | ", commands.Select(c => c.Name))}}) command=${COMP_WORDS[i]}; break ;;
            esac
          done
          COMPREPLY=()
          case "$command $prev" in
        {{Cases(commands.SelectMany(c => c.Options.Where(o => o.Wanted != Wanted.Nothing).Select(o => ($"'{c.Name} {o.Name}'", o.Wanted, o.Words))))}}
            *)
              case $command in
        {{string.Join('\n', commands.Select(c => $"        {c.Name}) words='{string.Join(' ', c.Options.Select(o => o.Name))}' ;;"))}}
                *) words='{{string.Join(' ', commands.Select(c => c.Name))}} --help --version' ;;
              esac
              if [[ -n $command && $cur != -* ]]; then
                words=''
                case "$command $((COMP_CWORD - i))" in
        {{Cases(commands.SelectMany(c => c.Arguments.Select((a, n) => (n == c.Arguments.Count - 1 ? $"'{c.Name} '*" : $"'{c.Name} {n + 1}'", a.Wanted, a.Words))), "          ")}}
                esac
              fi ;;
          esac
          case $kind in
            file) mapfile -t COMPREPLY < <(compgen -f -- "$cur") ;;
            folder) mapfile -t COMPREPLY < <(compgen -d -- "$cur") ;;
            *) [[ -n $words ]] && mapfile -t COMPREPLY < <(compgen -W "$words" -- "$cur") ;;
          esac
          return 0
        }
        complete -o filenames -F _bracketgen bracketgen

        """.ReplaceLineEndings("\n");

    private static string Cases(IEnumerable<(string Pattern, Wanted Wanted, IReadOnlyList<string> Words)> cases, string indent = "    ") => string.Join('\n', cases.Select(c =>
        indent + c.Pattern + ") " + c.Wanted switch
        {
            Wanted.Word => $"words='{string.Join(' ', c.Words)}'",
            Wanted.File => "kind=file",
            Wanted.Folder => "kind=folder",
            _ => ":",
        } + " ;;"));
}
