namespace Cavaxis.Imaging.Doppler;

/// <summary>Where a column of an envelope comes from.</summary>
public enum EnvelopePart
{
    /// <summary>Traced by the program.</summary>
    Traced,

    /// <summary>Nothing stood out from the noise: no flow is taken.</summary>
    NoSignal,

    /// <summary>Drawn by a person.</summary>
    Corrected,
}
