using System.Text.Json;
using System.Text.Json.Serialization;
using BracketGen.Web.Folder;
using BracketGen.Web.Measuring;

namespace BracketGen.Web.Messages;

/// <summary>A job as the page sends it.</summary>
/// <remarks>What may be left out has a setter: the generated reader drops the defaults of init-only properties.</remarks>
internal record DeskMessage
{
    public required string Job { get; init; }

    public required Dictionary<string, string> Files { get; init; }
}

/// <summary>Changes to a job, and how far the answer goes.</summary>
internal sealed record WorkMessage : DeskMessage
{
    public EditMessage[] Edits { get; set => field = value ?? []; } = [];

    public string Depth { get; set; } = "quick";

    public string[] Accepted { get; set => field = value ?? []; } = [];

    /// <summary>Marks of what the page has from replies before, as <see cref="LeanReply"/> gives them; null where the reply is to be whole.</summary>
    public string[]? Has { get; set; }

    /// <summary>Parts of the report that are wanted now; empty where all are.</summary>
    public string[] Wanted { get; set => field = value ?? []; } = [];

    /// <summary>Path of the bracket that is there already and is asked about; empty where the job's own is.</summary>
    public string Bracket { get; set => field = value ?? ""; } = "";
}

/// <summary>The report of a bracket that is there already.</summary>
internal sealed record ReportMessage : DeskMessage
{
    public required string Bracket { get; init; }
}

/// <summary>One value changed.</summary>
internal sealed record EditMessage
{
    public required string File { get; init; }

    public required string Key { get; init; }

    public JsonElement? Value { get; set; }
}

/// <summary>One output wanted.</summary>
internal sealed record OutputMessage : DeskMessage
{
    public required string Name { get; init; }

    public string[] Accepted { get; set => field = value ?? []; } = [];

    public string Dxf { get; set; } = "r2000";

    public string Paper { get; set; } = "";

    public string Step { get; set; } = "ap214";

    public int? Quantity { get; set; }

    public bool Kerf { get; set; }
}

/// <summary>The worksheet on a paper.</summary>
internal sealed record PaperMessage
{
    public required string Paper { get; init; }
}

/// <summary>A profile by its path.</summary>
internal sealed record PathMessage
{
    public required string Path { get; init; }

    public bool Example { get; set; }
}

/// <summary>The one-time code of a phone.</summary>
internal sealed record PairMessage
{
    public required string Code { get; init; }
}

/// <summary>A text.</summary>
internal sealed record TextMessage
{
    public string Kind { get; set; } = "";

    public required string Text { get; init; }
}

/// <summary>Files that were picked or dropped, by name.</summary>
internal sealed record FilesMessage
{
    public required Dictionary<string, string> Files { get; init; }
}

/// <summary>Profiles to write.</summary>
internal sealed record SaveMessage
{
    public required SavedFile[] Files { get; init; }

    public bool Replace { get; set; }
}

/// <summary>The lists of parts of a job.</summary>
internal sealed record PartsMessage
{
    public required string Job { get; init; }

    public required string Text { get; init; }

    public bool Example { get; set; }
}

/// <summary>The kit of a job, or one of its files.</summary>
internal sealed record KitMessage : DeskMessage
{
    /// <summary>The lists of parts, the brackets on them and their drawings.</summary>
    public Dictionary<string, string> Parts { get; set => field = value ?? []; } = [];

    public bool Strength { get; set; } = true;

    public string Name { get; set; } = "";
}

/// <summary>Readings taken on the fitted bracket, by the names of the command's options.</summary>
internal sealed record FittedMessage : DeskMessage
{
    public required Dictionary<string, string> Readings { get; init; }
}

/// <summary>Test strips bent in a shop.</summary>
internal sealed record TestBendMessage
{
    public required string Shop { get; init; }

    /// <summary>Text of the shop's file.</summary>
    public required string Text { get; init; }

    public int Stock { get; set; }

    public int Tool { get; set; }

    public string[][] Strips { get; set => field = value ?? []; } = [];
}

/// <summary>A product line, and what is wanted of a run or which variant.</summary>
internal sealed record LineMessage
{
    public required string Path { get; init; }

    public bool Strength { get; set; } = true;

    public bool Own { get; set; }

    public bool Drawings { get; set; }

    public bool Anew { get; set; }

    public string Key { get; set; } = "";
}

/// <summary>Serialization without reflection. A message that lacks a required value, or has null for a text, cannot be read.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true, MaxDepth = 24)]
[JsonSerializable(typeof(WorkMessage))]
[JsonSerializable(typeof(OutputMessage))]
[JsonSerializable(typeof(ReportMessage))]
[JsonSerializable(typeof(DeskMessage))]
[JsonSerializable(typeof(PartsMessage))]
[JsonSerializable(typeof(KitMessage))]
[JsonSerializable(typeof(FittedMessage))]
[JsonSerializable(typeof(LineMessage))]
[JsonSerializable(typeof(TestBendMessage))]
[JsonSerializable(typeof(PathMessage))]
[JsonSerializable(typeof(PaperMessage))]
[JsonSerializable(typeof(PairMessage))]
[JsonSerializable(typeof(TextMessage))]
[JsonSerializable(typeof(FilesMessage))]
[JsonSerializable(typeof(SaveMessage))]
[JsonSerializable(typeof(PhotoMessage))]
[JsonSerializable(typeof(IReadOnlyList<MeasuringStep>))]
[JsonSerializable(typeof(IReadOnlyList<MeasuringScreen>))]
[JsonSerializable(typeof(IReadOnlyList<ShelfEntry>))]
[JsonSerializable(typeof(IReadOnlyList<string>))]
internal sealed partial class MessageContext : JsonSerializerContext;
