using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Stores;

/// <summary>Files that are written whole or not at all.</summary>
public static class WholeFile
{
    /// <summary>Writes a file: to a neighbour first, flushed to the disk, then put in its place.</summary>
    /// <param name="path">Path.</param>
    /// <param name="bytes">Content.</param>
    /// <exception cref="InputFaultException">It cannot be written; what was there before is still there.</exception>
    public static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        ArgumentNullException.ThrowIfNull(path);
        string neighbour = $"{path}.{Environment.ProcessId}.part";
        try
        {
            using (FileStream stream = new(neighbour, FileMode.Create, FileAccess.Write))
            {
                stream.Write(bytes);
                stream.Flush(flushToDisk: true);
            }

            File.Move(neighbour, path, overwrite: true);
        }
        catch (Exception e) when (IsOfTheDisk(e))
        {
            Discard(neighbour);
            throw Unwritable(path);
        }
    }

    /// <summary>True for what goes wrong with a disk, a path or a right, and not with the program.</summary>
    /// <param name="e">What went wrong.</param>
    public static bool IsOfTheDisk(Exception e) => e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException;

    /// <summary>The fault of a path that cannot be written.</summary>
    /// <param name="path">The path.</param>
    public static InputFaultException Unwritable(string path) => new(new InputFault(
        FaultCode.UnreadableFile, InputFault.Shown(path), "not writable", "a path on a disk with room, in a folder you may write to",
        "Nothing was changed. Choose another path or make room."));

    private static void Discard(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception e) when (IsOfTheDisk(e))
        {
            // The neighbour stays behind; the file that matters is untouched.
        }
    }
}
