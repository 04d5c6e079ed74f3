namespace BracketGen.Profiles.Errors;

/// <summary>A place in a file; line and column from 1, both 0 where the file as a whole is meant.</summary>
internal readonly record struct Place(string File, int Line, int Column);
