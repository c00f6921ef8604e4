using Cavaxis.Planning.Json;

namespace Cavaxis.Web.Entry;

/// <summary>One field of the entry, read from the record that the case reader fills.</summary>
/// <param name="Path">Its path in the case.</param>
/// <param name="Shape">Kind, bounds, words and meaning.</param>
/// <param name="Label">Its name for people, from the meaning.</param>
/// <param name="Unit">Its unit as it is written at the bedside; empty for none.</param>
/// <param name="Hint">What is accepted, and what is taken when it is left out.</param>
public sealed record EntryField(string Path, RecordField Shape, string Label, string Unit, string Hint)
{
    /// <summary>Answers that are offered; empty where the field is typed or has its own words.</summary>
    public IReadOnlyList<EntryChoice> Choices { get; init; } = [];

    /// <summary>Path of the word that names the entry this field lies in: its faults are told at this field. Null for none.</summary>
    public string? NamedBy { get; init; }

    /// <summary>Identifier of its element on the page.</summary>
    public string ElementId => "f-" + string.Concat(Path.Select(static c => char.IsAsciiLetterOrDigit(c) ? c : '-'));

    /// <summary>True for what is typed as a number.</summary>
    public bool IsNumber => Shape.Kind is FieldKind.Number or FieldKind.WholeNumber or FieldKind.Measurement;

    /// <summary>True where "not known" can be answered.</summary>
    public bool TakesUnknown => Shape.TakesUnknown || (Shape.Kind == FieldKind.Word && Shape.Words.Contains(JsonName.Unknown));
}
