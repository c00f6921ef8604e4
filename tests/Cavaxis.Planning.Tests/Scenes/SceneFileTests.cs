using System.Text;
using System.Text.Json;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Imaging.Echo;
using Cavaxis.Planning.Scenes;
using Cavaxis.Planning.Tests.Case;
using Cavaxis.Quantities.Faults;
using Json.Schema;

namespace Cavaxis.Planning.Tests.Scenes;

public class SceneFileTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(SceneFileReader.Schema());

    private static readonly string Good = File.ReadAllText(Path.Combine(RepositoryFolder.Demo, "scenes", "cannula-in-vessel.json"));

    public static TheoryData<string> Demos => [.. Directory.GetFiles(Path.Combine(RepositoryFolder.Demo, "scenes"), "*.json").Select(static f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Fact]
    public void The_published_schema_is_what_the_types_give_now() =>
        PublishedText.Check("scene.schema.json", static _ => SceneFileReader.Schema());

    [Theory]
    [MemberData(nameof(Demos))]
    public void Every_demo_scene_is_read_built_invented_and_passes_the_schema(string name)
    {
        byte[] bytes = File.ReadAllBytes(Path.Combine(RepositoryFolder.Demo, "scenes", name));
        SceneFile file = SceneFileReader.Read(bytes, name);
        Assert.True(file.Invented);
        Assert.NotNull(BuiltScene.Of(file, DeviceCatalogue.BuiltIn).Scene.Device);
        Assert.True(Passes(Encoding.UTF8.GetString(bytes)));
    }

    [Fact]
    public void A_scene_is_built_as_written()
    {
        BuiltScene built = BuiltScene.Of(SceneFileReader.Read(Encoding.UTF8.GetBytes(Good)), DeviceCatalogue.BuiltIn);
        Assert.Equal((SurroundingsKind.Vessel, 10.0, 1.0, 2.0), (built.Scene.Surroundings.Kind, built.Scene.Surroundings.RadiusMm, built.Scene.Surroundings.WallMm, built.Scene.Surroundings.TissueVariationDb));
        Assert.Equal((AssemblyState.CannulaAlone, 240.0, 0.97), (built.Scene.Device!.State, built.Scene.Device.TipMm, built.Scene.Device.WireDiameterMm));
        Assert.Equal((ProbeKind.Convex, 3.5, 62.0, 50.0), (built.Probe.Kind, built.Probe.FrequencyMHz, built.Probe.AngleDeg, built.Probe.RadiusMm));
        Assert.Equal((640, 512, 60.0, 10.0), (built.Display.WidthPixels, built.Display.HeightPixels, built.Display.DynamicRangeDb, built.Motion.FramesPerSecond));
        Assert.Equal(235, built.Plane.Origin.Z);
    }

    [Theory]
    [InlineData("\"cavaxisScene\": 1", "\"cavaxisScene\": 2", FaultCode.UnsupportedVersion, "cavaxisScene")]
    [InlineData("\"kind\": \"convex\"", "\"kind\": \"curved\"", FaultCode.NotAChoice, "probe.kind")]
    [InlineData("\"frequencyMHz\": 3.5", "\"frequencyMHz\": 350", FaultCode.OutOfRange, "probe.frequencyMHz")]
    [InlineData("\"frequencyMHz\": 3.5,", "", FaultCode.MissingField, "probe.frequencyMHz")]
    [InlineData("\"seed\": 1", "\"sede\": 1", FaultCode.UnknownField, "sede")]
    [InlineData("\"radiusMm\": 10", "\"wallMm\": 1", FaultCode.MissingField, "surroundings.radiusMm")]
    [InlineData("\"kind\": \"vessel\"", "\"kind\": \"waterBath\"", FaultCode.Contradiction, "surroundings.axis")]
    [InlineData("\"invented\": true", "\"invented\": 1", FaultCode.WrongKind, "invented")]
    [InlineData("\"tipMm\": 240", "\"tipMm\": 240,", FaultCode.DuplicateField, "device.tipMm")]
    public void A_fault_is_told_with_its_field_and_line(string from, string to, FaultCode code, string field)
    {
        Assert.Contains(from, Good, StringComparison.Ordinal);
        string bad = Good.Replace(from, code == FaultCode.DuplicateField ? $"{to} \"tipMm\": 1" : to, StringComparison.Ordinal);
        IReadOnlyList<InputFault> faults = Assert.Throws<InputFaultException>(() => SceneFileReader.Read(Encoding.UTF8.GetBytes(bad))).Faults;
        Assert.Contains(faults, f => f.Code == code && f.Field == field);
        Assert.All(faults, static f => Assert.False(string.IsNullOrWhiteSpace(f.Remedy)));
    }

    [Fact]
    public void A_cannula_that_is_not_in_the_catalogue_is_refused()
    {
        SceneFile file = SceneFileReader.Read(Encoding.UTF8.GetBytes(Good.Replace("drain-multi-25fr-55cm", "no-such-thing", StringComparison.Ordinal)));
        Assert.Equal(FaultCode.NotFound, Assert.Throws<InputFaultException>(() => BuiltScene.Of(file, DeviceCatalogue.BuiltIn)).Faults[0].Code);
    }

    // Each byte in turn becomes another one, or the file ends there: it is read, or refused with typed faults, and nothing else.
    [Fact]
    public void Broken_scenes_are_refused_and_never_crash()
    {
        byte[] good = Encoding.UTF8.GetBytes(Good);
        int refused = 0;
        for (int i = 0; i < good.Length; i += 3)
        {
            byte[] bad = (byte[])good.Clone();
            bad[i] = (byte)"x\"{9,-e]\u0001"[i / 3 % 9];
            refused += IsRefused(bad) + IsRefused(good[..i]);
        }

        Assert.True(refused > good.Length / 3, $"{refused} refused");
    }

    private static int IsRefused(byte[] bytes)
    {
        try
        {
            _ = BuiltScene.Of(SceneFileReader.Read(bytes), DeviceCatalogue.BuiltIn);
            return 0;
        }
        catch (InputFaultException e)
        {
            Assert.NotEmpty(e.Faults);
            return 1;
        }
    }

    private static bool Passes(string text)
    {
        using JsonDocument json = JsonDocument.Parse(text);
        return Schema.Evaluate(json.RootElement).IsValid;
    }
}
