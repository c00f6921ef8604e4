using System.Globalization;

namespace Cavaxis.Architecture.Tests.Code;

/// <summary>Does everything that an engine may not do, also where it is hard to see; each member is found by its rule.</summary>
internal static class Offender
{
    public static Func<string, bool> DiskInALambda => static path => File.Exists(path);

    public static IEnumerable<long> ClockInAnIterator()
    {
        yield return DateTime.UtcNow.Ticks;
    }

    public static async Task<int> ChanceInATask()
    {
        await Task.Yield();
        return Random.Shared.Next();
    }

    public static Random SeededByTheClock() => new();

    public static string Machine() => Environment.MachineName;

    public static HttpClient Net() => new();

    public static void Speaks() => Console.WriteLine();

    public static CultureInfo Culture() => CultureInfo.CurrentCulture;

#pragma warning disable CA1305, CA1304, CA1311 // These are the faults that the rule must find.
    public static string Comma(double value) => value.ToString("F1");

    public static double Point(string text) => double.Parse(text);

    public static string Turkish(string text) => text.ToUpper();
#pragma warning restore CA1305, CA1304, CA1311

    public static string Interpolated(double value) => $"{value:F1} mmHg";
}
