using Cavaxis.Bedside.DeIdentification;

namespace Cavaxis.Bedside.Packs;

/// <summary>A pack before it is sealed, with what a person still has to look at.</summary>
/// <param name="Contents">What it would hold.</param>
/// <param name="FreeTexts">Every text that a person wrote; only the confirmed ones are in the contents.</param>
public sealed record PackDraft(PackContents Contents, IReadOnlyList<FreeText> FreeTexts);
