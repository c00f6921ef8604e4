namespace Cavaxis.Course.Events;

/// <summary>How a trial ended.</summary>
public enum WeaningEnd
{
    /// <summary>It went through all its steps.</summary>
    Completed,

    /// <summary>It was broken off because of the patient.</summary>
    StoppedForPatient,

    /// <summary>It was broken off for another reason.</summary>
    StoppedOtherwise,
}
