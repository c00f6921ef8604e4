namespace Cavaxis.Records.Chain;

/// <summary>How a chain is broken at a place.</summary>
public enum BreakKind
{
    /// <summary>No event lies at the place, but later ones do.</summary>
    Missing,

    /// <summary>The contents of the event are not those that its hash was computed from.</summary>
    Altered,

    /// <summary>The event holds together in itself but does not follow from the one before it: inserted, exchanged or moved.</summary>
    Unlinked,

    /// <summary>The event is not the next of its stream, or corrects one that is not there.</summary>
    OutOfSequence,

    /// <summary>The store cannot give the event: the file is damaged there.</summary>
    Unreadable,

    /// <summary>The chain ends before the place that an anchor names: events were cut off its end.</summary>
    CutOff,

    /// <summary>Another event stands at the place that an anchor names: the chain was written anew.</summary>
    NotTheAnchored,
}
