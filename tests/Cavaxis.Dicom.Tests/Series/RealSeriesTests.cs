using Cavaxis.Dicom.Reading;
using Cavaxis.Dicom.Series;

namespace Cavaxis.Dicom.Tests.Series;

public sealed class RealSeriesTests
{
    // SOURCE.md of the reference images: 138 slices of 256 × 256, 1.5625 mm and 2 mm; 75 slices at 2 mm.
    [Theory]
    [InlineData("ct/chest_lidc_half", 256, 138, 1.5625, 2)]
    [InlineData("ct/pelvis_vhf_half", 256, 75, 2, 2)]
    public async Task A_real_series_becomes_a_volume_in_Hounsfield_units(string folder, int columns, int slices, double pixelMm, double stepMm)
    {
        if (Places.OfReference(folder) is not { } place)
        {
            return;
        }

        await using DicomReader reader = new();
        ScanSeries series = await new SeriesReader(reader).ReadAsync(place);
        Assert.Equal((columns, slices), (series.Volume.Columns, series.Volume.Slices));
        Assert.Equal(pixelMm, series.Volume.ColumnStep.Length, 1e-6);
        Assert.Equal(stepMm, series.Volume.SliceStep.Length, 1e-3);
        Assert.InRange(series.Volume.Values.ToArray().Min(), (short)-1100, (short)-900);
        Assert.Empty(series.LeftOut);
    }
}
