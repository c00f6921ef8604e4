using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Circulation.Signals;

/// <summary>Saturation and tension at an oxygen content of this patient's blood: the inverse of the content that the equations use.</summary>
internal static class BloodGas
{
    /// <summary>Tension at a content, by Newton's method from the free side with bisection as guard.</summary>
    /// <param name="p">Parameters.</param>
    /// <param name="contentMlPerDl">Content, mL/dL.</param>
    /// <returns>PO₂, mmHg.</returns>
    public static double Po2(CirculationParameters p, double contentMlPerDl)
    {
        GasExchange<OneLane> gas = new(new ModelConstants<OneLane>([p]));
        (double low, double high) = (0, 1500);
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = 100 * gas.OxygenContentAt(new OneLane(middle)).Value < contentMlPerDl ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }

    /// <summary>Saturation at a content.</summary>
    /// <param name="p">Parameters.</param>
    /// <param name="contentMlPerDl">Content, mL/dL.</param>
    /// <returns>0 to 1.</returns>
    public static double Saturation(CirculationParameters p, double contentMlPerDl)
    {
        double dissolved = 100 * GasExchange<OneLane>.Solubility * Po2(p, contentMlPerDl);
        double capacity = GasExchange<OneLane>.CapacityMlPerG * p[CirculationParameter.HaemoglobinGPerDl];
        return Math.Clamp((contentMlPerDl - dissolved) / capacity, 0, 1);
    }
}
