using System.Reflection.Emit;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace BracketGen.Cli.Tests.Architecture;

/// <summary>A type that uses a type of another namespace.</summary>
/// <param name="From">Namespace of the type that uses.</param>
/// <param name="Type">Its name; nested types count as the outermost.</param>
/// <param name="To">Namespace of the type that is used.</param>
/// <param name="Used">Its name.</param>
internal readonly record struct Use(string From, string Type, string To, string Used);

/// <summary>Reads from built assemblies which type uses which.</summary>
/// <remarks>
/// ECMA-335, partition II.22 (tables), II.23.2 (signatures), III (instructions). Base types, interfaces, constraints, fields, signatures, local variables and
/// every instruction count; attributes do not. A constant leaves no trace: the compiler writes its value.
/// </remarks>
internal sealed class UsedTypes
{
    private static readonly Dictionary<short, OperandType> Operands = typeof(OpCodes).GetFields()
        .Select(f => (OpCode)f.GetValue(null)!).ToDictionary(c => c.Value, c => c.OperandType);

    private readonly MetadataReader _reader;
    private readonly PEReader _file;
    private readonly HashSet<(string Namespace, string Name)> _found = [];
    private readonly Collector _collector;

    private UsedTypes(PEReader file)
    {
        _file = file;
        _reader = file.GetMetadataReader();
        _collector = new(this);
    }

    /// <summary>Every use of a type of our own in the assembly at <paramref name="path"/>.</summary>
    public static IReadOnlyCollection<Use> In(string path)
    {
        using var file = new PEReader(File.OpenRead(path));
        return new UsedTypes(file).All();
    }

    private HashSet<Use> All()
    {
        var all = new HashSet<Use>();
        foreach (var handle in _reader.TypeDefinitions)
        {
            _found.Clear();
            Collect(_reader.GetTypeDefinition(handle));
            var (from, type) = NameOf(handle);
            all.UnionWith(_found
                .Where(u => IsOurs(from) && IsOurs(u.Namespace) && u.Namespace != from)
                .Select(u => new Use(from, type, u.Namespace, u.Name)));
        }

        return all;
    }

    private static bool IsOurs(string name) => name.StartsWith("BracketGen.", StringComparison.Ordinal);

    private void Collect(TypeDefinition type)
    {
        Add(type.BaseType);
        foreach (var i in type.GetInterfaceImplementations())
        {
            Add(_reader.GetInterfaceImplementation(i).Interface);
        }

        AddConstraints(type.GetGenericParameters());
        foreach (var field in type.GetFields())
        {
            _reader.GetFieldDefinition(field).DecodeSignature(_collector, null);
        }

        foreach (var handle in type.GetMethods())
        {
            var method = _reader.GetMethodDefinition(handle);
            method.DecodeSignature(_collector, null);
            AddConstraints(method.GetGenericParameters());
            if (method.RelativeVirtualAddress != 0)
            {
                Collect(_file.GetMethodBody(method.RelativeVirtualAddress));
            }
        }
    }

    private void AddConstraints(GenericParameterHandleCollection parameters)
    {
        foreach (var constraint in parameters.SelectMany(p => _reader.GetGenericParameter(p).GetConstraints()))
        {
            Add(_reader.GetGenericParameterConstraint(constraint).Type);
        }
    }

    private void Collect(MethodBodyBlock body)
    {
        if (!body.LocalSignature.IsNil)
        {
            _reader.GetStandaloneSignature(body.LocalSignature).DecodeLocalSignature(_collector, null);
        }

        foreach (var region in body.ExceptionRegions)
        {
            Add(region.CatchType);
        }

        var code = body.GetILReader();
        while (code.RemainingBytes > 0)
        {
            int value = code.ReadByte();
            value = value == 0xFE ? 0xFE00 | code.ReadByte() : value;
            switch (Operands[unchecked((short)value)])
            {
                case OperandType.InlineField or OperandType.InlineMethod or OperandType.InlineTok or OperandType.InlineType:
                    Add(MetadataTokens.EntityHandle(code.ReadInt32()));
                    break;
                case OperandType.InlineSwitch:
                    var targets = code.ReadInt32();
                    code.Offset += 4 * targets;
                    break;
                case OperandType.InlineI8 or OperandType.InlineR:
                    code.Offset += 8;
                    break;
                case OperandType.InlineVar:
                    code.Offset += 2;
                    break;
                case OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar:
                    code.Offset += 1;
                    break;
                case OperandType.InlineNone:
                    break;
                default:
                    code.Offset += 4;
                    break;
            }
        }
    }

