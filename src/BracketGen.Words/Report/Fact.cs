namespace BracketGen.Words.Report;

/// <summary>A name, its value as text, and a remark; empty if there is none.</summary>
public sealed record Fact(string Name, string Value, string Remark = "");
