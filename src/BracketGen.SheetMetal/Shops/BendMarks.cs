namespace BracketGen.SheetMetal.Shops;

/// <summary>How the shop wants the ends of bends marked on the blank.</summary>
/// <remarks>No notches in the edge: one at the end of a bend is where a bracket that shakes starts to crack.</remarks>
public enum BendMarks
{
    /// <summary>Etched, on the side that the bend presses together; a bend whose pressed side is not the one that is cut from has none.</summary>
    Etched,

    /// <summary>Not at all.</summary>
    None,
}
