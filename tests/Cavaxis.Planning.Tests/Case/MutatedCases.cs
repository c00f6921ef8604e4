using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Cavaxis.Planning.Tests.Case;

/// <summary>
/// Broken case files, made from good ones by fixed rules: each must be refused with a fault, by the reader and by every
/// program that uses it. Depends on nothing but the base library, so that other test projects can link this file.
/// </summary>
public static class MutatedCases
{
    private static readonly string[] FreeTexts = ["title", "notes", "devicesOnHand"];

    /// <summary>All broken files; names are unique and stay the same from run to run.</summary>
    /// <param name="goodFiles">Paths of good case files.</param>
    public static IEnumerable<(string Name, byte[] Bytes)> All(IEnumerable<string> goodFiles)
    {
        foreach (string file in goodFiles)
        {
            string name = Path.GetFileNameWithoutExtension(file);
            byte[] good = File.ReadAllBytes(file);
            foreach ((string mutation, byte[] bytes) in Of(good))
            {
                yield return ($"{name}: {mutation}", bytes);
            }
        }

        foreach ((string mutation, byte[] bytes) in WithoutACase())
        {
            yield return (mutation, bytes);
        }
    }

    /// <summary>Broken files made from one good one.</summary>
    /// <param name="good">Bytes of a good case file.</param>
    public static IEnumerable<(string Name, byte[] Bytes)> Of(byte[] good) =>
        [.. Leaves(good), .. Sections(good), .. Truncated(good), .. Encodings(good), .. Texts(good), .. Noise(good)];

    private static IEnumerable<(string, byte[])> Leaves(byte[] good)
    {
        foreach (string path in LeafPaths(JsonNode.Parse(good)!))
        {
            bool isNumber = At(JsonNode.Parse(good)!, path) is JsonValue v && v.GetValueKind() == JsonValueKind.Number;
            bool isWord = !isNumber && At(JsonNode.Parse(good)!, path)!.GetValueKind() == JsonValueKind.String
                && !FreeTexts.Any(t => path.StartsWith(t, StringComparison.Ordinal)) && !path.EndsWith(".device", StringComparison.Ordinal);
            yield return ($"{path} null", Replaced(good, path, "null"));
            yield return ($"{path} list in list", Replaced(good, path, "[[7]]"));
            yield return ($"{path} odd object", Replaced(good, path, "{\"amount\":1}"));
            if (isNumber)
            {
                yield return ($"{path} quoted", Replaced(good, path, "\"12\""));
                yield return ($"{path} NaN", Replaced(good, path, "NaN"));
                yield return ($"{path} -Infinity", Replaced(good, path, "-Infinity"));
                yield return ($"{path} 1e999", Replaced(good, path, "1e999"));
                yield return ($"{path} negative", Replaced(good, path, "-1000000000"));
                yield return ($"{path} huge", Replaced(good, path, "1e300"));
                yield return ($"{path} decimal comma", Replaced(good, path, "1,5"));
                yield return ($"{path} leading zero", Replaced(good, path, "007"));
            }

            if (isWord)
            {
                yield return ($"{path} odd word", Replaced(good, path, "\"sideways\""));
                yield return ($"{path} empty word", Replaced(good, path, "\"\""));
                yield return ($"{path} true", Replaced(good, path, "true"));
                yield return ($"{path} 0", Replaced(good, path, "0"));
                yield return ($"{path} bare word", Replaced(good, path, "right"));
            }
        }
    }

