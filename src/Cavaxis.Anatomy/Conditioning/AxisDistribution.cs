using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Quantities;

namespace Cavaxis.Anatomy.Conditioning;

/// <summary>
/// The joint belief about all dimensions of one patient's axis: Gaussian on the latent scale of each dimension (see
/// <see cref="AxisDimensions.ScaleOf"/>), from the population and conditioned on whatever was measured. Immutable.
/// </summary>
public sealed class AxisDistribution
{
    private readonly double[] priorMean;
    private readonly double[] priorCovariance;
    private readonly double[] mean;
    private readonly double[] covariance;
    private readonly Lazy<double[]> factor;

    internal AxisDistribution(BodyHabitus habitus, NeckEntry neckEntry, double[] mean, double[] covariance)
        : this(habitus, neckEntry, mean, covariance, [])
    {
    }

    private AxisDistribution(
        BodyHabitus habitus, NeckEntry neckEntry, double[] priorMean, double[] priorCovariance,
        IReadOnlyList<AxisMeasurement> measurements)
    {
        (Habitus, NeckEntry, Measurements) = (habitus, neckEntry, measurements);
        (this.priorMean, this.priorCovariance) = (priorMean, priorCovariance);
        double bodyScale = habitus.HeightScale;
        double spanMm = Math.Exp(priorMean[(int)AxisDimension.AtrialSpan]);
        AxisObservation[] observations =
            [.. measurements.Select(measurement => new AxisObservation(measurement, bodyScale, spanMm))];
        (mean, covariance) = observations.Length == 0
            ? (priorMean, priorCovariance)
            : GaussianUpdate.Condition(priorMean, priorCovariance, observations);
        Surprises =
            [.. observations.Select(Surprise).Where(found => Math.Abs(found.StandardScore) > AxisSurprise.Threshold)];
        factor = new Lazy<double[]>(() => SymmetricMatrix.Cholesky(covariance, AxisDimensions.Count));
    }

    /// <summary>The body the belief started from.</summary>
    public BodyHabitus Habitus { get; }

    /// <summary>Height of the skin entry on the neck that was assumed.</summary>
    public NeckEntry NeckEntry { get; }

    /// <summary>Every measurement used so far, in a fixed order that does not depend on when it came.</summary>
    public IReadOnlyList<AxisMeasurement> Measurements { get; }

    /// <summary>Measurements far outside what the body made likely.</summary>
    public IReadOnlyList<AxisSurprise> Surprises { get; }

    /// <summary>Lower Cholesky factor of the latent covariance, row by row.</summary>
    internal ReadOnlySpan<double> Factor => factor.Value;

    /// <summary>Latent mean: of the logarithm, or of the plain value.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <returns>The mean on the latent scale.</returns>
    public double LatentMean(AxisDimension dimension) => mean[(int)dimension];

    /// <summary>Latent standard deviation: relative for logarithmic dimensions.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <returns>The standard deviation on the latent scale.</returns>
    public double LatentSd(AxisDimension dimension) => Math.Sqrt(LatentCovariance(dimension, dimension));

    /// <summary>Latent covariance of two dimensions.</summary>
    /// <param name="first">One dimension.</param>
    /// <param name="second">The other.</param>
    /// <returns>The covariance on the latent scales.</returns>
    public double LatentCovariance(AxisDimension first, AxisDimension second) =>
        covariance[((int)first * AxisDimensions.Count) + (int)second];

    /// <summary>Latent correlation of two dimensions.</summary>
    /// <param name="first">One dimension.</param>
    /// <param name="second">The other.</param>
    /// <returns>Between −1 and 1.</returns>
    public double Correlation(AxisDimension first, AxisDimension second) =>
        LatentCovariance(first, second) / (LatentSd(first) * LatentSd(second));

    /// <summary>Median of one dimension.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <returns>The median, in mm, degrees or 1.</returns>
    public double Median(AxisDimension dimension) =>
        IsLogarithmic(dimension) ? Math.Exp(LatentMean(dimension)) : LatentMean(dimension);

