using System.Buffers.Binary;
using System.Globalization;
using System.Security.Cryptography;
using Cavaxis.Dicom.Cautions;
using Cavaxis.Dicom.Elements;
using Cavaxis.Dicom.Headers;
using Cavaxis.Dicom.Hosting;
using Cavaxis.Dicom.Pixels;
using Cavaxis.Dicom.Reading;
using Cavaxis.Dicom.Wire;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Dicom.Identity;

/// <summary>
/// Writes a file anew without who it was, by the basic profile. Compressed pixels are copied as they are unless something is masked;
/// masked and uncompressed ones are written as explicit little endian, one frame at a time.
/// </summary>
/// <param name="reader">Reads and decodes the old file.</param>
/// <param name="key">From which replacements follow.</param>
public sealed class DicomCleaner(DicomReader reader, IdentityKey key)
{
    private const uint PixelTag = 0x7FE0_0010;

    /// <summary>Cleans one file.</summary>
    /// <param name="file">A file that was read.</param>
    /// <param name="target">The new file; must not exist.</param>
    /// <param name="mask">What is blackened; null for nothing.</param>
    /// <param name="cancel">Ends the wait; nothing is left then.</param>
    /// <returns>What was done.</returns>
    /// <exception cref="InputFaultException">The file holds no picture, cannot be decoded, has no regions to keep, or the target exists or cannot be written.</exception>
    public async Task<CleanedFile> CleanAsync(DicomFile file, string target, PixelMask? mask = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentException.ThrowIfNullOrEmpty(target);
        if (file.FrameCount == 0)
        {
            throw FileFault.Malformed(file.Path, "it holds no picture", "a file with a picture", "Only images are cleaned, not reports or plans: leave the file out.");
        }

        RequireRegions(file, mask);
        string full = Path.GetFullPath(target);
        string partial = $"{full}.{Guid.NewGuid():N}.part";
        try
        {
            SetCleaner cleaner = new(key);
            int masked;
            FileStream stream = new(partial, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1 << 16, FileOptions.None);
            await using (stream.ConfigureAwait(false))
            {
                masked = await WriteAsync(file, cleaner, mask, stream, cancel).ConfigureAwait(false);
            }

            string hash = await HashAsync(partial, cancel).ConfigureAwait(false);
            File.Move(partial, full, overwrite: false);
            string patient = file.Data.Text(0x0010_0020);
            return new CleanedFile(
                full, hash, file.Sha256, patient.Length == 0 ? string.Empty : key.Person(patient), cleaner.Removed, cleaner.Emptied, cleaner.Replaced, masked, [.. Left(file, mask)]);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            string why = File.Exists(full) ? "(exists already)" : "(cannot be written)";
            throw new InputFaultException(new InputFault(FaultCode.UnreadableFile, FileFault.Named(full), why, "a new file in a folder that may be written", "Choose another name or folder; no file is written over."));
        }
        finally
        {
            File.Delete(partial);
        }
    }

    private static void RequireRegions(DicomFile file, PixelMask? mask)
    {
        if (mask is not { IsOutsideRegions: true })
        {
            return;
        }

        const string Remedy = "Give the rectangle to mask instead: left,top,width,height.";
        if (file.Regions.Count == 0)
        {
            throw FileFault.Malformed(file.Path, "it has no calibrated regions", "a file with regions, where all outside them is to be masked", Remedy);
        }

        // A region that ends one pixel outside is a habit of some makers. One that ends far outside says that the frame was scaled after it was calibrated: it is not known what it covers.
        if (file.Regions.Any(r => r.Right > file.Header.Columns || r.Bottom > file.Header.Rows))
        {
            throw FileFault.Malformed(file.Path, "a calibrated region is larger than the frame", "regions that lie in the frame", Remedy);
        }
    }

    private static IEnumerable<ImageCaution> Left(DicomFile file, PixelMask? mask)
    {
        if (mask is null)
        {
            yield return new ImageCaution("(7FE0,0010) Pixel Data", "not masked", "Words that stand in the pixels are still there; they may name the person.", "Look at the picture, and mask where words stand.");
        }
        else
        {
            yield return new ImageCaution("(7FE0,0010) Pixel Data", "masked as asked", "Words elsewhere in the pixels are still there.", "Look at every frame before the file leaves the house.");
        }

        if (file.Header.Kind == ImageKind.TomographySlice)
        {
            yield return new ImageCaution("(7FE0,0010) Pixel Data", "slices of a body", "From slices of a head a face can be made.", "Leave out slices of the head.");
        }
    }

