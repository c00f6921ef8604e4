using Cavaxis.Dicom.Elements;

namespace Cavaxis.Dicom.Identity;

/// <summary>What a cleaned file says about its cleaning (PS3.15 E.1.1, PS3.16 CID 7050).</summary>
internal static class ProfileMarks
{
    /// <summary>The elements.</summary>
    /// <param name="isMasked">True where pixels were blackened.</param>
    public static IEnumerable<DicomElement> Of(bool isMasked)
    {
        List<DicomSet> codes = [Code("113100", "Basic Application Confidentiality Profile")];
        if (isMasked)
        {
            codes.Add(Code("113101", "Clean Pixel Data Option"));
            yield return DicomWriter.Text(0x0028_0301, "CS", "NO");
        }

        yield return DicomWriter.Text(0x0012_0062, "CS", "YES");
        yield return DicomWriter.Text(0x0012_0063, "LO", "DICOM PS3.15 Basic Application Confidentiality Profile");
        yield return new DicomElement(0x0012_0064, "SQ", ReadOnlyMemory<byte>.Empty, codes);
        yield return DicomWriter.Text(0x0028_0303, "CS", "REMOVED");
    }

    private static DicomSet Code(string value, string meaning) => new(
    [
        DicomWriter.Text(0x0008_0100, "SH", value),
        DicomWriter.Text(0x0008_0102, "SH", "DCM"),
        DicomWriter.Text(0x0008_0104, "LO", meaning),
    ]);
}
