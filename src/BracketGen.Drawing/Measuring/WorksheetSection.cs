using System.Collections.Immutable;
using BracketGen.Drawing.Sheet;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Drawing.Measuring;

/// <summary>One blank to fill in.</summary>
/// <param name="Letter">Letter on the sketch; empty where the sketch does not show it.</param>
/// <param name="What">What to measure.</param>
/// <param name="Unit">Unit written behind the blank; empty where a word is wanted.</param>
/// <param name="Key">Key of the profile that takes it.</param>
/// <param name="PlusMinus">Whether there is a blank for how well it was measured.</param>
internal sealed record Blank(string Letter, string What, string Unit, string Key, bool PlusMinus = false);

/// <summary>One thing to measure: its sketch, what to do, and the blanks.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Sketch">The sketch; any place.</param>
/// <param name="Tool">With what.</param>
/// <param name="Mistake">What goes wrong most often.</param>
/// <param name="Blanks">The blanks, in the order of the letters.</param>
internal sealed record WorksheetSection(string Title, SheetBlock Sketch, string Tool, string Mistake, ImmutableArray<Blank> Blanks);
