using System.Globalization;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Anatomy.Conditioning;

/// <summary>A number read off this patient: one dimension of the axis or a sum of several, with its error and its
/// edges.</summary>
public sealed class AxisMeasurement
{
    /// <summary>Smallest error taken for a length or an angle, mm or degrees: nobody reads a vein more
    /// finely.</summary>
    public const double SmallestSd = 0.1;

    /// <summary>Smallest error taken for the tricuspid fraction.</summary>
    public const double SmallestFractionSd = 0.001;

    private const double LargestMagnitude = 2000;

    /// <summary>A measured sum of dimensions.</summary>
    /// <param name="terms">At least one part; each dimension once, with a weight that is not zero.</param>
    /// <param name="value">The value, in mm, degrees or 1.</param>
    /// <param name="sd">Standard deviation of the measurement, same unit; raised to the smallest error where below
    /// it.</param>
    /// <param name="superiorEdge">Edge taken at the SCAJ; ignored where the sum does not touch it.</param>
    /// <param name="inferiorEdge">Edge taken at the ICAJ; ignored where the sum does not touch it.</param>
    /// <exception cref="InputFaultException">A number is not finite or out of range, a sum is empty or repeats a
    /// dimension, or an edge belongs to the other junction.</exception>
    public AxisMeasurement(
        IReadOnlyList<AxisTerm> terms,
        double value,
        double sd,
        JunctionEdge superiorEdge = JunctionEdge.Unknown,
        JunctionEdge inferiorEdge = JunctionEdge.Unknown)
    {
        ArgumentNullException.ThrowIfNull(terms);
        Terms = [.. terms.OrderBy(term => term.Dimension)];
        if (Terms.Count == 0)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.WrongLength, "terms", "(nothing)", "at least one dimension", "Name what was measured."));
        }

        for (int i = 0; i < Terms.Count; i++)
        {
            bool repeated = i > 0 && Terms[i - 1].Dimension == Terms[i].Dimension;
            if (!Enum.IsDefined(Terms[i].Dimension) || !double.IsFinite(Terms[i].Weight) || Terms[i].Weight == 0 || repeated)
            {
                throw new InputFaultException(new InputFault(
                    FaultCode.Contradiction,
                    "terms",
                    string.Create(CultureInfo.InvariantCulture, $"{Terms[i].Weight:G6} x {Terms[i].Dimension}"),
                    "each known dimension once, with a finite weight other than zero",
                    "Merge repeated parts and drop parts of weight zero."));
            }
        }

        Value = Require.InRange(
            value, -LargestMagnitude, LargestMagnitude, "value", "Give the value in mm, degrees or as a fraction.");
        double smallest = Terms[0].Dimension == AxisDimension.TricuspidFraction ? SmallestFractionSd : SmallestSd;
        double given = Require.InRange(
            sd, 0, LargestMagnitude, "sd", "Give the standard deviation in the unit of the value.");
        Sd = Math.Max(smallest, given);
        SuperiorEdge = JunctionEdges.Superior(superiorEdge).Edge;
        InferiorEdge = JunctionEdges.Inferior(inferiorEdge).Edge;
    }

    /// <summary>The parts of the sum, in the order of their dimensions.</summary>
    public IReadOnlyList<AxisTerm> Terms { get; }

    /// <summary>The value read.</summary>
    public double Value { get; }

    /// <summary>Standard deviation of the reading, without the step between edges.</summary>
    public double Sd { get; }

    /// <summary>Edge taken at the superior junction.</summary>
    public JunctionEdge SuperiorEdge { get; }

    /// <summary>Edge taken at the inferior junction.</summary>
    public JunctionEdge InferiorEdge { get; }

    /// <summary>The dimension measured by itself, or null for a sum.</summary>
    public AxisDimension? Single => Terms is [{ Weight: 1 }] ? Terms[0].Dimension : null;

    /// <summary>One dimension measured by itself.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <param name="value">The value.</param>
    /// <param name="sd">Standard deviation, same unit.</param>
    /// <param name="superiorEdge">Edge taken at the SCAJ.</param>
    /// <param name="inferiorEdge">Edge taken at the ICAJ.</param>
    /// <returns>The measurement.</returns>
    /// <exception cref="InputFaultException">See the constructor.</exception>
    public static AxisMeasurement Of(
        AxisDimension dimension,
        double value,
        double sd,
        JunctionEdge superiorEdge = JunctionEdge.Unknown,
        JunctionEdge inferiorEdge = JunctionEdge.Unknown) =>
        new([new AxisTerm(dimension)], value, sd, superiorEdge, inferiorEdge);

    /// <summary>A length that is a sum of dimensions.</summary>
    /// <param name="length">The length.</param>
    /// <param name="valueMm">The value, mm.</param>
    /// <param name="sdMm">Standard deviation, mm.</param>
    /// <param name="superiorEdge">Edge taken at the SCAJ.</param>
    /// <param name="inferiorEdge">Edge taken at the ICAJ.</param>
    /// <returns>The measurement.</returns>
    /// <exception cref="InputFaultException">See the constructor.</exception>
    public static AxisMeasurement Of(
        DerivedLength length,
        double valueMm,
        double sdMm,
        JunctionEdge superiorEdge = JunctionEdge.Unknown,
        JunctionEdge inferiorEdge = JunctionEdge.Unknown) =>
        new(DerivedLengths.TermsOf(length), valueMm, sdMm, superiorEdge, inferiorEdge);

    /// <summary>What was measured, and what was read.</summary>
    public override string ToString()
    {
        string sum = string.Join(" + ", Terms.Select(term => term.Weight == 1
            ? term.Dimension.ToString()
            : string.Create(CultureInfo.InvariantCulture, $"{term.Weight:G6} x {term.Dimension}")));
        return string.Create(CultureInfo.InvariantCulture, $"{sum} = {Value:G6} ± {Sd:G6}");
    }
}
