namespace Cavaxis.Architecture.Tests.Sources;

/// <summary>The files of the repository.</summary>
public static class Repository
{
    private static readonly HashSet<string> MadeFolders = ["bin", "obj", "out", "TestResults", "node_modules"];

    /// <summary>Folder that holds the solution.</summary>
    public static string Root { get; } = Find();

    /// <summary>C# files of the program.</summary>
    public static IReadOnlyList<string> SourceFiles() => [.. Files(Path.Combine(Root, "src")).Where(static f => f.EndsWith(".cs", StringComparison.Ordinal))];

    /// <summary>C# files of the tests.</summary>
    public static IReadOnlyList<string> TestFiles() => [.. Files(Path.Combine(Root, "tests")).Where(static f => f.EndsWith(".cs", StringComparison.Ordinal))];

    /// <summary>All files that are kept, and none that a build makes.</summary>
    public static IEnumerable<string> Files(string folder) => Directory.GetFiles(folder).Where(static f => Path.GetFileName(f) != ".git")
        .Concat(Directory.GetDirectories(folder).Where(static d => IsKept(Path.GetFileName(d))).SelectMany(Files));

    /// <summary>Path from the root, for messages.</summary>
    public static string Short(string file) => Path.GetRelativePath(Root, file);

    private static bool IsKept(string name) => !MadeFolders.Contains(name) && (name[0] != '.' || name == ".github");

    private static string Find()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "Cavaxis.slnx")))
            {
                return at.FullName;
            }
        }

        throw new DirectoryNotFoundException("No folder above the tests holds Cavaxis.slnx.");
    }
}
