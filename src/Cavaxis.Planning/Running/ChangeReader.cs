using System.Globalization;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Running;

/// <summary>
/// Reads changes such as <c>peepCmH2O=12</c>, <c>bloodVolumeMl=+500</c>, <c>flow=-0.5</c>, <c>contractility=150%</c> or <c>resistance=-20%</c>. A sign
/// means relative, except for a number that can itself be below zero, where only a percentage is.
/// </summary>
public static class ChangeReader
{
    /// <summary>Short names beside those of the table.</summary>
    public static IReadOnlyDictionary<string, CirculationParameter> ShortNames { get; } = new SortedDictionary<string, CirculationParameter>(StringComparer.OrdinalIgnoreCase)
    {
        ["abdominalPressure"] = CirculationParameter.AbdominalPressureMmHg,
        ["arterialShare"] = CirculationParameter.ArterialShareOfReturn,
        ["balloon"] = CirculationParameter.BalloonVolumeMl,
        ["bloodVolume"] = CirculationParameter.BloodVolumeMl,
        ["contractility"] = CirculationParameter.LeftVentricleElastanceMmHgPerMl,
        ["drivingPressure"] = CirculationParameter.AlveolarSwingCmH2O,
        ["fio2"] = CirculationParameter.InspiredOxygenFraction,
        ["flow"] = CirculationParameter.TargetFlowLPerMin,
        ["haemoglobin"] = CirculationParameter.HaemoglobinGPerDl,
        ["heartRate"] = CirculationParameter.HeartRatePerMin,
        ["oxygenConsumption"] = CirculationParameter.OxygenConsumptionMlPerMin,
        ["peep"] = CirculationParameter.PeepCmH2O,
        ["pulmonaryResistance"] = CirculationParameter.PulmonaryResistanceMmHgSPerMl,
        ["resistance"] = CirculationParameter.SystemicResistanceMmHgSPerMl,
        ["rightContractility"] = CirculationParameter.RightVentricleElastanceMmHgPerMl,
        ["septalOpening"] = CirculationParameter.SeptalOpeningCm2,
        ["shunt"] = CirculationParameter.ShuntFraction,
        ["speedRatio"] = CirculationParameter.PumpSpeedRatio,
        ["sweep"] = CirculationParameter.SweepLPerMin,
        ["sweepOxygen"] = CirculationParameter.SweepOxygenFraction,
        ["transvalvularFlow"] = CirculationParameter.TransvalvularFlowLPerMin,
        ["ventFlow"] = CirculationParameter.VentFlowLPerMin,
        ["ventilation"] = CirculationParameter.AlveolarVentilationLPerMin,
    };

    /// <summary>Reads all changes against one patient.</summary>
    /// <param name="option">Name of the option, for faults.</param>
    /// <param name="texts">Changes as typed.</param>
    /// <param name="present">The patient before.</param>
    /// <returns>The changes in order.</returns>
    /// <exception cref="InputFaultException">Carries a fault for every change that cannot be used.</exception>
    public static IReadOnlyList<RequestedChange> Read(string option, IReadOnlyList<string> texts, CirculationParameters present)
    {
        ArgumentNullException.ThrowIfNull(texts);
        ArgumentNullException.ThrowIfNull(present);
        List<InputFault> faults = [];
        List<RequestedChange> changes = [];
        foreach (string text in texts)
        {
            try
            {
                RequestedChange change = One(option, text, present);
                if (changes.Exists(c => c.Parameter == change.Parameter))
                {
                    throw new InputFaultException(new InputFault(
                        FaultCode.DuplicateField, option, InputFault.Shown(text), "each number once", "Drop one of the two."));
                }

                changes.Add(change);
            }
            catch (InputFaultException fault)
            {
                faults.AddRange(fault.Faults);
            }
        }

        return faults.Count > 0 ? throw new InputFaultException(faults) : changes;
    }

    /// <summary>The patient after the changes.</summary>
    /// <param name="present">The patient before.</param>
    /// <param name="changes">The changes.</param>
    /// <returns>The patient after.</returns>
    public static CirculationParameters Apply(CirculationParameters present, IReadOnlyList<RequestedChange> changes)
    {
        ArgumentNullException.ThrowIfNull(present);
        ArgumentNullException.ThrowIfNull(changes);
        return present.With(changes.Select(static c => (c.Parameter, c.To)));
    }

    private static RequestedChange One(string option, string text, CirculationParameters present)
    {
        string[] pair = text.Split('=', 2, StringSplitOptions.TrimEntries);
        if (pair.Length < 2 || pair[0].Length == 0)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.BadOption, option, text.Length == 0 ? "(nothing)" : InputFault.Shown(text), "name=value", "Give a change such as peepCmH2O=12 or bloodVolumeMl=+500."));
        }

        CirculationParameter parameter = Find(pair[0], option);
        ParameterDefinition definition = ParameterTable.Of(parameter);
        double before = present[parameter];
        string field = $"{option} {JsonName.Of(definition.Name)}";
        bool percent = pair[1].EndsWith('%');
        bool signed = pair[1].StartsWith('+') || pair[1].StartsWith('-');
        if (!double.TryParse(percent ? pair[1][..^1] : pair[1], NumberStyles.Float, CultureInfo.InvariantCulture, out double number) || !double.IsFinite(number))
        {
            throw new InputFaultException(new InputFault(
                FaultCode.WrongKind, field, InputFault.Shown(pair[1]), $"a number in {Unit(definition)}, or +number, -number, number% of the present {before.ToString("G4", CultureInfo.InvariantCulture)}",
                "Write the number with a point and without a unit."));
        }

        (double low, double high) = ParameterTable.Bounds(parameter, present.MassKg);
        bool relative = percent || (signed && low >= 0);
        double after = !relative ? number
            : percent ? before * ((signed ? 100 : 0) + number) / 100
            : before + number;
        Require.InRange(after, low, high, field, $"Stay inside the range of the model: {definition.Meaning} (unit {Unit(definition)}; now {before.ToString("G4", CultureInfo.InvariantCulture)})");
        return new RequestedChange(parameter, before, after, relative);
    }

    private static CirculationParameter Find(string name, string option)
    {
        if (ShortNames.TryGetValue(name, out CirculationParameter parameter))
        {
            return parameter;
        }

        try
        {
            return ParameterTable.Find(name);
        }
        catch (InputFaultException unknown)
        {
            throw new InputFaultException([.. unknown.Faults.Select(f => f with
            {
                Field = option,
                Value = InputFault.Shown(name),
                Accepted = $"{f.Accepted}, or a short name: {string.Join(", ", ShortNames.Keys)}",
            })]);
        }
    }

    private static string Unit(ParameterDefinition definition) => definition.Unit == "1" ? "parts of one" : definition.Unit;
}
