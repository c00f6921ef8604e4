using System.Security.Cryptography;
using Cavaxis.Bedside.ImageKeeping;
using Cavaxis.Bedside.Images;
using Cavaxis.Bedside.Stores;
using Cavaxis.Dicom.Identity;
using Cavaxis.Dicom.Reading;
using Cavaxis.Web.Record;

namespace Cavaxis.Web.Host;

/// <summary>Images of patients: one reader for the whole workspace, files in its data folder.</summary>
internal static class ImageServices
{
    private const int KeyBytes = 32;

    /// <summary>Adds them.</summary>
    public static void AddImages(this IServiceCollection services, WorkspaceOptions options, WorkspaceRecord record)
    {
        services.AddSingleton(static _ => new DicomReader());
        services.AddSingleton(given => new ImageDesk(
            record.Courses, new ImageFolder(Path.Combine(options.Data, "images")), given.GetRequiredService<DicomReader>(), new IdentityKey(Key(Path.Combine(options.Data, "images.key")))));
    }

    /// <summary>The secret from which replaced identifiers follow; made when it is first needed, for the owner's eyes alone.</summary>
    private static byte[] Key(string path)
    {
        if (!File.Exists(path))
        {
            WholeFile.Write(path, RandomNumberGenerator.GetBytes(KeyBytes));
            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite);
            }
        }

        return File.ReadAllBytes(path);
    }
}
