using System.Globalization;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Catalogue;

/// <summary>What must hold in a cannula beyond the kind and range of each single field.</summary>
internal static class CannulaRules
{
    // Label lengths and drawn lengths are rounded to the millimetre, so equal lengths may differ by that much.
    private const double LengthSlackMm = 1;

    /// <summary>Adds every fault of a cannula.</summary>
    internal static void Check(Cannula cannula, string place, List<InputFault> faults)
    {
        CheckPurposes(cannula, place, faults);
        if (cannula.BendingStiffnessNMm2 is { } stiffness && stiffness.LowNMm2 > stiffness.HighNMm2)
        {
            faults.Add(CatalogueRules.Contradiction(
                place, "bendingStiffnessNMm2", stiffness.LowNMm2, "a range with its low end first", "Exchange or correct the two ends."));
        }

        for (int i = 0; i < cannula.Lumens.Count; i++)
        {
            string at = string.Create(CultureInfo.InvariantCulture, $"{place}.lumens[{i}]");
            CheckLumen(cannula, cannula.Lumens[i], at, faults);
            if (cannula.WaterCurve.TryGetValue(i, out WaterCurve? curve))
            {
                CheckCurve(curve, at, faults);
            }
        }

        CheckAreas(cannula, place, faults);
    }

    private static void CheckPurposes(Cannula cannula, string place, List<InputFault> faults)
    {
        (bool drains, bool returns) = cannula.Family switch
        {
            CannulaFamily.SingleStageDrainage or CannulaFamily.MultiStageDrainage => (true, false),
            CannulaFamily.VenousReturn or CannulaFamily.ArterialReturn or CannulaFamily.DistalPerfusion => (false, true),
            CannulaFamily.BicavalDualLumen or CannulaFamily.AtrialDualLumen => (true, true),
            _ => throw new InvalidOperationException($"Not a family: {cannula.Family}."),
        };
        int draining = cannula.Lumens.Count(l => l.Purpose == LumenPurpose.Drainage);
        int returning = cannula.Lumens.Count - draining;
        if (draining != (drains ? 1 : 0) || returning != (returns ? 1 : 0))
        {
            string wanted = drains ? returns ? "one drainage and one return lumen" : "one drainage lumen" : "one return lumen";
            faults.Add(new InputFault(
                FaultCode.Contradiction, $"{place}.lumens",
                string.Create(CultureInfo.InvariantCulture, $"{draining} for drainage, {returning} for return"), wanted,
                "Correct the family or the purposes of the lumens."));
        }
    }

    private static void CheckLumen(Cannula cannula, Lumen lumen, string place, List<InputFault> faults)
    {
        double length = lumen.Segments.Sum(s => s.LengthMm);
        if (length + LengthSlackMm < cannula.InsertableLengthMm)
        {
            faults.Add(CatalogueRules.Contradiction(
                place, "segments", length, "segments that together reach the insertable length, in mm", "Add the missing stretch; segments run from hub to tip."));
        }

        for (int i = 0; i < lumen.Segments.Count; i++)
        {
            TubeSegment segment = lumen.Segments[i];
            double round = Math.PI * segment.InnerDiameterMm * segment.InnerDiameterMm / 4;
            if (segment.AreaMm2 < round * 0.999)
            {
                // For a given hydraulic diameter the circle is the smallest section there is.
                faults.Add(CatalogueRules.Contradiction(
                    string.Create(CultureInfo.InvariantCulture, $"{place}.segments[{i}]"), "areaMm2", segment.AreaMm2,
                    "at least the circle of the hydraulic diameter", "Give four areas over the wetted perimeter as the diameter."));
            }
        }

        double previous = double.PositiveInfinity;
        for (int i = 0; i < lumen.HoleGroups.Count; i++)
        {
            HoleGroup group = lumen.HoleGroups[i];
            string at = string.Create(CultureInfo.InvariantCulture, $"{place}.holeGroups[{i}]");
            if (group.FromTipMm > previous)
            {
                faults.Add(CatalogueRules.Contradiction(at, "fromTipMm", group.FromTipMm, "groups from the hub to the tip", "Put the group nearest the hub first."));
            }

            previous = group.FromTipMm;
            if (group.FromTipMm + (group.SpanMm / 2) > Math.Min(length, cannula.InsertableLengthMm) + LengthSlackMm)
            {
                faults.Add(CatalogueRules.Contradiction(at, "fromTipMm", group.FromTipMm, "holes on the inserted part", "Correct the place or the span of the group."));
            }

            if (group.DiameterMm > cannula.OuterDiameterMm)
            {
                faults.Add(CatalogueRules.Contradiction(at, "diameterMm", group.DiameterMm, "no more than the outer diameter, in mm", "Give the diameter of one hole."));
            }

            if (group.Facing == HoleFacing.End && (group.Count != 1 || group.FromTipMm > LengthSlackMm || group.SpanMm > 0 || i != lumen.HoleGroups.Count - 1))
            {
                faults.Add(CatalogueRules.Contradiction(at, "facing", group.FromTipMm, "one end hole, last in the list, at the tip and without span", "Correct the end hole."));
            }
        }
    }

