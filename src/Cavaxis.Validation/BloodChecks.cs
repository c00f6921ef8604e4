using System.Globalization;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>Reference checks of the blood room. Document: <c>docs/models/blood.md</c>.</summary>
public sealed class BloodChecks : IReferenceChecks
{
    internal static readonly Source Closed = new("Closed form", Certainty.ClosedForm);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows() => [.. BloodGasChecks.Rows(), .. BloodFlowChecks.Rows()];

    internal static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    internal static ValidationRow Row(
        string check, Source source, double expected, double got, string unit, Tolerance tolerance, double bound, string note = "") =>
        new("Blood", check, source, expected, got, unit, tolerance, bound, note);
}
