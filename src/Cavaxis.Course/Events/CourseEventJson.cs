using System.Text.Json;
using System.Text.Json.Serialization;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Events;

/// <summary>Events as JSON, strictly both ways: what would not be read is not written.</summary>
public static class CourseEventJson
{
    /// <summary>As every result of this program, but without line breaks, and without the fields that hold nothing: absence is how an input says so.</summary>
    private static readonly JsonSerializerOptions Options = new(CavaxisJson.Options)
    {
        WriteIndented = false,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    };

    /// <summary>Writes the particulars of an event.</summary>
    /// <param name="happened">The event.</param>
    /// <returns>A JSON object, UTF-8. Reading it gives the same event.</returns>
    /// <exception cref="InputFaultException">A field is out of its range, too long or empty, or fields contradict each other; carries every fault.</exception>
    public static ReadOnlyMemory<byte> Write(CourseEvent happened)
    {
        CourseEventKind kind = CourseEventTable.Of(happened);
        byte[] written;
        try
        {
            written = JsonSerializer.SerializeToUtf8Bytes(happened, kind.Type, Options);
        }
        catch (ArgumentException)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.OutOfRange, kind.Text, "a number that is not finite, or half a character", "finite numbers and whole characters", "Enter the value again."));
        }

        _ = Read(kind.Text, written);
        return written;
    }

    /// <summary>Reads the particulars of an event.</summary>
    /// <param name="kind">Text of its kind.</param>
    /// <param name="utf8">A JSON object.</param>
    /// <returns>The event.</returns>
    /// <exception cref="InputFaultException">No such kind, or not particulars of it; carries every fault with its path.</exception>
    public static CourseEvent Read(string kind, ReadOnlySpan<byte> utf8)
    {
        CourseEventKind known = CourseEventTable.Get(kind);
        FaultLedger ledger = new(kind);
        PositionedValue? root = PositionedJson.Read(utf8, ledger, EventLimits.LongestTextBytes);
        if (root is null)
        {
            throw new InputFaultException(ledger.Sorted());
        }

        CourseEvent read = known.Bind(root, ledger);
        if (ledger.IsClean)
        {
            BlankText.Check(read, ledger);
            read.Check(ledger);
        }

        return ledger.IsClean ? read : throw new InputFaultException(ledger.Sorted());
    }
}
