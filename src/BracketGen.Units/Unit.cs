namespace BracketGen.Units;

/// <summary>A unit of measure.</summary>
/// <param name="Name">As the program writes it.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="Factor">One of it in the internal unit of its quantity.</param>
/// <param name="Spellings">Every way it may be written; a space stands for whatever may part two factors.</param>
public sealed record Unit(string Name, Quantity Kind, double Factor, params string[] Spellings);
