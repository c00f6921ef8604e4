using System.Collections.Immutable;
using Cavaxis.Anatomy.Body;
using Cavaxis.Arteries.Numbers;
using Cavaxis.Arteries.Tree;
using Cavaxis.Quantities;
using static Cavaxis.Arteries.Numbers.ArterialConstant;

namespace Cavaxis.Arteries.Scaling;

/// <summary>Scales the table of arteries to a patient: lengths by height, radii by body surface, walls to the arterial compliance, ends to the flows.</summary>
public static class TreeScaling
{
    /// <summary>The tree of a patient.</summary>
    /// <param name="table">Table of the reference adult.</param>
    /// <param name="body">Age, sex and size.</param>
    /// <param name="measured">Measured diameters of access arteries; the last one of an artery counts.</param>
    /// <param name="beds">Flows, pressures and compliance of the patient's circulation.</param>
    /// <returns>The tree.</returns>
    public static PatientTree Of(ArterialTable table, BodyHabitus body, IReadOnlyList<MeasuredDiameter> measured, BedState beds)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(beds);
        double length = body.HeightCm / table.ReferenceHeightCm * 1e-3;
        double size = Math.Pow(BodySurfaceArea.M2(body) / ArterialNumbers.Value(ReferenceSurfaceM2), ArterialNumbers.Value(RadiusExponent));
        ImmutableArray<Estimate> access = [.. Enum.GetValues<AccessArtery>().Select(a => AccessDiameter(a, body, size, measured))];
        double[] radius = Widths(table, size, access);
        double share = ArterialNumbers.Value(VesselShareOfCompliance);
        double inVessels = table.Segments.Select((s, i) => Compliance(s, length * s.LengthMm, radius[i], table.ElasticModulusPa)).Sum();
        double stiffness = inVessels / (share * beds.ComplianceM3PerPa);
        double[] flow = RestFlows.Of(table, beds);
        PatientSegment[] segments = [.. table.Segments.Select((s, i) => new PatientSegment(
            s, length * s.LengthMm, radius[i] * s.ProximalRadiusMm * 1e-3, EndRadius(table, radius, i), radius[i] * s.WallMm * 1e-3,
            table.ElasticModulusPa * stiffness, flow[i], null, null))];
        return new PatientTree(
            WithEnds(segments, beds, (1 - share) * beds.ComplianceM3PerPa), beds, table.ReferencePressurePa, table.VelocityProfileExponent, stiffness, access);
    }

    /// <summary>Factor on compliance for an age: pulse wave velocity grows by a share in each decade, compliance falls with its square.</summary>
    /// <param name="ageYears">Age, years.</param>
    /// <param name="referenceYears">Age of the person of the table, years.</param>
    /// <returns>Factor.</returns>
    public static double ComplianceForAge(double ageYears, double referenceYears) =>
        Math.Pow(1 + ArterialNumbers.Value(WaveSpeedPerDecade), -2 * (Math.Max(ageYears, BodyHabitus.AdultAgeYears) - referenceYears) / 10);

    /// <summary>Radius at the end of a segment, m: a subclavian artery does not end narrower than the axillary artery that it becomes.</summary>
    private static double EndRadius(ArterialTable table, double[] radius, int segment)
    {
        ArterySegment s = table.Segments[segment];
        double own = radius[segment] * s.DistalRadiusMm;
        if (s.Name is "subclavian_R_II" or "subclavian_L_II")
        {
            int next = table.IndexOf(s.Name == "subclavian_R_II" ? "axillary_R" : "axillary_L");
            own = Math.Min(Math.Max(own, radius[next] * table.Segments[next].ProximalRadiusMm), radius[segment] * s.ProximalRadiusMm);
        }

        return own * 1e-3;
    }

    private static Estimate AccessDiameter(AccessArtery artery, BodyHabitus body, double size, IReadOnlyList<MeasuredDiameter> measured)
    {
        foreach (MeasuredDiameter one in measured.Reverse())
        {
            if (one.Artery == artery)
            {
                return one.DiameterMm;
            }
        }

        bool femoral = artery is AccessArtery.FemoralRight or AccessArtery.FemoralLeft;
        ArterialNumber number = ArterialNumbers.Of(!femoral ? AxillaryMm : body.Sex == Sex.Male ? FemoralMenMm : FemoralWomenMm);

        // The published means belong to adults of usual size; children are scaled like the rest of their tree.
        double scale = body.IsAdult ? 1 : Math.Min(1, size);
        return Estimate.Normal(number.Value * scale, (number.High - number.Low) / 4 * scale, Origin.Estimated);
    }

    /// <summary>Factor on the radii of each segment.</summary>
    private static double[] Widths(ArterialTable table, double size, ImmutableArray<Estimate> access)
    {
        double[] factor = new double[table.Segments.Length];
        Array.Fill(factor, size);
        foreach (AccessArtery artery in Enum.GetValues<AccessArtery>())
        {
            string side = artery is AccessArtery.FemoralRight or AccessArtery.AxillaryRight ? "R" : "L";
            double half = access[(int)artery].Value / 2;
            if (artery is AccessArtery.AxillaryRight or AccessArtery.AxillaryLeft)
            {
                SetWidth(table, factor, "axillary_" + side, half, widenOnly: false);
                continue;
            }

            SetWidth(table, factor, $"femoral_{side}_I", half, widenOnly: false);
            SetWidth(table, factor, "external_iliac_" + side, half, widenOnly: false);

            // An iliac artery is not narrower than the femoral artery that it feeds; a narrow femoral artery says nothing of it.
            SetWidth(table, factor, "common_iliac_" + side, half, widenOnly: true);
        }

        return factor;
    }

    private static void SetWidth(ArterialTable table, double[] factor, string name, double radiusMm, bool widenOnly)
    {
        int i = table.IndexOf(name);
        double wanted = radiusMm / (0.5 * (table.Segments[i].ProximalRadiusMm + table.Segments[i].DistalRadiusMm));
        factor[i] = widenOnly ? Math.Max(factor[i], wanted) : wanted;
    }

    /// <summary>Compliance dV/dP at the reference pressure, the wall keeping its ratio to the radius: 3 π r³ L/(2 E h), with the mean of r² over a taper.</summary>
    private static double Compliance(ArterySegment s, double lengthM, double factor, double modulus)
    {
        double a = s.ProximalRadiusMm * factor * 1e-3;
        double b = s.DistalRadiusMm * factor * 1e-3;
        double square = ((a * a) + (a * b) + (b * b)) / 3;
        return 1.5 * Math.PI * square * lengthM * s.ProximalRadiusMm / (modulus * s.WallMm);
    }

    /// <summary>Resistances such that every end gets its flow at the mean pressure, after the loss in the segments before it.</summary>
    private static ImmutableArray<PatientSegment> WithEnds(PatientSegment[] segments, BedState beds, double compliance)
    {
        Dictionary<int, double> pressure = new() { [0] = beds.MeanPressurePa };
        ImmutableArray<PatientSegment>.Builder all = ImmutableArray.CreateBuilder<PatientSegment>(segments.Length);
        foreach (PatientSegment s in segments)
        {
            double end = pressure[s.Table.From] - (s.Resistance(beds.ViscosityPaS) * s.RestFlowM3PerS);
            pressure[s.Table.To] = end;
            double whole = (beds.MeanPressurePa - beds.OutflowPressurePa) / s.RestFlowM3PerS;

            // A narrow artery may already take more than its share of the fall; at least a tenth is left to the arterioles.
            double behind = Math.Max(0.1 * whole, (end - beds.OutflowPressurePa) / s.RestFlowM3PerS);
            all.Add(s.Table.Territory is null ? s : s with
            {
                EndResistancePaSPerM3 = behind,
                EndComplianceM3PerPa = compliance * s.RestFlowM3PerS / beds.FlowM3PerS,
            });
        }

        return all.MoveToImmutable();
    }
}
