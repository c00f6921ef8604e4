using System.Globalization;
using Cavaxis.Course.Events;
using Cavaxis.Planning.Json;

namespace Cavaxis.Web.Happenings;

/// <summary>The fields of a kind of event, so that everything the record takes can be typed and nothing is listed twice.</summary>
internal static class HappeningForm
{
    /// <summary>Fields that this program fills, and lists that have a form of their own.</summary>
    private static readonly HashSet<string> Ours = ["fileSha256", "isTakenIn", "intoCase", "import", "readings", "planEntry", "trialEntry", "complicationEntry", "caseEntry"];

    /// <summary>The fields.</summary>
    /// <param name="kind">Kind of event.</param>
    /// <param name="rows">How many rows each list of records is given; one where it is not named.</param>
    public static IReadOnlyList<HappeningField> Of(CourseEventKind kind, IReadOnlyDictionary<string, int>? rows = null) =>
        [.. Flat(RecordShape.Of(kind.Type), string.Empty, string.Empty, string.Empty, rows ?? new Dictionary<string, int>())];

    private static IEnumerable<HappeningField> Flat(RecordShape shape, string path, string label, string row, IReadOnlyDictionary<string, int> rows)
    {
        foreach (RecordField field in shape.Fields.Where(static f => !Ours.Contains(f.Name)))
        {
            string words = HappeningWords.Of(field.Property!.Name);
            string here = path + field.Name;
            switch (field.Kind)
            {
                case FieldKind.Record:
                    foreach (HappeningField inner in Flat(RecordShape.Of(field.Type), here + ".", $"{label}{words}: ", row, rows))
                    {
                        yield return inner;
                    }

                    break;
                case FieldKind.List when field.Element is { Kind: FieldKind.Record } element:
                    for (int i = 0; i < rows.GetValueOrDefault(field.Name, 1); i++)
                    {
                        string at = string.Create(CultureInfo.InvariantCulture, $"{here}[{i}]");
                        string said = string.Create(CultureInfo.InvariantCulture, $"{words} {i + 1}: ");
                        foreach (HappeningField inner in Flat(RecordShape.Of(element.Type), at + ".", label + said, at, rows))
                        {
                            yield return inner;
                        }
                    }

                    break;
                case FieldKind.List:
                    break;
                default:
                    yield return new HappeningField(here, field, label.Length > 0 ? label + char.ToLowerInvariant(words[0]) + words[1..] : words, row);
                    break;
            }
        }
    }
}
