using Cavaxis.Dicom.Pixels;
using Cavaxis.Dicom.Reading;
using Cavaxis.Imaging.Frames;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Dicom.Tests.Oracle;

public sealed class OracleTests(OracleRun oracle) : IClassFixture<OracleRun>
{
    /// <summary>Real files whose pixels are refused: one bit a sample, and run-length coded colour of more than 8 bits, which GDCM 3.0.21 decodes into another order.</summary>
    private static readonly string[] Refused =
    [
        "liver_1frame.dcm", "liver_expb_1frame.dcm", "SC_rgb_rle_16bit.dcm", "SC_rgb_rle_16bit_2frame.dcm", "SC_rgb_rle_32bit.dcm", "SC_rgb_rle_32bit_2frame.dcm",
    ];

    // pydicom 2.3 with Pillow, and dcmtk's dcmdjpeg and dcmdjpls, as Debian ships them: run live on every real file at hand.
    [Fact]
    public async Task Headers_regions_hashes_and_pixels_of_every_real_file_are_those_that_pydicom_reads()
    {
        await using DicomReader reader = new();
        List<string> differences = [];
        foreach (OracleFile file in oracle.Real.Where(static f => !Refused.Contains(f.Name)))
        {
            differences.AddRange(await Comparison.DifferencesAsync(reader, file));
        }

        Assert.True(oracle.Real.Count(static f => f.Written.Length > 0) > 40);
        Assert.True(differences.Count == 0, string.Join('\n', differences));
        Assert.Equal(1, reader.Host.Starts);
    }

    [Fact]
    public async Task Every_written_file_reads_as_pydicom_reads_it()
    {
        await using DicomReader reader = new();
        List<string> differences = [];
        foreach (OracleFile file in oracle.Written)
        {
            differences.AddRange(await Comparison.DifferencesAsync(reader, file));
        }

        Assert.True(oracle.Written.Count >= 35);
        Assert.Equal(["j2ksplit.dcm"], oracle.Written.Where(static f => f.Written.Length == 0).Select(static f => f.Name).Order(StringComparer.Ordinal));
        Assert.True(differences.Count == 0, string.Join('\n', differences));
    }

    [Fact]
    public async Task What_cannot_be_decoded_rightly_is_refused_and_not_shown_wrongly()
    {
        await using DicomReader reader = new();
        foreach (string name in Refused)
        {
            DicomFile file = await reader.ReadAsync(Path.Combine(Places.Pydicom, name));
            InputFaultException fault = await Assert.ThrowsAsync<InputFaultException>(() => reader.FrameAsync(file, 0));
            Assert.Equal(FaultCode.MalformedText, fault.Faults[0].Code);
        }
    }

    // Pillow refuses the second; make.py fills frame f with (4 x + y + 9 f) modulo 256 before it encodes them without loss.
    [Theory]
    [InlineData("j2kloop")]
    [InlineData("j2ksplit")]
    public async Task Frames_of_a_loop_are_told_apart_even_where_each_is_cut_into_two_fragments(string name)
    {
        await using DicomReader reader = new();
        DicomFile file = await reader.ReadAsync(Path.Combine(oracle.Made, name + ".dcm"));
        Assert.Equal(3, file.FrameCount);
        for (int f = 0; f < 3; f++)
        {
            StoredFrame frame = await reader.StoredFrameAsync(file, f);
            Assert.All(Enumerable.Range(0, 64 * 48), i => Assert.Equal(((i % 64 * 4) + (i / 64) + (9 * f)) % 256, frame.Value(i % 64, i / 64)));
        }
    }

    // dcmtk's dcm2pnm renders the same files: window 1 of the file for grey ones, its own palette and colour transform.
    [Theory]
    [InlineData("ct12", "+Wi", "1")]
    [InlineData("ct16signed", "+Wi", "1")]
    [InlineData("explicit", "-W")]
    [InlineData("inverse", "-W")]
    [InlineData("palette8", "-W")]
    [InlineData("palette16", "-W")]
    [InlineData("ybr", "-W")]
    [InlineData("ybr422", "-W")]
    [InlineData("planar", "-W")]
    [InlineData("rlergb", "-W")]
    public async Task What_is_shown_is_what_dcm2pnm_shows(string name, params string[] window)
    {
        string file = Path.Combine(oracle.Made, name + ".dcm");
        string picture = Path.Combine(oracle.Scratch, name + ".pnm");
        OracleRun.Run("dcm2pnm", [.. window, "+op", file, picture]);
        byte[] expected = await File.ReadAllBytesAsync(picture);
        await using DicomReader reader = new();
        ImageFrame frame = await reader.FrameAsync(await reader.ReadAsync(file), 0);

        // The samples are the last bytes of a binary pnm file.
        ReadOnlyMemory<byte> samples = expected.AsMemory(expected.Length - frame.Samples.Length);
        Assert.Equal(frame.Channels == 3 ? (byte)'6' : (byte)'5', expected[1]);
        int worst = Enumerable.Range(0, frame.Samples.Length).Max(i => Math.Abs(samples.Span[i] - frame.Samples.Span[i]));

        // dcmtk's colour transform computes with whole numbers and rounds twice.
        Assert.InRange(worst, 0, name.StartsWith("ybr", StringComparison.Ordinal) ? 2 : 1);
    }
}
