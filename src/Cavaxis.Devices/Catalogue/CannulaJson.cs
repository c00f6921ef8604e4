using System.Text.Json;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Catalogue;

/// <summary>A cannula in the catalogue file.</summary>
internal static class CannulaJson
{
    /// <summary>Reads a cannula; faults go to the list.</summary>
    internal static Cannula Read(JsonElement element, string place, List<InputFault> faults)
    {
        JsonFields fields = new(
            element, place, faults, "id", "description", "family", "outerDiameterFrench", "insertableLengthMm", "lumens",
            "largestWireMm", "depthMarksEveryMm", "bendingStiffnessNMm2", "geometrySource");
        IReadOnlyList<(Lumen Lumen, WaterCurve? Curve)> lumens =
            fields.List("lumens", 1, 2, (item, path) => ReadLumen(item, path, faults));
        Dictionary<int, WaterCurve> curves = [];
        for (int i = 0; i < lumens.Count; i++)
        {
            if (lumens[i].Curve is { } curve)
            {
                curves.Add(i, curve);
            }
        }

        return new Cannula(
            fields.Identifier("id"),
            fields.Text("description", 200),
            fields.Choice<CannulaFamily>("family"),
            fields.Number("outerDiameterFrench", 3, 40),
            fields.Number("insertableLengthMm", 10, 900),
            [.. lumens.Select(l => l.Lumen)],
            fields.OptionalNumber("largestWireMm", 0.1, 3),
            fields.OptionalNumber("depthMarksEveryMm", 1, 200),
            fields.OptionalChild("bendingStiffnessNMm2", (item, path) => ReadStiffness(item, path, faults)),
            fields.Child("geometrySource", (item, path) => ReadSource(item, path, faults)) ?? new Source(string.Empty, Certainty.Assumption),
            curves);
    }

    /// <summary>Reads a stiffness range.</summary>
    internal static StiffnessRange ReadStiffness(JsonElement element, string place, List<InputFault> faults)
    {
        JsonFields fields = new(element, place, faults, "low", "high");
        return new StiffnessRange(fields.Number("low", 0.01, 1e6), fields.Number("high", 0.01, 1e6));
    }

    /// <summary>Reads a source.</summary>
    internal static Source ReadSource(JsonElement element, string place, List<InputFault> faults)
    {
        JsonFields fields = new(element, place, faults, "citation", "certainty");
        return new Source(fields.Text("citation", 400), fields.Choice<Certainty>("certainty"));
    }

    /// <summary>Writes a cannula.</summary>
    internal static void Write(Utf8JsonWriter writer, Cannula cannula)
    {
        writer.WriteStartObject();
        writer.WriteString("id", cannula.Id);
        writer.WriteString("description", cannula.Description);
        writer.WriteString("family", JsonFields.Word(cannula.Family));
        writer.WriteNumber("outerDiameterFrench", cannula.OuterDiameterFrench);
        writer.WriteNumber("insertableLengthMm", cannula.InsertableLengthMm);
        writer.WriteStartArray("lumens");
        for (int i = 0; i < cannula.Lumens.Count; i++)
        {
            WriteLumen(writer, cannula.Lumens[i], cannula.WaterCurve.GetValueOrDefault(i));
        }

        writer.WriteEndArray();
        WriteOptional(writer, "largestWireMm", cannula.LargestWireMm);
        WriteOptional(writer, "depthMarksEveryMm", cannula.DepthMarksEveryMm);
        if (cannula.BendingStiffnessNMm2 is { } stiffness)
        {
            WriteStiffness(writer, "bendingStiffnessNMm2", stiffness);
        }
        else
        {
            writer.WriteNull("bendingStiffnessNMm2");
        }

        WriteSource(writer, "geometrySource", cannula.GeometrySource);
        writer.WriteEndObject();
    }

    /// <summary>Writes a stiffness range.</summary>
    internal static void WriteStiffness(Utf8JsonWriter writer, string name, StiffnessRange stiffness)
    {
        writer.WriteStartObject(name);
        writer.WriteNumber("low", stiffness.LowNMm2);
        writer.WriteNumber("high", stiffness.HighNMm2);
        writer.WriteEndObject();
    }

    /// <summary>Writes a source.</summary>
    internal static void WriteSource(Utf8JsonWriter writer, string name, Source source)
    {
        writer.WriteStartObject(name);
        writer.WriteString("citation", source.Citation);
        writer.WriteString("certainty", JsonFields.Word(source.Certainty));
        writer.WriteEndObject();
    }

