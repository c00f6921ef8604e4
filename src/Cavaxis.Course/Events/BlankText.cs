using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Events;

/// <summary>A text that is there says something: blanks alone are a slip of the hand.</summary>
internal static class BlankText
{
    /// <summary>Records every text of an event, however deep, that holds nothing but blanks.</summary>
    /// <param name="happened">An event whose fields are in order.</param>
    /// <param name="ledger">Takes the faults.</param>
    public static void Check(CourseEvent happened, FaultLedger ledger) => Check(happened, string.Empty, ledger);

    private static void Check(object record, string path, FaultLedger ledger)
    {
        foreach (RecordField field in RecordShape.Of(record.GetType()).Fields)
        {
            string at = path.Length == 0 ? field.Name : $"{path}.{field.Name}";
            switch (field.Property!.GetValue(record))
            {
                case string text when string.IsNullOrWhiteSpace(text):
                    ledger.Add(
                        FaultCode.WrongLength, at, "blank", "a text that says something", field.IsRequired ? "Write the text." : "Write the text or leave the field out.", ledger.PlaceOf(at));
                    break;
                case object part when field.Kind == FieldKind.Record:
                    Check(part, at, ledger);
                    break;
                case System.Collections.IEnumerable parts when field is { Kind: FieldKind.List, Element.Kind: FieldKind.Record }:
                    int i = 0;
                    foreach (object one in parts)
                    {
                        Check(one, FormattableString.Invariant($"{at}[{i++}]"), ledger);
                    }

                    break;
                default:
                    break;
            }
        }
    }
}
