using System.Text;
using System.Text.Json.Nodes;
using Cavaxis.Course.Events;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;
using Cavaxis.Web.Entry;

namespace Cavaxis.Web.Happenings;

/// <summary>What is being typed about something that happened. The record's own reader says what is wrong with it.</summary>
internal sealed class HappeningDraft
{
    private readonly Dictionary<string, string> typed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> given = new(StringComparer.Ordinal);

    /// <summary>The text of a field.</summary>
    internal string this[string path]
    {
        get => typed.GetValueOrDefault(path, string.Empty);
        set => typed[path] = value;
    }

    /// <summary>Empties every field and fills those that are known beforehand.</summary>
    /// <param name="known">Text of fields by path.</param>
    public void Begin(IReadOnlyDictionary<string, string>? known)
    {
        typed.Clear();
        given.Clear();
        foreach ((string path, string text) in known ?? new Dictionary<string, string>())
        {
            typed[path] = text;
            given[path] = text;
        }
    }

    /// <summary>The event, or what is wrong with what was typed; a row in which nothing was typed beside what stood there is left out.</summary>
    /// <param name="kind">Kind of event.</param>
    /// <param name="fields">Its fields.</param>
    /// <param name="ours">What this program knows and nobody types.</param>
    public (CourseEvent? Event, IReadOnlyList<InputFault> Faults) Read(CourseEventKind kind, IReadOnlyList<HappeningField> fields, JsonObject? ours = null)
    {
        JsonObject root = ours is null ? [] : (JsonObject)ours.DeepClone();
        Dictionary<string, string> labels = new(StringComparer.Ordinal);
        Dictionary<string, int> rows = new(StringComparer.Ordinal);
        foreach (IGrouping<string, HappeningField> row in fields.GroupBy(static f => f.Row))
        {
            if (row.Key.Length > 0 && row.All(f => this[f.Path].Trim() == given.GetValueOrDefault(f.Path, string.Empty).Trim()))
            {
                continue;
            }

            string list = row.Key.Split('[')[0];
            int number = row.Key.Length > 0 ? rows[list] = rows.GetValueOrDefault(list, -1) + 1 : 0;
            foreach (HappeningField field in row)
            {
                string path = row.Key.Length > 0 ? FormattableString.Invariant($"{list}[{number}]{field.Path[row.Key.Length..]}") : field.Path;
                labels[path] = field.Label;
                if (NodeOf(field, this[field.Path]) is JsonNode node)
                {
                    Put(root, path, node);
                }
            }
        }

        try
        {
            return (CourseEventJson.Read(kind.Text, Encoding.UTF8.GetBytes(root.ToJsonString())), []);
        }
        catch (InputFaultException fault)
        {
            return (null, [.. fault.Faults.Select(f => f with { Field = labels.GetValueOrDefault(f.Field, f.Field), Line = null, Column = null })]);
        }
    }

    private static JsonNode? NodeOf(HappeningField field, string text) => string.IsNullOrWhiteSpace(text) ? null : field.Shape.Kind switch
    {
        FieldKind.Number or FieldKind.WholeNumber => TypedNumber.Read(text, field.Unit, withError: false),
        FieldKind.Flag => JsonValue.Create(text == "yes"),
        _ => JsonValue.Create(text.Trim()),
    };

    private static void Put(JsonObject root, string path, JsonNode node)
    {
        string[] parts = path.Split('.');
        JsonObject at = root;
        foreach (string part in parts[..^1])
        {
            int bracket = part.IndexOf('[', StringComparison.Ordinal);
            string name = bracket < 0 ? part : part[..bracket];
            if (bracket < 0)
            {
                at = (JsonObject)(at[name] ??= new JsonObject());
                continue;
            }

            // Rows come in their order: a row that is not there yet is the next.
            JsonArray list = (JsonArray)(at[name] ??= new JsonArray());
            int row = int.Parse(part[(bracket + 1)..^1], System.Globalization.CultureInfo.InvariantCulture);
            if (row == list.Count)
            {
                list.Add(new JsonObject());
            }

            at = (JsonObject)list[row]!;
        }

        at[parts[^1]] = node;
    }
}
