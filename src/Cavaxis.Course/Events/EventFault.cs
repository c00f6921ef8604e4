using System.Globalization;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Events;

/// <summary>Faults between the fields of one event.</summary>
internal static class EventFault
{
    // Exact formats: anything looser would take a local time for one of Greenwich.
    private static readonly string[] Formats = ["yyyy-MM-dd'T'HH:mmzzz", "yyyy-MM-dd'T'HH:mm:sszzz", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz", "yyyy-MM-dd'T'HH:mm'Z'", "yyyy-MM-dd'T'HH:mm:ss'Z'", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFF'Z'"];

    /// <summary>Something needed is not there.</summary>
    public static void Missing(FaultLedger ledger, string path, string accepted, string remedy) =>
        ledger.Add(FaultCode.MissingField, path, string.Empty, accepted, remedy, ledger.PlaceOf(path));

    /// <summary>Two values that cannot both be true.</summary>
    public static void Contradiction(FaultLedger ledger, string path, string value, string accepted, string remedy) =>
        ledger.Add(FaultCode.Contradiction, path, InputFault.Shown(value), accepted, remedy, ledger.PlaceOf(path));

    /// <summary>A SHA-256 in small hexadecimal.</summary>
    public static void Hash(FaultLedger ledger, string path, string value)
    {
        if (value.Length != EventLimits.Hash || value.Any(static c => c is not ((>= '0' and <= '9') or (>= 'a' and <= 'f'))))
        {
            ledger.Add(FaultCode.MalformedText, path, InputFault.Shown(value), "64 hexadecimal digits 0-9 a-f", "Write the SHA-256 of the file in small letters.", ledger.PlaceOf(path));
        }
    }

    /// <summary>A moment with its offset; null where the text is none.</summary>
    public static DateTimeOffset? Moment(FaultLedger ledger, string path, string value)
    {
        if (Moment(value) is DateTimeOffset moment)
        {
            return moment;
        }

        ledger.Add(
            FaultCode.MalformedText, path, InputFault.Shown(value), "date and time with offset (ISO 8601), such as 2031-02-03T04:05+01:00", "Write the date, T, the time and the offset from UTC.", ledger.PlaceOf(path));
        return null;
    }

    /// <summary>A moment with its offset; null where the text is none.</summary>
    public static DateTimeOffset? Moment(string value) =>
        DateTimeOffset.TryParseExact(value, Formats, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset moment) ? moment : null;
}
