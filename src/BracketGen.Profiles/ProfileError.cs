using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles;

/// <summary>One mistake in a profile file.</summary>
/// <param name="File">Path of the file.</param>
/// <param name="Line">Line, from 1; 0 where the file as a whole is meant.</param>
/// <param name="Column">Column, from 1, counted in characters; 0 where the file as a whole is meant.</param>
/// <param name="Key">Key with the tables it stands in: «mount.holes[2].thread»; items of a list are counted from 1. Empty where there is none.</param>
/// <param name="Read">What stands in the file, shortened; «nothing» where a key is missing.</param>
/// <param name="Allowed">What may stand there.</param>
/// <param name="Advice">What to do about it, a whole sentence.</param>
public sealed record ProfileError(string File, int Line, int Column, string Key, string Read, string Allowed, string Advice);
