using System.Text;
using System.Text.RegularExpressions;

namespace Cavaxis.EndToEnd.Tests.Programs;

/// <summary>What a process left behind.</summary>
/// <param name="ExitCode">Its exit code.</param>
/// <param name="OutBytes">Bytes of its standard output.</param>
/// <param name="Err">Its standard error.</param>
/// <param name="PeakBytes">Largest resident memory seen while it ran; 0 where the system does not tell.</param>
public sealed partial record Ended(int ExitCode, byte[] OutBytes, string Err, long PeakBytes)
{
    /// <summary>Standard output, which must be UTF-8.</summary>
    public string Out { get; } = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(OutBytes);

    /// <summary>Standard error without the lines about progress, which come and go with the load of the machine.</summary>
    public string Complaints { get; } = string.Concat(Err.Split('\n').Where(static line => !Progress().IsMatch(line)));

    /// <summary>Lines of the standard output.</summary>
    public IReadOnlyList<string> Lines => Out.Split('\n');

    [GeneratedRegex(@" … \d+ s$")]
    private static partial Regex Progress();
}
