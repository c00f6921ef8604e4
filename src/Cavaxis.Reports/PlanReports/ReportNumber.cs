using System.Globalization;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities;

namespace Cavaxis.Reports.PlanReports;

/// <summary>Numbers as a report prints them.</summary>
internal static class ReportNumber
{
    /// <summary>A number in a fixed format.</summary>
    public static string Plain(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    /// <summary>An estimate with its unit and 90 % interval.</summary>
    public static string WithInterval(Estimate e, string format, string unit) =>
        $"{Plain(e.Value, format)} {unit} ({Plain(e.Low, format)} to {Plain(e.High, format)})";

    /// <summary>Measured, calculated or estimated.</summary>
    public static string Origin(Estimate e) => JsonName.Of(e.Origin.ToString());
}
