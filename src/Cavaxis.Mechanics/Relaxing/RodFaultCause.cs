namespace Cavaxis.Mechanics.Relaxing;

/// <summary>Why a rod was not brought to rest.</summary>
public enum RodFaultCause
{
    /// <summary>A coordinate, force or distance is not a number.</summary>
    NotFinite,

    /// <summary>The steps allowed were used up.</summary>
    TooManySteps,

    /// <summary>No step along the direction of descent lowers the potential.</summary>
    NoDescent,

    /// <summary>The second derivatives could not be made positive definite.</summary>
    NoDirection,

    /// <summary>The rod lies in the wall deeper than allowed after all rounds: it does not fit, or is pressed without limit.</summary>
    WallNotHeld,

    /// <summary>Friction forces did not settle in the rounds allowed.</summary>
    FrictionNotSettled,

    /// <summary>The device does not reach as far as the step asks.</summary>
    DeviceTooShort,

    /// <summary>Nothing is inserted that the step could move.</summary>
    NothingToMove,
}
