namespace Cavaxis.Dicom.Tests;

/// <summary>Where the images lie that the tests read in place.</summary>
internal static class Places
{
    /// <summary>Images of pydicom's own tests, from the Debian package python3-pydicom.</summary>
    public const string Pydicom = "/usr/lib/python3/dist-packages/pydicom/data/test_files";

    /// <summary>The reference images beside the repository; null where they are not laid out, as on a machine that only builds.</summary>
    public static string? Reference { get; } = Find();

    /// <summary>A file or folder of the reference images; null where they are not laid out.</summary>
    public static string? OfReference(string relative) => Reference is null ? null : Path.Combine(Reference, relative);

    private static string? Find()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string here = Path.Combine(at.FullName, "shared", "reference", "imaging");
            if (Directory.Exists(here))
            {
                return here;
            }
        }

        return null;
    }
}