    private static (Lumen Lumen, WaterCurve? Curve) ReadLumen(JsonElement element, string place, List<InputFault> faults)
    {
        JsonFields fields = new(element, place, faults, "purpose", "segments", "holeGroups", "waterCurve");
        Lumen lumen = new(
            fields.Choice<LumenPurpose>("purpose"),
            fields.List("segments", 1, 20, (item, path) => ReadSegment(item, path, faults)),
            fields.List("holeGroups", 1, 20, (item, path) => ReadGroup(item, path, faults)));
        return (lumen, fields.OptionalChild("waterCurve", (item, path) => ReadCurve(item, path, faults)));
    }

    private static TubeSegment ReadSegment(JsonElement element, string place, List<InputFault> faults)
    {
        JsonFields fields = new(element, place, faults, "lengthMm", "innerDiameterMm", "areaMm2");
        TubeSegment round = TubeSegment.Round(fields.Number("lengthMm", 0.1, 900), fields.Number("innerDiameterMm", 0.5, 20));
        return fields.OptionalNumber("areaMm2", 0.1, 400) is double area ? round with { AreaMm2 = area } : round;
    }

    private static HoleGroup ReadGroup(JsonElement element, string place, List<InputFault> faults)
    {
        JsonFields fields = new(element, place, faults, "name", "fromTipMm", "spanMm", "count", "diameterMm", "facing");
        return new HoleGroup(
            fields.Text("name", 40),
            fields.Number("fromTipMm", 0, 900),
            fields.Number("spanMm", 0, 400),
            fields.Whole("count", 1, 200),
            fields.Number("diameterMm", 0.3, 15),
            fields.Choice<HoleFacing>("facing"));
    }

    private static WaterCurve ReadCurve(JsonElement element, string place, List<InputFault> faults)
    {
        JsonFields fields = new(
            element, place, faults, "referenceDiameterMm", "eulerLogCoefficients", "lowestReynolds", "highestReynolds", "relativeSd");
        return new WaterCurve(
            fields.Number("referenceDiameterMm", 0.5, 20),
            fields.List("eulerLogCoefficients", 2, 5, (item, path) => ReadCoefficient(item, path, faults)),
            fields.Number("lowestReynolds", 1, 1e6),
            fields.Number("highestReynolds", 1, 1e6),
            fields.Number("relativeSd", 0, 1));
    }

    private static double ReadCoefficient(JsonElement element, string place, List<InputFault> faults)
    {
        if (element.ValueKind == JsonValueKind.Number && element.TryGetDouble(out double value) && Math.Abs(value) <= 1e4)
        {
            return value;
        }

        faults.Add(new InputFault(
            element.ValueKind == JsonValueKind.Number ? FaultCode.OutOfRange : FaultCode.WrongKind, place,
            InputFault.Shown(element.GetRawText()), "a number from -10000 to 10000", "Give the coefficient of the fit."));
        return 0;
    }

    private static void WriteLumen(Utf8JsonWriter writer, Lumen lumen, WaterCurve? curve)
    {
        writer.WriteStartObject();
        writer.WriteString("purpose", JsonFields.Word(lumen.Purpose));
        writer.WriteStartArray("segments");
        foreach (TubeSegment segment in lumen.Segments)
        {
            writer.WriteStartObject();
            writer.WriteNumber("lengthMm", segment.LengthMm);
            writer.WriteNumber("innerDiameterMm", segment.InnerDiameterMm);
            if (segment != TubeSegment.Round(segment.LengthMm, segment.InnerDiameterMm))
            {
                writer.WriteNumber("areaMm2", segment.AreaMm2);
            }

            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteStartArray("holeGroups");
        foreach (HoleGroup group in lumen.HoleGroups)
        {
            writer.WriteStartObject();
            writer.WriteString("name", group.Name);
            writer.WriteNumber("fromTipMm", group.FromTipMm);
            writer.WriteNumber("spanMm", group.SpanMm);
            writer.WriteNumber("count", group.Count);
            writer.WriteNumber("diameterMm", group.DiameterMm);
            writer.WriteString("facing", JsonFields.Word(group.Facing));
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        if (curve is not null)
        {
            writer.WriteStartObject("waterCurve");
            writer.WriteNumber("referenceDiameterMm", curve.ReferenceDiameterMm);
            writer.WriteStartArray("eulerLogCoefficients");
            foreach (double coefficient in curve.EulerLogCoefficients)
            {
                writer.WriteNumberValue(coefficient);
            }

            writer.WriteEndArray();
            writer.WriteNumber("lowestReynolds", curve.LowestReynolds);
            writer.WriteNumber("highestReynolds", curve.HighestReynolds);
            writer.WriteNumber("relativeSd", curve.RelativeSd);
            writer.WriteEndObject();
        }

        writer.WriteEndObject();
    }

    private static void WriteOptional(Utf8JsonWriter writer, string name, double? value)
    {
        if (value is double number)
        {
            writer.WriteNumber(name, number);
        }
        else
        {
            writer.WriteNull(name);
        }
    }
}
