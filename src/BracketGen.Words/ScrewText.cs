using System.Globalization;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Standards;
using BracketGen.Units;

namespace BracketGen.Words;

/// <summary>A screw of the mount in words.</summary>
public static class ScrewText
{
    private const double InchLength = 25.4;

    /// <summary>"M6 x 16", "1/4-20 UNC x 3/4 in", "stud M6".</summary>
    public static string Size(MountScrew bolt) => bolt.Fixing is MountStud ? $"stud {bolt.Thread.Name}" : $"{bolt.Thread.Name} x {Length(bolt)}";

    /// <summary>The screw as it is ordered: "ISO 4017 - M6 x 16 - 8.8".</summary>
    public static string Order(MountScrew bolt) => $"{bolt.Thread switch
    {
        { System: ThreadSystem.Metric, IsFine: false } => "ISO 4017",
        { System: ThreadSystem.Metric } => "ISO 8676",
        { IsNumberSize: true } => "ASME B18.6.3, hexagon head",
        _ => "ASME B18.2.1",
    }} - {Size(bolt)} - {Grade(bolt.Class)}";

    /// <summary>The nut as it is ordered: "ISO 4032 - M6 - 8".</summary>
    public static string Nut(MountScrew bolt) => $"{bolt.Thread switch
    {
        { System: ThreadSystem.Metric, IsFine: false } => "ISO 4032",
        { System: ThreadSystem.Metric } => "ISO 8673",
        { IsNumberSize: true } => "ASME B18.6.3",
        _ => "ASME B18.2.2",
    }} - {bolt.Thread.Name}{(bolt.Class.Nut.Name.Length == 0 ? "" : $" - {bolt.Class.Nut.Name}")}";

    /// <summary>The spacer as it is made: "Ø12 mm / Ø6.6 mm x 8.00 mm ±0.02 mm, ends square, S235 or stronger".</summary>
    public static string Spacer(Spacer spacer, UnitSystem units) =>
        $"Ø{units.WriteSize(spacer.Outside)} / Ø{units.WriteSize(spacer.Inside)} x {units.WriteFine(Quantity.Length, spacer.Length)} ±{units.WriteFine(Quantity.Length, SheetMetal.Fasteners.Spacer.Deviation)}, ends square, S235 or stronger";

    /// <summary>The washer as it is ordered: "ISO 7089 - 6 - 200 HV"; over a slot a hard one, which does not bend into it (common practice, no source).</summary>
    public static string Washer(FastenerThread thread, bool isOverSlot = false) => thread.System == ThreadSystem.Inch
        ? $"ASME B18.21.1, type A - {InchSize(thread)}{(thread.IsNumberSize ? "" : " N")}{(isOverSlot ? ", hardened" : "")}"
        : string.Create(CultureInfo.InvariantCulture, $"ISO 7089 - {thread.Diameter:0} - {(isOverSlot ? 300 : 200)} HV");

    /// <summary>"class 8.8", "SAE J429 grade 5".</summary>
    public static string Class(ScrewClass of) => of.Standard.Length == 0 ? $"class {of.Name}" : Grade(of);

    /// <summary>A thread with its pitch in its name: "M6x1", "1/4-20 UNC".</summary>
    public static string InFull(FastenerThread thread) => thread.System == ThreadSystem.Metric && !thread.IsFine
        ? string.Create(CultureInfo.InvariantCulture, $"{thread.Name}x{thread.Pitch}")
        : thread.Name;

    private static string Grade(ScrewClass of) => of.Standard.Length == 0 ? of.Name : $"{of.Standard} {of.Name}";

    private static string InchSize(FastenerThread thread) => thread.Name.Split('-')[0];

    private static string Length(MountScrew bolt) => bolt.Thread.System == ThreadSystem.Inch
        ? $"{Eighths((int)Math.Round(bolt.Length / InchLength * 8))} in"
        : bolt.Length.ToString("0", CultureInfo.InvariantCulture);

    // "3/4", "1", "1-1/4": as screws are sold.
    private static string Eighths(int eighths)
    {
        var (whole, part) = (eighths / 8, eighths % 8);
        var fraction = part == 0 ? "" : part % 4 == 0 ? "1/2" : part % 2 == 0 ? $"{Number(part / 2)}/4" : $"{Number(part)}/8";
        return whole == 0 ? fraction : part == 0 ? Number(whole) : $"{Number(whole)}-{fraction}";
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
