namespace Cavaxis.Records.Tests;

/// <summary>A clock that moves only when it is told to, or a second each time that it is asked.</summary>
public sealed class TickingClock(DateTimeOffset start, TimeSpan step) : TimeProvider
{
    private DateTimeOffset now = start;

    public TickingClock()
        : this(new DateTimeOffset(2031, 2, 3, 4, 5, 6, TimeSpan.Zero), TimeSpan.FromSeconds(1))
    {
    }

    public override DateTimeOffset GetUtcNow()
    {
        lock (this)
        {
            return now += step;
        }
    }

    public void Advance(TimeSpan by)
    {
        lock (this)
        {
            now += by;
        }
    }
}
