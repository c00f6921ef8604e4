using System.Globalization;

namespace Cavaxis.Course.Imports;

/// <summary>Times in a file: ISO 8601, with an offset from UTC or in the offset that the person gives for the file.</summary>
internal static class TimeCell
{
    private static readonly string[] Local = ["yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFF", "yyyy-MM-dd HH:mm", "yyyy-MM-dd HH:mm:ss", "yyyy-MM-dd HH:mm:ss.FFFFFFF"];

    private static readonly string[] Offset = [.. Local.Select(static f => f + "zzz"), .. Local.Select(static f => f + "'Z'")];

    /// <summary>The moment of a cell.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="offset">Offset for times that give none; null where there is none.</param>
    /// <param name="needsOffset">True where the time is in order but for its offset.</param>
    public static DateTimeOffset? Of(string cell, TimeSpan? offset, out bool needsOffset)
    {
        needsOffset = false;
        if (DateTimeOffset.TryParseExact(cell, Offset, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset moment))
        {
            return InTime(moment.UtcDateTime) ? moment : null;
        }

        if (!DateTime.TryParseExact(cell, Local, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime local) || !InTime(local))
        {
            return null;
        }

        needsOffset = offset is null;
        return offset is TimeSpan known ? new DateTimeOffset(DateTime.SpecifyKind(local, DateTimeKind.Unspecified), known) : null;
    }

    // Outside of these years a device has lost its clock.
    private static bool InTime(DateTime time) => time.Year is >= 1970 and <= 2199;
}
