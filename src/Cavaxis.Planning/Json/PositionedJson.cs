using System.Globalization;
using System.Text;
using System.Text.Unicode;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Json;

/// <summary>
/// Strict reader of JSON (RFC 8259) from UTF-8 bytes into a small tree in which every value knows its line and column.
/// No comments, no trailing commas, no NaN. A mark of UTF-8 at the start is passed over. Memory stays bounded: the
/// number of bytes, values, levels and characters in one text is limited.
/// </summary>
public static class PositionedJson
{
    /// <summary>Largest text read, bytes (4 MiB).</summary>
    public const int LargestBytes = 4 * 1024 * 1024;

    /// <summary>Deepest nesting of objects and lists; the outermost object is level 1.</summary>
    public const int DeepestLevel = 16;

    /// <summary>Most values in one text. The largest case the format allows holds about two thousand.</summary>
    public const int MostValues = 20_000;

    /// <summary>Longest text value, bytes as written, where the caller does not say.</summary>
    public const int LongestTextBytes = 32_768;

    /// <summary>Longest number, characters as written. A double needs 24.</summary>
    public const int LongestNumber = 64;

    /// <summary>Reads a text and records its faults.</summary>
    /// <param name="utf8">The bytes.</param>
    /// <param name="ledger">Takes the faults.</param>
    /// <param name="longestTextBytes">Longest text value, bytes as written.</param>
    /// <returns>The outermost value; null when a fault stopped the reading. The ledger then holds at least that fault.</returns>
    public static PositionedValue? Read(ReadOnlySpan<byte> utf8, FaultLedger ledger, int longestTextBytes = LongestTextBytes)
    {
        ArgumentNullException.ThrowIfNull(ledger);
        if (utf8.Length > LargestBytes)
        {
            AddTooLarge(ledger, string.Create(CultureInfo.InvariantCulture, $"{utf8.Length} bytes"));
            return null;
        }

        if (utf8.StartsWith(Encoding.UTF8.Preamble))
        {
            utf8 = utf8[Encoding.UTF8.Preamble.Length..];
        }

        if (LooksWide(utf8) || !Utf8.IsValid(utf8))
        {
            AddWrongEncoding(utf8, ledger);
            return null;
        }

        if (utf8.Trim(" \t\r\n"u8).IsEmpty)
        {
            ledger.Add(
                FaultCode.MalformedText, string.Empty, "empty", "one JSON object in braces",
                "Check that the right file was given and that it was saved.", new TextPlace(1, 1));
            return null;
        }

        return new JsonTreeBuilder(utf8, ledger, longestTextBytes).Build();
    }

    internal static void AddTooLarge(FaultLedger ledger, string found) => ledger.Add(
        FaultCode.FileTooLarge, string.Empty, found,
        string.Create(CultureInfo.InvariantCulture, $"at most {LargestBytes} bytes"),
        "Check that the right file was given; a case has a few kilobytes.", null);

    // UTF-16 and UTF-32, with or without a mark: the first character of JSON is ASCII, so one of the first two bytes is
    // zero or the mark itself is there.
    private static bool LooksWide(ReadOnlySpan<byte> utf8) =>
        utf8.Length >= 2 && (utf8[0] == 0 || utf8[1] == 0 || (utf8[0], utf8[1]) is (0xFF, 0xFE) or (0xFE, 0xFF));

    private static void AddWrongEncoding(ReadOnlySpan<byte> utf8, FaultLedger ledger)
    {
        if (LooksWide(utf8))
        {
            ledger.Add(
                FaultCode.WrongEncoding, string.Empty, "text in UTF-16 or UTF-32, or not text", "UTF-8 text",
                "Save the file as UTF-8.", new TextPlace(1, 1));
            return;
        }

        int good = 0;
        while (Rune.DecodeFromUtf8(utf8[good..], out _, out int taken) == System.Buffers.OperationStatus.Done)
        {
            good += taken;
        }

        ledger.Add(
            FaultCode.WrongEncoding, string.Empty,
            string.Create(CultureInfo.InvariantCulture, $"byte 0x{utf8[good]:X2}"), "UTF-8 text",
            "Save the file as UTF-8, or check that it is a text file.", new PlaceCursor(utf8).At(good));
    }
}
