using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>A file of a folder that was left out.</summary>
/// <param name="File">Its name.</param>
/// <param name="Reason">Why.</param>
public sealed record LeftOutFile(string File, string Reason)
{
    /// <summary>From the fault that was met.</summary>
    /// <param name="path">The file.</param>
    /// <param name="fault">The fault.</param>
    public static LeftOutFile Of(string path, InputFaultException fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        return new LeftOutFile(InputFault.Shown(Path.GetFileName(path)), fault.Faults[0].Value);
    }
}
