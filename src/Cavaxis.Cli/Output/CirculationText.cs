using System.Globalization;
using Cavaxis.Planning.Running;
using Spectre.Console;

namespace Cavaxis.Cli.Output;

/// <summary>A circulation for a terminal: what it amounts to, then the numbers, then what was assumed and what was not checked.</summary>
/// <param name="output">Where to.</param>
internal sealed class CirculationText(CommandOutput output)
{
    private static readonly (string Title, string[] Names)[] Tables =
    [
        ("Heart and vessels (calculated)", [
            "heartRatePerMin", "meanArterialPressureMmHg", "systolicPressureMmHg", "diastolicPressureMmHg", "centralVenousPressureMmHg", "pulmonaryArteryMeanMmHg",
            "wedgePressureMmHg", "nativeOutputLPerMin", "systemicFlowLPerMin", "strokeVolumeMl", "outflowVelocityTimeIntegralCm",
            "leftVentricularEjectionFractionPercent", "leftVentricularEndDiastolicVolumeMl", "leftVentricularEndDiastolicPressureMmHg",
            "rightVentricularEjectionFractionPercent", "aorticValveOpenPercent", "systemicResistanceWoodUnits", "pulmonaryResistanceWoodUnits",
        ]),
        ("Oxygen and carbon dioxide (calculated)", [
            "rightArmSaturationPercent", "rightArmPo2MmHg", "rightArmPco2MmHg", "leftArmSaturationPercent", "lowerBodySaturationPercent",
            "pulmonaryArterySaturationPercent", "venousSaturationPercent", "oxygenDeliveryMlPerMin", "deliveryOverConsumption",
        ]),
        ("Circuit (calculated)", [
            "pumpFlowLPerMin", "pumpSpeedRatio", "inletPressureMmHg", "inletPressureSwingMmHg", "outletPressureMmHg", "preMembraneSaturationPercent",
            "preMembraneSwingPercent", "postMembraneSaturationPercent", "effectiveFlowLPerMin", "recirculationByContentPercent", "drainageLowestOpenness",
        ]),
    ];

    /// <summary>Writes everything.</summary>
    /// <param name="result">The result.</param>
    public void Write(CirculationResult result)
    {
        RunningLists lists = new(output);
        lists.Head(result.CaseTitle, result.Invented, result.Caution);
        foreach (ChangeMade change in result.Changes)
        {
            output.Wrapped("Changed: ", string.Create(CultureInfo.InvariantCulture, $"{change.Name} from {change.From:G5} to {change.To:G5} {(change.Unit == "1" ? string.Empty : change.Unit)}"));
        }

        if (!result.Settled)
        {
            output.Wrapped("NOT SETTLED: ", result.Reason);
            output.Wrapped(string.Empty, "There are no numbers to show: a circulation that does not come to rest has none. Change less, or see which number is out of keeping with --parameters.");
            output.Line();
            lists.Patient(result.Patient);
            return;
        }

        Answer(result);
        foreach ((string title, string[] names) in Tables)
        {
            Quantities(title, names, result);
        }

        Oxygen(result.Oxygen!);
        Fits(result.Patient);
        lists.Patient(result.Patient);
    }

    private void Answer(CirculationResult result)
    {
        double? Of(string name) => result.Quantities.Single(q => q.Name == name).Value;
        output.Wrapped("ANSWER: ", string.Create(
            CultureInfo.InvariantCulture,
            $"arterial pressure {Of("meanArterialPressureMmHg"):F0} mmHg, output of the heart {Of("nativeOutputLPerMin"):F1} L/min, aortic valve open {result.AorticValveOpenPercent:F0} % of the beat, saturation of the right arm {Of("rightArmSaturationPercent"):F0} %."));
        if (result.Recirculation is { } r)
        {
            output.Wrapped("Recirculation: ", string.Create(
                CultureInfo.InvariantCulture,
                $"{r.MeanPercent:F0} % ({r.LowestPercent:F0} to {r.HighestPercent:F0} % within the breath); effective flow {r.EffectiveFlowLPerMin:F1} L/min."));
        }

        output.Wrapped(string.Empty, result.Calibrated
            ? "Calculated with the numbers that fit the readings best; `whatif` gives the spread."
            : "Calculated with first guesses from the case, not fitted to the readings. Where readings are given, `calibrate` compares and fits.");
        output.Line();
    }

    private void Quantities(string title, string[] names, CirculationResult result)
    {
        QuantityValue[] rows = [.. names.SelectMany(n => result.Quantities.Where(q => q.Name == n))];
        if (rows.Length == 0)
        {
            return;
        }

        Table table = CommandOutput.Titled(title, string.Empty, "value", "unit");
        table.Columns[1].RightAligned();
        foreach (QuantityValue q in rows)
        {
            table.AddRow(Markup.Escape(q.Words), Shown(q), Markup.Escape(q.Unit == "1" ? string.Empty : q.Unit));
        }

        output.Console.Write(table);
        foreach (QuantityValue q in rows.Where(static q => q.Value is null))
        {
            output.Wrapped("  – ", $"{q.Words}: not defined, {q.NotDefined}.");
        }
    }

    private static string Shown(QuantityValue q) => q.Value?.ToString(
        q.Unit switch { "L/min" or "Wood units" => "F1", "1" => "F2", "cm" => "F1", _ => "F0" }, CultureInfo.InvariantCulture) ?? "–";

    private void Oxygen(OxygenBudgetRates oxygen)
    {
        output.Wrapped("Oxygen, mL/min: ", string.Create(
            CultureInfo.InvariantCulture,
            $"{oxygen.FromLungsMlPerMin:F1} by the lungs + {oxygen.FromMembraneMlPerMin:F1} by the membrane lung - {oxygen.UsedMlPerMin:F1} used = {oxygen.StoreChangeMlPerMin:F2} gain of the stores ({oxygen.StoreMl:F0} mL); does not add up by {oxygen.ErrorMlPerMin:E1}."));
        output.Line();
    }

    private void Fits(RunningPatient patient)
    {
        CarbonDioxideFit c = patient.CarbonDioxide;
        output.Wrapped("Scaled to ", string.Create(
            CultureInfo.InvariantCulture, $"{patient.CirculatoryMassKg:F1} kg of circulatory mass, {patient.BloodVolumeMl:F0} mL of blood. Carbon dioxide curve fitted to {c.LargestErrorMlPerDl:F1} mL/dL at worst (base excess {c.BaseExcessMmolPerL:F1} mmol/L)."));
        if (patient.Circuit is { } circuit)
        {
            output.Wrapped("Circuit: ", string.Create(
                CultureInfo.InvariantCulture,
                $"{string.Join("; ", circuit.Cannulae)}; {circuit.Pump}, {circuit.MembraneLung}. Pressure laws fitted to {circuit.Drainage.LargestErrorMmHg:F1} (drainage) and {circuit.Return.LargestErrorMmHg:F1} mmHg (return) at worst over {circuit.Drainage.LowestFlowLPerMin:F1} to {circuit.Drainage.HighestFlowLPerMin:F1} L/min."));
            foreach (string tip in circuit.Tips)
            {
                output.Wrapped("Ports: ", $"{tip}.");
            }
        }

        output.Line();
    }
}
