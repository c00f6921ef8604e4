using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Wires;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Tests.Catalogue;

public class CatalogueFileTests
{
    [Fact]
    public void A_written_catalogue_reads_back_to_the_same_text()
    {
        string text = CatalogueFile.Write(DeviceCatalogue.BuiltIn);
        Assert.Equal(text, CatalogueFile.Write(CatalogueFile.Parse(text)));
    }

    [Fact]
    public void Reading_keeps_every_number_of_a_cannula()
    {
        Cannula cannula = new(
            "own-1", "Own \"device\", with an accent: é", CannulaFamily.ArterialReturn, 17.25, 180.1,
            [new Lumen(LumenPurpose.Return, [new TubeSegment(190, 4.9, 19.5)], [new HoleGroup("return end", 0, 0, 1, 1 / 3.0 + 4, HoleFacing.End)])],
            null, null, new StiffnessRange(1.5, 2.5), new Source("Label", Certainty.Seen),
            new Dictionary<int, WaterCurve> { [0] = new WaterCurve(4.9, [1.25, -0.3, 0.001], 1000, 20_000, 0.03) });
        Cannula back = CatalogueFile.Parse(CatalogueFile.Write(new DeviceCatalogue("1", [cannula], [], [], []))).Cannula("own-1");
        Lumen[] none = [];
        Assert.Equal(cannula with { Lumens = none, WaterCurve = back.WaterCurve }, back with { Lumens = none });
        Assert.Equal(cannula.Lumens[0].Segments, back.Lumens[0].Segments);
        Assert.Equal(cannula.Lumens[0].HoleGroups, back.Lumens[0].HoleGroups);
        Assert.Equal(cannula.WaterCurve[0].EulerLogCoefficients, back.WaterCurve[0].EulerLogCoefficients);
        double[] nothing = [];
        Assert.Equal(cannula.WaterCurve[0] with { EulerLogCoefficients = nothing }, back.WaterCurve[0] with { EulerLogCoefficients = nothing });
    }

    [Fact]
    public void Joining_replaces_a_known_identifier_and_adds_the_others()
    {
        Cannula first = DeviceCatalogue.BuiltIn.Cannulae[0];
        DeviceCatalogue own = new("own", [first with { Description = "measured here" }, first with { Id = "own-1" }], [], [], []);
        DeviceCatalogue joined = DeviceCatalogue.BuiltIn.With(own);
        Assert.Equal("measured here", joined.Cannula(first.Id).Description);
        Assert.Equal(DeviceCatalogue.BuiltIn.Cannulae.Count + 1, joined.Cannulae.Count);
        Assert.Equal("1.0.0+own", joined.Version);
    }

    [Fact]
    public void One_identifier_cannot_name_a_pump_and_a_wire()
    {
        GuideWire wire = DeviceCatalogue.BuiltIn.Wires[0];
        DeviceCatalogue own = new("own", [], [], [], [wire with { Id = DeviceCatalogue.BuiltIn.Pumps[0].Id }]);
        InputFault fault = Assert.Single(Assert.Throws<InputFaultException>(() => DeviceCatalogue.BuiltIn.With(own)).Faults);
        Assert.Equal(FaultCode.Contradiction, fault.Code);
    }

    [Fact]
    public void An_identifier_that_names_nothing_is_a_typed_fault() =>
        Assert.Equal(
            FaultCode.NotFound,
            Assert.Throws<InputFaultException>(() => DeviceCatalogue.BuiltIn.Cannula("nothing")).Faults[0].Code);
}
