using System.Globalization;

namespace Cavaxis.Planning.Json;

/// <summary>What a field accepts, in words.</summary>
public static class AcceptedInput
{
    /// <summary>One phrase for faults and tables.</summary>
    /// <param name="field">The field.</param>
    public static string Of(RecordField field)
    {
        string core = field.Kind switch
        {
            FieldKind.Flag => "true or false",
            FieldKind.WholeNumber or FieldKind.Number or FieldKind.Measurement => NumberWords.Accepted(field.Number!),
            FieldKind.Text => string.Create(
                CultureInfo.InvariantCulture, $"a text of {(field.NeedsContent ? "1 to" : "at most")} {field.Longest} characters"),
            FieldKind.Word => $"one of {string.Join(", ", field.Words)}",
            FieldKind.Record => "an object in braces",
            FieldKind.List => string.Create(CultureInfo.InvariantCulture, $"a list of at most {field.Longest} {Entries(field.Element!)}"),
            _ => throw new InvalidOperationException($"{field.Kind} is not a kind of field."),
        };
        string withError = field.Kind == FieldKind.Measurement ? $"{core}, alone or as {{\"value\", \"sd\"}}" : core;
        return field.TakesUnknown && field.Kind != FieldKind.Word ? $"{withError}, or \"unknown\"" : withError;
    }

    private static string Entries(RecordField element) => element.Kind switch
    {
        FieldKind.Word => $"words out of {string.Join(", ", element.Words)}",
        FieldKind.Text => "texts",
        _ => "objects",
    };
}