    private async Task<int> WriteAsync(DicomFile file, SetCleaner cleaner, PixelMask? mask, Stream stream, CancellationToken cancel)
    {
        DicomWriter writer = new(stream);
        DicomElement pixels = file.Data.Find(PixelTag)!;
        bool isCopied = mask is null && pixels.Pixels!.IsFragmented;
        StoredFrame? first = isCopied ? null : await reader.StoredFrameAsync(file, 0, cancel).ConfigureAwait(false);
        string transferSyntax = isCopied ? file.Header.TransferSyntax : TransferSyntaxWords.ExplicitLittleEndian;
        DicomElement[] marks = [.. ProfileMarks.Of(mask is not null), .. first is null ? [] : Layout(first)];
        HashSet<uint> set = [.. marks.Select(static m => m.Tag), PixelTag];

        // What follows the pixels in a file is padding and signatures: the profile removes them, and they would not hold any more.
        DicomSet cleaned = cleaner.Clean(new DicomSet([.. file.Data.Elements.Where(e => !set.Contains(e.Tag) && e.Tag < PixelTag)]));
        writer.Head(file.Data.Text(0x0008_0016), cleaned.Text(0x0008_0018), transferSyntax);
        writer.Set(new DicomSet([.. cleaned.Elements, .. marks]));
        if (first is null)
        {
            writer.StartFragments(PixelTag);
            for (int i = 0; i < pixels.Pixels!.Lengths.Count; i++)
            {
                writer.Fragment(await reader.Host.AskAsync(WorkerRequest.Fragment, file.Path, i, cancel).ConfigureAwait(false));
            }

            writer.EndFragments();
            return 0;
        }

        return await WriteFramesAsync(file, first, mask, writer, stream, cancel).ConfigureAwait(false);
    }

    private async Task<int> WriteFramesAsync(DicomFile file, StoredFrame first, PixelMask? mask, DicomWriter writer, Stream stream, CancellationToken cancel)
    {
        long each = (long)first.Width * first.Height * first.Samples * (first.BitsAllocated / 8);
        long whole = each * file.FrameCount;
        if (whole >= uint.MaxValue - 1)
        {
            throw FileFault.TooLarge(file.Path, string.Create(CultureInfo.InvariantCulture, $"{whole >> 20} MB"), "less than 4 GB uncompressed", "Clean it without a mask, or export fewer frames.");
        }

        FramePainter painter = new(mask, file.Regions);
        writer.Start(PixelTag, first.BitsAllocated > 8 ? "OW" : "OB", (uint)(whole + (whole % 2)));
        int masked = 0;
        for (int i = 0; i < file.FrameCount; i++)
        {
            StoredFrame frame = i == 0 ? first : await reader.StoredFrameAsync(file, i, cancel).ConfigureAwait(false);
            if (frame.Bytes.Length != first.Bytes.Length || frame.Colours != first.Colours || frame.BitsStored != first.BitsStored)
            {
                throw FileFault.Malformed(file.Path, string.Create(CultureInfo.InvariantCulture, $"frame {i} is of another kind than the first"));
            }

            (byte[] bytes, masked) = painter.Paint(frame);
            await stream.WriteAsync(bytes, cancel).ConfigureAwait(false);
        }

        if (whole % 2 == 1)
        {
            stream.WriteByte(0);
        }

        return masked;
    }

    private static IEnumerable<DicomElement> Layout(StoredFrame frame)
    {
        yield return Short(0x0028_0002, frame.Samples);
        yield return DicomWriter.Text(0x0028_0004, "CS", frame.Colours switch { "YBR_FULL_422" => "YBR_FULL", "YBR_ICT" or "YBR_RCT" => "RGB", _ => frame.Colours });
        if (frame.Samples > 1)
        {
            yield return Short(0x0028_0006, 0);
        }

        yield return Short(0x0028_0100, frame.BitsAllocated);
        yield return Short(0x0028_0101, frame.BitsStored);
        yield return Short(0x0028_0102, frame.BitsStored - 1);
        yield return Short(0x0028_0103, frame.IsSigned ? 1 : 0);
    }

    private static DicomElement Short(uint tag, int value)
    {
        byte[] bytes = new byte[2];
        BinaryPrimitives.WriteUInt16LittleEndian(bytes, (ushort)value);
        return new DicomElement(tag, "US", bytes);
    }

    private static async Task<string> HashAsync(string path, CancellationToken cancel)
    {
        FileStream stream = File.OpenRead(path);
        await using (stream.ConfigureAwait(false))
        {
            return Convert.ToHexStringLower(await SHA256.HashDataAsync(stream, cancel).ConfigureAwait(false));
        }
    }
}
