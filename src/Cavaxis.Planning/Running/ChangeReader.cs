using System.Globalization;
using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Running;

/// <summary>
/// Reads changes. <c>flow=4.5</c> sets; <c>bloodVolumeMl=+500</c> and <c>flow=-0.5</c> add in the unit of the number; <c>contractility=150%</c> and
/// <c>contractility=x1.5</c> multiply; <c>resistance=-20%</c> and <c>+20%</c> change by a share. For a number that can itself be below zero a minus
/// belongs to the value, and <c>+-5</c> takes 5 away.
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
                FaultCode.BadOption, option, text.Length == 0 ? "(nothing)" : InputFault.Shown(text), "name=value, such as peepCmH2O=12, bloodVolumeMl=+500, contractility=150% or contractility=x1.5", "Name a number of the model, an equals sign and the change."));
        }

        CirculationParameter parameter = Find(pair[0], option);
        ParameterDefinition definition = ParameterTable.Of(parameter);
        double before = present[parameter];
        string field = $"{option} {JsonName.Of(definition.Name)}";
        (double low, double high) = ParameterTable.Bounds(parameter, present.MassKg);
        string now = before.ToString("G4", CultureInfo.InvariantCulture);
        ParameterChange change = Amount(parameter, pair[1], canBeNegative: low < 0) ?? throw new InputFaultException(new InputFault(
            FaultCode.WrongKind, field, pair[1].Length == 0 ? "(nothing)" : InputFault.Shown(pair[1]),
            $"NUMBER to set it in {Unit(definition)}; {(low < 0 ? "+NUMBER to add, +-NUMBER to take away" : "+NUMBER or -NUMBER to add or take away")} in that unit; NUMBER%, xNUMBER, +NUMBER% or -NUMBER% of the present {now}",
            "Write the number with a point and without a unit."));
        double after = Require.InRange(
            change.After(before), low, high, field, $"Stay inside the range of the model: {definition.Meaning} (unit {Unit(definition)}; now {now})");
        return new RequestedChange(change, before, after);
    }

    private static ParameterChange? Amount(CirculationParameter parameter, string text, bool canBeNegative)
    {
        bool share = text.EndsWith('%');
        bool plus = text.StartsWith('+');
        bool minus = text.StartsWith('-');
        if (text.StartsWith('x'))
        {
            return !share && Number(text[1..]) is double factor && factor >= 0 ? ParameterChange.By(parameter, factor) : null;
        }

        if (Number((plus ? text[1..] : text).TrimEnd('%')) is not double number || text.Count(static c => c == '%') > 1)
        {
            return null;
        }

        return share ? ParameterChange.By(parameter, ((plus || minus ? 100 : 0) + number) / 100)
            : plus || (minus && !canBeNegative) ? ParameterChange.Plus(parameter, number)
            : ParameterChange.To(parameter, number);
    }

    private static double? Number(string text) => !text.StartsWith('+')
        && double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number)
            ? number
            : null;

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
