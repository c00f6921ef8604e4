using System.Text;
using Cavaxis.Dicom.Elements;

namespace Cavaxis.Dicom.Identity;

/// <summary>Applies the profile to the elements of a file, at every depth.</summary>
/// <param name="key">From which replacements follow.</param>
internal sealed class SetCleaner(IdentityKey key)
{
    private const uint PatientId = 0x0010_0020;
    private const string StandardUids = "1.2.840.10008.";

    /// <summary>Attributes removed so far.</summary>
    public int Removed { get; private set; }

    /// <summary>Values emptied or replaced by a dummy so far.</summary>
    public int Emptied { get; private set; }

    /// <summary>Identifiers replaced so far.</summary>
    public int Replaced { get; private set; }

    /// <summary>The elements that stay.</summary>
    public DicomSet Clean(DicomSet set) => new([.. set.Elements.Select(Clean).OfType<DicomElement>()]);

    private DicomElement? Clean(DicomElement element)
    {
        ProfileAction? action = BasicProfile.Of(element.Tag);
        switch (action)
        {
            case ProfileAction.Remove:
                Removed++;
                return null;
            case ProfileAction.Empty:
                Emptied++;
                return Empty(element);
            case ProfileAction.Dummy:
                Emptied++;
                return Dummy(element);
            case ProfileAction.Replace:
                return Replace(element);
        }

        if (element.Items is not null)
        {
            return element with { Items = [.. element.Items.Select(Clean)] };
        }

        // Not in the table, and still able to tell who it was: what no dictionary knows, names, dates, and identifiers that are not the standard's own.
        switch (element.Vr)
        {
            case "UN":
                Removed++;
                return null;
            case "PN" or "DA" or "DT" when element.Value.Length > 0:
                Emptied++;
                return Empty(element);
            case "UI":
                return Replace(element);
            default:
                return element;
        }
    }

    private static DicomElement Empty(DicomElement element) => element with { Value = ReadOnlyMemory<byte>.Empty, Items = element.Vr == "SQ" ? [] : null };

    private DicomElement Dummy(DicomElement element)
    {
        string text = element.Vr switch
        {
            "DA" => "19000101",
            "TM" => "000000",
            "DT" => "19000101000000",
            "AS" => "000Y",
            "DS" or "IS" => "0",
            "UI" => key.Uid(Text(element)),
            "AE" or "CS" or "LO" or "LT" or "PN" or "SH" or "ST" or "UC" or "UT" => element.Tag == PatientId && Text(element) is { Length: > 0 } id ? key.Person(id) : "REMOVED",
            _ => string.Empty,
        };

        // An empty value says nothing and may stay so; a sequence becomes one without items.
        return element.Value.Length == 0 || text.Length == 0 ? Empty(element) : element with { Value = Encoding.Latin1.GetBytes(text) };
    }

    private DicomElement Replace(DicomElement element)
    {
        string text = Text(element);
        if (text.Length == 0)
        {
            return element with { Value = ReadOnlyMemory<byte>.Empty };
        }

        string[] parts = text.Split('\\');
        Replaced += parts.Count(static p => !IsStandard(p));
        return element with { Value = Encoding.Latin1.GetBytes(string.Join('\\', parts.Select(p => IsStandard(p) ? p : key.Uid(p)))) };
    }

    private static bool IsStandard(string uid) => uid.Length == 0 || uid.StartsWith(StandardUids, StringComparison.Ordinal);

    private static string Text(DicomElement element) => Encoding.Latin1.GetString(element.Value.Span).Trim(' ', '\0');
}
