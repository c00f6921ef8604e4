using Cavaxis.Bedside.Stores;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.Commands;

/// <summary>Reads and writes files for the commands; what the disk refuses becomes a fault in words.</summary>
internal static class InputFile
{
    /// <summary>Opens a file for reading.</summary>
    /// <param name="path">Path.</param>
    /// <returns>The stream.</returns>
    /// <exception cref="InputFaultException">It cannot be opened.</exception>
    public static FileStream Open(string path)
    {
        try
        {
            return File.OpenRead(path);
        }
        catch (Exception e) when (WholeFile.IsOfTheDisk(e))
        {
            throw Unreadable(path, "Check the path and that you may read the file.");
        }
    }

    /// <summary>Reads a whole file of limited size.</summary>
    /// <param name="path">Path.</param>
    /// <param name="most">Largest size in bytes.</param>
    /// <returns>The bytes.</returns>
    /// <exception cref="InputFaultException">It cannot be read or is too large.</exception>
    public static byte[] ReadAll(string path, int most)
    {
        using FileStream stream = Open(path);
        try
        {
            byte[] buffer = new byte[Math.Min(most + 1L, Math.Max(1, stream.Length + 1))];
            int read = stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
            return read <= most && read < buffer.Length
                ? buffer[..read]
                : throw new InputFaultException(new InputFault(
                    FaultCode.FileTooLarge, InputFault.Shown(path), $"more than {most} bytes", $"at most {most} bytes", "Give the right file."));
        }
        catch (Exception e) when (WholeFile.IsOfTheDisk(e))
        {
            throw Unreadable(path, "Check the disk and try again.");
        }
    }

    /// <summary>Writes a file whole or not at all: to a neighbour first, flushed to the disk, then put in its place.</summary>
    /// <param name="path">Path.</param>
    /// <param name="bytes">Content.</param>
    /// <exception cref="InputFaultException">It cannot be written; what was there before is still there.</exception>
    public static void WriteWhole(string path, byte[] bytes) => WholeFile.Write(path, bytes);

    private static InputFaultException Unreadable(string path, string remedy) => new(new InputFault(
        FaultCode.UnreadableFile, path.Length == 0 ? "file name" : InputFault.Shown(path), path.Length == 0 ? "(nothing)" : "not readable", "a file that exists and may be read", remedy));
}
