using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Cavaxis.Reports.Pdf;

/// <summary>
/// Takes chance out of a written PDF. The library draws random identifiers for the file, its metadata and its font subsets;
/// each is replaced by one of equal length made from the rest of the content, so that no offset in the file moves.
/// </summary>
internal static partial class PdfFixedBytes
{
    /// <summary>The same file with identifiers made from its content.</summary>
    /// <param name="written">The file as written.</param>
    /// <returns>A new file of equal length.</returns>
    internal static byte[] Of(byte[] written)
    {
        // Latin-1 gives one character a byte and back, so binary streams pass unharmed.
        string text = Encoding.Latin1.GetString(written);
        text = SubsetTag().Replace(text, m => m.Groups[1].Value + (m.Groups[2].Value.Contains("Bold", StringComparison.Ordinal) ? "CAVAXB" : "CAVAXR") + m.Groups[2].Value);
        text = MetadataId().Replace(text, m => m.Groups[1].Value + Guid.Empty.ToString("D"));
        text = FileId().Replace(text, "/ID[<" + new string('0', 32) + "><" + new string('0', 32) + ">]");
        string digest = Convert.ToHexString(SHA256.HashData(Encoding.Latin1.GetBytes(text)));
        string guid = Guid.ParseExact(digest[..32], "N").ToString("D");
        text = MetadataId().Replace(text, m => m.Groups[1].Value + guid);
        text = FileId().Replace(text, $"/ID[<{digest[..32]}><{digest[..32]}>]");
        return Encoding.Latin1.GetBytes(text);
    }

    [GeneratedRegex(@"(/(?:FontName|BaseFont)/)[A-Z]{6}(\+DejaVu#20Sans(?:,Bold)?)")]
    private static partial Regex SubsetTag();

    [GeneratedRegex("(<xmpMM:(?:DocumentID|InstanceID)>uuid:)[0-9a-f-]{36}")]
    private static partial Regex MetadataId();

    [GeneratedRegex(@"/ID\[<[0-9A-F]{32}><[0-9A-F]{32}>\](?=/Info)")]
    private static partial Regex FileId();
}
