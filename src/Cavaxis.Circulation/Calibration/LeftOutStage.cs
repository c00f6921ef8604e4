namespace Cavaxis.Circulation.Calibration;

/// <summary>Where a member of an ensemble was lost to the answer.</summary>
public enum LeftOutStage
{
    /// <summary>It does not come to rest before the changes.</summary>
    NotSettledBefore,

    /// <summary>It comes to rest before the changes but not after them.</summary>
    NotSettledAfter,

    /// <summary>Its changed numbers leave the range of the model.</summary>
    OutOfRange,
}