    private static IEnumerable<(string, byte[])> Sections(byte[] good)
    {
        string[] required = ["cavaxisCase", "patient", "patient.ageYears", "patient.sex", "patient.heightCm", "patient.weightKg"];
        foreach (string path in required)
        {
            JsonNode root = JsonNode.Parse(good)!;
            string parent = path.Contains('.', StringComparison.Ordinal) ? path.Split('.')[0] : string.Empty;
            (parent.Length == 0 ? root : root[parent]!).AsObject().Remove(path.Split('.')[^1]);
            yield return ($"{path} missing", Bytes(root));
        }

        foreach (string section in JsonNode.Parse(good)!.AsObject().Select(static p => p.Key).ToList())
        {
            yield return ($"{section} renamed", Edited(good, root => Rename(root, section, section + "s")));
            yield return ($"{section} in capitals", Edited(good, root => Rename(root, section, section.ToUpperInvariant())));
            yield return ($"{section} twice", Encoding.UTF8.GetBytes(
                "{" + JsonSerializer.Serialize(section) + ":1," + Encoding.UTF8.GetString(good).TrimStart()[1..]));
        }

        yield return ("41 vessels", Edited(good, static root => root["vessels"] = new JsonArray(
            [.. Enumerable.Range(0, 41).Select(static _ => JsonNode.Parse("""{"vessel":"axillaryArtery","side":"left"}"""))])));
        yield return ("vessel twice", Edited(good, static root => root["vessels"] = JsonNode.Parse(
            """[{"vessel":"axillaryArtery","side":"left"},{"vessel":"axillaryArtery","side":"left"}]""")));
        yield return ("dimension twice", Edited(good, static root => root["axis"] = JsonNode.Parse(
            """[{"dimension":"svcLength","value":70},{"dimension":"svcLength","value":71}]""")));
        yield return ("edge of the other end", Edited(good, static root => root["axis"] = JsonNode.Parse(
            """[{"dimension":"atrialSpan","value":70,"superiorEdge":"eustachianRim"}]""")));
        yield return ("haematocrit against haemoglobin", Edited(good, static root => root["blood"] = JsonNode.Parse(
            """{"haemoglobinGPerDl":8,"haematocritPercent":60}""")));
        yield return ("version 2", Edited(good, static root => root["cavaxisCase"] = 2));
        yield return ("version 1.5", Edited(good, static root => root["cavaxisCase"] = 1.5));
        yield return ("version in quotes", Edited(good, static root => root["cavaxisCase"] = "1"));
        yield return ("adult of 60 cm", Edited(good, static root => (root["patient"]!["ageYears"], root["patient"]!["heightCm"]) = (40, 60)));
        yield return ("giant title", Edited(good, static root => root["title"] = new string('x', 1_000_000)));
        yield return ("title of 201 characters", Edited(good, static root => root["title"] = new string('x', 201)));
        yield return ("giant field name", Edited(good, static root => root[new string('n', 1_000_000)] = 1));
        yield return ("notes nested 17 deep", WithRaw(good, "notes", new string('[', 17) + new string(']', 17)));
        yield return ("notes nested 100 000 deep", WithRaw(good, "notes", new string('[', 100_000)));
        yield return ("30 000 fields", WithRaw(good, "notes", Fields(30_000)));
        yield return ("half a surrogate pair", WithRaw(good, "notes", "\"\\ud800\""));
        yield return ("escaped null character", WithRaw(good, "notes", "\"a\\u0000b\""));
        yield return ("number of 100 000 digits", WithRaw(good, "notes", new string('1', 100_000)));
        yield return ("not finite in an unknown field", WithRaw(good, "weight", "1e400"));
    }

    private static IEnumerable<(string, byte[])> Truncated(byte[] good)
    {
        int last = Array.LastIndexOf(good, (byte)'}');
        HashSet<int> cuts = [1, last];

        // After each kind of byte once: brace, bracket, quote, colon, comma, digit, letter, blank, line feed.
        foreach (IGrouping<char, int> kind in Enumerable.Range(1, last - 1).GroupBy(i => Kind(good[i - 1])))
        {
            cuts.UnionWith([kind.First(), kind.ElementAt(kind.Count() / 2), kind.Last()]);
        }

        return cuts.Order().Select(cut => (string.Create(CultureInfo.InvariantCulture, $"cut after {cut} bytes"), good[..cut]));
    }

    private static char Kind(byte b) => char.IsAsciiLetter((char)b) ? 'a' : char.IsAsciiDigit((char)b) ? '0' : (char)b;

