namespace BracketGen.Words.Page;

/// <summary>Measuring step by step.</summary>
internal static class MeasuringWords
{
    public static Dictionary<string, string> All { get; } = new()
    {
        ["progress"] = "{profile}: question {number} of {count}",
        ["progressLabel"] = "{profile}, questions answered",
        ["next"] = "Next",
        ["back"] = "Back",
        ["later"] = "Later",
        ["leave"] = "See all numbers",
        ["tool"] = "Measure with",
        ["mistake"] = "Usual mistake",
        ["sketchLetter"] = "Sketch: {ask} The letter {letter} marks it.",
        ["sketch"] = "Sketch for: {ask}",
        ["sketchLetters"] = "Sketch: {ask} The letters {letter} mark it.",
        ["captionLetters"] = "{letter} are the dimensions to measure. Not to scale.",
        ["captionLetter"] = "{letter} is the dimension to measure. Not to scale.",
        ["caption"] = "Not to scale.",
        ["axis"] = "{ask} {axis}",
        ["plusMinus"] = "{ask} Plus or minus",
        ["choose"] = "Choose one.",
        ["count"] = "Enter a whole number from 0 to {max}.",
        ["point"] = "Enter all three numbers.",
        ["comma"] = "Do you mean {number}? Write it with a point.",
        ["needed"] = "Enter a value, or press Later to leave it open.",
    };
}
