namespace BracketGen.Design.Inputs;

/// <summary>Which way the views of a drawing are laid out (ISO 5456-2).</summary>
public enum Projection
{
    /// <summary>First-angle projection: the view from the left stands on the right.</summary>
    FirstAngle,

    /// <summary>Third-angle projection: the view from the left stands on the left.</summary>
    ThirdAngle,
}

/// <summary>Sheet that a drawing is composed for.</summary>
public enum Paper
{
    /// <summary>ISO A3, landscape.</summary>
    A3,

    /// <summary>ISO A4, upright.</summary>
    A4,

    /// <summary>ASME B, 17 by 11 inches, landscape.</summary>
    B,

    /// <summary>ASME A, 8.5 by 11 inches, upright.</summary>
    A,
}

/// <summary>What the title block says that no computation can know (ISO 7200).</summary>
/// <param name="PartNumber">Identification number of the part.</param>
/// <param name="Revision">Revision index.</param>
/// <param name="Title">Title.</param>
/// <param name="Date">Date of issue: from the job, never from the clock; null leaves the field blank.</param>
/// <param name="Creator">Who drew it; null leaves the field blank.</param>
/// <param name="Approver">Who approved it; null leaves the field blank.</param>
/// <param name="Projection">How the views are laid out.</param>
public sealed record DocumentData(
    string PartNumber, string Revision, string Title, DateOnly? Date, string? Creator, string? Approver, Projection Projection)
{
    /// <summary>Sheet of the drawing; null for the usual one of the job's unit, A3 or B.</summary>
    public Paper? Paper { get; init; }
}
