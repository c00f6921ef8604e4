using Cavaxis.Devices.Bench;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities;

namespace Cavaxis.Devices.Tests.Bench;

public class BenchCurveFileTests
{
    [Fact]
    public void A_sound_file_gives_the_cannula_of_its_label()
    {
        BenchImport import = BenchCurveFile.Parse(SampleBench.Text);
        Assert.Equal("own-return-17fr", import.Cannula.Id);
        Assert.Equal(CannulaFamily.ArterialReturn, import.Cannula.Family);
        Assert.Equal(17, import.Cannula.OuterDiameterFrench);
        Assert.Equal(180, import.Cannula.InsertableLengthMm, 1e-9);
        Assert.Equal(0.97, import.Cannula.LargestWireMm);
        Assert.Equal(["return side holes", "return end"], import.Cannula.Lumens[0].HoleGroups.Select(g => g.Name));
        Assert.Equal(Certainty.Seen, import.Cannula.GeometrySource.Certainty);
        Assert.Equal(LumenPurpose.Return, import.Purpose);
        Assert.Equal(6, import.Points.Count);
        Assert.Equal(14, import.Points[0].Line);
        Assert.Same(import.Curve, import.Cannula.WaterCurve[0]);
        Assert.Equal(1, import.Quality.LowestFlowLPerMin, 1e-9);
        Assert.Equal(6, import.Quality.HighestFlowLPerMin, 1e-9);
    }

    [Fact]
    public void The_curve_gives_the_bench_points_back_in_water()
    {
        BenchImport import = BenchCurveFile.Parse(SampleBench.Text);
        foreach (BenchPoint point in import.Points)
        {
            LumenFlow flow = CannulaHydraulics.At(import.Cannula, LumenPurpose.Return, point.FlowM3PerS * 60000, Water.At(20));
            Assert.Equal(1, flow.PressureDropPa / point.DropPa, 0.02);
            Assert.False(flow.BeyondBenchRange);
        }
    }

    [Fact]
    public void Units_are_converted()
    {
        const string Table = "flow [L/min],pressure drop [mmHg]\n1,7.4\n2,27.1\n3,58\n4,99.3\n5,150.6\n6,211.2\n";
        string other = SampleBench.With(Table, "pressure drop [kPa];flow [mL/min]\n0.98659;1000\n3.61304;2000\n7.73270;3000\n13.23891;4000\n20.07835;5000\n28.15769;6000\n");
        WaterCurve first = BenchCurveFile.Parse(SampleBench.Text).Curve;
        WaterCurve second = BenchCurveFile.Parse(other).Curve;
        Assert.Equal(1, second.EulerAt(12_000) / first.EulerAt(12_000), 1e-4);
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\n")]
    public void Line_ends_and_a_byte_order_mark_do_not_matter(string lineEnd)
    {
        string text = '\uFEFF' + SampleBench.Text.ReplaceLineEndings(lineEnd);
        Assert.Equal(BenchCurveFile.Parse(SampleBench.Text).Curve.EulerLogCoefficients, BenchCurveFile.Parse(text).Curve.EulerLogCoefficients);
    }

    [Fact]
    public void Another_liquid_than_water_is_described_by_density_and_viscosity()
    {
        string text = SampleBench.With("# temperature [degC]: 20", "# density [kg/m3]: 1100\n# viscosity [mPa.s]: 3.1");
        Fluid liquid = BenchCurveFile.Parse(text).Fluid;
        Assert.Equal(1100, liquid.DensityKgPerM3, 1e-9);
        Assert.Equal(3.1e-3, liquid.ViscosityPaS, 1e-9);
    }

    [Fact]
    public void A_lumen_of_a_dual_lumen_cannula_is_measured_by_naming_a_catalogue_entry()
    {
        const string Text =
            """
            # id: own-bicaval-27fr
            # description: Bicaval cannula, return lumen on the bench
            # like: bicaval-27fr-29cm
            # lumen: return
            # temperature [degC]: 22
            flow [L/min],pressure drop [mmHg]
            1,9
            2,33
            3,71
            4,122
            """;
        BenchImport import = BenchCurveFile.Parse(Text);
        Assert.Equal(LumenPurpose.Return, import.Cannula.Lumens[import.Cannula.WaterCurve.Keys.Single()].Purpose);
        Assert.True(CannulaHydraulics.At(import.Cannula, LumenPurpose.Return, 3, new Fluid(1060, 3e-3)).FromBenchCurve);
        Assert.False(CannulaHydraulics.At(import.Cannula, LumenPurpose.Drainage, 3, new Fluid(1060, 3e-3)).FromBenchCurve);
    }

    [Fact]
    public void Without_hole_lines_the_tip_is_open()
    {
        string text = SampleBench.With("# hole [mm]: return side holes | 12 | 10 | 4 | 1.5 | allRound\n# hole [mm]: return end | 0 | 0 | 1 | 4.7 | end\n", "");
        HoleGroup only = Assert.Single(BenchCurveFile.Parse(text).Cannula.Lumens[0].HoleGroups);
        Assert.Equal(HoleFacing.End, only.Facing);
        Assert.Equal("return end", only.Name);
    }

    [Fact]
    public void An_imported_cannula_survives_the_catalogue_file()
    {
        BenchImport import = BenchCurveFile.Parse(SampleBench.Text);
        DeviceCatalogue own = new("own-1", [import.Cannula], [], [], []);
        Cannula back = CatalogueFile.Parse(CatalogueFile.Write(own)).Cannula("own-return-17fr");
        Fluid blood = new(1060, 3e-3);
        Assert.Equal(
            CannulaHydraulics.At(import.Cannula, LumenPurpose.Return, 4, blood).PressureDropPa,
            CannulaHydraulics.At(back, LumenPurpose.Return, 4, blood).PressureDropPa);
    }
}
