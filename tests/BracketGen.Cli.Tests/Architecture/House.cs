namespace BracketGen.Cli.Tests.Architecture;

/// <summary>The order of the rooms, and what still stands against it.</summary>
internal static class House
{
    /// <summary>Namespaces in order, without the first word. Each may use those on the lines before; those on one line do not use each other.</summary>
    /// <remarks>A namespace belongs to the longest name that it begins with.</remarks>
    public static readonly string[][] Rooms =
    [
        ["Units"],
        ["Geometry"],
        ["Mechanism.Numerics", "SheetMetal.Bending", "SheetMetal.Cutting", "SheetMetal.Standards", "Strength.Model"],
        ["Mechanism.Grooves", "Mechanism.Cables", "Mechanism.Pedals", "Mechanism.Throttles", "SheetMetal.Patterns", "SheetMetal.Fasteners",
            "SheetMetal.Shops", "Strength.Meshing", "Strength.Elements", "Strength.Solving"],
        ["Mechanism.Motion", "Strength.Analysis"],
        ["Mechanism.Forces", "Mechanism.Uncertainty", "Mechanism.Fitted", "Strength.Parts"],
        ["Design.Inputs"],
        ["Design.Part"],
        ["Design.Checks"],
        ["Design.Search"],
        ["Design.Study"],
        ["Profiles"],
        ["Words"],
        ["Drawing"],
        ["Storage"],
        ["Line", "Web"],
        ["Cli"],
    ];

    /// <summary>Folders of namespaces that do not hold sentences for people.</summary>
    public static readonly string[] WithoutSentences = ["Geometry", "Mechanism", "SheetMetal", "Strength", "Design", "Profiles"];

    /// <summary>Uses against the order or in a circle that are still to be removed, each with its reason.</summary>
    public static readonly (string From, string To, string Reason)[] StillWrong =
    [
        ("Cli.Commands", "Cli", "folders, stop signal and command tree stand beside the program; what holds folders goes to Storage"),
        ("Cli.Line", "Cli", "output folder: goes to Storage"),
        ("Drawing.Dxf.Format", "Drawing.Dxf", "the drawing's entities stand beside the writer of their format"),
        ("Drawing.Report.Charts", "Drawing.Report", "the scene that sections share stands beside the page made of them"),
        ("Drawing.Report.Model", "Drawing.Report", "the same"),
        ("Drawing.Report.Pictures", "Drawing.Report", "the same"),
        ("Drawing.Report.Sections", "Drawing.Report", "the same"),
        ("Drawing.ShopDrawing.Views", "Drawing.ShopDrawing", "the scene stands beside the drawing"),
        ("Drawing.Solid.Brep", "Drawing.Solid", "outline and mesh stand beside the writers"),
        ("Drawing.Solid.Glb", "Drawing.Solid", "the same"),
        ("Drawing.Text", "Drawing.ShopDrawing", "the tables of a part read the scene of the drawing"),
        ("Line.Costing", "Line.Nesting", "grain of a sheet"),
        ("Line.Nesting", "Line.Lists", "names of files"),
        ("Line.Solving", "Line.Files", "what was made before is read by the solver itself"),
        ("Line.Solving", "Line.Numbering", "the plan of numbers"),
        ("Line.Solving", "Line.Parts", "shape of a part"),
        ("Profiles.Editing", "Profiles", "the reading stands beside the reader made of the folders"),
        ("Profiles.Family", "Profiles", "the same"),
        ("Profiles.Forms", "Profiles", "the same"),
        ("Profiles.Sections", "Profiles", "the same"),
        ("Profiles.Toml", "Profiles", "the same"),
    ];

    /// <summary>Sentences in inner rooms that are still to be moved to Words: folder, number, reason.</summary>
    public static readonly (string Folder, int Count, string Reason)[] StillSaid =
    [
        ("Design.Checks", 90, "titles, sources and advice of checks"),
        ("Design.Part", 2, "why there is no way for the outer; name of a tolerance"),
        ("Design.Search", 9, "why there is no bracket; why this one was chosen"),
        ("Design.Study", 22, "checks of a given bracket; remedies"),
        ("Mechanism.Cables", 2, "why there is no route"),
        ("Mechanism.Fitted", 22, "findings on the vehicle"),
        ("Profiles", 15, "errors"),
        ("Profiles.Forms", 30, "errors"),
        ("Profiles.Interview", 73, "questions"),
        ("Profiles.Sections", 225, "descriptions of keys; errors"),
        ("Profiles.Toml", 14, "errors"),
    ];
}