    private void Add(EntityHandle handle)
    {
        if (handle.IsNil)
        {
            return;
        }

        switch (handle.Kind)
        {
            case HandleKind.TypeDefinition:
                _found.Add(NameOf((TypeDefinitionHandle)handle));
                break;
            case HandleKind.TypeReference:
                _found.Add(NameOf((TypeReferenceHandle)handle));
                break;
            case HandleKind.TypeSpecification:
                _reader.GetTypeSpecification((TypeSpecificationHandle)handle).DecodeSignature(_collector, null);
                break;
            case HandleKind.MethodDefinition:
                _found.Add(NameOf(_reader.GetMethodDefinition((MethodDefinitionHandle)handle).GetDeclaringType()));
                break;
            case HandleKind.FieldDefinition:
                _found.Add(NameOf(_reader.GetFieldDefinition((FieldDefinitionHandle)handle).GetDeclaringType()));
                break;
            case HandleKind.MemberReference:
                Add(_reader.GetMemberReference((MemberReferenceHandle)handle).Parent);
                break;
            case HandleKind.MethodSpecification:
                var generic = _reader.GetMethodSpecification((MethodSpecificationHandle)handle);
                Add(generic.Method);
                generic.DecodeSignature(_collector, null);
                break;
        }
    }

    private (string Namespace, string Name) NameOf(TypeDefinitionHandle handle)
    {
        var type = _reader.GetTypeDefinition(handle);
        return type.GetDeclaringType() is { IsNil: false } outer
            ? NameOf(outer)
            : (_reader.GetString(type.Namespace), _reader.GetString(type.Name));
    }

    private (string Namespace, string Name) NameOf(TypeReferenceHandle handle)
    {
        var type = _reader.GetTypeReference(handle);
        return type.ResolutionScope.Kind == HandleKind.TypeReference
            ? NameOf((TypeReferenceHandle)type.ResolutionScope)
            : (_reader.GetString(type.Namespace), _reader.GetString(type.Name));
    }

    /// <summary>Meets every type that a signature names.</summary>
    private sealed class Collector(UsedTypes owner) : ISignatureTypeProvider<int, object?>
    {
        public int GetTypeFromDefinition(MetadataReader reader, TypeDefinitionHandle handle, byte rawTypeKind) => Meet(handle);

        public int GetTypeFromReference(MetadataReader reader, TypeReferenceHandle handle, byte rawTypeKind) => Meet(handle);

        public int GetTypeFromSpecification(MetadataReader reader, object? genericContext, TypeSpecificationHandle handle, byte rawTypeKind) => Meet(handle);

        public int GetSZArrayType(int elementType) => 0;

        public int GetArrayType(int elementType, ArrayShape shape) => 0;

        public int GetByReferenceType(int elementType) => 0;

        public int GetPointerType(int elementType) => 0;

        public int GetPinnedType(int elementType) => 0;

        public int GetPrimitiveType(PrimitiveTypeCode typeCode) => 0;

        public int GetGenericInstantiation(int genericType, System.Collections.Immutable.ImmutableArray<int> typeArguments) => 0;

        public int GetGenericMethodParameter(object? genericContext, int index) => 0;

        public int GetGenericTypeParameter(object? genericContext, int index) => 0;

        public int GetModifiedType(int modifier, int unmodifiedType, bool isRequired) => 0;

        public int GetFunctionPointerType(MethodSignature<int> signature) => 0;

        private int Meet(EntityHandle handle)
        {
            owner.Add(handle);
            return 0;
        }
    }
}
