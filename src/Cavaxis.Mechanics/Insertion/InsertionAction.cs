namespace Cavaxis.Mechanics.Insertion;

/// <summary>What the hand at the skin does.</summary>
public enum InsertionAction
{
    /// <summary>Pushes the wire in; what else is inserted is held.</summary>
    FeedWire,

    /// <summary>Pushes the cannula with its introducer in over the wire, which is held.</summary>
    AdvanceCannula,

    /// <summary>Pulls the wire out; what else is inserted is held.</summary>
    WithdrawWire,

    /// <summary>Pulls the introducer out; what else is inserted is held.</summary>
    WithdrawIntroducer,

    /// <summary>Pulls the cannula out, with its introducer if that is still in; the wire is held.</summary>
    WithdrawCannula,

    /// <summary>Turns all that is inserted about its axis at the skin.</summary>
    Rotate,
}