    private static void CheckCurve(WaterCurve curve, string place, List<InputFault> faults)
    {
        if (!(curve.LowestReynolds < curve.HighestReynolds))
        {
            faults.Add(CatalogueRules.Contradiction(
                $"{place}.waterCurve", "lowestReynolds", curve.LowestReynolds, "less than highestReynolds", "Exchange or correct the two ends."));
            return;
        }

        for (int i = 0; i <= 32; i++)
        {
            double reynolds = curve.LowestReynolds * Math.Pow(curve.HighestReynolds / curve.LowestReynolds, i / 32.0);
            double slope = curve.SlopeAt(reynolds);
            double euler = curve.EulerAt(reynolds);
            if (!(slope > -2) || !(slope < 1) || !(euler > 1e-4) || !(euler < 1e6))
            {
                faults.Add(CatalogueRules.Contradiction(
                    $"{place}.waterCurve", "eulerLogCoefficients", slope,
                    "a curve whose pressure drop rises with flow", "Fit the bench points again."));
                return;
            }
        }
    }

    private static void CheckAreas(Cannula cannula, string place, List<InputFault> faults)
    {
        double outer = Math.PI * cannula.OuterDiameterMm * cannula.OuterDiameterMm / 4;
        double worst = 0;
        foreach (Lumen lumen in cannula.Lumens.Where(l => l.HoleGroups.Count > 0))
        {
            double fromTip = 0;
            foreach (TubeSegment segment in lumen.Segments.Reverse())
            {
                double middle = fromTip + Math.Min(segment.LengthMm, Math.Max(0, cannula.InsertableLengthMm - fromTip)) / 2;
                fromTip += segment.LengthMm;
                if (middle < cannula.InsertableLengthMm)
                {
                    worst = Math.Max(worst, cannula.Lumens.Where(l => l.HoleGroups.Count > 0).Sum(l => AreaAt(l, middle)));
                }
            }
        }

        if (worst > outer)
        {
            faults.Add(CatalogueRules.Contradiction(
                place, "outerDiameterFrench", cannula.OuterDiameterFrench,
                string.Create(CultureInfo.InvariantCulture, $"an outer section larger than the lumens in it ({worst:F1} mm2)"),
                "Correct the outer diameter or the areas of the lumens."));
        }
    }

    private static double AreaAt(Lumen lumen, double fromTipMm)
    {
        if (fromTipMm < lumen.HoleGroups.Min(g => g.FromTipMm - (g.SpanMm / 2)))
        {
            return 0;
        }

        double end = 0;
        foreach (TubeSegment segment in lumen.Segments.Reverse())
        {
            end += segment.LengthMm;
            if (fromTipMm <= end)
            {
                return segment.AreaMm2;
            }
        }

        return 0;
    }
}