    private static IEnumerable<(string, byte[])> Encodings(byte[] good)
    {
        string text = Encoding.UTF8.GetString(good);
        (string Name, Encoding Encoding)[] wide =
        [
            ("UTF-16 LE", new UnicodeEncoding(false, true)), ("UTF-16 BE", new UnicodeEncoding(true, true)),
            ("UTF-32 LE", new UTF32Encoding(false, true)), ("UTF-32 BE", new UTF32Encoding(true, true)),
        ];
        foreach ((string name, Encoding encoding) in wide)
        {
            yield return ($"{name} with mark", [.. encoding.GetPreamble(), .. encoding.GetBytes(text)]);
            yield return ($"{name} without mark", encoding.GetBytes(text));
        }

        int middle = Array.IndexOf(good, (byte)'"', good.Length / 2) + 1;
        yield return ("byte FF", [.. good[..middle], 0xFF, .. good[middle..]]);
        yield return ("overlong slash", [.. good[..middle], 0xC0, 0xAF, .. good[middle..]]);
        yield return ("encoded surrogate", [.. good[..middle], 0xED, 0xA0, 0x80, .. good[middle..]]);
        yield return ("half a character at the end", [.. good, 0xE2, 0x82]);
        yield return ("mark in the middle of a file", [.. good, 0xEF, 0xBB, 0xBF]);
        yield return ("null byte first", [0, .. good]);
        yield return ("null byte in a text", [.. good[..middle], 0, .. good[middle..]]);
        yield return ("null byte last", [.. good, 0]);
    }

    private static IEnumerable<(string, byte[])> Texts(byte[] good)
    {
        string text = Encoding.UTF8.GetString(good).TrimEnd();
        (string Name, string Text)[] texts =
        [
            ("braces as brackets", text.Replace('{', '[').Replace('}', ']')),
            ("brackets swapped", text.Replace('{', '\u0001').Replace('}', '{').Replace('\u0001', '}')),
            ("closing brace as bracket", text[..^1] + "]"),
            ("colons as equals", text.Replace("\": ", "\" = ", StringComparison.Ordinal)),
            ("commas as semicolons", text.Replace(',', ';')),
            ("commas lost", text.Replace(",\n", "\n", StringComparison.Ordinal)),
            ("single quotes", text.Replace('"', '\'')),
            ("curly quotes", text.Replace('"', '“')),
            ("no quotes", text.Replace("\"", string.Empty, StringComparison.Ordinal)),
            ("line comment", text.Insert(1, " // a case\n")),
            ("block comment", text.Insert(1, " /* a case */ ")),
            ("hash comment", "# a case\n" + text),
            ("trailing comma", text[..^1].TrimEnd() + ",\n}"),
            ("twice", text + "\n" + text),
            ("brace too many", text + "}"),
            ("text after the end", text + " end"),
            ("in a list", "[" + text + "]"),
            ("in quotes", JsonSerializer.Serialize(text)),
            ("line break in a text", text.Replace("\"title\": \"", "\"title\": \"a\n", StringComparison.Ordinal)),
            ("unknown escape", text.Replace("\"title\": \"", "\"title\": \"\\q", StringComparison.Ordinal)),
            ("blown up to 5 MiB", text + new string(' ', 5 * 1024 * 1024)),
        ];
        return texts.Select(static t => (t.Name, Encoding.UTF8.GetBytes(t.Text)));
    }

    // One byte of the good file replaced by a byte that its place cannot hold: outside a text no control byte may stand,
    // inside one neither, so that each of these files is broken whatever the place.
    private static IEnumerable<(string, byte[])> Noise(byte[] good)
    {
        ulong state = 0x9E3779B97F4A7C15;
        for (int i = 0; i < 12; i++)
        {
            byte[] bytes = [.. good];
            int at = (int)(Next(ref state) % (ulong)Array.LastIndexOf(good, (byte)'}'));
            bytes[at] = (byte)(1 + (Next(ref state) % 8));
            yield return (string.Create(CultureInfo.InvariantCulture, $"control byte {i} at {at}"), bytes);
        }
    }

