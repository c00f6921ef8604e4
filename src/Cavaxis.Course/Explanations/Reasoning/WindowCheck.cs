using Cavaxis.Course.Explanations.Trends;
using Cavaxis.Course.Observations;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>Refuses a trend that cannot be.</summary>
internal static class WindowCheck
{
    /// <summary>Checks every value against the range of its quantity.</summary>
    public static void Check(TrendWindow window)
    {
        List<InputFault> faults = [];
        HashSet<ObservedQuantity> seen = [];
        foreach (ObservedSign sign in window.Signs)
        {
            string key = QuantityTable.Of(sign.Quantity).Key;
            if (!seen.Add(sign.Quantity))
            {
                faults.Add(new InputFault(FaultCode.Contradiction, key, key, "each quantity once", "Give one value for each window."));
            }

            Check(sign.Quantity, sign.Before, key + ".before", faults);
            Check(sign.Quantity, sign.Now, key + ".now", faults);
        }

        foreach (SettingChange setting in window.Settings)
        {
            foreach (double value in (ReadOnlySpan<double>)[setting.Before, setting.Now])
            {
                if (!(value >= 0 && value <= 20_000))
                {
                    faults.Add(Require.OutOfRange(value, 0, 20_000, "settings." + setting.Setting, "Give the setting before and now."));
                }
            }
        }

        if (faults.Count > 0)
        {
            throw new InputFaultException(faults);
        }
    }

    private static void Check(ObservedQuantity quantity, Estimate? value, string path, List<InputFault> faults)
    {
        if (value is null)
        {
            return;
        }

        if (QuantityTable.Check(quantity, value.Value, path) is InputFault fault)
        {
            faults.Add(fault);
        }

        if (!(value.Sd > 0))
        {
            faults.Add(new InputFault(FaultCode.OutOfRange, path + ".sd", "0", "above 0", "Give the spread of the reading; the usual ones stand in the table of quantities."));
        }
    }
}
