namespace BracketGen.Words.Page;

/// <summary>The list of keys: each key, and under the same name with "Does" what it does.</summary>
internal static class KeyWords
{
    public static Dictionary<string, string> All { get; } = new()
    {
        ["heading"] = "Keys",
        ["undo"] = "Ctrl+Z, Ctrl+Y",
        ["undoDoes"] = "undo, redo",
        ["save"] = "Ctrl+S",
        ["saveDoes"] = "save the profiles",
        ["step"] = "Up, Down in a number",
        ["stepDoes"] = "step its last digit by one; with Shift by ten",
        ["move"] = "Tab, arrow keys",
        ["moveDoes"] = "move from field to field, from tab to tab",
        ["turn"] = "Arrow keys in the picture",
        ["turnDoes"] = "turn the bracket; plus and minus zoom",
        ["panes"] = "Alt+N, Alt+B",
        ["panesDoes"] = "go to the numbers, to the bracket",
        ["pedal"] = "Alt+P",
        ["pedalDoes"] = "go to the pedal's slider",
        ["list"] = "?",
        ["listDoes"] = "show this list",
    };
}
