using System.Diagnostics;
using System.Globalization;

namespace Cavaxis.Bench;

/// <summary>Processor time of the thread that asks: what others do on the machine does not count. Where the system does not tell it, wall time.</summary>
internal static class ThreadClock
{
    private const string Source = "/proc/thread-self/schedstat";

    private static readonly bool Tells = File.Exists(Source);

    /// <summary>Time now, ms.</summary>
    public static double NowMs => Tells
        ? double.Parse(File.ReadAllText(Source).Split(' ')[0], CultureInfo.InvariantCulture) * 1e-6
        : Stopwatch.GetTimestamp() * 1000.0 / Stopwatch.Frequency;

    /// <summary>What the times are.</summary>
    public static string Words => Tells ? "processor" : "wall";
}
