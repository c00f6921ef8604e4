using System.Globalization;
using Cavaxis.Course.Outcomes;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>Reference rows of programme outcomes: intervals and cumulative sums. Document: <c>docs/models/outcomes.md</c>.</summary>
public sealed class CourseOutcomeChecks : IReferenceChecks
{
    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows() => [.. Intervals(), .. Weights(), .. RunLengths()];

    private static IEnumerable<ValidationRow> Intervals()
    {
        Source newcombe = new("Newcombe 1998, Stat Med 17:857, table I, method 3", Certainty.FromMemory);
        Source package = new("test values of a public statistics package (R, prop.test without correction)", Certainty.Seen);
        (int Count, int Of, double Z, string Level, double Low, double High, Source Source, double Bound)[] examples =
        [
            (81, 263, WilsonShare.NormalQuantile975, "95", 0.2553, 0.3662, newcombe, 5.01e-5), (15, 148, WilsonShare.NormalQuantile975, "95", 0.0624, 0.1605, newcombe, 5.01e-5),
            (0, 20, WilsonShare.NormalQuantile975, "95", 0, 0.1611, newcombe, 5.01e-5), (1, 29, WilsonShare.NormalQuantile975, "95", 0.0061, 0.1718, newcombe, 5.01e-5),
            (5, 10, Estimate.NormalQuantile95, "90", 0.2692718, 0.7307282, package, 5.01e-8), (32, 32, WilsonShare.NormalQuantile975, "95", 0.8928208, 1, package, 5.01e-8),
            (0, 32, WilsonShare.NormalQuantile975, "95", 0, 0.1071792, package, 5.01e-8),
        ];
        foreach ((int count, int of, double z, string level, double low, double high, Source source, double bound) in examples)
        {
            (double below, double above) = WilsonShare.Limits(count, of, z);
            yield return Row($"Wilson's {level} % interval of {count} of {of}, lower end", source, low, below, bound, "Printed digits.");
            yield return Row($"Wilson's {level} % interval of {count} of {of}, upper end", source, high, above, bound, "Printed digits.");
        }
    }

    private static IEnumerable<ValidationRow> Weights()
    {
        Source steiner = new("Steiner et al. 2000, Biostatistics 1:441, p. 446, and Steiner 2014, p. 234, as transcribed in the tests of a public package", Certainty.SeenSecondHand);
        Source rigdon = new("Rigdon and Fricker 2015, p. 225, as transcribed in the documentation of a public package", Certainty.SeenSecondHand);
        double low = 1 / (1 + Math.Exp(3.68));
        double high = 1 / (1 + Math.Exp(3.68 - (0.077 * 50)));
        (string Name, double Risk, bool Died, double Ratio, double Expected)[] examples =
        [
            ("score 0, survived", low, false, 2, -0.024), ("score 0, died", low, true, 2, 0.669), ("score 50, survived", high, false, 2, -0.433), ("score 50, died", high, true, 2, 0.26),
            ("score 0, survived", low, false, 0.5, 0.012), ("score 0, died", low, true, 0.5, -0.681), ("score 50, survived", high, false, 0.5, 0.316), ("score 50, died", high, true, 0.5, -0.377),
        ];
        foreach ((string name, double risk, bool died, double ratio, double expected) in examples)
        {
            yield return Row(
                string.Create(CultureInfo.InvariantCulture, $"Weight of a case, odds changed {ratio} times, {name}"), steiner, expected, new CusumSetting(ratio, 4, steiner).Weight(risk, died), 5.01e-4, "Printed digits.");
        }

        CusumChart chart = CusumChart.Of([new(1 / (1 + Math.Exp(3.67 - (0.077 * 19))), false)], new CusumSetting(0.5, 4, rigdon));
        yield return Row("Sum after one survivor of score 19, halved odds looked for", rigdon, 0.05083, chart.Points[0].Score, 5.01e-6, "Printed digits.");
    }

    private static IEnumerable<ValidationRow> RunLengths()
    {
        // Risk 1/3 and odds changed four times make every step one ln 2 up or down: a walk with a floor, whose time to the limit is a sum.
        Source walk = new("time of a walk with a floor to n steps up: Σ dₖ, d₀ = 1/p, dₖ = (1 + q·dₖ₋₁)/p", Certainty.ClosedForm);
        foreach (int steps in new[] { 4, 5, 8 })
        {
            CusumSetting setting = new(4, steps * Math.Log(2), walk);
            yield return Row(
                $"Cases until a signal by chance, {steps} steps to the limit", walk, (6 * (Math.Pow(2, steps) - 1)) - (3 * steps), CusumRunLength.Mean([1.0 / 3], setting, 1), 1e-6 * Math.Pow(2, steps));
            yield return Row(
                $"Cases until a signal when the odds are changed, {steps} steps to the limit", walk, (3 * steps) - (3 * (1 - Math.Pow(0.5, steps))), CusumRunLength.Mean([1.0 / 3], setting, 4), 1e-6 * steps);
        }
    }

    private static ValidationRow Row(string check, Source source, double expected, double got, double bound, string note = "") =>
        new("Course", check, source, expected, got, "1", Tolerance.Absolute, bound, note);
}
