using System.Globalization;
using System.Text.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Catalogue;

/// <summary>
/// Reads the fields of one JSON object and notes every fault with its path instead of stopping at the first. A faulty field
/// yields a placeholder; nothing built from placeholders leaves the reader, because a single fault refuses the file.
/// </summary>
internal sealed class JsonFields
{
    private readonly Dictionary<string, JsonElement> values = new(StringComparer.Ordinal);
    private readonly string place;
    private readonly List<InputFault> faults;

    /// <summary>Opens an object and checks that it has only known fields, each once.</summary>
    internal JsonFields(JsonElement element, string place, List<InputFault> faults, params ReadOnlySpan<string> known)
    {
        this.place = place;
        this.faults = faults;
        if (element.ValueKind != JsonValueKind.Object)
        {
            faults.Add(new InputFault(FaultCode.WrongKind, Named(place), Found(element), "an object", "Put the fields in braces."));
            return;
        }

        IsObject = true;
        foreach (JsonProperty property in element.EnumerateObject())
        {
            if (!TryName(property, out string name))
            {
                faults.Add(new InputFault(FaultCode.MalformedText, Named(place), Found(property.Value), "field names of printable characters", "Correct the name of this field."));
                continue;
            }

            string path = Path(InputFault.Shown(name));
            if (!known.Contains(name))
            {
                faults.Add(new InputFault(
                    FaultCode.UnknownField, path, Found(property.Value), $"one of {string.Join(", ", known.ToArray())}", "Correct the name or take the field out."));
            }
            else if (!values.TryAdd(name, property.Value))
            {
                faults.Add(new InputFault(FaultCode.DuplicateField, path, Found(property.Value), "each field once", "Take one of the two out."));
            }
        }
    }

    /// <summary>False when there was no object to read; its fault has been noted.</summary>
    internal bool IsObject { get; }

    /// <summary>A number inside bounds, or null where it may be missing or null.</summary>
    internal double? OptionalNumber(string name, double low, double high) =>
        values.TryGetValue(name, out JsonElement element) && element.ValueKind != JsonValueKind.Null ? Number(name, low, high) : null;

    /// <summary>A number inside bounds.</summary>
    internal double Number(string name, double low, double high)
    {
        string accepted = string.Create(CultureInfo.InvariantCulture, $"a number from {low:G6} to {high:G6}");
        if (!Present(name, accepted, out JsonElement element))
        {
            return low;
        }

        if (element.ValueKind != JsonValueKind.Number)
        {
            Fault(FaultCode.WrongKind, name, element, accepted, "Give a bare number without quotes or unit.");
            return low;
        }

        if (!element.TryGetDouble(out double value) || !(value >= low && value <= high))
        {
            Fault(FaultCode.OutOfRange, name, element, accepted, "Check the value and its unit; the unit stands in the name of the field.");
            return low;
        }

        return value;
    }

    /// <summary>A whole number inside bounds.</summary>
    internal int Whole(string name, int low, int high)
    {
        double value = Number(name, low, high);
        if (value != Math.Floor(value))
        {
            Fault(FaultCode.WrongKind, name, values[name], "a whole number", "Give a whole number.");
            return low;
        }

        return (int)value;
    }

    /// <summary>A text of printable characters.</summary>
    internal string Text(string name, int longest)
    {
        string accepted = string.Create(CultureInfo.InvariantCulture, $"a text of 1 to {longest} printable characters");
        if (!Present(name, accepted, out JsonElement element))
        {
            return string.Empty;
        }

        if (element.ValueKind != JsonValueKind.String)
        {
            Fault(FaultCode.WrongKind, name, element, accepted, "Put the text in quotes.");
            return string.Empty;
        }

        if (!TryString(element, out string text) || text.Any(char.IsControl))
        {
            Fault(FaultCode.MalformedText, name, element, accepted, "Take out characters that cannot be printed.");
            return string.Empty;
        }

        if (text.Length > longest || string.IsNullOrWhiteSpace(text))
        {
            Fault(FaultCode.WrongLength, name, element, accepted, "Shorten or fill in the text.");
            return string.Empty;
        }

        return text;
    }

