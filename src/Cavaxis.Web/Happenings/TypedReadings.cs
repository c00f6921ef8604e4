using System.Text.Json.Nodes;
using Cavaxis.Course.Observations;
using Cavaxis.Quantities.Faults;
using Cavaxis.Web.Entry;

namespace Cavaxis.Web.Happenings;

/// <summary>What is being typed about the present state; an empty field is no reading.</summary>
public sealed class TypedReadings
{
    private readonly Dictionary<ObservedQuantity, string> typed = [];

    /// <summary>The text of a field.</summary>
    internal string this[ObservedQuantity quantity]
    {
        get => typed.GetValueOrDefault(quantity, string.Empty);
        set => typed[quantity] = value;
    }

    /// <summary>Empties every field.</summary>
    internal void Clear() => typed.Clear();

    /// <summary>The readings, or what is wrong with them.</summary>
    internal (IReadOnlyList<Reading> Readings, IReadOnlyList<InputFault> Faults) Read()
    {
        List<Reading> readings = [];
        List<InputFault> faults = [];
        foreach (QuantityDefinition definition in QuantityTable.All)
        {
            switch (TypedNumber.Read(this[definition.Quantity], definition.Unit == "1" ? string.Empty : definition.Unit, withError: true))
            {
                case null:
                    break;
                case JsonObject pair:
                    Add(definition, pair["value"]!.GetValue<double>(), pair["sd"]!.GetValue<double>());
                    break;
                case JsonValue number when number.TryGetValue(out double value):
                    Add(definition, value, null);
                    break;
                default:
                    faults.Add(new InputFault(
                        FaultCode.WrongKind, definition.Words, InputFault.Shown(this[definition.Quantity]), $"a number in {definition.Unit}, or nothing", "Write the number, with its error after ± where it is known."));
                    break;
            }
        }

        return (readings, faults);

        void Add(QuantityDefinition definition, double value, double? sd)
        {
            if (QuantityTable.Check(definition.Quantity, value, definition.Words) is InputFault fault)
            {
                faults.Add(fault);
            }
            else
            {
                readings.Add(Reading.Of(definition.Quantity, value, sd));
            }
        }
    }
}
