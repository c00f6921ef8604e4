using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Quantities;
using static Cavaxis.Anatomy.Axis.AxisDimension;

namespace Cavaxis.Validation;

/// <summary>
/// Reference checks of the mathematics of the anatomy room: surface area, conditioning, sampling and the path through the
/// atrium against formulas and closed forms. <see cref="AnatomyPopulationChecks"/> holds the population against series.
/// </summary>
public sealed class AnatomyChecks : IReferenceChecks
{
    private const string Room = "Anatomy";
    private const int Draws = 100_000;

    private static AxisDistribution Adult { get; } =
        PopulationModel.For(new BodyHabitus(40, Sex.Male, 170, 68), NeckEntry.MidNeck);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows() => [.. SurfaceArea(), .. Conditioning(), .. Sampling(), .. Path()];

    private static IEnumerable<ValidationRow> SurfaceArea()
    {
        Source mosteller = new("Mosteller 1987, N Engl J Med 317:1098, worked 170 cm, 70 kg", Certainty.SeenSecondHand);
        Source handmade = new("formula worked apart from this program", Certainty.Derived);
        yield return Within(
            "Mosteller surface, 170 cm, 70 kg", mosteller, 1.818, BodySurfaceArea.Mosteller(170, 70), "m2", 0.0005);
        yield return Within(
            "Mosteller surface, 180 cm, 80 kg", new("square root of 180 x 80 / 3600", Certainty.ClosedForm), 2,
            BodySurfaceArea.Mosteller(180, 80), "m2", 1e-12);
        yield return Within(
            "DuBois surface, 170 cm, 70 kg", handmade, 1.810, BodySurfaceArea.DuBois(170, 70), "m2", 0.0005);
        yield return Within(
            "DuBois surface, 175 cm, 75 kg", handmade, 1.903, BodySurfaceArea.DuBois(175, 75), "m2", 0.0005);
        yield return Within(
            "DuBois surface, 180 cm, 80 kg", handmade, 1.996, BodySurfaceArea.DuBois(180, 80), "m2", 0.0005);
        yield return Within(
            "Haycock surface, 170 cm, 70 kg", handmade, 1.826, BodySurfaceArea.Haycock(170, 70), "m2", 0.0005);
    }

    private static IEnumerable<ValidationRow> Conditioning()
    {
        // Two Gaussians: mean and variance of one given the other, Anderson 2003, theorem 2.5.1.
        Source theorem = new(
            "Anderson 2003, An Introduction to Multivariate Statistical Analysis, theorem 2.5.1", Certainty.ClosedForm);
        const double Reading = 80;
        const double Error = 4;
        AxisDistribution posterior = Adult.Given(
            AxisMeasurement.Of(AtrialSpan, Reading, Error, JunctionEdges.OwnSuperior, JunctionEdges.OwnInferior));
        double noise = Math.Log(1 + (Error * Error / (Reading * Reading)));
        double variance = Adult.LatentCovariance(AtrialSpan, AtrialSpan);
        double shared = Adult.LatentCovariance(TricuspidDistance, AtrialSpan);
        double gain = shared / (variance + noise);
        yield return Within(
            "Latent mean of the tricuspid distance given the span", theorem,
            Adult.LatentMean(TricuspidDistance) + (gain * (Math.Log(Reading) - Adult.LatentMean(AtrialSpan))),
            posterior.LatentMean(TricuspidDistance), "1", 1e-12);
        yield return Within(
            "Latent SD of the tricuspid distance given the span", theorem,
            Math.Sqrt(Adult.LatentCovariance(TricuspidDistance, TricuspidDistance) - (gain * shared)),
            posterior.LatentSd(TricuspidDistance), "1", 1e-12);
        Source precision = new("precisions of independent normal errors add", Certainty.ClosedForm);
        yield return Within(
            "Latent SD of the span after the reading", precision, 1 / Math.Sqrt((1 / variance) + (1 / noise)),
            posterior.LatentSd(AtrialSpan), "1", 1e-12);
    }

