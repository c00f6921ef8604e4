namespace Cavaxis.Mechanics.Insertion;

/// <summary>How deep the tip of each device lies behind the skin, measured along it, mm; zero for what is not inserted.</summary>
/// <param name="WireMm">Wire.</param>
/// <param name="IntroducerMm">Introducer.</param>
/// <param name="CannulaMm">Cannula.</param>
public readonly record struct InsertedDepths(double WireMm, double IntroducerMm, double CannulaMm)
{
    /// <summary>Deepest tip, mm.</summary>
    public double DeepestMm => Math.Max(WireMm, Math.Max(IntroducerMm, CannulaMm));

    /// <summary>Depth of a device's tip.</summary>
    /// <param name="device">Device.</param>
    /// <returns>mm.</returns>
    public double Of(Device device) => device switch
    {
        Device.Wire => WireMm,
        Device.Introducer => IntroducerMm,
        _ => CannulaMm,
    };

    /// <summary>What the wall touches at a depth: the outermost device that reaches so far.</summary>
    /// <param name="depthMm">Depth behind the skin, mm.</param>
    /// <returns>The device.</returns>
    public Device OutermostAt(double depthMm) =>
        depthMm <= CannulaMm && CannulaMm > 0 ? Device.Cannula : depthMm <= IntroducerMm && IntroducerMm > 0 ? Device.Introducer : Device.Wire;
}
