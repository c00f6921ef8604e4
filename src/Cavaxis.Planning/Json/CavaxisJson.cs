using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Cavaxis.Planning.Json;

/// <summary>How every result is written as JSON: the same bytes for the same result on every machine.</summary>
public static class CavaxisJson
{
    /// <summary>
    /// camelCase names, enums as camelCase words, two blanks of indent, line feeds, nulls written, letters beyond ASCII not
    /// escaped. NaN and infinity are refused with an <see cref="ArgumentException"/>. Read-only; for files and terminals,
    /// not for embedding in HTML (angle brackets stay as they are).
    /// </summary>
    public static JsonSerializerOptions Options { get; } = Create();

    private static JsonSerializerOptions Create()
    {
        JsonSerializerOptions options = new()
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            WriteIndented = true,
            IndentSize = 2,
            NewLine = "\n",
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            NumberHandling = JsonNumberHandling.Strict,
            DefaultIgnoreCondition = JsonIgnoreCondition.Never,
            Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false) },
        };
        options.MakeReadOnly(populateMissingResolver: true);
        return options;
    }
}
