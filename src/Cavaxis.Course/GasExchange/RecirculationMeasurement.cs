using Cavaxis.Quantities;

namespace Cavaxis.Course.GasExchange;

/// <summary>A measured recirculation, or why it cannot be told.</summary>
/// <param name="Method">How it was found.</param>
/// <param name="Percent">
/// Recirculation in % of the pump flow with its 90 % interval; null when it cannot be told. A value below 0 or above 100 is shown as it came out: it tells
/// how large the error is.
/// </param>
/// <param name="Words">One sentence: the number with its interval, or why there is none.</param>
/// <param name="Cautions">What biases it, each with its direction.</param>
public sealed record RecirculationMeasurement(RecirculationMethod Method, Estimate? Percent, string Words, IReadOnlyList<string> Cautions)
{
    /// <summary>True when there is a number.</summary>
    public bool IsTold => Percent is not null;

    /// <summary>Share of the pump flow that recirculates, 0 to 1, for what is computed from it; null when it cannot be told.</summary>
    public Estimate? Fraction => Percent is null
        ? null
        : Estimate.WithInterval(Share(Percent.Value), Percent.Sd / 100, Share(Percent.Low), Share(Percent.High), Percent.Origin);

    private static double Share(double percent) => Math.Clamp(percent / 100, 0, 1);
}
