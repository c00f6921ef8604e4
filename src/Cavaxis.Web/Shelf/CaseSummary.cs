using System.Text;
using System.Text.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Web.Shelf;

/// <summary>What the list needs to know of a case whose values may still have faults.</summary>
/// <param name="Title">Title; empty where there is none.</param>
/// <param name="Invented">True where the case says so.</param>
internal sealed record CaseSummary(string Title, bool Invented)
{
    /// <summary>Largest text kept, bytes: that of the largest case file.</summary>
    public const int LargestBytes = Planning.Case.CaseFileReader.LargestFileBytes;

    private const int LongestTitle = 200;

    /// <summary>Reads the summary.</summary>
    /// <param name="json">The case as text.</param>
    /// <returns>Title and mark.</returns>
    /// <exception cref="InputFaultException">The text is no JSON object or too large.</exception>
    public static CaseSummary Of(string json)
    {
        if (Encoding.UTF8.GetByteCount(json) > LargestBytes)
        {
            throw Refused(FaultCode.FileTooLarge, "larger than 4 MiB", "at most 4 MiB", "Shorten the notes.");
        }

        try
        {
            using JsonDocument document = JsonDocument.Parse(json, new JsonDocumentOptions { AllowDuplicateProperties = false });
            JsonElement root = document.RootElement;
            if (root.ValueKind != JsonValueKind.Object)
            {
                throw Refused(FaultCode.WrongKind, "no JSON object", "an object in braces", "Put the case in braces: { … }.");
            }

            string title = root.TryGetProperty("title", out JsonElement named) && named.ValueKind == JsonValueKind.String ? named.GetString()! : string.Empty;
            bool invented = root.TryGetProperty("invented", out JsonElement mark) && mark.ValueKind == JsonValueKind.True;
            return new CaseSummary(title.Length > LongestTitle ? title[..LongestTitle] : title, invented);
        }
        catch (JsonException)
        {
            throw Refused(FaultCode.MalformedText, "not JSON", "JSON text (RFC 8259)", "Check commas, quotes and braces.");
        }
    }

    private static InputFaultException Refused(FaultCode code, string value, string accepted, string remedy) =>
        new(new InputFault(code, "case file", value, accepted, remedy));
}