    private static IEnumerable<(string, byte[])> WithoutACase()
    {
        string[] texts = ["", " \r\n\t", "null", "true", "42", "-", "\"case\"", "[]", "{}", "[{}]", "{\"a\":", "\uFEFF", "\uFEFF{}", "NaN", "<case/>", "cavaxisCase: 1", "{]", "{\"\":1}", "{\"a\" 1}", "\0", "[,]", "{,}"];
        foreach (string text in texts)
        {
            yield return ($"file of {JsonSerializer.Serialize(text)}", Encoding.UTF8.GetBytes(text));
        }

        yield return ("case with nothing", "{\"cavaxisCase\":1}"u8.ToArray());
        yield return ("4 MiB of [", Encoding.ASCII.GetBytes(new string('[', 4 * 1024 * 1024)));
        yield return ("4 MiB of nested objects", Encoding.ASCII.GetBytes(string.Concat(Enumerable.Repeat("{\"a\":", 800_000))));
        yield return ("4 MiB of {} in a list", Encoding.ASCII.GetBytes("[" + string.Concat(Enumerable.Repeat("{},", 1_390_000)) + "{}]"));
        yield return ("4 MiB of one text", Encoding.ASCII.GetBytes("\"" + new string('a', (4 * 1024 * 1024) - 2) + "\""));
        yield return ("4 MiB of quotes", Encoding.ASCII.GetBytes(new string('"', 4 * 1024 * 1024)));
        yield return ("4 MiB of zero bytes", new byte[4 * 1024 * 1024]);
        ulong state = 1;
        for (int i = 0; i < 20; i++)
        {
            byte[] bytes = new byte[1 + (i * 37)];
            for (int j = 0; j < bytes.Length; j++)
            {
                bytes[j] = (byte)Next(ref state);
            }

            yield return (string.Create(CultureInfo.InvariantCulture, $"{bytes.Length} random bytes"), bytes);
        }
    }

    // Marsaglia 2003, xorshift64 with shifts 13, 7, 17: enough for noise, the same everywhere.
    private static ulong Next(ref ulong state)
    {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        return state >> 11;
    }

    private static IEnumerable<string> LeafPaths(JsonNode node, string path = "") => node switch
    {
        JsonObject o => o.SelectMany(p => LeafPaths(p.Value!, path.Length == 0 ? p.Key : $"{path}.{p.Key}")),
        JsonArray a => a.SelectMany((item, i) => LeafPaths(item!, string.Create(CultureInfo.InvariantCulture, $"{path}.{i}"))),
        _ => [path],
    };

    private static JsonNode? At(JsonNode root, string path) => path.Split('.').Aggregate(
        (JsonNode?)root, static (node, step) => node is JsonArray list ? list[int.Parse(step, CultureInfo.InvariantCulture)] : node![step]);

    private static byte[] Replaced(byte[] good, string path, string raw)
    {
        const string Mark = "@@here@@";
        JsonNode root = JsonNode.Parse(good)!;
        At(root, path)!.ReplaceWith(Mark);
        return Encoding.UTF8.GetBytes(root.ToJsonString().Replace($"\"{Mark}\"", raw, StringComparison.Ordinal));
    }

    private static byte[] WithRaw(byte[] good, string field, string raw) => Encoding.UTF8.GetBytes(Encoding.UTF8
        .GetString(Edited(good, root => root[field] = "@@here@@")).Replace("\"@@here@@\"", raw, StringComparison.Ordinal));

    private static byte[] Edited(byte[] good, Action<JsonObject> edit)
    {
        JsonObject root = JsonNode.Parse(good)!.AsObject();
        edit(root);
        return Bytes(root);
    }

    private static byte[] Bytes(JsonNode root) => Encoding.UTF8.GetBytes(root.ToJsonString());

    private static void Rename(JsonObject root, string from, string to)
    {
        JsonNode? value = root[from];
        root.Remove(from);
        root[to] = value;
    }

    private static string Fields(int count)
    {
        IEnumerable<string> fields = Enumerable.Range(0, count).Select(static i => string.Create(CultureInfo.InvariantCulture, $"\"f{i}\":{i}"));
        return "{" + string.Join(',', fields) + "}";
    }
}
