namespace Cavaxis.Reports.ArterialReports;

/// <summary>Whose blood an artery carries, told by a pattern so that colour never says it alone.</summary>
public enum BloodKind
{
    /// <summary>At least nine tenths from the lungs of the patient: drawn hollow.</summary>
    Lungs,

    /// <summary>Anything in between, on average or over the beat: drawn with a broken core.</summary>
    Mixed,

    /// <summary>At least nine tenths from the membrane lung: drawn full.</summary>
    Membrane,
}
