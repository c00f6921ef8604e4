using System.Globalization;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Case;

/// <summary>Checks that what runs, what lies in the vessels and what was observed can be true together.</summary>
internal static class RunningConsistency
{
    private const double HighestOutputLPerMin = 40;

    /// <summary>Records every contradiction.</summary>
    /// <param name="file">The case as bound.</param>
    /// <param name="ledger">Places of the values; takes the faults.</param>
    public static void Check(CaseFile file, FaultLedger ledger)
    {
        RunningSection running = file.Running;
        if (ledger.IsSound("running.cannulae") && running.Configuration is RunningConfiguration configuration && ledger.IsSound("running.configuration"))
        {
            for (int i = 0; i < running.Cannulae.Count; i++)
            {
                Cannula(running.Cannulae[i].Role, configuration, string.Create(CultureInfo.InvariantCulture, $"running.cannulae[{i}].role"), ledger);
            }
        }

        if (running.Configuration is null && ledger.IsSound("running") && !SaysNothing(running))
        {
            ledger.Add(
                FaultCode.Contradiction, "running.configuration", "support that runs without a configuration",
                string.Join(", ", JsonName.WordsOf(typeof(RunningConfiguration))),
                "Say how the circuit is connected, or leave the section out when none runs.", ledger.PlaceOf("running"));
        }

        Output(file.Heart, ledger);
        Ventilation(file.Ventilation, ledger);
        Pressures(file.Observations, ledger);
    }

    /// <summary>Outflow tract, velocity-time integral and rate each within range can multiply to an output that no heart has.</summary>
    private static void Output(HeartSection heart, FaultLedger ledger)
    {
        const string Path = "heart.lvotVtiCm";
        if (heart is not { LvotDiameterMm.Value: double diameter, LvotVtiCm.Value: double integral, RatePerMin.Value: double rate } || !ledger.IsSound(Path))
        {
            return;
        }

        double output = Math.PI / 4 * diameter * diameter / 100 * integral * rate / 1000;
        if (output > HighestOutputLPerMin)
        {
            ledger.Add(
                FaultCode.Contradiction, Path, string.Create(CultureInfo.InvariantCulture, $"an output of {output:F0} L/min with this outflow tract and rate"),
                string.Create(CultureInfo.InvariantCulture, $"at most {HighestOutputLPerMin:F0} L/min"),
                "Check diameter, velocity-time integral and rate together.", ledger.PlaceOf(Path));
        }
    }

    // Lists compare by identity, so the same empty list stands on both sides.
    private static bool SaysNothing(RunningSection running) =>
        running.Cannulae.Count == 0 && running == new RunningSection { Cannulae = running.Cannulae };

    private static void Cannula(CannulaRole role, RunningConfiguration configuration, string path, FaultLedger ledger)
    {
        CannulaRole[] fitting = configuration switch
        {
            RunningConfiguration.VvTwoSite => [CannulaRole.Drainage, CannulaRole.VenousReturn],
            RunningConfiguration.VvDualLumen => [CannulaRole.DualLumen, CannulaRole.Drainage],
            RunningConfiguration.VavFemoral => [CannulaRole.Drainage, CannulaRole.VenousReturn, CannulaRole.ArterialReturn, CannulaRole.DistalPerfusion],
            _ => [CannulaRole.Drainage, CannulaRole.ArterialReturn, CannulaRole.DistalPerfusion],
        };
        if (!fitting.Contains(role) && ledger.IsSound(path))
        {
            ledger.Add(
                FaultCode.Contradiction, path, $"\"{JsonName.Of(role.ToString())}\" in \"{JsonName.Of(configuration.ToString())}\"",
                $"one of {string.Join(", ", fitting.Select(static r => JsonName.Of(r.ToString())))}",
                "Check the role of the cannula and the configuration.", ledger.PlaceOf(path));
        }
    }

    private static void Ventilation(VentilationSection ventilation, FaultLedger ledger)
    {
        const string Path = "ventilation.plateauPressureCmH2O";
        if (ventilation is { PlateauPressureCmH2O.Value: double plateau, PeepCmH2O.Value: double peep } && plateau < peep && ledger.IsSound(Path))
        {
            ledger.Add(
                FaultCode.Contradiction, Path, NumberWords.Of(plateau), $"at least the PEEP of {NumberWords.Of(peep)} cmH2O",
                "Check both pressures.", ledger.PlaceOf(Path));
        }
    }

    private static void Pressures(ObservationSection seen, FaultLedger ledger)
    {
        InOrder("observations.diastolicPressureMmHg", seen.DiastolicPressureMmHg, seen.MeanArterialPressureMmHg, "mean", ledger);
        InOrder("observations.meanArterialPressureMmHg", seen.MeanArterialPressureMmHg, seen.SystolicPressureMmHg, "systolic", ledger);
        InOrder("observations.diastolicPressureMmHg", seen.DiastolicPressureMmHg, seen.SystolicPressureMmHg, "systolic", ledger);
        InOrder("observations.pulmonaryArteryDiastolicMmHg", seen.PulmonaryArteryDiastolicMmHg, seen.PulmonaryArteryMeanMmHg, "mean", ledger);
        InOrder("observations.pulmonaryArteryMeanMmHg", seen.PulmonaryArteryMeanMmHg, seen.PulmonaryArterySystolicMmHg, "systolic", ledger);
    }

    private static void InOrder(string path, Measurement? lower, Measurement? higher, string name, FaultLedger ledger)
    {
        if (lower is not null && higher is not null && lower.Value > higher.Value && ledger.IsSound(path))
        {
            ledger.Add(
                FaultCode.Contradiction, path, NumberWords.Of(lower.Value), $"at most the {name} pressure of {NumberWords.Of(higher.Value)} mmHg",
                "Check which pressure stands in which field.", ledger.PlaceOf(path));
        }
    }
}
