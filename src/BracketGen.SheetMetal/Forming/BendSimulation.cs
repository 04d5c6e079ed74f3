using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.SheetMetal.Forming;

/// <summary>Finds an order in which a part can be bent with a shop's tools: every order, side and tool is tried by bending the part step by step.</summary>
/// <remarks>
/// The part is flat flanges and bends of exact geometry; tools are longer than the part, or made up of sections as long as the bend. Over each stroke, from flat to the bend angle with its springback
/// allowance and <see cref="Reserve"/>, no point of the part comes nearer than <see cref="Clearance"/> to punch, beam and bed, or than
/// <see cref="SelfClearance"/> to another flange. What rests on a tool may overlap it by <see cref="Contact"/>: the leg that is bent along the punch's
/// flank, and whatever lies on the die. Clear is proven over the whole stroke but for the chords that stand for arcs (0.1 mm) and for bends
/// (0.02 of their outside radius). How the part is brought in and taken out is not looked at: between tools that are all one section it slides along the bend; between
/// tools cut to the bend it must also be clear of the way that the punch comes down and rises.
/// </remarks>
public static class BendSimulation
{
    /// <summary>Minimum clearance (mm) between the part and a tool that it does not rest on (common practice, no source).</summary>
    public const double Clearance = 0.5;

    /// <summary>Minimum clearance (mm) between two flanges while the part is bent (common practice, no source).</summary>
    public const double SelfClearance = 0.2;

    /// <summary>How far (mm) the part may overlap what it rests on: sheet and tool are not so exact.</summary>
    public const double Contact = 0.2;

    /// <summary>How much further than the springback allowance a bend may have to be made, because no two sheets spring back the same (common practice, no source).</summary>
    public static readonly Angle Reserve = Angle.FromDegrees(1);

    /// <summary>Finds the order, or what is in the way.</summary>
    /// <param name="sheet">The part.</param>
    /// <param name="stock">The sheet it is made of.</param>
    /// <param name="shop">The shop.</param>
    public static BendResult Of(FoldedSheet sheet, Stock stock, Shop shop) => Of(sheet.Flat, stock, shop.Dies, shop.Tools);

    /// <summary>Finds the order, or what is in the way.</summary>
    /// <param name="flat">The part; the ends of each bend lie on its outline.</param>
    /// <param name="stock">The sheet it is made of.</param>
    /// <param name="dies">The dies to choose from: those that give the inside radius of a bend are tried.</param>
    /// <param name="tools">Everything else that it can be bent with.</param>
    public static BendResult Of(FlatPattern flat, Stock stock, ImmutableArray<PressBrakeDie> dies, ToolSet tools) =>
        new BendOrder(new(flat, tools.Press), stock, dies, tools).Find();
}
