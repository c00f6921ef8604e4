using System.Text.Json;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.MembraneLungs;
using Cavaxis.Devices.Pumps;
using Cavaxis.Devices.Wires;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Catalogue;

/// <summary>Pumps, membrane lungs and wires in the catalogue file.</summary>
internal static class CircuitJson
{
    private static readonly Source NoSource = new(string.Empty, Certainty.Assumption);

    /// <summary>Reads a pump; faults go to the list.</summary>
    internal static CentrifugalPump ReadPump(JsonElement element, string place, List<InputFault> faults)
    {
        JsonFields fields = new(
            element, place, faults, "id", "description", "referenceSpeedRpm", "shutOffMmHg", "linearMmHgPerLPerMin",
            "quadraticMmHgPerLPerMin2", "lowestSpeedRpm", "highestSpeedRpm", "highestFlowLPerMin", "lowestInletPressureMmHg", "source");
        return new CentrifugalPump(
            fields.Identifier("id"),
            fields.Text("description", 200),
            fields.Number("referenceSpeedRpm", 100, 20_000),
            fields.Number("shutOffMmHg", 10, 2000),
            fields.Number("linearMmHgPerLPerMin", -500, 0),
            fields.Number("quadraticMmHgPerLPerMin2", -500, 0),
            fields.Number("lowestSpeedRpm", 0, 20_000),
            fields.Number("highestSpeedRpm", 100, 20_000),
            fields.Number("highestFlowLPerMin", 0.1, 15),
            fields.Number("lowestInletPressureMmHg", -500, -1),
            fields.Child("source", (item, path) => CannulaJson.ReadSource(item, path, faults)) ?? NoSource);
    }

    /// <summary>Reads a membrane lung; faults go to the list.</summary>
    internal static MembraneLung ReadLung(JsonElement element, string place, List<InputFault> faults)
    {
        JsonFields fields = new(
            element, place, faults, "id", "description", "ratedFlowLPerMin", "lowestFlowLPerMin", "highestFlowLPerMin",
            "linearMmHgPerLPerMin", "quadraticMmHgPerLPerMin2", "carbonDioxideConductance", "primingVolumeMl", "source");
        return new MembraneLung(
            fields.Identifier("id"),
            fields.Text("description", 200),
            fields.Number("ratedFlowLPerMin", 0.1, 15),
            fields.Number("lowestFlowLPerMin", 0, 15),
            fields.Number("highestFlowLPerMin", 0.1, 15),
            fields.Number("linearMmHgPerLPerMin", 0, 1000),
            fields.Number("quadraticMmHgPerLPerMin2", 0, 1000),
            fields.Number("carbonDioxideConductance", 0.1, 200),
            fields.Number("primingVolumeMl", 1, 2000),
            fields.Child("source", (item, path) => CannulaJson.ReadSource(item, path, faults)) ?? NoSource);
    }

    /// <summary>Reads a wire; faults go to the list.</summary>
    internal static GuideWire ReadWire(JsonElement element, string place, List<InputFault> faults)
    {
        JsonFields fields = new(
            element, place, faults, "id", "description", "diameterMm", "lengthCm", "floppyTipCm", "lowFlexuralModulusGPa",
            "highFlexuralModulusGPa", "floppyTipStiffnessNMm2", "source");
        return new GuideWire(
            fields.Identifier("id"),
            fields.Text("description", 200),
            fields.Number("diameterMm", 0.1, 3),
            fields.Number("lengthCm", 10, 500),
            fields.Number("floppyTipCm", 0, 100),
            fields.Number("lowFlexuralModulusGPa", 0.01, 500),
            fields.Number("highFlexuralModulusGPa", 0.01, 500),
            fields.Child("floppyTipStiffnessNMm2", (item, path) => CannulaJson.ReadStiffness(item, path, faults)) ?? new StiffnessRange(1, 1),
            fields.Child("source", (item, path) => CannulaJson.ReadSource(item, path, faults)) ?? NoSource);
    }

    /// <summary>Writes a pump.</summary>
    internal static void Write(Utf8JsonWriter writer, CentrifugalPump pump)
    {
        writer.WriteStartObject();
        writer.WriteString("id", pump.Id);
        writer.WriteString("description", pump.Description);
        writer.WriteNumber("referenceSpeedRpm", pump.ReferenceSpeedRpm);
        writer.WriteNumber("shutOffMmHg", pump.ShutOffMmHg);
        writer.WriteNumber("linearMmHgPerLPerMin", pump.LinearMmHgPerLPerMin);
        writer.WriteNumber("quadraticMmHgPerLPerMin2", pump.QuadraticMmHgPerLPerMin2);
        writer.WriteNumber("lowestSpeedRpm", pump.LowestSpeedRpm);
        writer.WriteNumber("highestSpeedRpm", pump.HighestSpeedRpm);
        writer.WriteNumber("highestFlowLPerMin", pump.HighestFlowLPerMin);
        writer.WriteNumber("lowestInletPressureMmHg", pump.LowestInletPressureMmHg);
        CannulaJson.WriteSource(writer, "source", pump.Source);
        writer.WriteEndObject();
    }

    /// <summary>Writes a membrane lung.</summary>
    internal static void Write(Utf8JsonWriter writer, MembraneLung lung)
    {
        writer.WriteStartObject();
        writer.WriteString("id", lung.Id);
        writer.WriteString("description", lung.Description);
        writer.WriteNumber("ratedFlowLPerMin", lung.RatedFlowLPerMin);
        writer.WriteNumber("lowestFlowLPerMin", lung.LowestFlowLPerMin);
        writer.WriteNumber("highestFlowLPerMin", lung.HighestFlowLPerMin);
        writer.WriteNumber("linearMmHgPerLPerMin", lung.LinearMmHgPerLPerMin);
        writer.WriteNumber("quadraticMmHgPerLPerMin2", lung.QuadraticMmHgPerLPerMin2);
        writer.WriteNumber("carbonDioxideConductance", lung.CarbonDioxideConductance);
        writer.WriteNumber("primingVolumeMl", lung.PrimingVolumeMl);
        CannulaJson.WriteSource(writer, "source", lung.Source);
        writer.WriteEndObject();
    }

    /// <summary>Writes a wire.</summary>
    internal static void Write(Utf8JsonWriter writer, GuideWire wire)
    {
        writer.WriteStartObject();
        writer.WriteString("id", wire.Id);
        writer.WriteString("description", wire.Description);
        writer.WriteNumber("diameterMm", wire.DiameterMm);
        writer.WriteNumber("lengthCm", wire.LengthCm);
        writer.WriteNumber("floppyTipCm", wire.FloppyTipCm);
        writer.WriteNumber("lowFlexuralModulusGPa", wire.LowFlexuralModulusGPa);
        writer.WriteNumber("highFlexuralModulusGPa", wire.HighFlexuralModulusGPa);
        CannulaJson.WriteStiffness(writer, "floppyTipStiffnessNMm2", wire.FloppyTipStiffness);
        CannulaJson.WriteSource(writer, "source", wire.Source);
        writer.WriteEndObject();
    }
}
