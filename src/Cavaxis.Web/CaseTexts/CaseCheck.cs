using System.Text;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Web.CaseTexts;

/// <summary>What the reader of case files says to a draft.</summary>
/// <param name="Case">The case; null where the draft has faults.</param>
/// <param name="Faults">Every fault, in the order of their places.</param>
public sealed record CaseCheck(CaseFile? Case, IReadOnlyList<InputFault> Faults)
{
    /// <summary>Checks a text.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The case or its faults.</returns>
    public static CaseCheck Of(string json)
    {
        try
        {
            return new CaseCheck(CaseFileReader.Read(Encoding.UTF8.GetBytes(json)), []);
        }
        catch (InputFaultException faults)
        {
            return new CaseCheck(null, faults.Faults);
        }
    }

    /// <summary>Faults of one field and what lies below it.</summary>
    /// <param name="path">Path as faults name it; null gives none.</param>
    /// <returns>The faults.</returns>
    public IEnumerable<InputFault> At(string? path) => path is null ? [] : Faults.Where(f =>
        f.Field == path || f.Field.StartsWith(path + '.', StringComparison.Ordinal) || f.Field.StartsWith(path + '[', StringComparison.Ordinal));
}
