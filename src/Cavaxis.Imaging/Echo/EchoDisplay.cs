using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Echo;

/// <summary>How echoes become grey.</summary>
public sealed record EchoDisplay
{
    /// <summary>A display.</summary>
    /// <param name="widthPixels">Columns, 64 to 2048.</param>
    /// <param name="heightPixels">Rows, 64 to 2048.</param>
    /// <param name="gainDb">Gain, −40 to 40 dB; at 0 soft tissue is middle grey.</param>
    /// <param name="dynamicRangeDb">Range from black to white, 20 to 100 dB.</param>
    /// <param name="depthGainDbPerCmMHz">Gain with depth that makes up for the loss on one way, 0 to 1.5; null for that of the surroundings.</param>
    /// <param name="noiseDb">Noise of the receiver against soft tissue at the face, −120 to 0 dB.</param>
    /// <exception cref="InputFaultException">A number is outside its bounds.</exception>
    public EchoDisplay(int widthPixels = 512, int heightPixels = 512, double gainDb = 0, double dynamicRangeDb = 60, double? depthGainDbPerCmMHz = null, double noiseDb = -65)
    {
        const string Remedy = "Give the settings of a display.";
        WidthPixels = (int)Require.InRange(widthPixels, 64, 2048, "display.widthPixels", Remedy);
        HeightPixels = (int)Require.InRange(heightPixels, 64, 2048, "display.heightPixels", Remedy);
        GainDb = Require.InRange(gainDb, -40, 40, "display.gainDb", Remedy);
        DynamicRangeDb = Require.InRange(dynamicRangeDb, 20, 100, "display.dynamicRangeDb", Remedy);
        DepthGainDbPerCmMHz = depthGainDbPerCmMHz is double gain ? Require.InRange(gain, 0, 1.5, "display.depthGainDbPerCmMHz", Remedy) : null;
        NoiseDb = Require.InRange(noiseDb, -120, 0, "display.noiseDb", Remedy);
    }

    /// <summary>Columns.</summary>
    public int WidthPixels { get; }

    /// <summary>Rows.</summary>
    public int HeightPixels { get; }

    /// <summary>Gain, dB.</summary>
    public double GainDb { get; }

    /// <summary>Range from black to white, dB.</summary>
    public double DynamicRangeDb { get; }

    /// <summary>Gain with depth for one way, dB/(cm MHz); null for that of the surroundings.</summary>
    public double? DepthGainDbPerCmMHz { get; }

    /// <summary>Noise of the receiver, dB against soft tissue.</summary>
    public double NoiseDb { get; }
}
