namespace BracketGen.Cli.Tests.Architecture;

/// <summary>The order of the rooms, and what still breaks it.</summary>
internal static class House
{
    /// <summary>Namespaces in order, without the first word. Each may use those on the lines before; those on one line do not use each other.</summary>
    /// <remarks>A namespace belongs to the longest name that it begins with.</remarks>
    public static readonly string[][] Rooms =
    [
        ["Units"],
        ["Geometry"],
        ["Photo", "Mechanism.Numerics", "SheetMetal.Bending", "SheetMetal.Cutting", "SheetMetal.Standards", "Strength.Model", "Strength.Life"],
        ["Mechanism.Grooves", "Mechanism.Cables", "Mechanism.Rods", "Mechanism.Pedals", "Mechanism.Throttles", "SheetMetal.Patterns", "SheetMetal.Fasteners",
            "SheetMetal.Tooling", "Strength.Meshing", "Strength.Elements"],
        ["Strength.Solving"],
        ["Mechanism.Motion", "SheetMetal.Shops", "Strength.Analysis"],
        ["Mechanism.Forces", "Mechanism.Uncertainty", "Mechanism.Fitted", "SheetMetal.Forming", "Strength.Parts", "Strength.Shaking"],
        ["Design.Inputs"],
        ["Design.Part"],
        ["Design.Checks"],
        ["Design.Search"],
        ["Design.Study"],
        ["Design.Kit"],
        ["Profiles"],
        ["Words", "Words.Checks", "Words.CutFile", "Words.Fitted", "Words.Inspecting", "Words.Worksheet"],
        ["Words.Line", "Words.Page", "Words.Results", "Words.ShopDrawing"],
        ["Words.Report", "Words.SetupSheet", "Words.Terminal"],
        ["Words.Kit"],
        ["Drawing.Sheet", "Drawing.Dxf.Model", "Drawing.Solid", "Drawing.Report.Html", "Drawing.Result"],
        ["Drawing.Dxf.Format", "Drawing.Measuring", "Drawing.Solid.Mesh"],
        ["Drawing.Dxf", "Drawing.Views", "Drawing.Solid.Brep", "Drawing.Solid.Glb", "Drawing.Report.Scene"],
        ["Drawing.Fitted"],
        ["Drawing.ShopDrawing", "Drawing.Solid.Step", "Drawing.Report.Charts", "Drawing.Report.Model", "Drawing.Report.Pictures"],
        ["Drawing.Setup", "Drawing.Report.Sections"],
        ["Drawing.Report", "Drawing.Inspecting", "Drawing.Kit"],
        ["Drawing.Orders"],
        ["Drawing"],
        ["Storage"],
        ["Line.Combinations"],
        ["Line.Parts"],
        ["Line.Numbering"],
        ["Line.Costing", "Line.Solving"],
        ["Line.Nesting", "Line.Sharing"],
        ["Line.Lists"],
        ["Line.Catalogue"],
        ["Line.Orders"],
        ["Line.Running"],
        ["Web.Folder", "Web.Measuring", "Web.Memory", "Web.Phone"],
        ["Web.Desk"],
        ["Web.Messages"],
        ["Web.Routes"],
        ["Web.Serving"],
        ["Cli.Completions", "Cli.Interview", "Cli.Terminal"],
        ["Cli.Commands"],
        ["Cli"],
    ];

    /// <summary>Folders of namespaces that do not hold sentences for people.</summary>
    public static readonly string[] WithoutSentences = ["Geometry", "Photo", "Mechanism", "SheetMetal", "Strength", "Design", "Profiles"];

    /// <summary>Uses against the order or in a circle that are still to be removed, each with its reason.</summary>
    public static readonly (string From, string To, string Reason)[] StillWrong =
    [
    ];

    /// <summary>Numbers below 0.001 without a name, folder and number, that are still to be named.</summary>
    public static readonly (string Folder, int Count)[] StillUnnamed =
    [
    ];

    /// <summary>Sentences in inner rooms that are still to be moved to Words: folder, number, reason.</summary>
    public static readonly (string Folder, int Count, string Reason)[] StillSaid =
    [
        ("Design.Part", 1, "name of a tolerance"),
        ("Profiles", 3, "errors"),
        ("Profiles.Forms", 1, "a pattern of the schema"),
        ("Profiles.Interview", 2, "the units of bare numbers, written into the file"),
        ("Profiles.Sections", 481, "descriptions of keys; errors"),
        ("SheetMetal.Shops", 21, "sources of the library's sheets and of the sheet classes, as a shop's file gives its own"),
    ];

