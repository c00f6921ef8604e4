using System.Globalization;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Bench;

/// <summary>The cannula that the notes of a bench file describe: a copy of a catalogue entry, or one built from the label.</summary>
internal static class BenchCannula
{
    private const int HoleParts = 6;

    /// <summary>Reads the cannula; null when a fault was noted.</summary>
    internal static Cannula? Read(BenchNotes notes, DeviceCatalogue catalogue, double outsideLengthMm, List<InputFault> faults)
    {
        int before = faults.Count;
        string? id = notes.Text("id", DeviceIdentifier.Longest, true);
        if (id is not null && !DeviceIdentifier.IsValid(id))
        {
            notes.Fault(FaultCode.NotAChoice, notes.Find("id", false)!, DeviceIdentifier.Accepted, "Write the identifier in small letters with hyphens.");
        }

        string? description = notes.Text("description", 200, true);
        Source source = new(notes.Text("source", 400, false) ?? "Label and bench of the user's own device.", Certainty.Seen);
        if (id is null || description is null || faults.Count > before)
        {
            if (!notes.Has("like"))
            {
                // Nothing can be built any more; the rest is read only so that its faults come at the same time.
                Labelled(notes, string.Empty, string.Empty, source, outsideLengthMm);
            }

            return null;
        }

        Cannula? cannula = notes.Has("like")
            ? Copy(notes, catalogue, id, description)
            : Labelled(notes, id, description, source, outsideLengthMm);
        if (cannula is not null && faults.Count == before)
        {
            CannulaRules.Check(cannula, "cannula", faults);
        }

        return faults.Count == before ? cannula : null;
    }

    private static Cannula? Copy(BenchNotes notes, DeviceCatalogue catalogue, string id, string description)
    {
        foreach (string key in new[] { "family", "outer diameter", "insertable length", "inner diameter", "largest wire" })
        {
            if (notes.Find(key, false) is { } extra)
            {
                notes.Fault(FaultCode.Contradiction, extra, "no geometry beside '# like:'", "Take this line out, or take out '# like:' and describe the whole cannula.");
            }
        }

        foreach (BenchNotes.Note hole in notes.Holes)
        {
            notes.Fault(FaultCode.Contradiction, hole, "no geometry beside '# like:'", "Take this line out, or take out '# like:' and describe the whole cannula.");
        }

        BenchNotes.Note like = notes.Find("like", true)!;
        if (catalogue.FindCannula(like.Value) is { } model)
        {
            return model with { Id = id, Description = description };
        }

        notes.Fault(FaultCode.NotFound, like, "the identifier of a cannula in the catalogue", "List the catalogue and choose one.");
        return null;
    }

    private static Cannula? Labelled(BenchNotes notes, string id, string description, Source source, double outsideLengthMm)
    {
        CannulaFamily? family = notes.Choice<CannulaFamily>("family", true);
        double? outer = notes.Number("outer diameter", BenchUnits.LengthMm, 1, 13.4, "mm", true);
        double? length = notes.Number("insertable length", BenchUnits.LengthMm, 10, 900, "mm", true);
        double? inner = notes.Number("inner diameter", BenchUnits.LengthMm, 0.5, 12, "mm", true);
        double? wire = notes.Number("largest wire", BenchUnits.LengthMm, 0.1, 3, "mm", false);
        if (family is CannulaFamily.BicavalDualLumen or CannulaFamily.AtrialDualLumen)
        {
            notes.Fault(
                FaultCode.Contradiction, notes.Find("family", false)!, "a family with one lumen",
                "For a dual-lumen cannula add its geometry to a catalogue and name it with '# like:'.");
            return null;
        }

        List<HoleGroup> groups = [.. notes.Holes.Select(h => Hole(notes, h)).OfType<HoleGroup>().OrderByDescending(g => g.FromTipMm)];
        if (family is not { } kind || outer is not double od || length is not double insertable || inner is not double bore
            || groups.Count != notes.Holes.Count)
        {
            return null;
        }

        LumenPurpose purpose = kind is CannulaFamily.SingleStageDrainage or CannulaFamily.MultiStageDrainage
            ? LumenPurpose.Drainage
            : LumenPurpose.Return;
        if (groups.Count == 0)
        {
            groups.Add(new HoleGroup(purpose == LumenPurpose.Drainage ? "tip holes" : "return end", 0, 0, 1, bore, HoleFacing.End));
        }

        // Round to a hundredth of a French: 17 Fr given in mm must not become 16.9999999.
        double french = Math.Round(od / UnitFactors.MillimetresPerFrench, 2);
        return new Cannula(
            id, description, kind, french, insertable,
            [new Lumen(purpose, [TubeSegment.Round(insertable + outsideLengthMm, bore)], groups)],
            wire, null, null, source, new Dictionary<int, WaterCurve>());
    }

    private static HoleGroup? Hole(BenchNotes notes, BenchNotes.Note note)
    {
        const string Accepted = "name | from tip | span | count | diameter | facing";
        string[] parts = [.. note.Value.Split('|').Select(p => p.Trim())];
        if (BenchUnits.LengthMm(note.Unit) is not double scale)
        {
            notes.Fault(FaultCode.NotAChoice, note with { Value = note.Unit.Length == 0 ? "(no unit)" : note.Unit }, "a unit in square brackets, such as [mm]", "Write '# hole [mm]: …'.");
            return null;
        }

        if (parts.Length != HoleParts)
        {
            notes.Fault(FaultCode.MalformedText, note, Accepted, "Give six parts, divided by upright bars.");
            return null;
        }

        double[] numbers = new double[4];
        for (int i = 0; i < 4; i++)
        {
            if (!double.TryParse(parts[i + 1], NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[i]))
            {
                notes.Fault(FaultCode.WrongKind, note, Accepted, "Write bare numbers with a decimal point.");
                return null;
            }
        }

        (double place, double span, double count, double diameter) = (numbers[0] * scale, numbers[1] * scale, numbers[2], numbers[3] * scale);
        if (!(place is >= 0 and <= 900 && span is >= 0 and <= 400 && count is >= 1 and <= 200 && diameter is >= 0.3 and <= 15) || count != Math.Floor(count))
        {
            notes.Fault(FaultCode.OutOfRange, note, $"{Accepted}: 0 to 900 mm, 0 to 400 mm, 1 to 200 whole, 0.3 to 15 mm", "Correct the numbers.");
            return null;
        }

        foreach (HoleFacing facing in Enum.GetValues<HoleFacing>())
        {
            if (JsonFields.Word(facing) == parts[5] && parts[0].Length is > 0 and <= 40 && !parts[0].Any(c => char.IsControl(c) || char.IsSurrogate(c)))
            {
                return new HoleGroup(parts[0], place, span, (int)count, diameter, facing);
            }
        }

        notes.Fault(FaultCode.NotAChoice, note, $"a name of 1 to 40 characters and one of {string.Join(", ", Enum.GetValues<HoleFacing>().Select(JsonFields.Word))}", "Correct the name or the facing.");
        return null;
    }
}
