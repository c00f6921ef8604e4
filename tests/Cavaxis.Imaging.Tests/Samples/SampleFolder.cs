namespace Cavaxis.Imaging.Tests.Samples;

/// <summary>The folder of test images beside the repository; some machines do not have it.</summary>
internal static class SampleFolder
{
    public static string? Path { get; } = Find();

    private static string? Find()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string folder = System.IO.Path.Combine(at.FullName, "shared", "reference", "imaging");
            if (Directory.Exists(folder))
            {
                return folder;
            }
        }

        return null;
    }
}
