using Cavaxis.Dicom.Elements;

namespace Cavaxis.Dicom.Reading;

/// <summary>
/// Whether a file ends before its pixels do. The decoder fills what is missing with zeros and says nothing; a picture with a black
/// lower part must not pass for the real one.
/// </summary>
internal static class FileEnd
{
    private const int Preamble = 132;
    private const int ShortHead = 8;
    private const int LongHead = 12;

    /// <summary>Bytes that the elements need at least, where they are not compressed.</summary>
    /// <param name="head">Elements of the head, always explicit.</param>
    /// <param name="data">All other elements.</param>
    /// <param name="isExplicit">True where the data name their value representations.</param>
    public static long Least(DicomSet head, DicomSet data, bool isExplicit) => Preamble + Of(head, true) + Of(data, isExplicit);

    private static long Of(DicomSet set, bool isExplicit) => set.Elements.Sum(e => Of(e, isExplicit));

    private static long Of(DicomElement element, bool isExplicit)
    {
        bool isLong = isExplicit && element.Vr is "OB" or "OW" or "OF" or "OD" or "SQ" or "UT" or "UC" or "UR";
        return (isLong ? LongHead : ShortHead) + element.Value.Length + (element.Pixels?.Lengths.Sum() ?? 0) + (element.Items?.Sum(i => ShortHead + Of(i, isExplicit)) ?? 0);
    }
}
