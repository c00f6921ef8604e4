using Cavaxis.Planning.Json;

namespace Cavaxis.Web.Happenings;

/// <summary>One field of something that happened, read from the record of the event.</summary>
/// <param name="Path">Its path in the event, such as <c>tip.offsetCm</c> or <c>veins[0].clot</c>.</param>
/// <param name="Shape">Kind, bounds and words.</param>
/// <param name="Label">Its name for people.</param>
/// <param name="Row">List and number of the row it stands in; empty where it stands alone.</param>
internal sealed record HappeningField(string Path, RecordField Shape, string Label, string Row)
{
    /// <summary>Its unit; empty for none.</summary>
    public string Unit => Shape.Number is { } number && number.Unit is not "1" && !number.Unit.StartsWith("unit ", StringComparison.Ordinal) ? number.Unit : string.Empty;

    /// <summary>What is accepted; empty where everything is.</summary>
    public string Hint => Shape.Number is { } number ? NumberWords.Range(number) : string.Empty;

    /// <summary>Identifier of its element behind that of the form.</summary>
    public string Id => string.Concat(Path.Select(static c => char.IsAsciiLetterOrDigit(c) ? c : '-'));
}
