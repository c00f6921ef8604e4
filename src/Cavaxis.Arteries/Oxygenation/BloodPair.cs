using Cavaxis.Arteries.Findings;
using Cavaxis.Blood.Oxygen;

namespace Cavaxis.Arteries.Oxygenation;

/// <summary>The two kinds of blood that meet. Contents mix; saturation and tension of a mixture are found from its content.</summary>
/// <param name="NativeMlPerDl">Oxygen content of the blood that the lungs send to the left ventricle, mL/dL.</param>
/// <param name="MembraneMlPerDl">Oxygen content behind the membrane lung, mL/dL.</param>
/// <param name="HaemoglobinGPerDl">Haemoglobin of both, g/dL.</param>
/// <param name="VirtualPo2Factor">Factor from PO₂ to that of the standard curve: temperature, pH and PCO₂.</param>
public sealed record BloodPair(double NativeMlPerDl, double MembraneMlPerDl, double HaemoglobinGPerDl, double VirtualPo2Factor)
{
    /// <summary>Content of a mixture, mL/dL.</summary>
    /// <param name="membraneShare">Share of membrane blood, 0 to 1.</param>
    /// <returns>Content.</returns>
    public double Content(double membraneShare) => NativeMlPerDl + (Math.Clamp(membraneShare, 0, 1) * (MembraneMlPerDl - NativeMlPerDl));

    /// <summary>Tension of a mixture, mmHg.</summary>
    /// <param name="membraneShare">Share of membrane blood, 0 to 1.</param>
    /// <returns>PO₂.</returns>
    public double Po2(double membraneShare)
    {
        double most = OxygenContent.FromPo2(HaemoglobinGPerDl, 2500, BloodConditions.Standard, BloodConstants.Default);
        double content = Math.Clamp(Content(membraneShare), 0, most);
        return OxygenContent.Po2At(content, HaemoglobinGPerDl, BloodConditions.Standard, BloodConstants.Default) / VirtualPo2Factor;
    }

    /// <summary>Saturation of a mixture, %.</summary>
    /// <param name="membraneShare">Share of membrane blood, 0 to 1.</param>
    /// <returns>Saturation.</returns>
    public double SaturationPercent(double membraneShare) =>
        100 * OxygenDissociation.SaturationAt(Math.Min(2500, Po2(membraneShare) * VirtualPo2Factor), BloodConditions.Standard);

    /// <summary>Saturation over the beat from the share over the beat.</summary>
    /// <param name="share">Share of membrane blood.</param>
    /// <returns>Lowest, mean and highest saturation, %, in rising order.</returns>
    public OverBeat Saturation(OverBeat share) => Ordered(share.Through(SaturationPercent));

    /// <summary>Tension over the beat from the share over the beat.</summary>
    /// <param name="share">Share of membrane blood.</param>
    /// <returns>Lowest, mean and highest PO₂, mmHg, in rising order.</returns>
    public OverBeat Tension(OverBeat share) => Ordered(share.Through(Po2));

    private static OverBeat Ordered(OverBeat x) => x.Lowest <= x.Highest ? x : new OverBeat(x.Highest, x.Mean, x.Lowest);
}
