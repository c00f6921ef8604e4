using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Bedside.Images;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Web.Entry;

/// <summary>
/// The whole entry: groups in the order in which a bedside finds things out. Fields come from the records of the case; nothing but
/// the grouping is said here.
/// </summary>
public static class EntryForm
{
    private static readonly Lazy<IReadOnlyList<EntryGroup>> Built = new(Build);

    /// <summary>All groups.</summary>
    public static IReadOnlyList<EntryGroup> Groups => Built.Value;

    /// <summary>The group that holds a field.</summary>
    /// <param name="path">Path of a field, or of the section it lies in.</param>
    /// <returns>The group; null where the entry has no such field.</returns>
    public static EntryGroup? GroupOf(string? path) => string.IsNullOrEmpty(path)
        ? null
        : Groups.FirstOrDefault(g => g.Fields.Any(f => f.Path == path)) ?? Groups.FirstOrDefault(g => g.Fields.Any(f => IsBelow(f.Path, path)));

    /// <summary>The field of a path.</summary>
    /// <param name="path">Path of a field, or of the section it lies in: then its first field.</param>
    /// <returns>The field; null where the entry has none.</returns>
    public static EntryField? FieldOf(string? path) =>
        GroupOf(path) is EntryGroup group ? group.Fields.FirstOrDefault(f => f.Path == path) ?? group.Fields.First(f => IsBelow(f.Path, path!)) : null;

    /// <summary>Path of the value of one dimension of the axis.</summary>
    /// <param name="dimension">Dimension.</param>
    /// <returns>A path; of the vessel where the dimension is the diameter of one that is surveyed.</returns>
    public static string PathOf(AxisDimension dimension) => VesselOf(dimension) is (VesselName vessel, BodySide side)
        ? CaseTarget.PathOf(vessel, side, "diameterMm")
        : CaseTarget.PathOf(dimension, "value");

    private static IReadOnlyList<EntryGroup> Build()
    {
        EntryRow title = new(string.Empty, [Field("title", RecordShape.Of(typeof(CaseFile)).Find("title")!)]);
        return
        [
            new("patient", "Patient", MeaningOf("patient"), [title, Section("patient")]),
            new("support", "Goal and support", MeaningOf("support"), [Section("support")]),
            new("blood", "Blood", MeaningOf("blood"), [Section("blood")]),
            new("heart", "Heart", MeaningOf("heart"), [Section("heart")]),
            new("vessels", "Vessels", MeaningOf("vessels"), Vessels()),
            new("axis", "Axis", MeaningOf("axis"), Axis()),
            new("access", "Access and obstacles", "How the vessels are to be entered, and what is in the way of a wire or a cannula.", [Section("access"), Section("obstacles")]),
            new("resources", "Resources", MeaningOf("resources"), [Section("resources"), OnHand()]),
            new("ventilation", "Ventilation", MeaningOf("ventilation"), [Section("ventilation")]),
            new("running", "Running support", MeaningOf("running"), [RunningCircuit(), .. RunningCannulae()]),
            new("observations", "Readings", MeaningOf("observations"), [Section("observations")]),
        ];
    }

    private static string MeaningOf(string section) => RecordShape.Of(typeof(CaseFile)).Find(section)!.Meaning!;

    /// <summary>The fields of a section that a person can type; lists of records are for the case file.</summary>
    private static EntryRow Section(string section)
    {
        RecordField shape = RecordShape.Of(typeof(CaseFile)).Find(section)!;
        return new(string.Empty, [.. RecordShape.Of(shape.Type).Fields.Where(static f => f.Kind is not (FieldKind.List or FieldKind.Record)).Select(f => Field($"{section}.{f.Name}", f))]);
    }

    private static EntryRow OnHand()
    {
        EntryField field = Field("devicesOnHand", RecordShape.Of(typeof(CaseFile)).Find("devicesOnHand")!);
        return new("Cannulae on hand", [field with { Label = "What is on the shelf", Hint = "none chosen: the whole catalogue is considered", Choices = DeviceChoices.Cannulae }]);
    }

    private static EntryRow RunningCircuit()
    {
        EntryRow section = Section("running");
        return section with
        {
            Fields = [.. section.Fields.Select(static f => f.Path switch
            {
                "running.pump" => f with { Choices = DeviceChoices.Pumps },
                "running.membraneLung" => f with { Choices = DeviceChoices.MembraneLungs },
                _ => f,
            })],
        };
    }

