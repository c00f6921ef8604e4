namespace Cavaxis.Arteries.Findings;

/// <summary>Where the blood of the lungs and the blood of the membrane lung meet.</summary>
public enum MixingPlace
{
    /// <summary>All of the aorta carries blood of the membrane lung: the heart ejects too little to be seen behind its valve.</summary>
    AtValve,

    /// <summary>Between the valve and the end of the arch.</summary>
    AscendingOrArch,

    /// <summary>Beyond the arch, above the diaphragm.</summary>
    DescendingThoracic,

    /// <summary>Below the diaphragm.</summary>
    Abdominal,

    /// <summary>Beyond the aorta: in an iliac artery, or nowhere because there is no pump flow.</summary>
    BeyondAorta,
}
