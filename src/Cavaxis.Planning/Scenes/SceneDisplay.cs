using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Scenes;

/// <summary>How echoes become grey.</summary>
public sealed record SceneDisplay
{
    /// <summary>Columns.</summary>
    [Meaning("Columns; 512 where left out.")]
    [Number(64, 2048, "1")]
    public int WidthPixels { get; init; } = 512;

    /// <summary>Rows.</summary>
    [Meaning("Rows; 512 where left out.")]
    [Number(64, 2048, "1")]
    public int HeightPixels { get; init; } = 512;

    /// <summary>Gain.</summary>
    [Meaning("Gain; at 0 soft tissue is middle grey.")]
    [Number(-40, 40, "dB")]
    public double GainDb { get; init; }

    /// <summary>Range from black to white.</summary>
    [Meaning("Range from black to white; 60 dB where left out.")]
    [Number(20, 100, "dB")]
    public double DynamicRangeDb { get; init; } = 60;

    /// <summary>Gain with depth.</summary>
    [Meaning("Gain with depth that makes up for the loss on one way; 0 in a bath and 0.5 in tissue where left out.")]
    [Number(0, 1.5, "dB/(cm MHz)")]
    public double? DepthGainDbPerCmMHz { get; init; }

    /// <summary>Noise.</summary>
    [Meaning("Noise of the receiver against soft tissue at the face; −65 dB where left out.")]
    [Number(-120, 0, "dB")]
    public double NoiseDb { get; init; } = -65;
}
