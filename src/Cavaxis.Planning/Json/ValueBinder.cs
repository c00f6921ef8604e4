using System.Globalization;
using System.Text;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Json;

/// <summary>Turns positioned values into the values of an input record.</summary>
/// <param name="ledger">Takes the faults and the places.</param>
internal sealed class ValueBinder(FaultLedger ledger)
{
    private readonly NumberBinder _numbers = new(ledger);

    /// <summary>Fills one record.</summary>
    /// <param name="shape">Its fields.</param>
    /// <param name="value">Where it stands.</param>
    /// <param name="path">Path of the record, empty for the outermost.</param>
    public object Record(RecordShape shape, PositionedValue value, string path) => Record(shape, null, value, path);

    private object Record(RecordShape shape, RecordField? field, PositionedValue value, string path)
    {
        object record = Activator.CreateInstance(shape.Type)!;
        if (value.Kind != JsonKind.Object)
        {
            WrongKind(field, value, path, "Put the fields in braces: { … }.");
            return record;
        }

        HashSet<string> given = new(StringComparer.Ordinal);
        foreach (PositionedMember member in value.Members)
        {
            string at = Join(path, member.Name);
            if (shape.Find(member.Name) is not RecordField known)
            {
                UnknownField(shape, member, at);
                continue;
            }

            given.Add(member.Name);
            ledger.Place(at, member.Value.Place);
            if (Value(known, member.Value, at) is object bound)
            {
                known.Property!.SetValue(record, bound);
            }
        }

        foreach (RecordField missing in shape.Fields.Where(f => f.IsRequired && !given.Contains(f.Name)))
        {
            ledger.Add(
                FaultCode.MissingField, Join(path, missing.Name), string.Empty, AcceptedInput.Of(missing),
                $"Add the field \"{missing.Name}\"{(missing.Meaning is null ? "." : ": " + missing.Meaning)}", value.Place);
        }

        return record;
    }

    private object? Value(RecordField field, PositionedValue value, string path)
    {
        if (value.IsFaulty || (field.TakesUnknown && value is { Kind: JsonKind.Text, Text: JsonName.Unknown }))
        {
            return null;
        }

        return field.Kind switch
        {
            FieldKind.Flag => (object?)Flag(field, value, path),
            FieldKind.Text => Text(field, value, path),
            FieldKind.Word => Word(field, value, path),
            FieldKind.Record => Record(RecordShape.Of(field.Type), field, value, path),
            FieldKind.List => List(field, value, path),
            FieldKind.WholeNumber => _numbers.Whole(field, value, path),
            FieldKind.Number => _numbers.Number(field, value, path),
            FieldKind.Measurement => _numbers.Measurement(field, value, path),
            _ => throw new InvalidOperationException($"{field.Kind} is not a kind of field."),
        };
    }

    private bool? Flag(RecordField field, PositionedValue value, string path)
    {
        if (value.Kind == JsonKind.Flag)
        {
            return value.Flag;
        }

        WrongKind(field, value, path, "Write true or false without quotes.");
        return null;
    }

    private string? Text(RecordField field, PositionedValue value, string path)
    {
        if (value.Kind != JsonKind.Text)
        {
            WrongKind(field, value, path, "Put the text in double quotes, or leave the field out.");
            return null;
        }

        int characters = value.Text.EnumerateRunes().Count();
        if (characters > field.Longest || (field.NeedsContent && characters == 0))
        {
            ledger.Add(
                FaultCode.WrongLength, path,
                string.Create(CultureInfo.InvariantCulture, $"{value.Shown}, {characters} characters"), AcceptedInput.Of(field),
                characters == 0 ? "Write the text or remove the entry." : "Shorten the text.", value.Place);
            return null;
        }

        if (value.Text.EnumerateRunes().Any(static r => Rune.IsControl(r) && r.Value is not ('\n' or '\r' or '\t')))
        {
            ledger.Add(
                FaultCode.WrongKind, path, value.Shown, "text without control characters",
                "Remove the control characters; line breaks and tabs may stay.", value.Place);
            return null;
        }

        return value.Text;
    }

    private object? Word(RecordField field, PositionedValue value, string path)
    {
        if (value.Kind != JsonKind.Text)
        {
            WrongKind(field, value, path, "Put one of the words in double quotes.");
            return null;
        }

        int index = JsonName.WordsOf(field.Type).ToList().IndexOf(value.Text);
        if (index >= 0)
        {
            return Enum.Parse(field.Type, Enum.GetNames(field.Type)[index]);
        }

        string? closest = ClosestWord.To(value.Text, field.Words);
        ledger.Add(
            FaultCode.NotAChoice, path, value.Shown, AcceptedInput.Of(field),
            closest is null ? "Use one of the words, written exactly so." : $"Did you mean \"{closest}\"?", value.Place);
        return null;
    }

    private Array? List(RecordField field, PositionedValue value, string path)
    {
        if (value.Kind != JsonKind.List)
        {
            WrongKind(field, value, path, "Put the entries in square brackets: [ … ].");
            return null;
        }

        if (value.Items.Count > field.Longest)
        {
            ledger.Add(
                FaultCode.WrongLength, path, value.Shown, AcceptedInput.Of(field), "Remove entries.", value.Place);
        }

        RecordField element = field.Element!;
        Array list = Array.CreateInstance(element.Type, Math.Min(value.Items.Count, field.Longest));
        for (int i = 0; i < list.Length; i++)
        {
            string at = string.Create(CultureInfo.InvariantCulture, $"{path}[{i}]");
            ledger.Place(at, value.Items[i].Place);
            if (Value(element, value.Items[i], at) is object bound)
            {
                list.SetValue(bound, i);
            }
        }

        return list;
    }

    private void UnknownField(RecordShape shape, PositionedMember member, string path)
    {
        IEnumerable<string> names = shape.Fields.Select(static f => f.Name);
        string? closest = ClosestWord.To(member.Name, names);
        ledger.Add(
            FaultCode.UnknownField, path, member.Value.Shown, $"one of the fields {string.Join(", ", names)}",
            closest is null ? "Remove the field, or move it to the section it belongs to." : $"Did you mean \"{closest}\"?", member.Place);
    }

    private void WrongKind(RecordField? field, PositionedValue value, string path, string remedy) => ledger.Add(
        FaultCode.WrongKind, path, value.Shown, field is null ? "an object in braces" : AcceptedInput.Of(field),
        value.Kind == JsonKind.Null ? NullRemedy(field) : remedy, value.Place);

    private static string NullRemedy(RecordField? field) => field switch
    {
        null => "Write the object.",
        { TakesUnknown: true } => "Write \"unknown\" or leave the field out.",
        { Kind: FieldKind.Word } when field.Words.Contains(JsonName.Unknown) => "Write \"unknown\" or leave the field out.",
        { IsRequired: true } => "This field is needed; write its value.",
        _ => "Leave the field out.",
    };

    private static string Join(string path, string name) => path.Length == 0 ? name : $"{path}.{name}";
}
