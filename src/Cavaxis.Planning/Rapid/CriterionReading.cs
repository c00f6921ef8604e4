using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rapid;

/// <summary>One criterion held against the answers.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Kind">What its source says with it.</param>
/// <param name="Wording">In words.</param>
/// <param name="State">Met, not met or unknown.</param>
/// <param name="Voice">What that says.</param>
/// <param name="Strength">How strong its source makes it.</param>
/// <param name="MinutesLeft">Minutes until its limit on low flow is reached, where the clock runs.</param>
/// <param name="SourceId">Name of its source.</param>
/// <param name="Source">Source and how far it was opened.</param>
/// <param name="Note">What else to know; may be empty.</param>
public sealed record CriterionReading(
    string Id, SelectionKind Kind, string Wording, CriterionState State, CriterionVoice Voice, string Strength, double? MinutesLeft, string SourceId, Source Source, string Note);
