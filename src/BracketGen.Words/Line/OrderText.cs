using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Profiles.Family;
using BracketGen.Units;

namespace BracketGen.Words.Line;

/// <summary>The sentences of an order: terminal, job cards, lists, labels.</summary>
public static class OrderText
{
    /// <summary>Title of a job card.</summary>
    public const string JobCard = "Job card";

    /// <summary>Title of the pick list.</summary>
    public const string PickList = "Pick list";

    /// <summary>Title of a packing list.</summary>
    public const string PackingList = "Packing list";

    /// <summary>Title of the labels' file.</summary>
    public const string Labels = "Labels";

    /// <summary>Heading of what is made.</summary>
    public const string WhatIsMade = "What is made";

    /// <summary>Heading of the times.</summary>
    public const string Times = "Times";

    /// <summary>Below the times.</summary>
    public const string TimesNote = "The times are calculated from the rates of line and shop; nobody has timed them.";

    /// <summary>Heading of the stock sheets that a part is cut from.</summary>
    public const string CutFrom = "Cut from";

    /// <summary>Where the rest of a part's numbers stands.</summary>
    public const string DrawingNote = "Dimensions and points of the outline: the drawing of the part.";

    /// <summary>A flat part.</summary>
    public const string Flat = "Flat: no bends.";

    /// <summary>Heads of a table of facts.</summary>
    public static readonly ImmutableArray<string> FactHeads = ["What", "Value"];

    /// <summary>Heads of the times.</summary>
    public static readonly ImmutableArray<string> TimeHeads = ["Work", "Set-up", "Each", "All"];

    /// <summary>Heads of the stock sheets.</summary>
    public static readonly ImmutableArray<string> SheetHeads = ["Cut file", "Pieces"];

    /// <summary>Heads of the pick list.</summary>
    public static readonly ImmutableArray<string> PickHeads = ["Count", "Item", "Size"];

    /// <summary>Heads of a packing list.</summary>
    public static readonly ImmutableArray<string> PackHeads = ["All", "In each bag", "Item", "Size", "Where"];

    /// <summary>A bracket on pick and packing lists.</summary>
    public const string Bracket = "bracket";

    /// <summary>A fitting sheet on pick and packing lists.</summary>
    public const string FittingSheet = "set-up sheet";

    /// <summary>Below a packing list.</summary>
    public static readonly ImmutableArray<string> PackNotes =
        ["Not in the bag: the cable of the vehicle with its nuts or clip.", "A set-up sheet goes with every bag. Nobody fits the bracket without it."];

    /// <summary>Part number and revision, as a QR code says them.</summary>
    public static string Code(string partNumber, string revision) => $"{partNumber} {revision}".Trim();

    /// <summary>Part number, revision and title.</summary>
    public static string Part(string partNumber, string revision, string title) => $"{partNumber}, revision {revision}: {title}";

    /// <summary>The order and its line.</summary>
    public static string Subject(string order, string family, string shop) => $"Order {order}. {family}, {shop}";

    /// <summary>The name of the line on the page of the stock sheets.</summary>
    public static string SheetsName(string order, string family) => $"{family}, order {order}";

    /// <summary>A customer on a packing list.</summary>
    public static string For(string reference) => reference.Length > 0 ? $"Customer reference {reference}" : "No customer reference";

    /// <summary>Heading of a product on a packing list.</summary>
    /// <param name="quantity">Pieces.</param>
    /// <param name="partNumber">Part number.</param>
    /// <param name="revision">Revision.</param>
    /// <param name="fits">The variants it is for.</param>
    public static string Packed(int quantity, string partNumber, string revision, string fits) => $"{Counted.Of(quantity, "bag")}: {partNumber}, revision {revision}, for {fits}";

    /// <summary>Label of the customer's reference.</summary>
    public static string Reference(string reference) => reference.Length > 0 ? $"ref. {reference}" : "";

