namespace Cavaxis.Imaging.Doppler;

/// <summary>On which side of the baseline the flow is drawn.</summary>
public enum FlowSide
{
    /// <summary>The side with more signal.</summary>
    Stronger,

    /// <summary>Above the baseline.</summary>
    Above,

    /// <summary>Below the baseline.</summary>
    Below,
}
