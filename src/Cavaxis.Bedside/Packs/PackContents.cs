using Cavaxis.Bedside.DeIdentification;

namespace Cavaxis.Bedside.Packs;

/// <summary>What a second-opinion pack holds.</summary>
/// <param name="Format">Always <see cref="PackFormat.PackName"/>.</param>
/// <param name="Version">Version of the contents.</param>
/// <param name="PackId">32 digits of chance, new for each pack: nothing of the patient leads to it.</param>
/// <param name="Question">What is asked.</param>
/// <param name="Entries">The course in order of time.</param>
/// <param name="Attachments">Pictures and pages.</param>
/// <param name="TakenOut">What was left out or made coarser, and why.</param>
public sealed record PackContents(
    string Format, int Version, string PackId, string Question, IReadOnlyList<PackEntry> Entries, IReadOnlyList<PackAttachment> Attachments, IReadOnlyList<TakenOut> TakenOut);
