namespace Cavaxis.Bench;

/// <summary>The folder of the repository that this build lies in.</summary>
internal static class RepositoryFolder
{
    /// <summary>Its path.</summary>
    public static string Path { get; } = Find();

    private static string Find()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(System.IO.Path.Combine(folder.FullName, "Cavaxis.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("Run from a build inside the repository.");
    }
}
