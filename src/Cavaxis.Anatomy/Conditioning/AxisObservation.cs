using Cavaxis.Anatomy.Axis;

namespace Cavaxis.Anatomy.Conditioning;

/// <summary>
/// A measurement as the update sees it: y = h(x) + e, e   N(0, r), x the latent vector. A single logarithmic dimension
/// is observed on its own scale, which is linear; a sum is observed in millimetres, which is not.
/// </summary>
internal sealed class AxisObservation
{
    // The step between edges can bring a short distance near zero or below, where there is no logarithm. Such a reading
    // says little more than "short" and is taken as this share of its own error, which leaves it hardly any weight.
    private const double ShortestShareOfError = 0.5;

    private readonly bool onLogarithm;

    /// <summary>Brings a measurement to the model's own edges and to the scale of the update.</summary>
    public AxisObservation(AxisMeasurement measurement, double bodyScale, double spanMm)
    {
        Measurement = measurement;
        (double value, double sd) = EdgeCorrection.ToOwnEdges(measurement, bodyScale, spanMm);
        onLogarithm = measurement.Single is AxisDimension single
            && AxisDimensions.ScaleOf(single) == LatentScale.Logarithmic;
        if (onLogarithm)
        {
            value = Math.Max(value, ShortestShareOfError * sd);
            Target = Math.Log(value);
            Variance = Math.Log(1 + (sd * sd / (value * value)));
        }
        else
        {
            Target = value;
            Variance = sd * sd;
        }
    }

    /// <summary>The measurement behind it.</summary>
    public AxisMeasurement Measurement { get; }

    /// <summary>The value on the scale of the observation.</summary>
    public double Target { get; }

    /// <summary>Error variance on that scale.</summary>
    public double Variance { get; }

    /// <summary>Whether h is linear in the latent vector.</summary>
    public bool IsLinear => onLogarithm
        || Measurement.Terms.All(term => AxisDimensions.ScaleOf(term.Dimension) == LatentScale.Plain);

    /// <summary>h and its gradient at a latent point.</summary>
    /// <param name="latent">The latent vector.</param>
    /// <param name="gradient">Receives the gradient.</param>
    /// <returns>h.</returns>
    public double Predict(ReadOnlySpan<double> latent, Span<double> gradient)
    {
        gradient.Clear();
        double sum = 0;
        foreach (AxisTerm term in Measurement.Terms)
        {
            int i = (int)term.Dimension;
            bool linear = onLogarithm || AxisDimensions.ScaleOf(term.Dimension) == LatentScale.Plain;
            double part = term.Weight * (linear ? latent[i] : Math.Exp(latent[i]));
            sum += part;
            gradient[i] = linear ? term.Weight : part;
        }

        return sum;
    }
}
