using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Cavaxis.Bedside.DeIdentification;

/// <summary>
/// Takes identity out of JSON: fields that name someone are dropped, moments become minutes from the start of support, ages above 89 are grouped, numbers with seven and more digits are
/// dropped, words of the program's own vocabulary stay, and every other text is free text, which stays only where a person confirmed it. What it does not know, it takes out.
/// </summary>
/// <param name="start">Start of support.</param>
/// <param name="confirmed">Codes of the free texts that a person confirmed.</param>
/// <param name="identity">What must stand in no text.</param>
public sealed partial class JsonCleaner(DateTimeOffset start, IReadOnlySet<string> confirmed, KnownIdentity identity)
{
    private const double OldestTold = 89;
    private const double LargestNumber = 999_999;
    private const string CaseText = "caseText";

    /// <summary>Fields dropped whatever they hold.</summary>
    private static readonly HashSet<string> Names = new(StringComparer.OrdinalIgnoreCase)
    {
        "name", "firstName", "lastName", "givenName", "familyName", "surname", "initials", "mrn", "caseNumber", "recordNumber", "identifier", "patient", "patientId", "patientName", "label", "title",
        "birthDate", "dateOfBirth", "birthYear", "yearOfBirth", "address", "street", "city", "postcode", "zip", "phone", "telephone", "email", "programme", "hospital", "ward", "bed", "who", "by", "operator",
        "person", "confirmedBy", "secondPerson", "answeredBy", "askedOf", "author", "image", "intoCase", "import", "file", "fileName", "path", "host", "serial", "serialNumber", "lot", "insurance",
    };

    private static readonly HashSet<string> Ages = new(StringComparer.OrdinalIgnoreCase) { "age", "ageYears" };

    private readonly List<TakenOut> takenOut = [];
    private readonly List<FreeText> freeTexts = [];
    private readonly Dictionary<string, string> cannulae = new(StringComparer.Ordinal);

    /// <summary>What was taken out so far.</summary>
    public IReadOnlyList<TakenOut> TakenOut => takenOut;

    /// <summary>Free texts found so far, confirmed or not.</summary>
    public IReadOnlyList<FreeText> FreeTexts => freeTexts;

    /// <summary>The code of a free text.</summary>
    /// <param name="place">Where it stands.</param>
    /// <param name="text">The text.</param>
    /// <returns>Eight digits.</returns>
    public static string CodeOf(string place, string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{place}\n{text}")))[..8];

    /// <summary>Cleans an object.</summary>
    /// <param name="json">The object, UTF-8.</param>
    /// <param name="place">Where it stands, for what is told.</param>
    /// <returns>A new object.</returns>
    public JsonObject Clean(ReadOnlyMemory<byte> json, string place)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return (JsonObject)Cleaned(document.RootElement, place, string.Empty)!;
    }

    private JsonNode? Cleaned(JsonElement element, string place, string field)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                JsonObject target = [];
                foreach (JsonProperty property in element.EnumerateObject())
                {
                    string below = $"{place}/{(FieldForm().IsMatch(property.Name) ? property.Name : "(field)")}";
                    if ((Names.Contains(property.Name) && !IsPatientOfCase(property)) || !FieldForm().IsMatch(property.Name))
                    {
                        if (property.Value.ValueKind != JsonValueKind.Null)
                        {
                            takenOut.Add(new TakenOut(below, "names or points to someone"));
                        }
                    }
                    else if (Cleaned(property.Value, below, property.Name) is JsonNode kept)
                    {
                        target[property.Name] = kept;
                    }
                }

                return target;
            case JsonValueKind.Array:
                JsonArray list = [];
                int at = 0;
                foreach (JsonElement item in element.EnumerateArray())
                {
                    if (Cleaned(item, string.Create(CultureInfo.InvariantCulture, $"{place}/{++at}"), field) is JsonNode kept)
                    {
                        list.Add(kept);
                    }
                }

                return list;
            case JsonValueKind.String:
                return OfText(element.GetString()!, place, field);
            case JsonValueKind.Number:
                return OfNumber(element, place, field);
            case JsonValueKind.True or JsonValueKind.False:
                return JsonValue.Create(element.GetBoolean());
            default:
                return null;
        }
    }

    /// <summary>Age, sex, height and weight stand in a part of the case that is called so; without them no one can judge a plan. It is gone through field by field, as any other.</summary>
    private static bool IsPatientOfCase(JsonProperty property) => property.Name == "patient" && property.Value.ValueKind == JsonValueKind.Object;

    private JsonValue? OfNumber(JsonElement element, string place, string field)
    {
        double value = element.GetDouble();
        if (Ages.Contains(field) && value > OldestTold)
        {
            takenOut.Add(new TakenOut(place, "an age above 89, told as 90 or older"));
            return JsonValue.Create("90 or older");
        }

        if (Math.Abs(value) > LargestNumber || !double.IsFinite(value))
        {
            takenOut.Add(new TakenOut(place, "a number of seven or more digits"));
            return null;
        }

        return JsonValue.Create(value);
    }

    private JsonNode? OfText(string text, string place, string field)
    {
        if (text.Length == 0 || KnownWords.Contains(text))
        {
            return JsonValue.Create(text);
        }

        if (field == "cannula")
        {
            // A name that the team gave; what matters is which cannula is the same as which.
            string other = cannulae.TryGetValue(text, out string? known) ? known : cannulae[text] = string.Create(CultureInfo.InvariantCulture, $"cannula {cannulae.Count + 1}");
            return JsonValue.Create(other);
        }

        if (Moment().IsMatch(text) && DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset time))
        {
            takenOut.Add(new TakenOut(place, "a moment, told from the start of support"));
            return JsonValue.Create(text.Length == 10
                ? string.Create(CultureInfo.InvariantCulture, $"day {(time.UtcDateTime.Date - start.UtcDateTime.Date).TotalDays:+0;-0;0} from the start of support")
                : string.Create(CultureInfo.InvariantCulture, $"{Math.Floor((time - start).TotalMinutes):+0;-0;0} min from the start of support"));
        }

        return field == CaseText && Parsed(text) is JsonDocument document ? OfCase(document, place) : OfFreeText(text, place);
    }

    private JsonNode? OfCase(JsonDocument document, string place)
    {
        using (document)
        {
            return Cleaned(document.RootElement, place, string.Empty);
        }
    }

    private JsonValue? OfFreeText(string text, string place)
    {
        FreeText free = new(CodeOf(place, text), place, text);
        freeTexts.Add(free);
        if (!confirmed.Contains(free.Code))
        {
            takenOut.Add(new TakenOut(place, "a text that no one confirmed"));
            return null;
        }

        if (identity.FoundIn(text) is string found)
        {
            takenOut.Add(new TakenOut(place, $"a text that was confirmed but holds {found}"));
            return null;
        }

        return JsonValue.Create(text);
    }

    private static JsonDocument? Parsed(string text)
    {
        try
        {
            return text.AsSpan().TrimStart().StartsWith("{") ? JsonDocument.Parse(text) : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    [GeneratedRegex(@"\A[a-z][A-Za-z0-9]{0,63}\z", RegexOptions.CultureInvariant)]
    private static partial Regex FieldForm();

    [GeneratedRegex(@"\A\d{4}-\d{2}-\d{2}(T\d{2}:\d{2}(:\d{2}(\.\d{1,7})?)?(Z|[+-]\d{2}:\d{2})?)?\z", RegexOptions.CultureInvariant)]
    private static partial Regex Moment();
}
