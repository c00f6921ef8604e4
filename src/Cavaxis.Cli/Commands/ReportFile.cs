using System.Text;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities.Faults;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Html;
using Cavaxis.Reports.Pdf;
using Cavaxis.Reports.PlanReports;

namespace Cavaxis.Cli.Commands;

/// <summary>A report file whose ending says its format.</summary>
internal sealed class ReportFile
{
    /// <summary>The same plan gives the same bytes, so the file carries no time of day; the record keeps that.</summary>
    private static readonly DateTimeOffset NoTime = DateTimeOffset.UnixEpoch;
    private readonly string path;
    private readonly bool pdf;

    private ReportFile(string path, bool pdf) => (this.path, this.pdf) = (path, pdf);

    /// <summary>The report file for a path.</summary>
    /// <param name="path">Path ending in .html or .pdf.</param>
    /// <returns>The file, not written yet.</returns>
    /// <exception cref="InputFaultException">The ending is another one.</exception>
    public static ReportFile For(string path) => Path.GetExtension(path).ToUpperInvariant() switch
    {
        ".HTML" => new ReportFile(path, false),
        ".PDF" => new ReportFile(path, true),
        _ => throw new InputFaultException(new InputFault(
            FaultCode.BadOption, "--report", path.Length == 0 ? "(nothing)" : InputFault.Shown(path), "a file name ending in .html or .pdf", "Choose one of the two formats by the ending.")),
    };

    /// <summary>Writes the report.</summary>
    /// <param name="result">What planning said.</param>
    /// <param name="rules">Rules used.</param>
    /// <param name="catalogue">Catalogue used.</param>
    /// <param name="insertion">How wire and cannulae of the chosen plan go in; null where it was not tried.</param>
    /// <returns>Number of bytes written.</returns>
    /// <exception cref="InputFaultException">The file cannot be written.</exception>
    public int Write(PlanningResult result, RuleBook rules, DeviceCatalogue catalogue, InsertionResult? insertion)
    {
        ReportDocument document = PlanReport.Of(result, rules, catalogue, insertion);
        byte[] bytes = pdf ? PdfWriter.Write(document, NoTime) : Encoding.UTF8.GetBytes(HtmlWriter.Write(document));
        InputFile.WriteWhole(path, bytes);
        return bytes.Length;
    }
}
