using Cavaxis.Imaging.Echo;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Scenes;

/// <summary>Reads a scene file and reports everything wrong with it at once.</summary>
public static class SceneFileReader
{
    /// <summary>Largest scene file read, bytes.</summary>
    public const int LargestFileBytes = PositionedJson.LargestBytes;

    /// <summary>Title of the published schema, docs/scene.schema.json.</summary>
    public const string SchemaTitle = "Cavaxis scene";

    private const string VersionField = "cavaxisScene";

    /// <summary>Reads a scene.</summary>
    /// <param name="utf8">The bytes of the file.</param>
    /// <param name="name">Name of the file, shown where the whole file is meant.</param>
    /// <returns>The scene, free of faults.</returns>
    /// <exception cref="InputFaultException">The bytes are not a usable scene; carries every fault, sorted by place.</exception>
    public static SceneFile Read(ReadOnlySpan<byte> utf8, string name = "scene file")
    {
        FaultLedger ledger = new(InputFault.Shown(name));
        PositionedValue? root = PositionedJson.Read(utf8, ledger);
        if (root is null || IsOtherVersion(root, ledger))
        {
            throw new InputFaultException(ledger.Sorted());
        }

        SceneFile file = RecordBinder<SceneFile>.Bind(root, ledger);
        Check(file, ledger);
        return ledger.IsClean ? file : throw new InputFaultException(ledger.Sorted());
    }

    /// <summary>The schema of the scene file, as docs/scene.schema.json publishes it.</summary>
    public static string Schema() => SchemaWriter.Input<SceneFile>(SchemaTitle);

    // Another version may call everything else differently, so nothing else in the file is judged.
    private static bool IsOtherVersion(PositionedValue root, FaultLedger ledger)
    {
        PositionedValue? version = root.Members.FirstOrDefault(static m => m.Name == VersionField)?.Value;
        if (version is not { Kind: JsonKind.Number, IsFaulty: false } || version.Number.Equals(SceneFile.CurrentVersion) || !double.IsInteger(version.Number))
        {
            return false;
        }

        ledger.Add(
            FaultCode.UnsupportedVersion, VersionField, version.Shown, NumberWords.Of(SceneFile.CurrentVersion),
            "Use a program that reads this version, or rewrite the scene in the accepted one.", version.Place);
        return true;
    }

    private static void Check(SceneFile file, FaultLedger ledger)
    {
        if (!ledger.IsSound("surroundings"))
        {
            return;
        }

        SceneSurroundings around = file.Surroundings;
        if (around.Kind == SurroundingsKind.Vessel)
        {
            Missing(around.Axis.Count >= 2, "surroundings.axis", "at least two points of the vessel's middle line", ledger);
            Missing(around.RadiusMm is not null, "surroundings.radiusMm", "the radius of the vessel's lumen", ledger);
        }
        else
        {
            Surplus(around.Axis.Count == 0, "surroundings.axis", ledger);
            Surplus(around.RadiusMm is null, "surroundings.radiusMm", ledger);
        }

        Missing(file.Device is null || !ledger.IsSound("device") || file.Device.Curve.Count >= 2, "device.curve", "at least two points", ledger);
    }

    private static void Missing(bool isThere, string path, string accepted, FaultLedger ledger)
    {
        if (!isThere)
        {
            ledger.Add(FaultCode.MissingField, path, string.Empty, accepted, "Add it.", ledger.PlaceOf(path));
        }
    }

    private static void Surplus(bool isAbsent, string path, FaultLedger ledger)
    {
        if (!isAbsent)
        {
            ledger.Add(FaultCode.Contradiction, path, "given", "nothing, where there is no vessel", "Take it out, or make the surroundings a vessel.", ledger.PlaceOf(path));
        }
    }
}
