using System.Collections.Concurrent;
using System.Reflection;
using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Json;

/// <summary>The fields of an input record type, in the order written; read once a type.</summary>
public sealed class RecordShape
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

    /// <summary>The record type.</summary>
    public Type Type { get; }

    /// <summary>What the record means; null where it does not say.</summary>
    public string? Meaning { get; }

    /// <summary>Its fields in the order written.</summary>
    public IReadOnlyList<RecordField> Fields { get; }

    /// <summary>The shape of a record type.</summary>
    /// <param name="type">An input record.</param>
    /// <returns>Its shape.</returns>
    /// <exception cref="InvalidOperationException">The record has a property that an input cannot have.</exception>
    public static RecordShape Of(Type type) => Known.GetOrAdd(type, static t => new RecordShape(t));

    /// <summary>A field by its name in the file.</summary>
    /// <param name="name">Name.</param>
    /// <returns>The field; null where there is none.</returns>
    public RecordField? Find(string name) => _byName.GetValueOrDefault(name);
}
