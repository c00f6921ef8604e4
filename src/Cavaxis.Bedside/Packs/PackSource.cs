using Cavaxis.Records.Events;

namespace Cavaxis.Bedside.Packs;

/// <summary>What a pack is made of.</summary>
/// <param name="Events">The patient's events in order.</param>
/// <param name="Question">What is asked.</param>
/// <param name="Attachments">Pictures and pages; the person who gives them has looked at each.</param>
/// <param name="Names">Names and identifiers known to the record that must stand in no text.</param>
/// <param name="Confirmed">Codes of the free texts that a person confirmed.</param>
public sealed record PackSource(
    IReadOnlyList<RecordedEvent> Events, string Question, IReadOnlyList<PackAttachment> Attachments, IReadOnlyList<string> Names, IReadOnlySet<string> Confirmed)
{
    /// <summary>Never the question: it may name someone.</summary>
    /// <returns>Counts alone.</returns>
    public override string ToString() => FormattableString.Invariant($"{Events.Count} events, {Attachments.Count} attachments");
}
