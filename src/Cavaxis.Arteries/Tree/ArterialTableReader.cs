using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Tree;

/// <summary>Reads a table of arteries and refuses one that is no tree of vessels.</summary>
public static class ArterialTableReader
{
    private const string File = "arteries.json";

    private static readonly JsonSerializerOptions Reading = new()
    {
        PropertyNameCaseInsensitive = true,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        Converters = { new JsonStringEnumConverter() },
    };

    /// <summary>Reads the text of a table.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The table.</returns>
    /// <exception cref="InputFaultException">The text is no table of a tree of arteries; the faults name segment, field and remedy.</exception>
    public static ArterialTable Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        TableText text = Parsed(json);
        List<InputFault> faults = [];
        Check(text.ElasticModulusKPa, 10, 5000, "elasticModulusKPa", faults);
        Check(text.ReferencePressureKPa, 0, 30, "referencePressureKPa", faults);
        Check(text.VelocityProfileExponent, 2, 20, "velocityProfileExponent", faults);
        Check(text.ReferenceHeightCm, 40, 230, "referenceHeightCm", faults);
        Check(text.ReferenceAgeYears, 0, 120, "referenceAgeYears", faults);
        SegmentText[] segments = text.Segments ?? [];
        if (segments.Length < 2)
        {
            faults.Add(Fault(FaultCode.WrongLength, "segments", segments.Length, "two segments or more", "List the segments from the aortic valve outwards."));
        }

        CheckSegments(segments, faults);
        if (faults.Count > 0)
        {
            throw new InputFaultException(faults);
        }

        return new ArterialTable(
            text.Notice ?? string.Empty, new Source(text.Source?.Citation ?? string.Empty, text.Source?.Certainty ?? Certainty.Assumption),
            text.ElasticModulusKPa * 1e3, text.ReferencePressureKPa * 1e3, text.VelocityProfileExponent, text.ReferenceHeightCm, text.ReferenceAgeYears,
            [.. segments.Select(static s => s.Segment())]);
    }

    private static void CheckSegments(SegmentText[] segments, List<InputFault> faults)
    {
        HashSet<string> names = [];
        HashSet<int> reached = [0];
        HashSet<int> left = [.. segments.Select(static s => s.From)];
        for (int i = 0; i < segments.Length; i++)
        {
            SegmentText s = segments[i];
            string field = string.Create(CultureInfo.InvariantCulture, $"segments[{i}]");
            if (string.IsNullOrWhiteSpace(s.Name) || !names.Add(s.Name))
            {
                faults.Add(Fault(FaultCode.DuplicateField, field + ".name", s.Name ?? "(nothing)", "a name that no other segment has", "Name the segment."));
            }

            if (!reached.Contains(s.From) || !reached.Add(s.To))
            {
                faults.Add(Fault(
                    FaultCode.Contradiction, field + ".from", s.From, "a node that an earlier segment ends at, and a new node at its own end",
                    "List each segment after the one that it springs from; node 0 is the aortic valve."));
            }

            Check(s.LengthMm, 1, 1000, field + ".lengthMm", faults);
            Check(s.ProximalRadiusMm, 0.2, 40, field + ".proximalRadiusMm", faults);
            Check(s.DistalRadiusMm, 0.2, 40, field + ".distalRadiusMm", faults);
            Check(s.WallMm, 0.05, 10, field + ".wallMm", faults);
            if (s.Territory is null != left.Contains(s.To))
            {
                faults.Add(Fault(
                    FaultCode.Contradiction, field + ".territory", s.Territory?.ToString() ?? "(nothing)", "a territory where the segment ends, none where it divides",
                    "Say what the end of the artery supplies."));
            }

            if ((s.Course?.Length ?? 0) < 2 || s.Course!.Any(static p => p.Length != 2 || p[0] is < 0 or > 100 || p[1] is < 0 or > 200))
            {
                faults.Add(Fault(FaultCode.WrongLength, field + ".course", s.Course?.Length ?? 0, "two points or more, 0 to 100 across and 0 to 200 down", "Give the polyline of the drawing."));
            }
        }
    }

    private static TableText Parsed(string json)
    {
        try
        {
            return JsonSerializer.Deserialize<TableText>(json, Reading)
                ?? throw new InputFaultException(Fault(FaultCode.MalformedText, File, "null", "an object", "Write the table as one JSON object."));
        }
        catch (JsonException fault)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.MalformedText, fault.Path is null or "$" ? File : fault.Path, "(this place)", "JSON with the fields of the table", "Correct the text at this place.",
                (int?)fault.LineNumber + 1, (int?)fault.BytePositionInLine + 1));
        }
    }

    private static void Check(double value, double low, double high, string field, List<InputFault> faults)
    {
        if (!(value >= low && value <= high))
        {
            faults.Add(Require.OutOfRange(value, low, high, field, "Give a size that an artery can have."));
        }
    }

    private static InputFault Fault(FaultCode code, string field, object value, string accepted, string remedy) =>
        new(code, field, InputFault.Shown(Convert.ToString(value, CultureInfo.InvariantCulture) ?? string.Empty), accepted, remedy);

    private sealed record SourceText(string? Citation, Certainty Certainty);

    private sealed record TableText(
        string? Notice, SourceText? Source, double ElasticModulusKPa, double ReferencePressureKPa, double VelocityProfileExponent,
        double ReferenceHeightCm, double ReferenceAgeYears, double DrawingWidth, double DrawingHeight, SegmentText[]? Segments);

    private sealed record SegmentText(
        string? Name, string? Title, int From, int To, double LengthMm, double ProximalRadiusMm, double DistalRadiusMm, double WallMm,
        ArterialTerritory? Territory, double? TableResistancePaSPerM3, double? TableComplianceM3PerPa, double[][]? Course)
    {
        public ArterySegment Segment() => new(
            Name ?? string.Empty, Title ?? Name ?? string.Empty, From, To, LengthMm, ProximalRadiusMm, DistalRadiusMm, WallMm, Territory,
            TableResistancePaSPerM3, TableComplianceM3PerPa, [.. (Course ?? []).Select(static p => new LayoutPoint(p[0], p[1]))]);
    }
}
