using BracketGen.Words.Worksheet;

namespace BracketGen.Words.Page;

/// <summary>Measuring screen by screen.</summary>
internal static class MeasuringWords
{
    public static Dictionary<string, string> All { get; } = new()
    {
        ["progress"] = "{profile}: screen {number} of {count}, {done} of {needed} numbers given",
        ["progressLabel"] = "{profile}, numbers given",
        ["screens"] = "All screens",
        ["still"] = "{title}: {count} open",
        ["open"] = "not measured yet",
        ["taken"] = "left empty: {value}",
        ["mayStayOpen"] = "may stay empty",
        ["notGiven"] = "not given",
        ["part"] = "The part to scale, as far as it is measured",
        ["partCaption"] = SoFarText.Caption,
        ["underlay"] = "Show the photograph under the sketch",
        ["underlayCaption"] = "The photograph is laid square-on at the height of the quadrant's edge. What lies at another height stands aside, the mount holes too.",
        ["again"] = "Measure screen by screen",
        ["next"] = "Next",
        ["back"] = "Back",
        ["leave"] = "See all numbers",
        ["tool"] = "Measure with",
        ["mistake"] = "Usual mistake",
        ["sketchLetter"] = "Sketch: {ask} The letter {letter} marks it.",
        ["sketch"] = "Sketch for: {ask}",
        ["sketchLetters"] = "Sketch: {ask} The letters {letter} mark it.",
        ["captionLetters"] = "{letter} are the dimensions to measure. Not to scale.",
        ["captionLetter"] = "{letter} is the dimension to measure. Not to scale.",
        ["caption"] = "Not to scale.",
        ["count"] = "Enter a whole number from 0 to {max}.",
    };
}
