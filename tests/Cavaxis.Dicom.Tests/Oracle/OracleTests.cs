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
        Assert.Equal(["j2ksplit.dcm"], oracle.Written.Where(static f => f.Written.Length == 0).Select(static f => f.Name));
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

    [Fact]
    public async Task A_frame_cut_into_several_fragments_is_the_same_frame()
    {
        await using DicomReader reader = new();
        DicomFile whole = await reader.ReadAsync(Path.Combine(oracle.Made, "j2kloop.dcm"));
        DicomFile cut = await reader.ReadAsync(Path.Combine(oracle.Made, "j2ksplit.dcm"));
        for (int f = 0; f < 3; f++)
        {
            Assert.True((await reader.StoredFrameAsync(whole, f)).Bytes.Span.SequenceEqual((await reader.StoredFrameAsync(cut, f)).Bytes.Span));
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
        Assert.InRange(worst, 0, 1);
    }
}
