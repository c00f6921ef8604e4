using Cavaxis.Devices.Catalogue;
using Cavaxis.Imaging.Echo;
using Cavaxis.Planning.Scenes;

namespace Cavaxis.Bench;

/// <summary>The demo scenes of synthetic ultrasound.</summary>
internal static class DemoScenes
{
    /// <summary>Reads one.</summary>
    public static void Built(string name, out EchoScene scene, out ScanPlane plane, out Probe probe)
    {
        byte[] bytes = File.ReadAllBytes(Path.Combine(RepositoryFolder.Path, "demo", "scenes", $"{name}.json"));
        BuiltScene built = BuiltScene.Of(SceneFileReader.Read(bytes, name), DeviceCatalogue.BuiltIn);
        (scene, plane, probe) = (built.Scene, built.Plane, built.Probe);
    }
}
