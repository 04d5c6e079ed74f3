namespace BracketGen.Drawing.Sheet;

/// <summary>What a thing is drawn in. A drawing is black; the rest is for what must stand back or stand out.</summary>
public enum Ink
{
    /// <summary>Everything of the drawing itself.</summary>
    Black,

    /// <summary>Field labels and help lines.</summary>
    Grey,

    /// <summary>Warnings: dark red, which a black-and-white printer still makes dark.</summary>
    Warning,

    /// <summary>A light ground under a table's header.</summary>
    Tint,

    /// <summary>The paper's colour: text on a dark ground.</summary>
    White,
}