    private static IEnumerable<ValidationRow> Sampling()
    {
        Source vectors = new("Random123 (D. E. Shaw Research), kat_vectors, philox4x32 10", Certainty.Seen);
        yield return Within(
            "Philox4x32-10, counter and key zero, first word", vectors, 0x6627e8d5u, Philox.Bits(0, 0, 0, 0, 0).W0, "1",
            0);
        yield return Within(
            "Philox4x32-10, all bits set, last word", vectors, 0x6d5451fdu,
            Philox.Bits(uint.MaxValue, uint.MaxValue, uint.MaxValue, uint.MaxValue, ulong.MaxValue).W3, "1", 0);
        yield return Within(
            "Philox4x32-10, digits of pi, third word", vectors, 0x5001e420u,
            Philox.Bits(0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344, 0x299f31d0_a4093822).W2, "1", 0);

        AxisSamples samples = AxisSampler.Draw(Adult, Draws, 20240229);
        Source lognormal = new("lognormal law: mean exp(m + s2/2)", Certainty.ClosedForm);
        double m = Adult.LatentMean(RightFemoralVeinDiameter);
        double s = Adult.LatentSd(RightFemoralVeinDiameter);
        double mean = 0;
        double wide = 0;
        double product = 0;
        for (int i = 0; i < Draws; i++)
        {
            double right = samples[RightFemoralVeinDiameter][i];
            double zRight = (Math.Log(right) - m) / s;
            double zLeft = (
                Math.Log(samples[LeftFemoralVeinDiameter][i]) - Adult.LatentMean(LeftFemoralVeinDiameter)) / Adult.LatentSd(LeftFemoralVeinDiameter);
            mean += right / Draws;
            wide += Math.Abs(zRight) > 2 ? 1.0 / Draws : 0;
            product += zRight * zLeft / Draws;
        }

        yield return Relative(
            "Mean femoral vein of 100 000 samples", lognormal, Math.Exp(m + (s * s / 2)), mean, "mm", 0.003,
            "Four standard errors.");
        yield return Within(
            "Share of samples beyond two SD", new("normal law", Certainty.ClosedForm), 0.0455003, wide, "1", 0.0027,
            "Four standard errors.");
        yield return Within(
            "Correlation of right and left femoral vein in the samples",
            new("belief the samples are drawn from", Certainty.ClosedForm),
            Adult.Correlation(RightFemoralVeinDiameter, LeftFemoralVeinDiameter), product, "1", 0.017,
            "Four standard errors.");
    }

    private static IEnumerable<ValidationRow> Path()
    {
        // With a = −k and b = k the cubic loses its cubic term: y' = −k (1 − 4t + 3t²) + k (3t² − 2t) = k (2t − 1), a
        // parabola.
        double slope = Math.Tan(15 * Math.PI / 180);
        Source hermite = new(
            "cubic Hermite curve with end slopes -tan 15 and tan 15 deg: y' = tan 15 (2t - 1)", Certainty.ClosedForm);
        yield return Within(
            "Slope at a quarter of the way, bend 30 deg", hermite, -slope / 2, AtrialPath.SlopeAt(0.25, 30, 0, 60), "1",
            1e-12);
        yield return Within(
            "Slope in the middle, bend 30 deg", hermite, 0, AtrialPath.SlopeAt(0.5, 30, 0, 60), "1", 1e-12);
        // ∫₀¹ √(1 + k²u²) du = ½ (√(1 + k²) + asinh(k)/k), the arc of a parabola.
        double arc = 60 * 0.5 * (Math.Sqrt(1 + (slope * slope)) + (Math.Asinh(slope) / slope));
        yield return Within(
            "Length of the way, span 60 mm, bend 30 deg", new("exact arc of the parabola", Certainty.ClosedForm), arc,
            AtrialPath.LengthMm(60, 30, 0, 0), "mm", 0.02,
            "Second order in the slopes: the next term is 60 k4/40 = 0.008 mm.");
    }

    private static ValidationRow Within(
        string check, Source source, double expected, double got, string unit, double bound, string note = "") =>
        new(Room, check, source, expected, got, unit, Tolerance.Absolute, bound, note);

    private static ValidationRow Relative(
        string check, Source source, double expected, double got, string unit, double bound, string note = "") =>
        new(Room, check, source, expected, got, unit, Tolerance.Relative, bound, note);
}
