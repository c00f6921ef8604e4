using Cavaxis.Bedside.DeIdentification;
using Cavaxis.Bedside.Packs;

namespace Cavaxis.Cli.PackVerbs;

/// <summary>What goes into a pack, as JSON.</summary>
/// <param name="PackId">Identifier of chance.</param>
/// <param name="PackSha256">SHA-256 of the file; null where none was written.</param>
/// <param name="Entries">Number of entries.</param>
/// <param name="Attachments">Number of attachments.</param>
/// <param name="TakenOut">What was taken out.</param>
/// <param name="FreeTexts">Texts that a person must look at.</param>
public sealed record PackMade(string PackId, string? PackSha256, int Entries, int Attachments, IReadOnlyList<TakenOut> TakenOut, IReadOnlyList<FreeText> FreeTexts)
{
    /// <summary>Of a draft.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="sha256">SHA-256 of the file; null for none.</param>
    /// <returns>The same for people.</returns>
    public static PackMade Of(PackDraft draft, string? sha256)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return new(draft.Contents.PackId, sha256, draft.Contents.Entries.Count, draft.Contents.Attachments.Count, draft.Contents.TakenOut, draft.FreeTexts);
    }
}