    /// <summary>
    /// Public members of SheetMetal, Strength and Design that give a vector without its frame: no points, but what has the same
    /// meaning wherever it begins, with the reason.
    /// </summary>
    public static readonly (string Reason, string[] Members)[] WithoutFrame =
    [
        ("a direction in the flat pattern",
        [
            "SheetMetal.Bending.Bend.Along", "SheetMetal.Bending.Bend.Across", "Design.Part.BracketHole.Towards", "SheetMetal.Patterns.HoleOutline.Along", "SheetMetal.Patterns.SquareHole(Along)", "SheetMetal.Patterns.FlatSidedHole(Along)",
            "SheetMetal.Patterns.SlottedHole(Along)", "SheetMetal.Patterns.HoleOutline.ReachTowards(way)", "SheetMetal.Patterns.SlottedHole.ReachTowards(way)", "Design.Part.BracketHole.ReachTowards(way)",
            "Design.Part.MeasuredOpening.SlotTowards", "Design.Part.DrawnFlat.Towards", "Design.Part.MeasuredShape.MetalRound(slotTowards)",
            "Design.Part.Joint.Along", "Design.Part.Joint.Across",
        ]),
        ("a direction in the frame of the mount flange", ["Design.Part.MeasuredStop.Normal", "Design.Part.MeasuredOpening.Direction"]),
        ("how far a bolt stands off the middle of its slotted hole, or may", ["Design.Part.BracketHole.Shift", "Design.Part.BracketHole.HalfTravel", "SheetMetal.Patterns.HoleOutline.HalfTravel", "SheetMetal.Patterns.SlottedHole.HalfTravel"]),
        ("lengths of edges", ["Design.Inputs.KeepOutTiltedBox.Size"]),
        ("a direction in the throttle frame",
        [
            "SheetMetal.Patterns.FoldedSheet.TopAt", "SheetMetal.Patterns.FoldedSheet.AxisOf.Direction", "Design.Inputs.Bulkhead.Direction", "Design.Inputs.Job.Up", "Design.Inputs.EngineMovement.Direction", "Design.Inputs.OuterClip.Direction", "Design.Inputs.MountFit.Of(normal)", "Design.Inputs.MountSlots.Way", "Design.Inputs.MountSlots.InFace", "Design.Inputs.MountSlots.InFace(way)", "Design.Inputs.MountSlots.InFace(normal)",
            "Strength.Model.AttachedBody.Axis", "Strength.Model.AttachedBody.Offset", "Design.Part.Bracket.FoldedSeat.Normal", "Design.Part.LeavingAngles.Of(mountNormal)", "Design.Part.MiddlePlanes.Of",
            "Design.Part.MiddlePlanes.Of(mount)", "Design.Part.MiddlePlanes.Of(stop)", "Design.Part.MiddlePlanes.Of(way)", "Design.Inputs.SecondFace.Along", "Design.Part.SecondFlangeTolerance.Along(way)", "Strength.Parts.ElasticBase.GiveOfRigid(direction)",
        ]),
        ("how far the flat pattern is shifted", ["SheetMetal.Bending.Bend.Shift(by)", "SheetMetal.Patterns.FlatPattern.Shift(by)"]),
        ("a force or a moment",
        [
            "Strength.Analysis.NodalLoad.Force", "Strength.Analysis.NodalLoad.Moment", "Strength.Parts.PreparedPart.Under(force)", "Strength.Parts.PreparedPart.ReactionsUnder(force)",
            "Strength.Parts.SeatLoad.Spread(force)", "Strength.Parts.SeatResponse.Force",
        ]),
        ("a displacement or a rotation",
        [
            "Strength.Analysis.StaticSolution.Displacements", "Strength.Analysis.StaticSolution.Rotations", "Strength.Analysis.Mode.Shape",
            "Strength.Parts.SeatResponse.SeatDeflection", "Strength.Parts.PreparedPart.Moved(by)", "Strength.Parts.PreparedPart.Turned(turn)",
        ]),
    ];
}
