namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>A fact about an open scan that lies beside the repository; where it does not, the test is skipped and says so.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class OpenScanFactAttribute : FactAttribute
{
    public OpenScanFactAttribute(string name)
    {
        if (Folder(name) is null)
        {
            Skip = $"The open scan {name} is not here: it lies in shared/reference/imaging/ct beside the repository.";
        }
    }

    public static string? Folder(string name)
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string folder = Path.Combine(at.FullName, "shared", "reference", "imaging", "ct", name);
            if (Directory.Exists(folder))
            {
                return folder;
            }
        }

        return null;
    }
}
