using System.Reflection;
using System.Runtime.CompilerServices;
using BracketGen.Geometry;

namespace BracketGen.Cli.Tests.Architecture;

/// <summary>Finds where the public members of an assembly speak of a vector without its frame.</summary>
internal static class BareVectors
{
    // What the compiler writes for a record says nothing that its properties do not say.
    private static readonly HashSet<string> OfRecords = ["Deconstruct", "Equals", "GetHashCode", "PrintMembers", "ToString", "<Clone>$"];

    private const BindingFlags Declared =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>
    /// Every <see cref="Vector2"/> and <see cref="Vector3"/> in a public or protected member, by namespace without the first word, type and
    /// member: <c>Room.Type.Property</c>, <c>Room.Type.Method(parameter)</c>, and <c>Room.Type.Property.Element</c> for one element of a tuple.
    /// </summary>
    public static IEnumerable<string> In(Assembly assembly) => assembly.GetTypes().Where(t => t.IsVisible).SelectMany(In).Distinct();

    /// <summary>The same of one type.</summary>
    public static IEnumerable<string> In(Type type)
    {
        var owner = type.FullName!["BracketGen.".Length..].Replace('+', '.');
        var properties = type.GetProperties(Declared).Where(p => p.GetAccessors(true).Any(IsSeen)).ToArray();
        var fields = type.GetFields(Declared).Where(f => f.IsPublic || f.IsFamily || f.IsFamilyOrAssembly);
        var methods = type.GetMethods(Declared).Where(m => IsSeen(m) && !IsAccessor(m) && !OfRecords.Contains(m.Name));

        // A record's property has the name and type of the constructor's parameter.
        var made = type.GetConstructors(Declared).Where(IsSeen).SelectMany(c => c.GetParameters())
            .Where(p => p.ParameterType != type && !properties.Any(q => q.Name == p.Name));
        return
        [
            .. fields.SelectMany(f => Places($"{owner}.{f.Name}", f.FieldType, f)),
            .. properties.SelectMany(p => Places($"{owner}.{p.Name}", p.PropertyType, p)),
            .. made.SelectMany(p => Places($"{owner}({p.Name})", p.ParameterType, p)),
            .. methods.SelectMany(m => m.GetParameters().SelectMany(p => Places($"{owner}.{m.Name}({p.Name})", p.ParameterType, p))
                .Concat(Places($"{owner}.{m.Name}", m.ReturnType, m.ReturnParameter))),
        ];
    }

    private static bool IsSeen(MethodBase method) => method.IsPublic || method.IsFamily || method.IsFamilyOrAssembly;

    private static bool IsAccessor(MethodInfo method) =>
        method.IsSpecialName && (method.Name.StartsWith("get_", StringComparison.Ordinal) || method.Name.StartsWith("set_", StringComparison.Ordinal));

    private static IEnumerable<string> Places(string name, Type type, ICustomAttributeProvider said)
    {
        if (!typeof(ITuple).IsAssignableFrom(type) || !type.IsGenericType)
        {
            return IsBare(type) ? [name] : [];
        }

        var names = ((TupleElementNamesAttribute?)said.GetCustomAttributes(typeof(TupleElementNamesAttribute), false).FirstOrDefault())?.TransformNames;
        return type.GetGenericArguments()
            .Select((t, i) => (Type: t, Name: names?[i] ?? $"Item{i + 1}"))
            .Where(e => IsBare(e.Type)).Select(e => $"{name}.{e.Name}");
    }

    private static bool IsBare(Type type) => type == typeof(Vector2) || type == typeof(Vector3)
        || type.HasElementType && IsBare(type.GetElementType()!)
        || type.IsGenericType && type.GetGenericArguments().Any(IsBare);
}
