using System.Globalization;
using Cavaxis.Quantities;

namespace Cavaxis.Anatomy.Conditioning;

/// <summary>
/// A measurement far outside what the body makes likely. It is used all the same: the patient may be unusual, or the
/// reading, its unit or its edge may be wrong. A person has to look.
/// </summary>
/// <param name="Measurement">The measurement.</param>
/// <param name="Expected">What was expected of it before any measurement, its own error not included.</param>
/// <param name="StandardScore">How many standard deviations of expectation and error together it lies off; negative is
/// too small.</param>
public sealed record AxisSurprise(AxisMeasurement Measurement, Estimate Expected, double StandardScore)
{
    /// <summary>Standard score beyond which a measurement is a surprise.</summary>
    public const double Threshold = 4;

    /// <summary>The surprise in one line.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Measurement} lies {StandardScore:F1} standard deviations from the {Expected.Value:F1} expected ({Expected.Low:F1} to {Expected.High:F1})");
}
