namespace BracketGen.Bench.Same;

/// <summary>Finds out which keys a program knows by their new name.</summary>
internal static class KeyNames
{
    private const int BadInput = 2;

    /// <summary>Old key to the name the program takes; keys that it takes under the old name are left out.</summary>
    /// <param name="program">The program.</param>
    /// <param name="newNames">Old key to new.</param>
    /// <param name="folder">Where the probes are written.</param>
    /// <exception cref="InvalidOperationException">The program takes a shipped job under neither name.</exception>
    public static IReadOnlyDictionary<string, string> Of(ProgramUnderTest program, IReadOnlyDictionary<string, string> newNames, string folder)
    {
        var tables = RandomJob.WithEveryRenamedKey(newNames);
        (int Lines, string Text) Refusal(IReadOnlyDictionary<string, string> names)
        {
            var (exitCode, errors) = program.Run("travel", tables.Write(folder, names));
            return exitCode == BadInput ? (errors.Count(c => c == '\n') + 1, errors) : (0, "");
        }

        foreach (var all in new[] { new Dictionary<string, string>(), newNames })
        {
            if (Refusal(all).Lines == 0)
            {
                return all;
            }
        }

        // Some are new, some old: a name that is known takes its own error away.
        var known = new Dictionary<string, string>();
        var refusal = Refusal(known);
        foreach (var (old, fresh) in newNames)
        {
            var tried = new Dictionary<string, string>(known) { [old] = fresh };
            var then = Refusal(tried);
            if (then.Lines < refusal.Lines)
            {
                (known, refusal) = (tried, then);
            }
        }

        return refusal.Lines == 0
            ? known
            : throw new InvalidOperationException($"{program.Path} refuses a shipped job under old and new key names. Add the renamed keys to changes.toml.\n{refusal.Text}");
    }
}
