using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Cavaxis.Dicom.Cautions;
using Cavaxis.Dicom.Headers;
using Cavaxis.Dicom.Hosting;
using Cavaxis.Dicom.Pixels;
using Cavaxis.Dicom.Reading;
using Cavaxis.Imaging.Volumes;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Dicom.Series;

/// <summary>Reads a folder of slices of computed tomography into one volume, one slice at a time.</summary>
/// <param name="reader">Reads the files.</param>
public sealed class SeriesReader(DicomReader reader)
{
    /// <summary>Most files of a folder that are looked at.</summary>
    public const int MostFiles = 5_000;

    /// <summary>Reads the series of a folder. Files that are no slices are left out and named.</summary>
    /// <param name="folder">The folder; its subfolders are not looked into.</param>
    /// <param name="cancel">Ends the wait.</param>
    /// <returns>The volume and what to know about it.</returns>
    /// <exception cref="InputFaultException">There is no such folder, no series of slices, more than one, or its slices do not make a volume.</exception>
    public async Task<ScanSeries> ReadAsync(string folder, CancellationToken cancel = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        string full = Path.GetFullPath(folder);
        List<DicomFile> slices = [];
        List<string> leftOut = [];
        foreach (string path in Files(full))
        {
            try
            {
                DicomFile file = await reader.ReadAsync(path, cancel).ConfigureAwait(false);
                if (file.Header.Kind == ImageKind.TomographySlice)
                {
                    slices.Add(file);
                    continue;
                }
            }
            catch (InputFaultException fault) when (fault.Faults[0].Code is FaultCode.MalformedText or FaultCode.UnreadableFile)
            {
                // A folder of images often holds other files too; a damaged slice leaves a gap that is found below.
            }

            leftOut.Add(Path.GetFileName(path));
        }

        if (slices.Count == 0)
        {
            throw FileFault.Malformed(full, "no slice of computed tomography", "a folder of slices of one series", "Give the folder that holds the slices themselves.");
        }

        SliceStack stack = SliceStack.Of(full, slices);
        ScanVolume volume = await FillAsync(stack, cancel).ConfigureAwait(false);
        string hashes = string.Join('\n', stack.Slices.Select(static s => s.Sha256));
        ImageCaution[] cautions = [.. stack.Slices.SelectMany(static s => s.Cautions).Distinct()];
        return new ScanSeries(volume, stack.Slices[0].Header, cautions, Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(hashes))), leftOut);
    }

    private static string[] Files(string folder)
    {
        if (!Directory.Exists(folder))
        {
            throw FileFault.Unreadable(folder, "(no such folder)", "Give the folder that holds the slices.");
        }

        string[] files = [.. Directory.EnumerateFiles(folder).Take(MostFiles + 1).Order(StringComparer.Ordinal)];
        return files.Length <= MostFiles
            ? files
            : throw FileFault.TooLarge(folder, "more", string.Create(CultureInfo.InvariantCulture, $"at most {MostFiles} files"), "Put the slices of one series into a folder of their own.");
    }

    private async Task<ScanVolume> FillAsync(SliceStack stack, CancellationToken cancel)
    {
        ImageHeader first = stack.Slices[0].Header;
        int inSlice = first.Columns * first.Rows;
        _ = Require.InRange((double)inSlice * stack.Slices.Count, 8, ScanVolume.MostVoxels, "volume.voxels", "Leave out slices that do not show the vessels.");
        short[] values = new short[inSlice * stack.Slices.Count];
        for (int k = 0; k < stack.Slices.Count; k++)
        {
            DicomFile slice = stack.Slices[k];
            StoredFrame frame = await reader.StoredFrameAsync(slice, 0, cancel).ConfigureAwait(false);
            if (frame.Samples != 1)
            {
                throw FileFault.Malformed(slice.Path, "a slice in colour", "slices of one sample a pixel", "Choose the series itself, not a picture made of it.");
            }

            for (int i = 0; i < inSlice; i++)
            {
                values[(k * inSlice) + i] = (short)Math.Clamp(Math.Round((frame.At(i) * slice.Header.RescaleSlope) + slice.Header.RescaleIntercept), short.MinValue, short.MaxValue);
            }
        }

        (double down, double along) = first.PixelSpacing!.Value;
        return new ScanVolume(
            first.Columns, first.Rows, stack.Slices.Count, values, first.Position!.Value, along * first.Orientation!.Value.AlongRow, down * first.Orientation.Value.AlongColumn, stack.Step);
    }
}
