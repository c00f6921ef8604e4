namespace Cavaxis.Planning.Rules;

/// <summary>The state of a fact that makes a finding rule speak.</summary>
public enum FactState
{
    /// <summary>Known to be there.</summary>
    Present,

    /// <summary>Not known. Unknown is never treated as absent.</summary>
    Unknown,
}
