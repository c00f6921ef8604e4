namespace Cavaxis.Web.Tests;

/// <summary>The folder of the repository.</summary>
public static class RepositoryFolder
{
    /// <summary>Folder that holds the solution.</summary>
    public static string Root { get; } = Find();

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
