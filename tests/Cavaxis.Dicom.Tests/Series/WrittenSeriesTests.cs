using Cavaxis.Dicom.Cautions;
using Cavaxis.Dicom.Reading;
using Cavaxis.Dicom.Series;
using Cavaxis.Dicom.Tests.Oracle;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Dicom.Tests.Series;

public sealed class WrittenSeriesTests(OracleRun oracle) : IClassFixture<OracleRun>
{
    // The numbers are those that Oracle/make.py writes: 0.7 and 0.8 mm, first slice at (-20, -30, 100), 2.5 mm apart, offset k in slice k.
    [Fact]
    public async Task Slices_in_any_order_become_a_volume_by_their_place()
    {
        await using DicomReader reader = new();
        ScanSeries series = await new SeriesReader(reader).ReadAsync(Path.Combine(oracle.Made, "even"));
        Assert.Equal((64, 48, 5), (series.Volume.Columns, series.Volume.Rows, series.Volume.Slices));
        Assert.Equal(new(-20, -30, 100), series.Volume.Origin);
        Assert.Equal(new(0.7, 0, 0), series.Volume.ColumnStep);
        Assert.Equal(new(0, 0.8, 0), series.Volume.RowStep);
        Assert.Equal(2.5, series.Volume.SliceStep.Z, 1e-9);
        for (int k = 1; k < 5; k++)
        {
            Assert.Equal(series.Volume[3, 4, 0] + (11 * k), series.Volume[3, 4, k]);
        }

        Assert.Empty(series.Cautions);
        Assert.Empty(series.LeftOut);
    }

    [Theory]
    [InlineData("missing", "1 slices missing")]
    [InlineData("uneven", "3.7 mm")]
    [InlineData("doubled", "in one place")]
    [InlineData("mixed", "2 series")]
    [InlineData("unlike", "differs from")]
    [InlineData("scout", "differs from")]
    public async Task A_folder_whose_slices_make_no_volume_is_refused_with_the_reason(string folder, string reason)
    {
        await using DicomReader reader = new();
        InputFaultException fault = await Assert.ThrowsAsync<InputFaultException>(() => new SeriesReader(reader).ReadAsync(Path.Combine(oracle.Made, folder)));
        Assert.Contains(reason, fault.Faults[0].Value, StringComparison.Ordinal);
        Assert.Equal((FaultCode.MalformedText, folder), (fault.Faults[0].Code, fault.Faults[0].Field));
    }

    [Theory]
    [InlineData("turned", "(0018,5100)", "FFS")]
    [InlineData("blank", "(0020,000E)", "blank")]
    [InlineData("blank", "(0008,0016)", "blank")]
    public async Task What_is_doubtful_in_a_header_is_named_once_and_the_volume_is_read(string folder, string field, string found)
    {
        await using DicomReader reader = new();
        ScanSeries series = await new SeriesReader(reader).ReadAsync(Path.Combine(oracle.Made, folder));
        ImageCaution caution = Assert.Single(series.Cautions, c => c.Field.StartsWith(field, StringComparison.Ordinal));
        Assert.StartsWith(found, caution.Found, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_folder_without_slices_says_so_and_so_does_one_that_is_not_there()
    {
        await using DicomReader reader = new();
        string empty = Directory.CreateDirectory(Path.Combine(oracle.Scratch, "empty")).FullName;
        Assert.Equal(FaultCode.MalformedText, (await Assert.ThrowsAsync<InputFaultException>(() => new SeriesReader(reader).ReadAsync(empty))).Faults[0].Code);
        Assert.Equal(FaultCode.UnreadableFile, (await Assert.ThrowsAsync<InputFaultException>(() => new SeriesReader(reader).ReadAsync(empty + "x"))).Faults[0].Code);
    }

    // SOURCE.md: the open chest series says "feet first supine" and lies 1,0,0,0,1,0; the odd slices have empty SOP class and series.
    [Theory]
    [InlineData("ct/chest_lidc_half", "(0018,5100)")]
    [InlineData("ct/odd_headers", "(0020,000E)")]
    public async Task Known_traps_of_the_reference_series_are_named(string folder, string field)
    {
        if (Places.OfReference(folder) is not { } place)
        {
            return;
        }

        await using DicomReader reader = new();
        DicomFile first = await reader.ReadAsync(Directory.GetFiles(place, "*.dcm").Order(StringComparer.Ordinal).First());
        Assert.Contains(first.Cautions, c => c.Field.StartsWith(field, StringComparison.Ordinal));
    }
}
