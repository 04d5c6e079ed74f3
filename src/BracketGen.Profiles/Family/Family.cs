using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Units;

namespace BracketGen.Profiles.Family;

/// <summary>A product line as its file says it: vehicles times throttle bodies, what they are made of, and how the shop numbers, cuts and prices them.</summary>
/// <remarks>The profiles it names are not read yet.</remarks>
public sealed record ProductFamily
{
    /// <summary>Name of the line.</summary>
    public required string Name { get; init; }

    /// <summary>File of the shop, from the family's folder.</summary>
    public required string ShopFile { get; init; }

    /// <summary>Unit of the outputs.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>The vehicles, at least one; each brings its cable and pedal.</summary>
    public required ImmutableArray<Member> Vehicles { get; init; }

    /// <summary>The throttle bodies, at least one.</summary>
    public required ImmutableArray<Member> Bodies { get; init; }

    /// <summary>What a customer may have it made of; one choice without a code where the file says nothing.</summary>
    public required ImmutableArray<MaterialChoice> Materials { get; init; }

    /// <summary>What else a customer may choose; one plain option without a code where the file says nothing.</summary>
    public required ImmutableArray<FamilyOption> Options { get; init; }

    /// <summary>Variants that are not sold.</summary>
    public required ImmutableArray<Exclusion> Exclusions { get; init; }

    /// <summary>How parts are numbered.</summary>
    public required NumberRule Numbers { get; init; }

    /// <summary>How long every bracket must last, and how hot it gets.</summary>
    public ServiceLife Life { get; init; } = new();

    /// <summary>Title block of every drawing.</summary>
    public required FamilyDocument Document { get; init; }

    /// <summary>How sheets are filled.</summary>
    public required CuttingPlan Cutting { get; init; }

    /// <summary>What things cost.</summary>
    public required Rates Rates { get; init; }
}

/// <summary>A profile in the line, with the code that part numbers use for it.</summary>
/// <param name="Code">One to twelve letters and digits.</param>
/// <param name="File">Its file, from the family's folder.</param>
public sealed record Member(string Code, string File);

/// <summary>A choice of sheet.</summary>
/// <param name="Code">One to twelve letters and digits; empty for the only choice.</param>
/// <param name="Name">What the customer reads.</param>
/// <param name="Designations">Designations allowed, out of the shop's; empty for those of the line's preferences.</param>
public sealed record MaterialChoice(string Code, string Name, ImmutableArray<string> Designations);

/// <summary>A choice of anything that preferences can say.</summary>
/// <param name="Code">One to twelve letters and digits; empty for the only choice.</param>
/// <param name="Name">What the customer reads.</param>
/// <param name="Preferences">The line's preferences with those of the option put over them.</param>
public sealed record FamilyOption(string Code, string Name, Preferences Preferences);

/// <summary>Combinations that are not offered: all that match every code given.</summary>
/// <param name="Vehicle">Code of the vehicle; null for any.</param>
/// <param name="Body">Code of the throttle body; null for any.</param>
/// <param name="Material">Code of the material; null for any.</param>
/// <param name="Option">Code of the option; null for any.</param>
/// <param name="Reason">The reason; the catalogue prints it.</param>
public sealed record Exclusion(string? Vehicle, string? Body, string? Material, string? Option, string Reason);

/// <summary>How revisions are counted.</summary>
public enum RevisionStyle
{
    /// <summary>A to Z, then AA; without I, O, Q, S, X and Z, which are mistaken for digits and each other (ASME Y14.35 leaves these out).</summary>
    Letters,

    /// <summary>1, 2, 3 …</summary>
    Numbers,
}

/// <summary>The shop's rule for part numbers.</summary>
/// <param name="Pattern">Text with {vehicle}, {throttle_body}, {material}, {option} for the codes and {serial} for a running number.</param>
/// <param name="FirstSerial">The running number of the first part.</param>
/// <param name="SerialDigits">Digits the running number is filled up to with zeros.</param>
/// <param name="Revisions">How revisions are counted.</param>
public sealed record NumberRule(string Pattern, int FirstSerial, int SerialDigits, RevisionStyle Revisions)
{
    /// <summary>Numbers of parts that are sold or in stock: where several parts would do as well, these are preferred.</summary>
    public ImmutableArray<string> InStock { get; init; } = [];

    /// <summary>Numbers of parts that are always among those of the line, and are drawn anew only where they no longer pass.</summary>
    public ImmutableArray<string> Pinned { get; init; } = [];
}

/// <summary>Title block of every drawing of the line.</summary>
/// <param name="Title">Title; {vehicle} and {throttle_body} stand for the names.</param>
/// <param name="Date">Date of issue; null leaves the field blank.</param>
/// <param name="Creator">Who drew it; null leaves the field blank.</param>
/// <param name="Approver">Who approved it; null leaves the field blank.</param>
/// <param name="Projection">How the views are laid out.</param>
public sealed record FamilyDocument(string Title, DateOnly? Date, string? Creator, string? Approver, Projection Projection);
