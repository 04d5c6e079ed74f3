using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Profiles.Errors;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Profiles.Family;

/// <summary>One thing a file says: a key with all its headers, and the value as text.</summary>
/// <remarks>Comments, order and spacing of the file are gone, so two files that mean the same have the same facts.</remarks>
/// <param name="Key">"quadrant.pitch_radius.value"; items of a list are counted from 1.</param>
/// <param name="Value">The value as written, without quotes; numbers in their shortest form.</param>
public readonly record struct Fact(string Key, string Value);

/// <summary>A profile of the line that was read, or every reason why it could not be.</summary>
/// <typeparam name="T">What the file describes.</typeparam>
/// <param name="Code">Its code.</param>
/// <param name="File">Its file as the family names it.</param>
/// <param name="Value">What was read; null where there are errors.</param>
/// <param name="Errors">The errors.</param>
/// <param name="Facts">What the file says, by key.</param>
public sealed record LoadedMember<T>(string Code, string File, T? Value, ImmutableArray<ProfileError> Errors, ImmutableArray<Fact> Facts)
    where T : class;

/// <summary>An option with the facts of its preferences.</summary>
/// <param name="Option">The option.</param>
/// <param name="Facts">What the line's preferences and the option's say together, by key.</param>
public sealed record LoadedOption(FamilyOption Option, ImmutableArray<Fact> Facts);

/// <summary>A family with everything it names.</summary>
public sealed record LoadedFamily
{
    /// <summary>The family.</summary>
    public required ProductFamily Family { get; init; }

    /// <summary>Its shop.</summary>
    public required Shop Shop { get; init; }

    /// <summary>What the shop's file says.</summary>
    public required ImmutableArray<Fact> ShopFacts { get; init; }

    /// <summary>The vehicles; one that could not be read does not stop the others.</summary>
    public required ImmutableArray<LoadedMember<Vehicle>> Vehicles { get; init; }

    /// <summary>The throttle bodies; likewise.</summary>
    public required ImmutableArray<LoadedMember<ThrottleBody>> Bodies { get; init; }

    /// <summary>The options; never empty.</summary>
    public required ImmutableArray<LoadedOption> Options { get; init; }
}
