using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Bedside.Packs;

/// <summary>A pack as a report: what is asked, the course in order, what was taken out.</summary>
public static class PackReport
{
    private const string Caution =
        "De-identified course of one patient under extracorporeal support, given for a second opinion. Supports trained clinicians; no certified medical device; defers to imaging, instructions for use, local protocol and licensed practice.";

    private static readonly JsonSerializerOptions Shown = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The report.</summary>
    /// <param name="pack">The pack.</param>
    /// <returns>The document, for HTML and PDF.</returns>
    public static ReportDocument Of(PackContents pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        List<ReportBlock> blocks =
        [
            new Heading(2, "What is asked"),
            new Paragraph(pack.Question),
            new Heading(2, "Course"),
            new Table(
                "Events, times from the start of support", [new("time", ColumnAlign.Right), new("what"), new("particulars")],
                [.. pack.Entries.Select(static e => (IReadOnlyList<string>)[TimeOf(e.MinutesFromStart), e.Kind, Words(e.Payload)])]),
        ];
        if (pack.Attachments.Count > 0)
        {
            blocks.AddRange([new Heading(2, "Attachments"), new BulletList([.. pack.Attachments.Select(static a => string.Create(CultureInfo.InvariantCulture, $"{a.Name}, {a.Bytes.Length} bytes"))])]);
        }

        blocks.Add(new Heading(2, "Taken out before this was sealed"));
        blocks.Add(pack.TakenOut.Count == 0
            ? new Paragraph("Nothing.")
            : new Table("Place and reason", [new("place"), new("why")], [.. pack.TakenOut.Select(static t => (IReadOnlyList<string>)[t.Place, t.Why])]));
        return new ReportDocument("Second opinion", $"Pack {pack.PackId}", Caution, blocks);
    }

    /// <summary>Minutes as days, hours and minutes.</summary>
    /// <param name="minutes">Whole minutes from the start of support.</param>
    /// <returns>Such as <c>+1 d 02:15</c>.</returns>
    public static string TimeOf(long minutes)
    {
        long all = Math.Abs(minutes);
        return string.Create(CultureInfo.InvariantCulture, $"{(minutes < 0 ? "−" : "+")}{all / 1440} d {all / 60 % 24:00}:{all % 60:00}");
    }

    /// <summary>The particulars on one line.</summary>
    /// <param name="payload">The particulars.</param>
    /// <returns>Names and values.</returns>
    public static string Words(JsonObject payload)
    {
        ArgumentNullException.ThrowIfNull(payload);
        return string.Join("; ", payload.Select(static m => $"{m.Key}: {(m.Value is JsonValue value && value.TryGetValue(out string? text) ? text : m.Value?.ToJsonString(Shown))}"));
    }
}
