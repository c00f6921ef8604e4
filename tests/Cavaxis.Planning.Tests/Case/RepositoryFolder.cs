namespace Cavaxis.Planning.Tests.Case;

/// <summary>Finds the files that lie beside the source.</summary>
public static class RepositoryFolder
{
    public static string Root { get; } = Find();

    public static string Demo { get; } = Path.Combine(Root, "demo");

    public static string Docs { get; } = Path.Combine(Root, "docs");

    public static IReadOnlyList<string> DemoFiles { get; } =
        [.. Directory.GetFiles(Demo, "*.json").OrderBy(static f => f, StringComparer.Ordinal)];

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
