namespace Cavaxis.Architecture.Tests.Code;

/// <summary>What an engine may not use: the disk, the net, the clock, chance, the machine, the culture of the thread.</summary>
public static class Impurity
{
    private static readonly HashSet<string> Types =
    [
        "System.IO.File", "System.IO.Directory", "System.IO.FileStream", "System.IO.FileInfo", "System.IO.DirectoryInfo", "System.IO.FileSystemInfo",
        "System.IO.DriveInfo", "System.IO.RandomAccess", "System.IO.FileSystemWatcher", "System.Environment", "System.Console", "System.AppContext", "System.AppDomain",
        "System.Diagnostics.Stopwatch", "System.Diagnostics.Process", "System.Diagnostics.Trace", "System.TimeProvider", "System.TimeZoneInfo", "System.Random",
        "System.Threading.Thread", "System.Threading.Timer", "System.Threading.ThreadPool", "System.Security.Cryptography.RandomNumberGenerator",
    ];

    private static readonly HashSet<string> Members =
    [
        "System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTime.get_Today", "System.DateTimeOffset.get_Now", "System.DateTimeOffset.get_UtcNow",
        "System.Guid.NewGuid", "System.Guid.CreateVersion7", "System.IO.Path.GetTempPath", "System.IO.Path.GetTempFileName", "System.IO.Path.GetRandomFileName", "System.IO.Path.GetFullPath",
        "System.Globalization.CultureInfo.get_CurrentCulture", "System.Globalization.CultureInfo.get_CurrentUICulture",
        "System.Globalization.CultureInfo.set_CurrentCulture", "System.Globalization.CultureInfo.set_DefaultThreadCurrentCulture",
        "System.Globalization.NumberFormatInfo.get_CurrentInfo", "System.StringComparer.get_CurrentCulture", "System.StringComparer.get_CurrentCultureIgnoreCase",
        "System.Threading.Tasks.Task.Delay", "System.Threading.Tasks.Task.Run",
    ];

    /// <summary>
    /// What compilers write into iterators on their own, the line feed by another name, and the number of cores that work
    /// is shared among: the end-to-end tests show that it changes no byte of a result.
    /// </summary>
    private static readonly HashSet<string> Harmless =
        ["System.Environment.get_CurrentManagedThreadId", "System.Environment.get_NewLine", "System.Environment.get_ProcessorCount"];

    private static readonly HashSet<string> Numbers = ["System.Double", "System.Single", "System.Decimal", "System.Int32", "System.Int64", "System.UInt64"];

    /// <summary>True for the disk, the net, the clock, chance and the machine.</summary>
    public static bool IsOutside(Use use) =>
        !Harmless.Contains($"{use.Type}.{use.Member}")
        && (Types.Contains(use.Type) || Members.Contains($"{use.Type}.{use.Member}") || use.Type.StartsWith("System.Net.", StringComparison.Ordinal));

    /// <summary>True for a conversion of a number to text or back that asks the thread for its culture.</summary>
    public static bool AsksTheCulture(Use use) =>
        (Numbers.Contains(use.Type) && use.Member is "ToString" or "Parse" or "TryParse" && Numbers.Contains(use.Type) && !use.Parameters.Contains("System.IFormatProvider"))
        || (use.Type == "System.String" && use.Member is "ToUpper" or "ToLower" && use.Type == "System.String" && use.Parameters.Count == 0)
        || (use.Type == "System.String" && use.Member == "Format" && !use.Parameters.Contains("System.IFormatProvider"));

    /// <summary>Methods that set a floating-point number into an interpolated text that was begun without a culture.</summary>
    public static IEnumerable<string> InterpolatedWithoutCulture(IEnumerable<Use> uses) => uses
        .Where(static u => u.Type == "System.Runtime.CompilerServices.DefaultInterpolatedStringHandler")
        .GroupBy(static u => u.By)
        .Where(static method => method.Any(static u => u.Member == ".ctor" && u.Parameters.Count == 2)
            && method.All(static u => u.Member != ".ctor" || u.Parameters.Count == 2)
            && method.Any(static u => u.Member == "AppendFormatted" && u.Arguments is ["System.Double" or "System.Single" or "System.Decimal"]))
        .Select(static method => method.Key);
}
