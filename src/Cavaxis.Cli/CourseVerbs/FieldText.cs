using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>Sets fields of an entry by their path. What the entry may hold is decided when it is read back.</summary>
internal static class FieldText
{
    private const string Option = "--set";
    private static readonly JsonDocumentOptions Flat = new() { MaxDepth = 8 };

    /// <summary>Sets fields.</summary>
    /// <param name="entry">The entry; it is changed.</param>
    /// <param name="sets">FIELD=VALUE each; a value that is JSON is taken as such, and any other as text.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="InputFaultException">No such place, or no value.</exception>
    public static JsonObject Set(JsonObject entry, IReadOnlyList<string> sets)
    {
        foreach (string set in sets)
        {
            string[] parts = set.Split('=', 2);
            if (parts.Length != 2 || parts[0].Length == 0)
            {
                throw OptionText.Wrong(Option, set, "FIELD=VALUE", "Write it such as depthCm=23.", FaultCode.MalformedText);
            }

            Put(entry, parts[0].Trim(), Value(parts[1].Trim()), set);
        }

        return entry;
    }

    private static void Put(JsonObject entry, string path, JsonNode? value, string set)
    {
        string[] names = path.Replace("[", ".[", StringComparison.Ordinal).Split('.', StringSplitOptions.RemoveEmptyEntries);
        JsonNode? at = entry;
        foreach (string name in names[..^1])
        {
            at = at switch
            {
                JsonObject parent when !IsPlace(name) => parent[name],
                JsonArray list when Place(name, list) is int place => list[place],
                _ => null,
            } ?? throw NoPlace(set);
        }

        switch (at)
        {
            case JsonObject parent when !IsPlace(names[^1]) && value is null:
                parent.Remove(names[^1]);
                break;
            case JsonObject parent when !IsPlace(names[^1]):
                parent[names[^1]] = value;
                break;
            case JsonArray list when Place(names[^1], list) is int place:
                list[place] = value;
                break;
            default:
                throw NoPlace(set);
        }
    }

    private static bool IsPlace(string name) => name.StartsWith('[');

    private static int? Place(string name, JsonArray list) =>
        IsPlace(name) && name.EndsWith(']') && int.TryParse(name.AsSpan(1, name.Length - 2), NumberStyles.None, CultureInfo.InvariantCulture, out int place) && place < list.Count ? place : null;

    private static InputFaultException NoPlace(string set) =>
        OptionText.Wrong(Option, set, "a field that the entry has", "`course show --json` shows the fields of every entry.", FaultCode.UnknownField);

    private static JsonNode? Value(string text)
    {
        try
        {
            return JsonNode.Parse(text, null, Flat);
        }
        catch (JsonException)
        {
            return JsonValue.Create(text);
        }
    }
}
