using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Observations;

/// <summary>Checks readings taken at one time: each value in the range of its quantity, each quantity once.</summary>
internal static class ReadingCheck
{
    /// <summary>Records what is wrong.</summary>
    /// <param name="readings">The readings.</param>
    /// <param name="path">Where they stand.</param>
    /// <param name="ledger">Takes the faults.</param>
    public static void Of(IReadOnlyList<Reading> readings, string path, FaultLedger ledger)
    {
        HashSet<ObservedQuantity> seen = [];
        for (int i = 0; i < readings.Count; i++)
        {
            Reading one = readings[i];
            string at = FormattableString.Invariant($"{path}[{i}]");
            if (QuantityTable.Check(one.Quantity, one.Value, $"{at}.value") is InputFault fault)
            {
                ledger.Add(fault.Code, fault.Field, fault.Value, fault.Accepted, fault.Remedy, ledger.PlaceOf(fault.Field));
            }

            QuantityDefinition of = QuantityTable.Of(one.Quantity);
            if (one.Sd > of.High - of.Low)
            {
                ledger.Add(
                    FaultCode.OutOfRange, $"{at}.sd", NumberWords.Of(one.Sd.Value), $"a number from {NumberWords.Range(0, of.High - of.Low, of.Unit)}", "Check the number and its unit.", ledger.PlaceOf($"{at}.sd"));
            }

            if (!seen.Add(one.Quantity))
            {
                ledger.Add(
                    FaultCode.Contradiction, $"{at}.quantity", of.Key, "each quantity once at one time", "Remove one of the two, or write it down as an entry of its own time.", ledger.PlaceOf($"{at}.quantity"));
            }
        }
    }
}
