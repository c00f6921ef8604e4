using System.Globalization;
using Cavaxis.Devices.MembraneLungs;
using Cavaxis.Devices.Pumps;
using Cavaxis.Devices.Wires;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Catalogue;

/// <summary>What must hold in a catalogue beyond the kind and range of each single field.</summary>
internal static class CatalogueRules
{
    /// <summary>Every fault of a catalogue, in its order.</summary>
    internal static List<InputFault> FaultsOf(DeviceCatalogue catalogue)
    {
        List<InputFault> faults = [];
        Dictionary<string, string> seen = new(StringComparer.Ordinal);
        CheckAll(catalogue.Cannulae, "cannulae", c => c.Id, (c, place) => CannulaRules.Check(c, place, faults));
        CheckAll(catalogue.Pumps, "pumps", p => p.Id, (p, place) => Check(p, place, faults));
        CheckAll(catalogue.MembraneLungs, "membraneLungs", l => l.Id, (l, place) => Check(l, place, faults));
        CheckAll(catalogue.Wires, "wires", w => w.Id, (w, place) => Check(w, place, faults));
        return faults;

        void CheckAll<T>(IReadOnlyList<T> devices, string list, Func<T, string> id, Action<T, string> rules)
        {
            for (int i = 0; i < devices.Count; i++)
            {
                string place = string.Create(CultureInfo.InvariantCulture, $"{list}[{i}]");
                if (!seen.TryAdd(id(devices[i]), place))
                {
                    faults.Add(new InputFault(
                        FaultCode.Contradiction, $"{place}.id", InputFault.Shown(id(devices[i])), "an identifier used once",
                        $"It already names {seen[id(devices[i])]}; choose another."));
                }

                rules(devices[i], place);
            }
        }
    }

    private static void Check(CentrifugalPump pump, string place, List<InputFault> faults)
    {
        if (pump.LowestSpeedRpm >= pump.HighestSpeedRpm)
        {
            faults.Add(Contradiction(place, "lowestSpeedRpm", pump.LowestSpeedRpm, "less than highestSpeedRpm", "Exchange or correct the two speeds."));
        }

        double head = pump.ShutOffMmHg + (pump.LinearMmHgPerLPerMin * pump.HighestFlowLPerMin)
            + (pump.QuadraticMmHgPerLPerMin2 * pump.HighestFlowLPerMin * pump.HighestFlowLPerMin);
        double fastest = pump.HighestSpeedRpm / pump.ReferenceSpeedRpm;
        double reachable = head + (pump.ShutOffMmHg * ((fastest * fastest) - 1)) + (pump.LinearMmHgPerLPerMin * pump.HighestFlowLPerMin * (fastest - 1));
        if (reachable <= 0)
        {
            faults.Add(Contradiction(place, "highestFlowLPerMin", pump.HighestFlowLPerMin, "a flow with a positive pressure rise at the highest speed", "Correct the curve or the flow."));
        }
    }

    private static void Check(MembraneLung lung, string place, List<InputFault> faults)
    {
        if (!(lung.LowestFlowLPerMin < lung.HighestFlowLPerMin))
        {
            faults.Add(Contradiction(place, "lowestFlowLPerMin", lung.LowestFlowLPerMin, "less than highestFlowLPerMin", "Exchange or correct the two flows."));
        }
    }

    private static void Check(GuideWire wire, string place, List<InputFault> faults)
    {
        if (wire.LowFlexuralModulusGPa > wire.HighFlexuralModulusGPa)
        {
            faults.Add(Contradiction(place, "lowFlexuralModulusGPa", wire.LowFlexuralModulusGPa, "at most highFlexuralModulusGPa", "Exchange or correct the two moduli."));
        }

        if (wire.FloppyTipCm >= wire.LengthCm)
        {
            faults.Add(Contradiction(place, "floppyTipCm", wire.FloppyTipCm, "less than lengthCm", "Correct the length of the soft tip."));
        }

        if (wire.FloppyTipStiffness.LowNMm2 > wire.FloppyTipStiffness.HighNMm2)
        {
            faults.Add(Contradiction(place, "floppyTipStiffnessNMm2", wire.FloppyTipStiffness.LowNMm2, "a range with its low end first", "Exchange or correct the two ends."));
        }
    }

    internal static InputFault Contradiction(string place, string field, double value, string accepted, string remedy) => new(
        FaultCode.Contradiction, $"{place}.{field}", value.ToString("G6", CultureInfo.InvariantCulture), accepted, remedy);
}
