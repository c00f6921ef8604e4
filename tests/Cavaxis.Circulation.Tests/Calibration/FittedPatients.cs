using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using static Cavaxis.Circulation.Calibration.ObservationKind;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Tests.Calibration;

/// <summary>Patients with known numbers, read without noise and fitted side by side once for all tests of this folder.</summary>
public sealed class FittedPatients
{
    private static readonly ObservationKind[] Pressures = [ArterialMeanMmHg];

    private static readonly ObservationKind[] Monitor =
        [ArterialMeanMmHg, ArterialSystolicMmHg, ArterialDiastolicMmHg, CentralVenousMmHg, ObservationKind.HeartRatePerMin, PumpFlowLPerMin];

    private static readonly ObservationKind[] Everything = [.. Enum.GetValues<ObservationKind>()];

    /// <summary>Fits them.</summary>
    public FittedPatients()
    {
        Truth = Prior
            .Times(LeftVentricleElastanceMmHgPerMl, 0.7).Times(SystemicResistanceMmHgSPerMl, 0.75).Times(PulmonaryResistanceMmHgSPerMl, 1.7)
            .Times(BloodVolumeMl, 1.05).With(ShuntFraction, 0.6).Times(OxygenConsumptionMlPerMin, 0.85)
            .Times(CarbonDioxideProductionMlPerMin, 0.85).With(CirculationParameter.HeartRatePerMin, 95).With(TargetFlowLPerMin, 4.2);
        TrueState = CirculationSimulator.Settle(Truth);
        CirculationSummary summary = TrueState.RequireSummary();
        IReadOnlyList<CalibrationResult> fits = CirculationCalibrator.FitMany(
            [
                (Prior, Read(summary, Pressures, 1)), (Prior, Read(summary, Monitor, 1)), (Prior, Read(summary, Everything, 1)),
                (Prior, Contradicting(summary)), (Prior, Read(summary, Everything, 1)),
            ],
            new CalibrationOptions { EnsembleSize = 8 });
        (PressureOnly, MonitorOnly, Full, Contradictory, FullAgain) = (fits[0], fits[1], fits[2], fits[3], fits[4]);
    }

    /// <summary>The patient before the readings: adult with severe lung failure on venovenous support.</summary>
    public static CirculationParameters Prior { get; } = CirculationParameters.Adult
        .With(CircuitOn, 1).With(ShuntFraction, 0.5).With(HaemoglobinGPerDl, 10).With(TargetFlowLPerMin, 4.5);

    /// <summary>The true patient.</summary>
    public CirculationParameters Truth { get; }

    /// <summary>The true circulation.</summary>
    public SettledState TrueState { get; }

    /// <summary>Fit to the mean arterial pressure alone.</summary>
    public CalibrationResult PressureOnly { get; }

    /// <summary>Fit to what a monitor shows.</summary>
    public CalibrationResult MonitorOnly { get; }

    /// <summary>Fit to every reading there is.</summary>
    public CalibrationResult Full { get; }

    /// <summary>The same again.</summary>
    public CalibrationResult FullAgain { get; }

    /// <summary>Fit to a mean arterial pressure below the diastolic one.</summary>
    public CalibrationResult Contradictory { get; }

    /// <summary>Readings of a circulation without noise.</summary>
    public static IReadOnlyList<BedsideObservation> Read(CirculationSummary summary, IEnumerable<ObservationKind> kinds, double spread) =>
        [.. kinds.Select(k => (Kind: k, Value: summary[ObservationTable.Of(k).Quantity])).Select(r =>
            new BedsideObservation(r.Kind, r.Value, spread * ObservationTable.Of(r.Kind).SdAt(r.Value)))];

    private static IReadOnlyList<BedsideObservation> Contradicting(CirculationSummary summary) =>
    [
        .. Read(summary, Monitor, 1).Where(static r => r.Kind != ArterialMeanMmHg),
        BedsideObservation.Of(ArterialMeanMmHg, summary[CirculationQuantity.DiastolicPressureMmHg] - 25),
    ];
}
