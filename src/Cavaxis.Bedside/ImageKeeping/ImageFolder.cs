using System.Collections.Concurrent;
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

    private readonly ConcurrentDictionary<string, string> looked = new(StringComparer.Ordinal);

    /// <summary>Keeps an image or a series.</summary>
    /// <param name="patient">Whose.</param>
    /// <param name="files">Paths of its files in order, without identity; 1 to <see cref="MostFiles"/>. They are copied a piece at a time, never held whole.</param>
    /// <returns>The image; the one that is there already where it is the same.</returns>
    /// <exception cref="InputFaultException">No file or too many; or it cannot be written: then nothing of it is there.</exception>
    public KeptImage Keep(Identifier patient, IReadOnlyList<string> files)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(files);
        _ = Require.InRange(files.Count, 1, MostFiles, "image.files", "Give the files of one image or one series.");
        string own = Path.Combine(folder, patient.Text);
        string part = Path.Combine(own, $".{Guid.NewGuid():N}.part");
        string id = string.Empty;
        try
        {
            Directory.CreateDirectory(part);
            id = IdOf([.. files.Select((f, i) => CopiedHash(f, Path.Combine(part, string.Create(CultureInfo.InvariantCulture, $"{i + 1:0000}.dcm"))))]);
            if (Find(patient, id) is null)
            {
                Directory.Move(part, Path.Combine(own, id));
            }
            else
            {
                Discard(part);
            }
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
            return IdOf([.. image.Files.Select(FileHash)]) == image.Id;
        }
        catch (Exception e) when (WholeFile.IsOfTheDisk(e))
        {
            return false;
        }
    }

    /// <summary>The same, remembered: a file whose length and time of writing are those of the last look is not hashed again.</summary>
    /// <param name="image">The image.</param>
    /// <returns>False where a file was altered, lost or added, or cannot be read.</returns>
    public bool IsStillWhole(KeptImage image)
    {
        ArgumentNullException.ThrowIfNull(image);
        string stamp = StampOf(image);
        string key = image.Files[0];
        if (looked.TryGetValue(key, out string? before) && before == stamp)
        {
            return true;
        }

        bool whole = IsWhole(image);
        if (whole)
        {
            looked[key] = stamp;
        }
        else
        {
            _ = looked.TryRemove(key, out _);
        }

        return whole;
    }

    private static string StampOf(KeptImage image) => string.Join('|', image.Files.Select(static f => new FileInfo(f)).Select(static f =>
        f.Exists ? string.Create(CultureInfo.InvariantCulture, $"{f.Name} {f.Length} {f.LastWriteTimeUtc.Ticks}") : "gone"));

    private static string CopiedHash(string from, string to)
    {
        using FileStream source = new(from, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16, FileOptions.SequentialScan);
        using FileStream target = new(to, FileMode.CreateNew, FileAccess.Write);
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        byte[] piece = new byte[1 << 16];
        for (int read = source.Read(piece); read > 0; read = source.Read(piece))
        {
            hash.AppendData(piece, 0, read);
            target.Write(piece, 0, read);
        }

        target.Flush(flushToDisk: true);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static string FileHash(string path)
    {
        using FileStream source = new(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16, FileOptions.SequentialScan);
        return Convert.ToHexStringLower(SHA256.HashData(source));
    }

    private static string IdOf(IReadOnlyList<string> hashes) => hashes.Count == 1 ? hashes[0] : Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(string.Concat(hashes))));

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
