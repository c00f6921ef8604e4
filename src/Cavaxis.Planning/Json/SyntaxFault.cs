using System.Text;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Json;

/// <summary>Tells a person what breaks the grammar at one place, and how to mend it.</summary>
internal static class SyntaxFault
{
    private const int ShownBytes = 24;

    private static readonly string[] NotFinite = ["NaN", "-NaN", "Infinity", "-Infinity", "+Infinity", "Inf", "-Inf", "nan", "inf", "-inf"];

    /// <summary>Records the fault at a byte offset.</summary>
    /// <param name="utf8">The whole text, valid UTF-8.</param>
    /// <param name="offset">Where the reader gave up.</param>
    /// <param name="path">Path of the field being read.</param>
    /// <param name="ledger">Takes the fault.</param>
    public static void Add(ReadOnlySpan<byte> utf8, int offset, string path, FaultLedger ledger)
    {
        offset = TokenStart(utf8, offset);
        string here = Here(utf8, offset);
        string word = Word(here);
        (FaultCode code, string accepted, string remedy) = Explain(utf8, offset, here);
        string shown = here.Length == 0 ? "the end of the file" : $"'{InputFault.Shown(word)}'";
        ledger.Add(code, path, shown, accepted, remedy, new PlaceCursor(utf8).At(offset));
    }

    private static (FaultCode Code, string Accepted, string Remedy) Explain(ReadOnlySpan<byte> utf8, int offset, string here)
    {
        const string Json = "JSON text (RFC 8259)";
        if (Array.Exists(NotFinite, word => here.StartsWith(word, StringComparison.Ordinal)))
        {
            return (FaultCode.OutOfRange, "a finite number, or the word \"unknown\" in quotes", "Write \"unknown\" or leave the field out where there is no number.");
        }

        if (here.Length == 0)
        {
            return (FaultCode.MalformedText, Json, "The file is cut off, or a closing quote, bracket or brace is missing.");
        }

        if (here.StartsWith("//", StringComparison.Ordinal) || here.StartsWith("/*", StringComparison.Ordinal) || here[0] == '#')
        {
            return (FaultCode.MalformedText, "JSON without comments", "Remove the comment; the field \"notes\" takes free text.");
        }

        byte before = Before(utf8, offset);
        return here[0] switch
        {
            '}' or ']' when before == (byte)',' => (FaultCode.MalformedText, "no comma after the last entry", "Remove the comma before the closing bracket."),
            '}' or ']' => (FaultCode.MalformedText, Json, "Check that each opening bracket has its own closing one, and that a value follows each name."),
            '\'' or '‘' or '’' or '“' or '”' => (FaultCode.MalformedText, "straight double quotes", "Put names and words in straight double quotes."),
            '"' or '{' or '[' => (FaultCode.MalformedText, Json, "A comma between two entries, or a colon after a name, is missing."),
            >= '0' and <= '9' when before == (byte)',' => (FaultCode.MalformedText, "a number such as 0.5 or 12", "Write decimals with a point, not a comma, and numbers without leading zeros."),
            '+' or '.' => (FaultCode.MalformedText, "a number such as 0.5", "Write a digit before the point and no plus sign."),
            >= '0' and <= '9' => (FaultCode.MalformedText, "a number such as 0.5 or 12", "Write numbers without leading zeros, with a point, and put a comma between entries."),
            ',' => (FaultCode.MalformedText, Json, "A value is missing, or there is one comma too many."),
            < ' ' => (FaultCode.MalformedText, "text without control characters", "Close the text with a quote in the same line; write a line break in a text as \\n."),
            _ => (FaultCode.MalformedText, Json, "Put words in double quotes and check commas, colons and brackets around this place."),
        };
    }

    // The reader stops inside a wrong word (at the a of -a, say); the person looks for its start.
    private static int TokenStart(ReadOnlySpan<byte> utf8, int offset)
    {
        offset = Math.Min(offset, utf8.Length);
        while (offset > 0 && offset < utf8.Length && IsWordByte(utf8[offset]) && IsWordByte(utf8[offset - 1]))
        {
            offset--;
        }

        while (offset > 0 && offset < utf8.Length && (utf8[offset] & 0xC0) == 0x80)
        {
            offset--;
        }

        return offset;
    }

    private static bool IsWordByte(byte b) => b is (byte)'-' or (byte)'+' or (byte)'.' || char.IsAsciiLetterOrDigit((char)b);

    private static string Here(ReadOnlySpan<byte> utf8, int offset)
    {
        ReadOnlySpan<byte> rest = utf8[offset..];
        int end = Math.Min(rest.Length, ShownBytes);
        while (end > 0 && end < rest.Length && (rest[end] & 0xC0) == 0x80)
        {
            end--;
        }

        string text = Encoding.UTF8.GetString(rest[..end]);
        int lineEnd = text.AsSpan(Math.Min(1, text.Length)).IndexOfAny('\r', '\n');
        return lineEnd < 0 ? text : text[..(lineEnd + 1)];
    }

    // A word or number by itself; otherwise as much of the line as says where it is.
    private static string Word(string here)
    {
        int end = 0;
        while (end < here.Length && here[end] < 128 && IsWordByte((byte)here[end]))
        {
            end++;
        }

        return end == 0 ? here : here[..end];
    }

    private static byte Before(ReadOnlySpan<byte> utf8, int offset)
    {
        ReadOnlySpan<byte> head = utf8[..offset].TrimEnd(" \t\r\n"u8);
        return head.IsEmpty ? (byte)0 : head[^1];
    }
}
