namespace BracketGen.Profiles.Toml;

/// <summary>A place in a file; line and column from 1.</summary>
internal readonly record struct Place(string File, int Line, int Column);
