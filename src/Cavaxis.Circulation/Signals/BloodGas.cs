using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;

namespace Cavaxis.Circulation.Signals;

/// <summary>Saturation and tension at an oxygen content of this patient's blood: the inverse of the content that the equations use.</summary>
internal static class BloodGas
{
    /// <summary>Tension at a content, by halving: it rises with the content.</summary>
    /// <param name="gas">Exchange with this patient's numbers.</param>
    /// <param name="contentMlPerDl">Content, mL/dL.</param>
    /// <returns>PO₂, mmHg.</returns>
    public static double Po2(GasExchange<OneLane> gas, double contentMlPerDl)
    {
        (double low, double high) = (0, 1500);
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = 100 * gas.OxygenContentAt(new OneLane(middle)).Value < contentMlPerDl ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }

    /// <summary>Saturation at a content.</summary>
    /// <param name="gas">Exchange with this patient's numbers.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin.</param>
    /// <param name="contentMlPerDl">Content, mL/dL.</param>
    /// <returns>0 to 1.</returns>
    public static double Saturation(GasExchange<OneLane> gas, double haemoglobinGPerDl, double contentMlPerDl)
    {
        double dissolved = 100 * GasExchange<OneLane>.Solubility * Po2(gas, contentMlPerDl);
        double capacity = GasExchange<OneLane>.CapacityMlPerG * haemoglobinGPerDl;
        return Math.Clamp((contentMlPerDl - dissolved) / capacity, 0, 1);
    }
}