    /// <summary>Label of the order.</summary>
    public static string Order(string order) => $"order {order}";

    /// <summary>The facts of a job card: what, value.</summary>
    public static ImmutableArray<ImmutableArray<string>> Facts(int pieces, string stock, double length, double width, double cut, int pierces, double mass, UnitSystem units) =>
    [
        ["Pieces", Counted.Number(pieces)],
        ["Sheet", stock],
        ["Blank", LineText.Size(length, width, units)],
        ["Cut length", units.Write(Quantity.Length, cut)],
        ["Pierces", Counted.Number(pierces)],
        ["Mass of one", units.Write(Quantity.Mass, mass)],
    ];

    /// <summary>Names of the works in the table of times.</summary>
    public static readonly ImmutableArray<string> Works = ["cutting", "bending", "burrs, washing, packing", "together"];

    /// <summary>A time: "45 s", "12.5 min", "3.2 h".</summary>
    public static string Time(double seconds) => seconds < 100
        ? Number(seconds, "0") + " s"
        : seconds < 6000 ? Number(seconds / 60, "0.0") + " min" : Number(seconds / 3600, "0.0") + " h";

    /// <summary>How an order ended.</summary>
    /// <param name="sold">Lines that are made.</param>
    /// <param name="all">All lines.</param>
    /// <param name="pieces">Pieces that are made.</param>
    /// <param name="parts">Different parts.</param>
    public static string Outcome(int sold, int all, int pieces, int parts) =>
        $"{Counted.Number(sold)} of {Counted.Of(all, "line")} of the order can be sold: {Counted.Of(pieces, "piece")} of {Counted.Of(parts, "part")}.";

    /// <summary>A line that is listed and not sold.</summary>
    public static string NotSold(int line, string name, string variant, string verdict) => $"line {Counted.Number(line)}, {name}: not sold, {variant} {verdict}";

    /// <summary>The total of the order.</summary>
    public static string Total(string price, string cost) => $"Price {price}, cost {cost}.";

    /// <summary>Problems in the order.</summary>
    public static string Problems(int count) => $"{Counted.Of(count, "mistake")} in the order; nothing was made.";

    /// <summary>A problem in the file of the order.</summary>
    public static string In(string file, OrderProblem problem) => $"{file}: {problem.Text}";

    /// <summary>More problems than are printed.</summary>
    public static string More(int count) => $"and {Counted.Of(count, "more mistake")}";

    /// <summary>The order names no line.</summary>
    public static string NoFamily(string file) => $"{file} does not name its product line; give the family's file with --family, or write family = \"...\" in an order in TOML.";

    /// <summary>The order's file cannot be read.</summary>
    public static string Unread(string file, string why) => $"{file} cannot be read: {why}";

    /// <summary>The file is too long.</summary>
    public static string TooLong(int most) => $"it is longer than {Counted.Number(most)} bytes.";

    /// <summary>No such file.</summary>
    public const string Missing = "there is no such file.";

    /// <summary>The file may not be read.</summary>
    public const string Closed = "you have no right to read it, or another program holds it.";

    /// <summary>No file at all.</summary>
    public const string NoFile = "it is not a file.";

    /// <summary>The line is not made.</summary>
    public static string NotMade(string file) => $"there is no {file}: make the line first with the command line, without --solve-only.";

    /// <summary>What is kept of the line is damaged.</summary>
    public static string Damaged(string file) => $"{file} is damaged or of another version of the program: make the line again.";

    /// <summary>It is that of another line.</summary>
    public static string OtherLine(string file, string read, string wanted) => $"{file} belongs to the line \"{read}\", not to \"{wanted}\".";

    /// <summary>What a product was named by, in a list.</summary>
    public static string By(OrderedBy by) => by switch
    {
        OrderedBy.Part => "part_number",
        OrderedBy.Variant => "variant",
        _ => "catalogue_number",
    };

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
