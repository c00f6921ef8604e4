namespace Cavaxis.Course.RunSheets;

/// <summary>How far a step of a run sheet is.</summary>
public enum StepState
{
    /// <summary>Not done yet.</summary>
    Open,

    /// <summary>Done as it stood.</summary>
    Done,

    /// <summary>Done otherwise than it stood, with a reason.</summary>
    DoneOtherwise,

    /// <summary>Passed over, with a reason.</summary>
    Skipped,
}
