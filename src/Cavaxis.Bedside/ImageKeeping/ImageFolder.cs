using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Cavaxis.Bedside.Stores;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Events;

namespace Cavaxis.Bedside.ImageKeeping;

/// <summary>
/// Images beside the record, without identity: a folder for each patient, in it a folder for each image or series, named by its hash. What stands there is
/// whole: it is written beside and then put in its place. The record refers to it by the hash, and what was altered on the disk is not shown.
/// </summary>
/// <param name="folder">Folder of all images; made when the first is kept.</param>
public sealed class ImageFolder(string folder)
{
    /// <summary>Most files of a series.</summary>
    public const int MostFiles = 2000;

    private const int HashLetters = 64;

    /// <summary>Keeps an image or a series.</summary>
    /// <param name="patient">Whose.</param>
    /// <param name="files">Contents of its files in order, without identity; 1 to <see cref="MostFiles"/>.</param>
    /// <returns>The image; the one that is there already where it is the same.</returns>
    /// <exception cref="InputFaultException">No file or too many; or it cannot be written: then nothing of it is there.</exception>
    public KeptImage Keep(Identifier patient, IReadOnlyList<ReadOnlyMemory<byte>> files)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(files);
        _ = Require.InRange(files.Count, 1, MostFiles, "image.files", "Give the files of one image or one series.");
        string id = IdOf([.. files.Select(static f => HashOf(f.Span))]);
        if (Find(patient, id) is KeptImage there)
        {
            return there;
        }

        string own = Path.Combine(folder, patient.Text);
        string part = Path.Combine(own, $".{id}.{Guid.NewGuid():N}.part");
        try
        {
            Directory.CreateDirectory(part);
            for (int i = 0; i < files.Count; i++)
            {
                WholeFile.Write(Path.Combine(part, string.Create(CultureInfo.InvariantCulture, $"{i + 1:0000}.dcm")), files[i].Span);
            }

            Directory.Move(part, Path.Combine(own, id));
        }
        catch (Exception e) when (e is InputFaultException || WholeFile.IsOfTheDisk(e))
        {
            Discard(part);

            // Another window may have kept the same image meanwhile.
            return Find(patient, id) ?? throw WholeFile.Unwritable(own);
        }

        return Find(patient, id)!;
    }

    /// <summary>An image of a patient.</summary>
    /// <param name="patient">Whose.</param>
    /// <param name="id">Its hash, as it was given.</param>
    /// <returns>The image; null where there is none, or the text is no hash.</returns>
    public KeptImage? Find(Identifier patient, string id)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(id);
        if (id.Length != HashLetters || !id.All(static c => c is >= '0' and <= '9' or >= 'a' and <= 'f'))
        {
            return null;
        }

        string place = Path.Combine(folder, patient.Text, id);
        string[] files = Directory.Exists(place) ? [.. Directory.GetFiles(place, "*.dcm").Order(StringComparer.Ordinal)] : [];
        return files.Length == 0 ? null : new KeptImage(id, files);
    }

    /// <summary>Whether an image is what it was when it was kept.</summary>
    /// <param name="image">The image.</param>
    /// <returns>False where a file was altered, lost or added, or cannot be read.</returns>
    public static bool IsWhole(KeptImage image)
    {
        ArgumentNullException.ThrowIfNull(image);
        try
        {
            return IdOf([.. image.Files.Select(static f => HashOf(File.ReadAllBytes(f)))]) == image.Id;
        }
        catch (Exception e) when (WholeFile.IsOfTheDisk(e))
        {
            return false;
        }
    }

    private static string IdOf(IReadOnlyList<string> hashes) => hashes.Count == 1 ? hashes[0] : HashOf(Encoding.ASCII.GetBytes(string.Concat(hashes)));

    private static string HashOf(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private static void Discard(string part)
    {
        try
        {
            Directory.Delete(part, recursive: true);
        }
        catch (Exception e) when (WholeFile.IsOfTheDisk(e))
        {
            // It stays behind under a name that is never read.
        }
    }
}
