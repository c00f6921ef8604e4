using System.Globalization;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Case;

/// <summary>
/// Checks between the fields of one case: what stands twice, and what cannot both be true. A field that is faulty by
/// itself takes no part, so that one slip gives one fault.
/// </summary>
internal static class CaseConsistency
{
    // Haematocrit in percent over haemoglobin in g/dL is about 3 (100 over a cell haemoglobin concentration of 33 g/dL).
    // Even spherocytosis (38) and severe iron deficiency (26) stay between these bounds. Assumption, widened on purpose.
    private const double LowestHaematocritRatio = 2.2;
    private const double HighestHaematocritRatio = 4.0;

    private static readonly JunctionEdge[] SuperiorEdges = [JunctionEdge.AppendageBorder, JunctionEdge.CristaTerminalis, JunctionEdge.FirstAtrialSlice];
    private static readonly JunctionEdge[] InferiorEdges = [JunctionEdge.EustachianRim, JunctionEdge.MyocardialEdge];

    /// <summary>Records every contradiction.</summary>
    /// <param name="file">The case as bound.</param>
    /// <param name="ledger">Places of the values; takes the faults.</param>
    public static void Check(CaseFile file, FaultLedger ledger)
    {
        Vessels(file, ledger);
        Axis(file, ledger);
        Blood(file.Blood, ledger);
        BodySizeLimits.Check(file.Patient, ledger);
        RunningConsistency.Check(file, ledger);
    }

    private static void Vessels(CaseFile file, FaultLedger ledger)
    {
        Dictionary<(VesselName, Anatomy.Body.BodySide), int> seen = [];
        for (int i = 0; i < file.Vessels.Count; i++)
        {
            string at = At("vessels", i);
            if (!ledger.IsSound($"{at}.vessel") || !ledger.IsSound($"{at}.side"))
            {
                continue;
            }

            VesselEntry entry = file.Vessels[i];
            if (!seen.TryAdd((entry.Vessel, entry.Side), i))
            {
                ledger.Add(
                    FaultCode.Contradiction, $"{at}.vessel", $"\"{JsonName.Of(entry.Vessel.ToString())}\", {JsonName.Of(entry.Side.ToString())} side",
                    "each vessel and side once",
                    $"Keep one entry; the first is {At("vessels", seen[(entry.Vessel, entry.Side)])}.", ledger.PlaceOf($"{at}.vessel"));
            }
        }
    }

    private static void Axis(CaseFile file, FaultLedger ledger)
    {
        Dictionary<AxisDimension, int> seen = [];
        for (int i = 0; i < file.Axis.Count; i++)
        {
            string at = At("axis", i);
            AxisEntry entry = file.Axis[i];
            if (ledger.IsSound($"{at}.dimension"))
            {
                if (!seen.TryAdd(entry.Dimension, i))
                {
                    ledger.Add(
                        FaultCode.Contradiction, $"{at}.dimension", $"\"{JsonName.Of(entry.Dimension.ToString())}\"", "each dimension once",
                        $"Keep the surer one, or combine them; the first is {At("axis", seen[entry.Dimension])}.", ledger.PlaceOf($"{at}.dimension"));
                }

                AxisNumbers(entry, at, ledger);
            }

            Edge(entry.SuperiorEdge, InferiorEdges, SuperiorEdges, $"{at}.superiorEdge", ledger);
            Edge(entry.InferiorEdge, SuperiorEdges, InferiorEdges, $"{at}.inferiorEdge", ledger);
        }
    }

    private static void AxisNumbers(AxisEntry entry, string at, FaultLedger ledger)
    {
        if (!ledger.IsSound($"{at}.value"))
        {
            return;
        }

        AxisRange range = AxisRange.Of(entry.Dimension);
        string name = JsonName.Of(entry.Dimension.ToString());
        if (entry.Value < range.Low || entry.Value > range.High)
        {
            ledger.Add(
                FaultCode.OutOfRange, $"{at}.value", NumberWords.Of(entry.Value),
                $"a number from {NumberWords.Range(range.Low, range.High, range.Unit)} for {name}",
                "Check the number, its unit and the dimension.", ledger.PlaceOf($"{at}.value"));
        }
        else if (range.IsPositive && entry.Sd > entry.Value && ledger.IsSound($"{at}.sd"))
        {
            ledger.Add(
                FaultCode.Contradiction, $"{at}.sd", NumberWords.Of(entry.Sd.Value),
                $"a standard deviation not above the value, {NumberWords.Of(entry.Value)} {range.Unit}",
                "Check value and sd for a slip of the decimal point; leave the entry out where the measurement says nothing.",
                ledger.PlaceOf($"{at}.sd"));
        }
    }

    private static void Edge(JunctionEdge edge, JunctionEdge[] wrong, JunctionEdge[] right, string path, FaultLedger ledger)
    {
        if (wrong.Contains(edge) && ledger.IsSound(path))
        {
            ledger.Add(
                FaultCode.Contradiction, path, $"\"{JsonName.Of(edge.ToString())}\"",
                $"one of {string.Join(", ", right.Select(static e => JsonName.Of(e.ToString())))}, unknown",
                "This edge belongs to the other end of the atrium; use an edge of this end.", ledger.PlaceOf(path));
        }
    }

    private static void Blood(BloodSection blood, FaultLedger ledger)
    {
        const string Path = "blood.haematocritPercent";
        if (blood is not { HaemoglobinGPerDl: { } haemoglobin, HaematocritPercent: { } haematocrit })
        {
            return;
        }

        double ratio = haematocrit.Value / haemoglobin.Value;
        if (ratio is < LowestHaematocritRatio or > HighestHaematocritRatio)
        {
            ledger.Add(
                FaultCode.Contradiction, Path, $"{NumberWords.Of(haematocrit.Value)} % with haemoglobin {NumberWords.Of(haemoglobin.Value)} g/dL",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{LowestHaematocritRatio * haemoglobin.Value:0.#} to {HighestHaematocritRatio * haemoglobin.Value:0.#} % at this haemoglobin"),
                "Check both numbers and their units (percent, g/dL); leave the haematocrit out when in doubt.", ledger.PlaceOf(Path));
        }
    }

    private static string At(string list, int index) => string.Create(CultureInfo.InvariantCulture, $"{list}[{index}]");
}
