using Cavaxis.Planning.Case;

namespace Cavaxis.Cli.Commands;

/// <summary>Reads the case file that a command names.</summary>
internal static class CaseInput
{
    /// <summary>Reads it.</summary>
    /// <param name="path">Path as typed.</param>
    /// <returns>The case, free of faults.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">It cannot be read or used.</exception>
    public static CaseFile Read(string path)
    {
        using FileStream stream = InputFile.Open(path);
        return CaseFileReader.ReadStream(stream, Path.GetFileName(path));
    }
}
