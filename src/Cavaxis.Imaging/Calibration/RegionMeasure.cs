namespace Cavaxis.Imaging.Calibration;

/// <summary>What can be measured in a region by the units of its axes.</summary>
public enum RegionMeasure
{
    /// <summary>Nothing that this program measures.</summary>
    Nothing,

    /// <summary>Lengths in both directions.</summary>
    Length,

    /// <summary>Depth over time: motion along one line.</summary>
    DepthOverTime,

    /// <summary>Speed over time: a Doppler spectrum.</summary>
    SpeedOverTime,
}
