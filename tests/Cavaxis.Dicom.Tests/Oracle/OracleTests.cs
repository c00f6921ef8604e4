using Cavaxis.Dicom.Reading;

namespace Cavaxis.Dicom.Tests.Oracle;

public sealed class OracleTests(OracleRun oracle) : IClassFixture<OracleRun>
{
    // pydicom 2.3 with Pillow, and dcmtk's dcmdjpeg and dcmdjpls, as Debian ships them: run live on every real file at hand.
    [Fact]
    public async Task Headers_regions_hashes_and_pixels_of_every_real_file_are_those_that_pydicom_reads()
    {
        await using DicomReader reader = new();
        List<string> differences = [];
        foreach (OracleFile file in oracle.Real)
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
        Assert.DoesNotContain(oracle.Written, static f => f.Written.Length == 0);
        Assert.True(differences.Count == 0, string.Join('\n', differences));
    }
}