    /// <summary>Median, standard deviation and 90 % interval of one dimension.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <returns>The estimate; its origin is measured where this dimension was measured by itself, else
    /// estimated.</returns>
    public Estimate Interval(AxisDimension dimension)
    {
        Origin origin = IsMeasured(dimension) ? Origin.Measured : Origin.Estimated;
        double middle = LatentMean(dimension);
        double sd = LatentSd(dimension);
        if (!IsLogarithmic(dimension))
        {
            return Estimate.Normal(middle, sd, origin);
        }

        double half = Estimate.NormalQuantile95 * sd;
        double spread = Math.Exp(middle + (sd * sd / 2)) * Math.Sqrt(Math.Exp(sd * sd) - 1);
        return Estimate.WithInterval(Math.Exp(middle), spread, Math.Exp(middle - half), Math.Exp(middle + half), origin);
    }

    /// <summary>Estimate of a sum of dimensions, to first order around the medians.</summary>
    /// <param name="length">The sum.</param>
    /// <returns>The estimate with a normal interval, mm.</returns>
    public Estimate Interval(DerivedLength length)
    {
        double sum = 0;
        double[] gradient = new double[AxisDimensions.Count];
        foreach (AxisTerm term in DerivedLengths.TermsOf(length))
        {
            double part = term.Weight * Median(term.Dimension);
            sum += part;
            gradient[(int)term.Dimension] = IsLogarithmic(term.Dimension) ? part : term.Weight;
        }

        return Estimate.Normal(sum, Math.Sqrt(Quadratic(covariance, gradient)), Origin.Estimated);
    }

    /// <summary>Whether a dimension was measured by itself.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <returns>True when a measurement of this dimension alone was given.</returns>
    public bool IsMeasured(AxisDimension dimension) => Measurements.Any(measurement => measurement.Single == dimension);

    /// <summary>The belief after more measurements. The result does not depend on their order or grouping.</summary>
    /// <param name="measurements">The measurements, errors taken as independent of each other.</param>
    /// <returns>The conditioned distribution.</returns>
    public AxisDistribution Given(IEnumerable<AxisMeasurement> measurements)
    {
        ArgumentNullException.ThrowIfNull(measurements);
        // All are conditioned on together from the population's belief, sorted, so that the rounding is
        // the same for every order.
        IReadOnlyList<AxisMeasurement> all =
        [
            .. Measurements.Concat(measurements)
                .OrderBy(measurement => measurement.Terms.Count)
                .ThenBy(measurement => measurement.Terms[0].Dimension)
                .ThenBy(measurement => measurement.Terms[^1].Dimension)
                .ThenBy(measurement => measurement.Value)
                .ThenBy(measurement => measurement.Sd)
                .ThenBy(measurement => measurement.SuperiorEdge)
                .ThenBy(measurement => measurement.InferiorEdge),
        ];
        return all.Count == Measurements.Count
            ? this
            : new AxisDistribution(Habitus, NeckEntry, priorMean, priorCovariance, all);
    }

    /// <summary>The belief after one more measurement.</summary>
    /// <param name="measurement">The measurement.</param>
    /// <returns>The conditioned distribution.</returns>
    public AxisDistribution Given(AxisMeasurement measurement) => Given([measurement]);

    private static bool IsLogarithmic(AxisDimension dimension) =>
        AxisDimensions.ScaleOf(dimension) == LatentScale.Logarithmic;

    private static double Quadratic(double[] matrix, double[] vector)
    {
        double sum = 0;
        for (int i = 0; i < vector.Length; i++)
        {
            for (int j = 0; j < vector.Length; j++)
            {
                sum += vector[i] * matrix[(i * vector.Length) + j] * vector[j];
            }
        }

        return sum;
    }

    private AxisSurprise Surprise(AxisObservation observation)
    {
        double[] gradient = new double[AxisDimensions.Count];
        double predicted = observation.Predict(priorMean, gradient);
        double variance = Quadratic(priorCovariance, gradient);
        double score = (observation.Target - predicted) / Math.Sqrt(variance + observation.Variance);
        AxisDistribution unmeasured = new(Habitus, NeckEntry, priorMean, priorCovariance);
        Estimate expected = observation.Measurement.Single is AxisDimension single
            ? unmeasured.Interval(single)
            : Estimate.Normal(predicted, Math.Sqrt(variance), Origin.Estimated);
        return new AxisSurprise(observation.Measurement, expected, score);
    }
}
