using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using BracketGen.Profiles.Errors;

namespace BracketGen.Profiles;

/// <summary>What was read, or every reason why it could not be.</summary>
/// <remarks>Either the value is there or there is at least one error, never both.</remarks>
/// <typeparam name="T">What was asked for.</typeparam>
public sealed class ProfileResult<T>
    where T : class
{
    internal ProfileResult(T? value, ImmutableArray<ProfileError> errors)
    {
        Value = errors.IsEmpty ? value : null;
        Errors = errors;
    }

    /// <summary>What was read; null where there are errors.</summary>
    public T? Value { get; }

    /// <summary>The errors, file by file in the order of reading, then by line and column; empty where all is well.</summary>
    public ImmutableArray<ProfileError> Errors { get; }

    /// <summary>Whether it was read without an error.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool IsRead => Value is not null;
}
