namespace BracketGen.Profiles.Units;

/// <summary>A unit that may stand in a profile.</summary>
/// <param name="Name">As it is written in messages.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="Factor">One of it in internal units: mm, rad, N, N·mm, MPa, t/mm³.</param>
/// <param name="Spellings">Every way it may be written; a space stands for whatever may part two factors.</param>
internal sealed record Unit(string Name, UnitKind Kind, double Factor, params string[] Spellings);
