using Cavaxis.Circulation.Signals;
using Cavaxis.Quantities;

namespace Cavaxis.Circulation.Calibration;

/// <summary>What a bedside reading stands for in the model and how far it is trusted.</summary>
/// <param name="Kind">The reading.</param>
/// <param name="Name">Name as written on the command line, with its unit.</param>
/// <param name="Words">Name in plain words.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Quantity">The quantity of the model that it is compared with.</param>
/// <param name="Low">Lowest accepted value.</param>
/// <param name="High">Highest accepted value.</param>
/// <param name="DefaultSd">Standard deviation of one reading against the truth, in its unit, where none is given.</param>
/// <param name="Source">Where that spread comes from.</param>
/// <param name="RelativeSd">The default is at least this share of the value.</param>
public sealed record ObservationDefinition(
    ObservationKind Kind,
    string Name,
    string Words,
    string Unit,
    CirculationQuantity Quantity,
    double Low,
    double High,
    double DefaultSd,
    Source Source,
    double RelativeSd = 0)
{
    /// <summary>The usual spread of a reading of a value.</summary>
    /// <param name="value">The value, in the unit of the kind.</param>
    /// <returns>Standard deviation in the same unit.</returns>
    public double SdAt(double value) => Math.Max(DefaultSd, RelativeSd * Math.Abs(value));
}
