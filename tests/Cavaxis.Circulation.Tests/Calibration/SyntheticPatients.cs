using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using static Cavaxis.Circulation.Calibration.ObservationKind;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Tests.Calibration;

/// <summary>Patients drawn from the prior, half on venovenous and half on venoarterial support, with noisy readings of a realistic part of what can be read.</summary>
public sealed class SyntheticPatients
{
    private const ulong Seed = 20_261_125;

    // What every monitor of a supported patient shows; anything else is there for every second patient.
    private static readonly ObservationKind[] Always =
    [
        ArterialMeanMmHg, ArterialSystolicMmHg, ObservationKind.HeartRatePerMin, PumpFlowLPerMin, PreMembraneSaturationPercent,
        RightArmSaturationPercent, RightArmPco2MmHg,
    ];

    private SyntheticPatients(List<(CirculationParameters, CirculationParameters, IReadOnlyList<BedsideObservation>)> all, int rejected) =>
        (All, Rejected) = (all, rejected);

    /// <summary>Before the readings, in truth, and the readings.</summary>
    public IReadOnlyList<(CirculationParameters Prior, CirculationParameters Truth, IReadOnlyList<BedsideObservation> Readings)> All { get; }

    /// <summary>Draws that did not settle or that no living patient shows.</summary>
    public int Rejected { get; }

    /// <summary>Draws patients.</summary>
    public static SyntheticPatients Draw(int count)
    {
        List<(CirculationParameters, CirculationParameters, IReadOnlyList<BedsideObservation>)> all = [];
        int rejected = 0;
        for (int first = 0; all.Count < count; first += 64)
        {
            CirculationParameters[] priors = [.. Enumerable.Range(first, 64).Select(static i => i % 2 == 0 ? Venovenous() : Venoarterial())];
            CirculationParameters[] truths = [.. priors.Select((p, i) => True(p, first + i))];
            IReadOnlyList<SettledState> states = CirculationSimulator.Settle(truths);
            for (int i = 0; i < truths.Length && all.Count < count; i++)
            {
                if (states[i].Settled && Lives(states[i].RequireSummary()))
                {
                    all.Add((priors[i], truths[i], Read(truths[i], states[i].RequireSummary(), first + i)));
                }
                else
                {
                    rejected++;
                }
            }
        }

        return new SyntheticPatients(all, rejected);
    }

    private static CirculationParameters Venovenous() => FittedPatients.Prior;

    private static CirculationParameters Venoarterial() => FittedPatients.Prior
        .With(ArterialShareOfReturn, 1).With(LeftVentricleElastanceMmHgPerMl, 0.9).With(TargetFlowLPerMin, 3.5).With(ShuntFraction, 0.2);

    private static CirculationParameters True(CirculationParameters prior, int patient)
    {
        SearchSpace space = new(prior, [], CalibrationOptions.Usual);
        return space.At([.. Enumerable.Range(0, space.Count).Select(axis => LaplaceBelief.Normal01(patient, axis, Seed))]);
    }

    private static bool Lives(CirculationSummary summary) =>
        summary[CirculationQuantity.MeanArterialPressureMmHg] is > 35 and < 150
        && summary[CirculationQuantity.CentralVenousPressureMmHg] < 35
        && summary[CirculationQuantity.RightArmSaturationPercent] > 50
        && ObservationTable.All.All(d => summary[d.Quantity] >= d.Low && summary[d.Quantity] <= d.High);

    private static List<BedsideObservation> Read(CirculationParameters truth, CirculationSummary summary, int patient)
    {
        List<BedsideObservation> readings = [];
        foreach (ObservationDefinition d in ObservationTable.All)
        {
            bool possible = d.Kind != ObservationKind.PumpSpeedRatio && (d.Kind != RecirculationPercent || truth[ArterialShareOfReturn] < 1);
            bool there = Always.Contains(d.Kind) || LaplaceBelief.Normal01(patient, 100 + (int)d.Kind, Seed) > 0;
            if (possible && there)
            {
                double value = summary[d.Quantity];
                double read = value + (d.SdAt(value) * LaplaceBelief.Normal01(patient, 200 + (int)d.Kind, Seed));
                readings.Add(BedsideObservation.Of(d.Kind, Math.Clamp(read, d.Low, d.High)));
            }
        }

        return readings;
    }
}
