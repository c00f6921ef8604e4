using System.Reflection;
using System.Runtime.CompilerServices;
using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Json;

/// <summary>One field of an input record, read from its property and attributes.</summary>
public sealed record RecordField
{
    // Entries of a list of texts are identifiers.
    private const int LongestIdentifier = 100;

    /// <summary>Name in the file.</summary>
    public required string Name { get; init; }

    /// <summary>What it takes.</summary>
    public required FieldKind Kind { get; init; }

    /// <summary>The enum or record type; the type itself for the other kinds.</summary>
    public required Type Type { get; init; }

    /// <summary>True where the field must be there.</summary>
    public bool IsRequired { get; init; }

    /// <summary>True where "unknown" reads as nothing: null, or what the record starts with.</summary>
    public bool TakesUnknown { get; init; }

    /// <summary>Bounds and unit of a number; null for the other kinds.</summary>
    public NumberAttribute? Number { get; init; }

    /// <summary>Most characters of a text or entries of a list.</summary>
    public int Longest { get; init; }

    /// <summary>True where a text may not be empty.</summary>
    public bool NeedsContent { get; init; }

    /// <summary>What it means.</summary>
    public string? Meaning { get; init; }

    /// <summary>What the entries of a list are.</summary>
    public RecordField? Element { get; init; }

    /// <summary>The property it was read from; null for the entries of a list.</summary>
    public PropertyInfo? Property { get; init; }

    /// <summary>The words a word field takes, "unknown" included where it reads as nothing.</summary>
    public IReadOnlyList<string> Words =>
        [.. JsonName.WordsOf(Type), .. TakesUnknown && !JsonName.WordsOf(Type).Contains(JsonName.Unknown) ? [JsonName.Unknown] : Array.Empty<string>()];

    /// <summary>Reads a property.</summary>
    /// <param name="property">A settable property of an input record.</param>
    /// <returns>The field.</returns>
    /// <exception cref="InvalidOperationException">The property has a type or lacks an attribute that a case file cannot do with.</exception>
    public static RecordField Of(PropertyInfo property)
    {
        ArgumentNullException.ThrowIfNull(property);
        Type type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        bool optional = Nullable.GetUnderlyingType(property.PropertyType) is not null;
        bool required = property.IsDefined(typeof(RequiredMemberAttribute));
        int longest = property.GetCustomAttribute<TextAttribute>()?.Longest ?? 0;
        RecordField field = Of(type, property.Name) with
        {
            Name = JsonName.Of(property.Name),
            IsRequired = required,
            Number = property.GetCustomAttribute<NumberAttribute>(),
            Longest = longest,
            Meaning = property.GetCustomAttribute<MeaningAttribute>()?.Text ?? type.GetCustomAttribute<MeaningAttribute>()?.Text,
            Property = property,
        };
        bool numeric = field.Kind is FieldKind.Number or FieldKind.WholeNumber or FieldKind.Measurement;
        if (numeric != (field.Number is not null) || (field.Kind is FieldKind.Text or FieldKind.List) != (longest > 0))
        {
            throw new InvalidOperationException(
                $"{property.DeclaringType?.Name}.{property.Name} needs [Number] on a number and [Text] on a text or list, and on nothing else.");
        }

        return field with
        {
            TakesUnknown = !required && (optional || field.Kind is FieldKind.Measurement or FieldKind.Record or FieldKind.List),
        };
    }

    private static RecordField Of(Type type, string name)
    {
        RecordField field = new() { Name = name, Type = type, Kind = FieldKind.Record };
        if (type == typeof(bool))
        {
            return field with { Kind = FieldKind.Flag };
        }

        if (type == typeof(int))
        {
            return field with { Kind = FieldKind.WholeNumber };
        }

        if (type == typeof(double))
        {
            return field with { Kind = FieldKind.Number };
        }

        if (type == typeof(Measurement))
        {
            return field with { Kind = FieldKind.Measurement };
        }

        if (type == typeof(string))
        {
            return field with { Kind = FieldKind.Text };
        }

        if (type.IsEnum)
        {
            return field with { Kind = FieldKind.Word };
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
        {
            RecordField element = Of(type.GetGenericArguments()[0], name) with { NeedsContent = true, Longest = LongestIdentifier };
            return element.Kind is FieldKind.Record or FieldKind.Word or FieldKind.Text
                ? field with { Kind = FieldKind.List, Element = element }
                : throw new InvalidOperationException($"{name}: a list of {element.Type.Name} cannot stand in an input.");
        }

        return type.IsClass && type.GetConstructor(Type.EmptyTypes) is not null
            ? field
            : throw new InvalidOperationException($"{name}: {type.Name} cannot stand in an input.");
    }
}
