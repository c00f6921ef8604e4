using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Calibration;

/// <summary>One reading at the bedside with its spread. A reading that cannot be is not built.</summary>
public sealed record BedsideObservation
{
    /// <summary>Makes a reading.</summary>
    /// <param name="kind">What was read.</param>
    /// <param name="value">Value in the unit of the kind.</param>
    /// <param name="sd">Standard deviation in the same unit, above zero.</param>
    /// <exception cref="InputFaultException">The value or the spread is out of range, or the kind is not one of the list.</exception>
    public BedsideObservation(ObservationKind kind, double value, double sd)
    {
        ObservationDefinition d = ObservationTable.Of(kind);
        Kind = kind;
        Value = Require.InRange(value, d.Low, d.High, d.Name, $"Give the {d.Words} in {d.Unit}.");
        Sd = Require.InRange(
            sd, d.DefaultSd / 100, d.High - d.Low, d.Name + ".sd", "Give the standard deviation of the reading, above zero.");
    }

    /// <summary>What was read.</summary>
    public ObservationKind Kind { get; }

    /// <summary>Value, in the unit of the kind.</summary>
    public double Value { get; }

    /// <summary>Standard deviation, in the same unit.</summary>
    public double Sd { get; }

    /// <summary>A reading with the usual spread of its kind.</summary>
    /// <param name="kind">What was read.</param>
    /// <param name="value">Value in the unit of the kind.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="InputFaultException">The value is out of range.</exception>
    public static BedsideObservation Of(ObservationKind kind, double value) => new(kind, value, ObservationTable.Of(kind).SdAt(value));
}
