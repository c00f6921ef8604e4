using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Oxygen;

/// <summary>
/// Oxygen content of blood, bound and dissolved: C = h·Hb·S + α·PO2 in mL/dL, with its exact inverses. The dissolved part
/// is taken at the 37 °C solubility whatever the temperature (see <c>docs/models/blood.md</c>, known limits).
/// </summary>
public static class OxygenContent
{
    /// <summary>Content from haemoglobin, saturation and tension, each as given.</summary>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 0 to 25 g/dL.</param>
    /// <param name="saturation">Saturation, a fraction from 0 to 1.</param>
    /// <param name="po2MmHg">Oxygen tension, 0 to 3000 mmHg.</param>
    /// <param name="k">Constants.</param>
    /// <returns>Oxygen content, mL/dL.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static double MlPerDl(double haemoglobinGPerDl, double saturation, double po2MmHg, BloodConstants k)
    {
        ArgumentNullException.ThrowIfNull(k);
        return Unchecked(
            BloodInput.Haemoglobin(haemoglobinGPerDl), BloodInput.Saturation(saturation), BloodInput.Po2(po2MmHg), k);
    }

    /// <summary>Content from haemoglobin and tension, the saturation following from the dissociation curve.</summary>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 0 to 25 g/dL.</param>
    /// <param name="po2MmHg">Oxygen tension, 0 to 3000 mmHg.</param>
    /// <param name="conditions">Conditions of the blood.</param>
    /// <param name="k">Constants.</param>
    /// <returns>Oxygen content, mL/dL.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range, or the conditions are missing.</exception>
    public static double FromPo2(
        double haemoglobinGPerDl, double po2MmHg, in BloodConditions conditions, BloodConstants k)
    {
        ArgumentNullException.ThrowIfNull(k);
        double saturation = OxygenDissociation.SaturationAt(po2MmHg, conditions);
        return Unchecked(BloodInput.Haemoglobin(haemoglobinGPerDl), saturation, po2MmHg, k);
    }

    /// <summary>Tension that gives a content: the exact inverse of <see cref="FromPo2"/>.</summary>
    /// <param name="contentMlPerDl">Oxygen content, mL/dL.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 0 to 25 g/dL.</param>
    /// <param name="conditions">Conditions of the blood.</param>
    /// <param name="k">Constants.</param>
    /// <returns>Oxygen tension, mmHg.</returns>
    /// <exception cref="InputFaultException">
    /// A value is not finite or out of range, the conditions are missing, or this haemoglobin cannot carry the content
    /// below 3000 mmHg.
    /// </exception>
    public static double Po2At(
        double contentMlPerDl, double haemoglobinGPerDl, in BloodConditions conditions, BloodConstants k)
    {
        ArgumentNullException.ThrowIfNull(k);
        double factor = conditions.RequireVirtualPo2Factor();
        double bound = k.HuefnerMlPerG * BloodInput.Haemoglobin(haemoglobinGPerDl);
        double dissolved = k.OxygenSolubilityMlPerDlPerMmHg / factor;
        double content = BloodInput.Content(contentMlPerDl, "oxygenContentMlPerDl");
        double highest = factor * BloodInput.HighestPo2;
        double most = (bound * OxygenDissociation.StandardSaturation(highest)) + (dissolved * highest);
        if (content > most)
        {
            throw new InputFaultException(Require.OutOfRange(
                content, 0, most, "oxygenContentMlPerDl",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{haemoglobinGPerDl:G4} g/dL haemoglobin carry no more at {BloodInput.HighestPo2:G4} mmHg.")));
        }

        return VirtualPo2(content, bound, dissolved) / factor;
    }

    /// <summary>Saturation that goes with a content.</summary>
    /// <param name="contentMlPerDl">Oxygen content, mL/dL.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 0 to 25 g/dL.</param>
    /// <param name="conditions">Conditions of the blood.</param>
    /// <param name="k">Constants.</param>
    /// <returns>Saturation, a fraction from 0 to 1.</returns>
    /// <exception cref="InputFaultException">As for <see cref="Po2At"/>.</exception>
    public static double SaturationAt(
        double contentMlPerDl, double haemoglobinGPerDl, in BloodConditions conditions, BloodConstants k) =>
        OxygenDissociation.StandardSaturation(
            Po2At(contentMlPerDl, haemoglobinGPerDl, conditions, k) * conditions.VirtualPo2Factor);

    /// <summary>Content without checks, for inner loops.</summary>
    internal static double Unchecked(double haemoglobinGPerDl, double saturation, double po2MmHg, BloodConstants k) =>
        (k.HuefnerMlPerG * haemoglobinGPerDl * saturation) + (k.OxygenSolubilityMlPerDlPerMmHg * po2MmHg);

    /// <summary>
    /// Root of bound·S(x) + dissolved·x = content in the virtual tension x, unchecked. The left side rises everywhere, so
    /// Newton's step is kept inside a bracket and replaced by its middle when it leaves it. Either part alone cannot need
    /// a higher tension than both together, which gives the upper end.
    /// </summary>
    internal static double VirtualPo2(double content, double bound, double dissolved)
    {
        if (content <= 0)
        {
            return 0;
        }

        double high = content / dissolved;
        if (content < bound * BloodInput.HighestSaturation)
        {
            high = Math.Min(high, OxygenDissociation.StandardPo2(content / bound));
        }

        double low = 0;
        double x = high;
        for (int i = 0; i < 200; i++)
        {
            double excess = (bound * OxygenDissociation.StandardSaturation(x)) + (dissolved * x) - content;
            if (excess > 0)
            {
                high = x;
            }
            else
            {
                low = x;
            }

            double slope = (bound * OxygenDissociation.StandardSlope(x)) + dissolved;
            double next = x - (excess / slope);
            if (!(next >= low && next <= high))
            {
                next = 0.5 * (low + high);
            }

            // On the flat part of the curve the last bits of the content move the step for ever: stop at their size.
            if (Math.Abs(next - x) <= 4e-16 * x || Math.Abs(excess) <= 4e-16 * content)
            {
                return next;
            }

            x = next;
        }

        return x;
    }
}
