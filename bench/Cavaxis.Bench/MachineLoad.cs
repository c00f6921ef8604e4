namespace Cavaxis.Bench;

/// <summary>How busy the machine is, so that a figure can be read with it in mind.</summary>
internal static class MachineLoad
{
    private const string Source = "/proc/loadavg";

    /// <summary>Mean number of runnable tasks over the last minute, this program's own among them.</summary>
    /// <returns>A few words; says so where the system does not tell.</returns>
    public static string Words() => File.Exists(Source) ? $"load {File.ReadAllText(Source).Split(' ')[0]}" : "load unknown";
}
