namespace Cavaxis.Reference.Tests;

/// <summary>Finds the documents that lie beside the source.</summary>
internal static class RepositoryFolder
{
    public static string Docs { get; } = Path.Combine(Find(), "docs");

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
