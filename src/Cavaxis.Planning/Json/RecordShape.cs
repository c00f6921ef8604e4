using System.Collections.Concurrent;
using System.Reflection;
using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Json;

/// <summary>The fields of an input record type, in the order written; read once a type.</summary>
internal sealed class RecordShape
{
    private static readonly ConcurrentDictionary<Type, RecordShape> Known = new();

    private readonly Dictionary<string, RecordField> _byName;

    private RecordShape(Type type)
    {
        Type = type;
        Meaning = type.GetCustomAttribute<MeaningAttribute>()?.Text;
        Fields = [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(static p => p.SetMethod is { IsPublic: true })
            .OrderBy(static p => p.MetadataToken)
            .Select(RecordField.Of)];
        _byName = Fields.ToDictionary(static f => f.Name, StringComparer.Ordinal);
    }

    public Type Type { get; }

    public string? Meaning { get; }

    public IReadOnlyList<RecordField> Fields { get; }

    public static RecordShape Of(Type type) => Known.GetOrAdd(type, static t => new RecordShape(t));

    public RecordField? Find(string name) => _byName.GetValueOrDefault(name);
}
