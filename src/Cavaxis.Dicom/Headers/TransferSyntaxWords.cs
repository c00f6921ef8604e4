namespace Cavaxis.Dicom.Headers;

/// <summary>Transfer syntaxes in words (PS3.6 table A-1).</summary>
internal static class TransferSyntaxWords
{
    /// <summary>Not compressed, little endian, with value representations: what this program writes.</summary>
    public const string ExplicitLittleEndian = "1.2.840.10008.1.2.1";

    /// <summary>Not compressed, big endian.</summary>
    public const string ExplicitBigEndian = "1.2.840.10008.1.2.2";

    /// <summary>Not compressed, little endian, without value representations.</summary>
    public const string ImplicitLittleEndian = "1.2.840.10008.1.2";

    /// <summary>Explicit little endian, deflated as a whole.</summary>
    public const string Deflated = "1.2.840.10008.1.2.1.99";

    private static readonly Dictionary<string, string> Words = new()
    {
        [ImplicitLittleEndian] = "implicit little endian, not compressed",
        [ExplicitLittleEndian] = "explicit little endian, not compressed",
        [Deflated] = "deflated explicit little endian",
        [ExplicitBigEndian] = "explicit big endian, not compressed",
        ["1.2.840.10008.1.2.4.50"] = "JPEG baseline, lossy",
        ["1.2.840.10008.1.2.4.51"] = "JPEG extended, lossy",
        ["1.2.840.10008.1.2.4.57"] = "JPEG lossless, process 14",
        ["1.2.840.10008.1.2.4.70"] = "JPEG lossless, process 14, selection value 1",
        ["1.2.840.10008.1.2.4.80"] = "JPEG-LS lossless",
        ["1.2.840.10008.1.2.4.81"] = "JPEG-LS near lossless",
        ["1.2.840.10008.1.2.4.90"] = "JPEG 2000 lossless",
        ["1.2.840.10008.1.2.4.91"] = "JPEG 2000",
        ["1.2.840.10008.1.2.5"] = "run-length encoded, lossless",
    };

    /// <summary>In words; the number itself where it is another.</summary>
    public static string Of(string transferSyntax) => Words.GetValueOrDefault(transferSyntax, transferSyntax);
}
