using Cavaxis.Planning.Case;

namespace Cavaxis.Bench;

/// <summary>The demo cases of the repository.</summary>
internal static class DemoCases
{
    /// <summary>Path and content of each case, in order of the names.</summary>
    public static IReadOnlyList<(string Path, CaseFile Case)> All { get; } = Read();

    private static (string, CaseFile)[] Read()
    {
        string[] paths = Directory.GetFiles(Path.Combine(RepositoryFolder.Path, "demo"), "*.json");
        Array.Sort(paths, StringComparer.Ordinal);
        return [.. paths.Select(path =>
        {
            using FileStream stream = File.OpenRead(path);
            return (path, CaseFileReader.ReadStream(stream, Path.GetFileName(path)));
        })];
    }
}
