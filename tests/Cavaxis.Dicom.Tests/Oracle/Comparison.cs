using Cavaxis.Dicom.Headers;
using Cavaxis.Dicom.Pixels;
using Cavaxis.Dicom.Reading;
using Cavaxis.Imaging.Frames;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Dicom.Tests.Oracle;

/// <summary>Compares what this program reads in a file with what pydicom reads.</summary>
internal static class Comparison
{
    /// <summary>Lossy pictures: two decoders round differently.</summary>
    private static readonly string[] Lossy = ["1.2.840.10008.1.2.4.50", "1.2.840.10008.1.2.4.51", "1.2.840.10008.1.2.4.91"];

    /// <summary>Differences in words; empty where both agree.</summary>
    public static async Task<List<string>> DifferencesAsync(DicomReader reader, OracleFile oracle)
    {
        List<string> differences = [];
        DicomFile file;
        try
        {
            file = await reader.ReadAsync(oracle.Path);
        }
        catch (InputFaultException fault)
        {
            return oracle.Unread is null && oracle.Undecoded is null ? [$"{oracle.Name}: refused: {fault.Message}"] : [];
        }

        if (oracle.Unread is not null)
        {
            return [];
        }

        ImageHeader header = file.Header;
        void Same<T>(string what, T expected, T found)
        {
            if (!EqualityComparer<T>.Default.Equals(expected, found))
            {
                differences.Add($"{oracle.Name}: {what} is {found}, pydicom reads {expected}");
            }
        }

        Same("hash", oracle.Sha256, file.Sha256);
        Same("transfer syntax", oracle.TransferSyntax, header.TransferSyntax);
        Same("rows", oracle.Rows, header.Rows);
        Same("columns", oracle.Columns, header.Columns);
        Same("frames", oracle.Frames, header.Frames);
        Same("modality", oracle.Modality, header.Modality);
        Same("spacing", oracle.PixelSpacing is [double a, double b] ? (a, b) : null, header.PixelSpacing);
        Same("frame time", oracle.FrameTime, header.FrameTimeMs ?? oracle.FrameTime);
        Same("position", oracle.Position is [double x, double y, double z] ? new(x, y, z) : (Anatomy.Space.Vector3D?)null, header.Position);
        Same("slope", oracle.Slope ?? 1, header.RescaleSlope);
        Same("intercept", oracle.Intercept ?? 0, header.RescaleIntercept);
        Same("regions", oracle.Regions.Length, file.Regions.Count);
        foreach ((double[] stated, CalibratedRegion region) in oracle.Regions.Zip(file.Regions))
        {
            double[] found =
            [
                (int)region.Format, (int)region.Content, region.Left, region.Top, region.Right, region.Bottom, (int)region.UnitX, (int)region.UnitY, region.StepX, region.StepY,
            ];
            Same("region", string.Join(' ', stated), string.Join(' ', found));
        }

        for (int f = 0; f < oracle.Written.Length; f++)
        {
            differences.AddRange(await FrameAsync(reader, file, oracle, f));
        }

        return differences;
    }

    private static async Task<List<string>> FrameAsync(DicomReader reader, DicomFile file, OracleFile oracle, int f)
    {
        StoredFrame stored;
        try
        {
            stored = await reader.StoredFrameAsync(file, f);
        }
        catch (InputFaultException fault)
        {
            return [$"{oracle.Name}: frame {f} refused: {fault.Message}"];
        }

        List<string> differences = [];
        bool isLossy = Lossy.Contains(file.Header.TransferSyntax);
        long[] expected = oracle.Stored(f);
        if (expected.Length != (long)stored.Width * stored.Height * stored.Samples)
        {
            return [$"{oracle.Name}: frame {f} has {stored.Width * stored.Height * stored.Samples} samples, pydicom reads {expected.Length}"];
        }

        (long worst, double mean) = Apart(expected, i => stored.At(i));
        if (worst > (isLossy ? 3 : 0) || mean > 0.5)
        {
            differences.Add($"{oracle.Name}: frame {f}, stored values differ by up to {worst}, {mean:0.###} on average");
        }

        if (oracle.Written[f].Shown)
        {
            ReadOnlyMemory<byte> shown = (await reader.FrameAsync(file, f)).Samples;
            (worst, mean) = Apart([.. oracle.Shown(f).Select(static b => (long)b)], i => shown.Span[(int)i]);
            if (worst > (isLossy ? 6 : 1) || mean > 0.6)
            {
                differences.Add($"{oracle.Name}: frame {f}, colours differ by up to {worst}, {mean:0.###} on average");
            }
        }

        return differences;
    }

    private static (long Worst, double Mean) Apart(long[] expected, Func<long, long> found)
    {
        (long worst, double sum) = (0, 0);
        for (int i = 0; i < expected.Length; i++)
        {
            long apart = Math.Abs(expected[i] - found(i));
            (worst, sum) = (Math.Max(worst, apart), sum + apart);
        }

        return (worst, sum / expected.Length);
    }
}
