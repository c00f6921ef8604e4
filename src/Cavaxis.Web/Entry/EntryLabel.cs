using Cavaxis.Planning.Json;

namespace Cavaxis.Web.Entry;

/// <summary>Takes the name of a field and what is said beside it out of its meaning, so that screen, schema and faults say the same.</summary>
internal static class EntryLabel
{
    /// <summary>Splits a meaning such as "Haematocrit, percent; taken as three times the haemoglobin when left out."</summary>
    /// <param name="field">The field.</param>
    /// <returns>"Haematocrit" and "taken as three times the haemoglobin when left out".</returns>
    public static (string Label, string Beside) Of(RecordField field)
    {
        string meaning = (field.Meaning ?? field.Name).TrimEnd('.');
        string[] parts = meaning.Split(';', 2, StringSplitOptions.TrimEntries);
        string label = parts[0];
        int comma = label.LastIndexOf(", ", StringComparison.Ordinal);
        if (field.Number is not null && comma > 0)
        {
            label = label[..comma];
        }

        return (label, parts.Length > 1 ? parts[1] : string.Empty);
    }

    /// <summary>What is accepted, with the error that is taken when none is written.</summary>
    /// <param name="field">The field.</param>
    /// <param name="beside">What its meaning says beside the name.</param>
    /// <returns>One line.</returns>
    public static string Hint(RecordField field, string beside)
    {
        List<string> parts = [];
        if (field.Number is { } number)
        {
            parts.Add(NumberWords.Range(number));
            if (field.Kind == FieldKind.Measurement)
            {
                parts.Add($"error ± {NumberWords.Of(number.UsualSd)} unless you write one");
            }
        }

        if (beside.Length > 0)
        {
            parts.Add(beside);
        }

        return string.Join("; ", parts);
    }
}