    /// <summary>An identifier: small letters, digits, dots and hyphens.</summary>
    internal string Identifier(string name)
    {
        string text = Text(name, DeviceIdentifier.Longest);
        if (text.Length > 0 && !DeviceIdentifier.IsValid(text))
        {
            Fault(FaultCode.NotAChoice, name, values[name], DeviceIdentifier.Accepted, "Write the identifier in small letters with hyphens.");
        }

        return text;
    }

    /// <summary>One of the words of an enumeration, in camel case.</summary>
    internal T Choice<T>(string name)
        where T : struct, Enum
    {
        string text = Text(name, 40);
        foreach (T value in Enum.GetValues<T>())
        {
            if (Word(value) == text)
            {
                return value;
            }
        }

        if (text.Length > 0)
        {
            string accepted = string.Join(", ", Enum.GetValues<T>().Select(Word));
            Fault(FaultCode.NotAChoice, name, values[name], $"one of {accepted}", "Choose one of the words.");
        }

        return default;
    }

    /// <summary>The items of a list.</summary>
    internal IReadOnlyList<T> List<T>(string name, int fewest, int most, Func<JsonElement, string, T> read)
    {
        string accepted = string.Create(CultureInfo.InvariantCulture, $"a list of {fewest} to {most}");
        if (!Present(name, accepted, out JsonElement element))
        {
            return [];
        }

        if (element.ValueKind != JsonValueKind.Array)
        {
            Fault(FaultCode.WrongKind, name, element, accepted, "Put the items in square brackets.");
            return [];
        }

        int count = element.GetArrayLength();
        if (count < fewest || count > most)
        {
            faults.Add(new InputFault(
                FaultCode.WrongLength, Path(name), string.Create(CultureInfo.InvariantCulture, $"{count} items"), accepted, "Add or take out items."));
            return [];
        }

        List<T> items = new(count);
        foreach (JsonElement item in element.EnumerateArray())
        {
            items.Add(read(item, string.Create(CultureInfo.InvariantCulture, $"{Path(name)}[{items.Count}]")));
        }

        return items;
    }

    /// <summary>A nested object, read by its own reader.</summary>
    internal T? Child<T>(string name, Func<JsonElement, string, T?> read)
        where T : class => Present(name, "an object", out JsonElement element) ? read(element, Path(name)) : null;

    /// <summary>A nested object that may be missing or null.</summary>
    internal T? OptionalChild<T>(string name, Func<JsonElement, string, T?> read)
        where T : class =>
        values.TryGetValue(name, out JsonElement element) && element.ValueKind != JsonValueKind.Null ? read(element, Path(name)) : null;

    /// <summary>The word of an enumeration value in the file.</summary>
    internal static string Word<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(value.ToString());

    private static bool TryString(JsonElement element, out string text)
    {
        try
        {
            text = element.GetString() ?? string.Empty;
            return true;
        }
        catch (InvalidOperationException)
        {
            // Half a surrogate pair written as an escape: valid JSON, no valid text.
            text = string.Empty;
            return false;
        }
    }

    private static bool TryName(JsonProperty property, out string name)
    {
        try
        {
            name = property.Name;
            return true;
        }
        catch (InvalidOperationException)
        {
            name = string.Empty;
            return false;
        }
    }

    private static string Named(string place) => place.Length == 0 ? "(the file)" : place;

    private static string Found(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.Undefined => "(nothing)",
        _ => InputFault.Shown(element.GetRawText()),
    };

    private bool Present(string name, string accepted, out JsonElement element)
    {
        if (!IsObject || values.TryGetValue(name, out element))
        {
            element = IsObject ? values[name] : default;
            return IsObject;
        }

        faults.Add(new InputFault(FaultCode.MissingField, Path(name), "(nothing)", accepted, "Add the field."));
        return false;
    }

    private string Path(string name) => place.Length == 0 ? name : $"{place}.{name}";

    private void Fault(FaultCode code, string name, JsonElement element, string accepted, string remedy) =>
        faults.Add(new InputFault(code, Path(name), Found(element), accepted, remedy));
}
