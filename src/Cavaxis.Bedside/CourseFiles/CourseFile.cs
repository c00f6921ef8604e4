using System.Text;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Html;
using Cavaxis.Reports.Pdf;

namespace Cavaxis.Bedside.CourseFiles;

/// <summary>A sheet or report of a course that can be written as a page or as paper.</summary>
/// <param name="Document">What it says.</param>
/// <param name="MadeAt">The moment for which it was made.</param>
/// <param name="Entries">Number of events in the record from which it was made.</param>
/// <param name="Unread">Entries that could not be read; the document says so.</param>
public sealed record CourseFile(ReportDocument Document, DateTimeOffset MadeAt, long Entries, int Unread)
{
    /// <summary>As a PDF.</summary>
    /// <returns>The bytes.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">The fonts are not on this machine.</exception>
    public byte[] Pdf() => PdfWriter.Write(Document, MadeAt);

    /// <summary>As one self-contained HTML page, UTF-8.</summary>
    /// <returns>The bytes.</returns>
    public byte[] Html() => Encoding.UTF8.GetBytes(HtmlWriter.Write(Document));
}
