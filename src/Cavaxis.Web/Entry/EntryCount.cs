using System.Text.Json.Nodes;
using Cavaxis.Planning.Json;
using Cavaxis.Web.CaseTexts;

namespace Cavaxis.Web.Entry;

/// <summary>How much of a group is answered.</summary>
/// <param name="Known">Fields with a value.</param>
/// <param name="NotKnown">Fields answered with "not known".</param>
/// <param name="All">All fields.</param>
/// <param name="Faulty">Fields with a fault.</param>
public sealed record EntryCount(int Known, int NotKnown, int All, int Faulty)
{
    /// <summary>Counts a group.</summary>
    /// <param name="group">The group.</param>
    /// <param name="draft">The case.</param>
    /// <param name="check">What the reader says to it.</param>
    /// <returns>The counts.</returns>
    public static EntryCount Of(EntryGroup group, CaseDraft draft, CaseCheck check)
    {
        int known = 0;
        int notKnown = 0;
        int all = 0;
        int faulty = 0;
        foreach (EntryField field in group.Fields)
        {
            all++;
            JsonNode? saved = draft.At(field.Path);
            if (saved is JsonValue word && word.TryGetValue(out string? text) && text == JsonName.Unknown)
            {
                notKnown++;
            }
            else if (saved is not null)
            {
                known++;
            }

            faulty += check.At(draft.FaultPath(field.Path)).Any() || (field.NamedBy is string name && check.At(draft.FaultPath(name)).Any()) ? 1 : 0;
        }

        return new EntryCount(known, notKnown, all, faulty);
    }
}
