namespace Cavaxis.Records.Events;

/// <summary>A moment as it is kept: whole microseconds since 1970-01-01 UTC, which both stores and the hash hold exactly.</summary>
public static class Moment
{
    /// <summary>Microseconds since 1970-01-01 UTC, what is finer cut off.</summary>
    /// <param name="time">The moment.</param>
    /// <returns>Its number.</returns>
    public static long ToMicroseconds(DateTimeOffset time)
    {
        long ticks = time.UtcTicks - DateTime.UnixEpoch.Ticks;
        return (ticks - (((ticks % TimeSpan.TicksPerMicrosecond) + TimeSpan.TicksPerMicrosecond) % TimeSpan.TicksPerMicrosecond)) / TimeSpan.TicksPerMicrosecond;
    }

    /// <summary>The moment of a number.</summary>
    /// <param name="microseconds">Microseconds since 1970-01-01 UTC.</param>
    /// <returns>The moment in UTC.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Before the year 1 or after the year 9999.</exception>
    public static DateTimeOffset OfMicroseconds(long microseconds) =>
        microseconds is >= -62_135_596_800_000_000 and < 253_402_300_800_000_000
            ? new DateTimeOffset(DateTime.UnixEpoch.Ticks + (microseconds * TimeSpan.TicksPerMicrosecond), TimeSpan.Zero)
            : throw new ArgumentOutOfRangeException(nameof(microseconds), microseconds, "Years 1 to 9999 are kept.");

    /// <summary>The moment cut to what is kept.</summary>
    /// <param name="time">The moment.</param>
    /// <returns>The same in UTC, in whole microseconds.</returns>
    public static DateTimeOffset Cut(DateTimeOffset time) => OfMicroseconds(ToMicroseconds(time));
}
