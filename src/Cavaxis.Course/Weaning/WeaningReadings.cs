using Cavaxis.Course.Observations;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Weaning;

/// <summary>Readings of the bedside as readings of a trial.</summary>
public static class WeaningReadings
{
    /// <summary>Takes those that a trial knows, by name; the tidal volume over predicted body weight. The others are left out.</summary>
    /// <param name="readings">Readings as entered; where they carry no error, the usual one holds.</param>
    /// <param name="predictedWeightKg">Predicted body weight, 0.4 to 150 kg; null when it is not known, and the tidal volume is then left out.</param>
    /// <returns>The readings in the order given.</returns>
    /// <exception cref="InputFaultException">The weight is out of range.</exception>
    public static IReadOnlyList<WeaningReading> From(IEnumerable<Reading> readings, double? predictedWeightKg)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (predictedWeightKg is double weight)
        {
            Require.InRange(weight, 0.4, 150, nameof(predictedWeightKg), "Give the predicted body weight in kg.");
        }

        return [.. readings.Select(reading => One(reading, predictedWeightKg)).OfType<WeaningReading>()];
    }

    private static WeaningReading? One(Reading reading, double? predictedWeightKg)
    {
        double sd = reading.Sd ?? QuantityTable.Of(reading.Quantity).UsualSd;
        if (reading.Quantity == ObservedQuantity.TidalVolumeMl)
        {
            return predictedWeightKg is double weight
                ? new WeaningReading(WeaningQuantity.TidalVolumeMlPerKg, Estimate.Normal(reading.Value / weight, sd / weight, Origin.Calculated))
                : null;
        }

        return Enum.TryParse(reading.Quantity.ToString(), out WeaningQuantity quantity)
            ? new WeaningReading(quantity, Estimate.Normal(reading.Value, sd, Origin.Measured))
            : null;
    }
}
