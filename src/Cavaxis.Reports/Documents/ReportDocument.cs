using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Documents;

/// <summary>
/// A report free of any format. <see cref="Html.HtmlWriter"/> and <see cref="Pdf.PdfWriter"/> both write this one model, so
/// that screen and paper cannot differ in what they say.
/// </summary>
/// <param name="Title">Name of the report.</param>
/// <param name="Subtitle">One line under it; may be empty.</param>
/// <param name="CautionText">What the reader must bear in mind; stands at the top and at the foot of every printed page.</param>
/// <param name="Blocks">Parts from top to bottom.</param>
public sealed record ReportDocument(string Title, string Subtitle, string CautionText, IReadOnlyList<ReportBlock> Blocks)
{
    /// <summary>Language tag of the words (BCP 47).</summary>
    public string Language { get; init; } = "en-GB";

    /// <summary>
    /// The whole report drawn as one page, caution text and all. Where it is given, paper shows it alone and the screen the parts; null where paper shows the
    /// parts, over as many pages as they take.
    /// </summary>
    public Drawing? OnePage { get; init; }
}
