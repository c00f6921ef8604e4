using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Quantities.Faults;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Calibration;

/// <summary>The readings that are fitted, and how far a circulation is from them.</summary>
internal sealed class ReadingSet
{
    /// <summary>
    /// Spread of the model itself, as a share of the spread of a reading: what it leaves out, and what a normal belief leaves out of a curved one.
    /// It is added in squares. Chosen because intervals without it were too narrow for synthetic patients.
    /// </summary>
    public const double ModelShare = 0.5;

    /// <summary>Sorts the readings.</summary>
    /// <param name="prior">The patient.</param>
    /// <param name="readings">All readings.</param>
    /// <exception cref="InputFaultException">None is given, or one needs a circuit that this patient has not.</exception>
    public ReadingSet(CirculationParameters prior, IReadOnlyList<BedsideObservation> readings)
    {
        if (readings.Count == 0)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.MissingField, "observations", "(nothing)", "at least one reading", "Give what was read at the bedside."));
        }

        foreach (BedsideObservation reading in readings)
        {
            Check(prior, reading);
        }

        All = readings;
        Fitted = [.. readings.Where(r => SearchSpace.DirectTarget(prior, r.Kind) is null)];
    }

    /// <summary>All readings in the order given.</summary>
    public IReadOnlyList<BedsideObservation> All { get; }

    /// <summary>Those that are fitted.</summary>
    public IReadOnlyList<BedsideObservation> Fitted { get; }

    /// <summary>Model less reading in standard deviations of reading and model together, for each fitted reading.</summary>
    /// <param name="summary">The circulation.</param>
    /// <returns>Residuals.</returns>
    public double[] Residuals(CirculationSummary summary) =>
        [.. Fitted.Select(r => Residual(r, summary[ObservationTable.Of(r.Kind).Quantity]) / Math.Sqrt(1 + (ModelShare * ModelShare)))];

    /// <summary>Model less reading in standard deviations of the reading; oxygen tension by its logarithm, as it runs over two decades.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="model">Value of the model.</param>
    /// <returns>The residual.</returns>
    public static double Residual(BedsideObservation reading, double model) => reading.Kind == ObservationKind.RightArmPo2MmHg
        ? Math.Log(Math.Max(model, 1) / reading.Value) * reading.Value / reading.Sd
        : (model - reading.Value) / reading.Sd;

    private static void Check(CirculationParameters prior, BedsideObservation reading)
    {
        bool circuit = prior[CircuitOn] > 0;
        string? reason = reading.Kind switch
        {
            ObservationKind.PreMembraneSaturationPercent or ObservationKind.PostMembraneSaturationPercent
                or ObservationKind.PumpFlowLPerMin or ObservationKind.PumpSpeedRatio
                or ObservationKind.InletPressureMmHg or ObservationKind.OutletPressureMmHg when !circuit => "readings without a circuit",
            ObservationKind.RecirculationPercent when !circuit || !(prior[ArterialShareOfReturn] < 1) => "readings without venous return",
            _ => null,
        };
        if (reason is not null)
        {
            string name = ObservationTable.Of(reading.Kind).Name;
            throw new InputFaultException(new InputFault(
                FaultCode.Contradiction, name, reading.Value.ToString("G6", System.Globalization.CultureInfo.InvariantCulture), reason,
                "Leave this reading out, or describe the circuit."));
        }
    }
}
