using System.Globalization;
using System.Security.Cryptography;
using Cavaxis.Dicom.Cautions;
using Cavaxis.Dicom.Elements;
using Cavaxis.Dicom.Headers;
using Cavaxis.Dicom.Hosting;
using Cavaxis.Dicom.Pixels;
using Cavaxis.Dicom.Wire;
using Cavaxis.Imaging.Frames;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Dicom.Reading;

/// <summary>
/// Reads DICOM images through GDCM in a process of its own, which it starts when it is first asked and ends with itself. A file that
/// crashes the decoder, hangs it or fills its memory gives a typed fault; the next file is read by a new process.
/// </summary>
public sealed class DicomReader : IAsyncDisposable
{
    private readonly ReadLimits limits;

    /// <summary>A reader. Nothing is started yet.</summary>
    /// <param name="limits">What one request may take; null for <see cref="ReadLimits.Usual"/>.</param>
    /// <param name="bindingFolder">Folder of GDCM's C# binding; empty for that of Debian.</param>
    public DicomReader(ReadLimits? limits = null, string bindingFolder = "")
    {
        this.limits = limits ?? ReadLimits.Usual;
        Host = new WorkerHost(this.limits, bindingFolder);
    }

    internal WorkerHost Host { get; }

    /// <summary>Reads what a file says about its picture.</summary>
    /// <param name="path">The file.</param>
    /// <param name="cancel">Ends the wait.</param>
    /// <returns>Header, regions and cautions.</returns>
    /// <exception cref="InputFaultException">There is no such file, it is no DICOM, or GDCM is not installed.</exception>
    public async Task<DicomFile> ReadAsync(string path, CancellationToken cancel = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        string full = Path.GetFullPath(path);
        (string hash, long length) = await HashAsync(full, cancel).ConfigureAwait(false);
        byte[] sent = await Host.AskAsync(WorkerRequest.Elements, full, 0, cancel).ConfigureAwait(false);
        if (ElementReader.Read(sent) is not { } read)
        {
            throw FileFault.Malformed(full, "its elements cannot be told apart");
        }

        bool isDeflated = read.TransferSyntax == TransferSyntaxWords.Deflated;
        if (!isDeflated && FileEnd.Least(read.Head, read.Data, read.TransferSyntax != TransferSyntaxWords.ImplicitLittleEndian) > length)
        {
            throw FileFault.Malformed(full, "the file ends before its pixels do");
        }

        ImageHeader header = HeaderReader.Read(read.TransferSyntax, read.Data);
        return new DicomFile(full, hash, header, RegionReader.Read(read.Data), HeaderCautions.Of(header, read.Data), read.Head, read.Data);
    }

    /// <summary>One frame as it is stored, decoded.</summary>
    /// <param name="file">A file that was read.</param>
    /// <param name="index">The frame, from 0.</param>
    /// <param name="cancel">Ends the wait.</param>
    /// <returns>The frame.</returns>
    /// <exception cref="InputFaultException">There is no such frame, or it cannot be decoded.</exception>
    public async Task<StoredFrame> StoredFrameAsync(DicomFile file, int index, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (file.FrameCount == 0)
        {
            throw FileFault.Malformed(file.Path, "it holds no picture", "a file with a picture", "Choose an image, not a report or a plan.");
        }

        _ = Require.InRange(index, 0, file.FrameCount - 1, "frame", "Give the number of a frame of the file; the first is 0.");
        byte[] sent = await Host.AskAsync(WorkerRequest.Frame, file.Path, index, cancel).ConfigureAwait(false);
        bool swapsWords = file.Header.TransferSyntax == TransferSyntaxWords.ExplicitBigEndian;
        StoredFrame frame = StoredFrameReader.Read(sent, swapsWords) ?? throw FileFault.Malformed(file.Path, string.Create(CultureInfo.InvariantCulture, $"frame {index} has too few samples"));
        return frame.Width == file.Header.Columns && frame.Height == file.Header.Rows ? frame : throw FileFault.Malformed(file.Path, "its pixels are of another size than its header says");
    }

    /// <summary>One frame as it is shown: window, palette and colour transform applied.</summary>
    /// <param name="file">A file that was read.</param>
    /// <param name="index">The frame, from 0.</param>
    /// <param name="cancel">Ends the wait.</param>
    /// <returns>The frame in 8 bits.</returns>
    /// <exception cref="InputFaultException">There is no such frame, it cannot be decoded, or its palette is missing.</exception>
    public async Task<ImageFrame> FrameAsync(DicomFile file, int index, CancellationToken cancel = default)
    {
        StoredFrame frame = await StoredFrameAsync(file, index, cancel).ConfigureAwait(false);
        bool isPalette = frame.Colours.StartsWith("PALETTE", StringComparison.Ordinal);
        Palette? palette = isPalette ? Palette.Read(file.Data) ?? throw FileFault.Malformed(file.Path, "its table of colours is missing or broken") : null;
        return Display.Of(frame, file.Header, palette);
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => Host.DisposeAsync();

    private async Task<(string Hash, long Length)> HashAsync(string path, CancellationToken cancel)
    {
        try
        {
            FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16, FileOptions.Asynchronous | FileOptions.SequentialScan);
            await using (stream.ConfigureAwait(false))
            {
                if (stream.Length > limits.FileLength)
                {
                    string accepted = string.Create(CultureInfo.InvariantCulture, $"at most {limits.FileLength >> 20} MB");
                    throw FileFault.TooLarge(path, string.Create(CultureInfo.InvariantCulture, $"{stream.Length >> 20} MB"), accepted, "Export fewer frames into one file.");
                }

                return (Convert.ToHexStringLower(await SHA256.HashDataAsync(stream, cancel).ConfigureAwait(false)), stream.Length);
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw FileFault.Unreadable(path, failure is FileNotFoundException or DirectoryNotFoundException ? "(no such file)" : "(cannot be opened)", "Give the path of a file that exists and may be read.");
        }
    }
}