    /// <summary>A row for each thing that a cannula may do. A second cannula that does the same is written in the case file.</summary>
    private static IEnumerable<EntryRow> RunningCannulae() => Enum.GetValues<CannulaRole>().Select(static role => new EntryRow(
        $"Cannula: {PlainWords.Role(role)}",
        [.. RecordShape.Of(typeof(RunningCannula)).Fields.Where(f => f.Name != "role" && (f.Name != "rotationDeg" || role == CannulaRole.DualLumen)).Select(f =>
        {
            string entry = $"running.cannulae[role={JsonName.Of(role.ToString())}]";
            EntryField field = Field($"{entry}.{f.Name}", f);
            return f.Name == "device" ? field with { Label = "Device", Choices = DeviceChoices.For(role), NamedBy = $"{entry}.role" } : field;
        })]));

    private static IReadOnlyList<EntryRow> Vessels() =>
    [
        .. Enum.GetValues<VesselName>().SelectMany(static vessel => Enum.GetValues<BodySide>().Select(side => new EntryRow(
            $"{WordLabel.Capital(PlainWords.FromName(vessel.ToString()))}, {PlainWords.Side(side)}",
            [.. RecordShape.Of(typeof(VesselEntry)).Fields.Where(static f => !f.IsRequired).Select(f => Short(CaseTarget.PathOf(vessel, side, f.Name), f))]))),
    ];

    private static IReadOnlyList<EntryRow> Axis() =>
    [
        .. AxisDimensions.All.Where(static d => VesselOf(d) is null).Select(static dimension =>
        {
            AxisRange range = AxisRange.Of(dimension);
            string how = UsualMeasurement.All.FirstOrDefault(m => m.Dimension == dimension)?.How ?? string.Empty;
            return new EntryRow(
                WordLabel.Capital(PlainWords.FromName(dimension.ToString())),
                [.. RecordShape.Of(typeof(AxisEntry)).Fields.Where(static f => f.Name != "dimension").Select(f => Short(CaseTarget.PathOf(dimension, f.Name), f) with
                {
                    Unit = f.Number is null ? string.Empty : NumberWords.Unit(range.Unit),
                    Hint = f.Name switch
                    {
                        "value" => string.Join("; ", new[] { NumberWords.Range(range.Low, range.High, range.Unit), how }.Where(static s => s.Length > 0)),
                        "sd" => "the method's usual error is taken when left out",
                        _ => string.Empty,
                    },
                })]);
        }),
    ];

    private static EntryField Field(string path, RecordField shape)
    {
        (string label, string beside) = EntryLabel.Of(shape);
        return new EntryField(path, shape, label, shape.Number is null ? string.Empty : NumberWords.Unit(shape.Number.Unit), EntryLabel.Hint(shape, beside));
    }

    /// <summary>In a row of one vessel or dimension the name of the row says most; the field needs a short name only.</summary>
    private static EntryField Short(string path, RecordField shape)
    {
        EntryField field = Field(path, shape);
        string name = shape.Property!.Name;
        return field with
        {
            Label = WordLabel.Capital(PlainWords.FromName(name.EndsWith("Mm", StringComparison.Ordinal) ? name[..^2] : name)),
            Hint = field.Hint.Length > 0 ? $"{field.Label}; {field.Hint}" : field.Label,
        };
    }

    private static (VesselName Vessel, BodySide Side)? VesselOf(AxisDimension dimension) => dimension switch
    {
        AxisDimension.RightJugularVeinDiameter => (VesselName.InternalJugularVein, BodySide.Right),
        AxisDimension.LeftJugularVeinDiameter => (VesselName.InternalJugularVein, BodySide.Left),
        AxisDimension.RightFemoralVeinDiameter => (VesselName.CommonFemoralVein, BodySide.Right),
        AxisDimension.LeftFemoralVeinDiameter => (VesselName.CommonFemoralVein, BodySide.Left),
        AxisDimension.RightFemoralArteryDiameter => (VesselName.CommonFemoralArtery, BodySide.Right),
        AxisDimension.LeftFemoralArteryDiameter => (VesselName.CommonFemoralArtery, BodySide.Left),
        AxisDimension.RightAxillaryArteryDiameter => (VesselName.AxillaryArtery, BodySide.Right),
        AxisDimension.LeftAxillaryArteryDiameter => (VesselName.AxillaryArtery, BodySide.Left),
        AxisDimension.RightCarotidArteryDiameter => (VesselName.CommonCarotidArtery, BodySide.Right),
        _ => null,
    };

    private static bool IsBelow(string path, string section) => path.StartsWith(section + '.', StringComparison.Ordinal) || path.StartsWith(section + '[', StringComparison.Ordinal);
}
