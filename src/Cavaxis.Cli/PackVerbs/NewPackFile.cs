using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.PackVerbs;

/// <summary>A file that is written where none is.</summary>
internal static class NewPackFile
{
    /// <summary>Writes it, for its owner alone.</summary>
    /// <param name="path">Path; nothing may be there.</param>
    /// <param name="bytes">The contents.</param>
    /// <exception cref="InputFaultException">Something is there, or it cannot be written.</exception>
    public static void Write(string path, byte[] bytes)
    {
        try
        {
            FileStreamOptions options = new() { Mode = FileMode.CreateNew, Access = FileAccess.Write };
            if (!OperatingSystem.IsWindows())
            {
                options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            }

            using FileStream stream = new(path, options);
            stream.Write(bytes);
            stream.Flush(flushToDisk: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.UnreadableFile, path.Length == 0 ? "file name" : InputFault.Shown(path), File.Exists(path) ? "there already" : "not writable", "a new file in a folder you may write to", "Name another file: nothing is overwritten."));
        }
    }
}
