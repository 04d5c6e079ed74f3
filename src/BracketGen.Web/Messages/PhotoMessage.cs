namespace BracketGen.Web.Messages;

/// <summary>What was marked in a photograph of a throttle body. The photograph itself stays in the browser.</summary>
internal sealed record PhotoMessage
{
    /// <summary>The throttle body's profile so far.</summary>
    public required string Text { get; init; }

    public bool Inches { get; set; }

    public required int Width { get; init; }

    public required int Height { get; init; }

    public required PhotoMarkMessage[] Marks { get; init; }

    public LengthMessage Bar { get; set => field = value ?? new(); } = new();

    public LengthMessage Distance { get; set => field = value ?? new(); } = new();

    public LengthMessage ShaftHeight { get; set => field = value ?? new(); } = new();

    public LengthMessage RimHeight { get; set => field = value ?? new(); } = new();

    public LengthMessage GrooveHeight { get; set => field = value ?? new(); } = new();

    public LengthMessage HoleHeight { get; set => field = value ?? new(); } = new();

    public LengthMessage ToWire { get; set => field = value ?? new(); } = new();

    public bool IsShaftRim { get; set; }

    public bool AreHoleRims { get; set; }

    public bool IsCam { get; set; }

    public double[][] Shaft { get; set => field = value ?? []; } = [];

    public double[][] Edge { get; set => field = value ?? []; } = [];

    public double[][] Pocket { get; set => field = value ?? []; } = [];

    public double[][][] Holes { get; set => field = value ?? []; } = [];
}

/// <summary>A mark and its clicks.</summary>
internal sealed record PhotoMarkMessage
{
    public required int Number { get; init; }

    public required double[][] Clicks { get; init; }
}

/// <summary>A length as it was typed; empty where it is not known.</summary>
internal sealed record LengthMessage
{
    public string Value { get; set => field = value ?? ""; } = "";

    public string PlusMinus { get; set => field = value ?? ""; } = "";
}
