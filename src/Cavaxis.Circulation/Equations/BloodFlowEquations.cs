using System.Runtime.CompilerServices;
using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Lanes;
using static Cavaxis.Circulation.Parameters.CirculationParameter;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Equations;

/// <summary>
/// Motion of blood: heart, vessels, cavae and circuit (docs/models/circulation.md, sections 2 to 5). Every flow leaves one volume and
/// enters another, so that total volume cannot change.
/// </summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class BloodFlowEquations<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>cmH₂O to mmHg.</summary>
    public const double MmHgPerCmH2O = 0.73555912;

    /// <summary>mL/s to L/min.</summary>
    public const double LPerMinPerMlPerS = 0.06;

    /// <summary>Half the density of blood over area squared: 1060 kg/m³, mmHg s² cm⁴/mL².</summary>
    public const double OrificeFactor = 1060.0 / 2 / 133.322387415 * 1e-4;

    private readonly ModelConstants<T> k;
    private readonly T[] orifice;
    private readonly T[] inertance;
    private readonly T[] siteShare = new T[4];

    /// <summary>Prepares the constants.</summary>
    /// <param name="constants">Parameters.</param>
    public BloodFlowEquations(ModelConstants<T> constants)
    {
        k = constants;
        orifice =
        [
            Orifice(k[TricuspidAreaCm2]), Orifice(k[PulmonaryValveAreaCm2]), Orifice(k[MitralAreaCm2]), Orifice(k[AorticValveAreaCm2]),
        ];
        inertance =
        [
            k[InflowInertanceMmHgS2PerMl], k[OutflowInertanceMmHgS2PerMl], k[InflowInertanceMmHgS2PerMl], k[OutflowInertanceMmHgS2PerMl],
        ];
        siteShare[0] = k.Drainage[0] + k.Drainage[1];
        siteShare[1] = k.Drainage[2] + k.Drainage[3] + k.Drainage[4] + k.Drainage[5];
        siteShare[2] = k.Drainage[6];
        siteShare[3] = k.Drainage[7] + k.Drainage[8] + k.Drainage[9];
    }

    /// <summary>Pressures of the heart and the great vessels, and with them what opens the valves.</summary>
    /// <param name="clock">Clock, already set to the time.</param>
    /// <param name="y">State.</param>
    /// <param name="f">Where the pressures go.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Pressures(BeatClock<T> clock, ReadOnlySpan<T> y, FlowField<T> f)
    {
        T one = T.Of(1);
        T peep = k[PeepCmH2O] * T.Of(MmHgPerCmH2O);
        f.Pleural = k[PleuralPressureMmHg] + (k[PleuralTransmission] * peep) + (k[PleuralSwingMmHg] * clock.Breath);
        f.Abdominal = k[AbdominalPressureMmHg] + (k[AbdominalSwingMmHg] * clock.Breath);
        f.Alveolar = peep + (k[AlveolarSwingCmH2O] * T.Of(MmHgPerCmH2O) * clock.Breath);
        T heart = y[S.RightAtrium] + y[S.RightVentricle] + y[S.LeftAtrium] + y[S.LeftVentricle];
        T around = f.Pleural + (k[PericardiumScaleMmHg]
            * T.Exp(T.Min(T.Of(5), (heart - k[PericardiumVolumeMl]) / k[PericardiumWidthMl])));
        T strength = one + (T.Of(ReflexGains.Elastance) * y[S.ReflexElastance]);
        T left = Ventricle(
            clock.Ventricular, y[S.LeftVentricle] - k[LeftVentricleZeroVolumeMl], k[LeftVentricleElastanceMmHgPerMl] * strength,
            k[LeftVentricleStiffnessMmHg], k[LeftVentricleStiffnessPerMl]);
        T right = Ventricle(
            clock.Ventricular, y[S.RightVentricle] - k[RightVentricleZeroVolumeMl], k[RightVentricleElastanceMmHgPerMl] * strength,
            k[RightVentricleStiffnessMmHg], k[RightVentricleStiffnessPerMl]);
        T[] p = f.Pressure;
        p[S.LeftVentricle] = around + left + (k[SeptumRightToLeft] * right);
        p[S.RightVentricle] = around + right + (k[SeptumLeftToRight] * left);
        p[S.LeftAtrium] = around + Atrium(
            clock.Atrial, y[S.LeftAtrium], k[LeftAtriumZeroVolumeMl], k[LeftAtriumElastanceMmHgPerMl], k[LeftAtriumSystolicElastanceMmHgPerMl]);
        p[S.RightAtrium] = around + Atrium(
            clock.Atrial, y[S.RightAtrium], k[RightAtriumZeroVolumeMl], k[RightAtriumElastanceMmHgPerMl], k[RightAtriumSystolicElastanceMmHgPerMl]);
        p[S.PulmonaryArtery] = f.Pleural + ((y[S.PulmonaryArtery] - k[PulmonaryArteryZeroVolumeMl]) / k[PulmonaryArteryComplianceMlPerMmHg]);
        p[S.Ascending] = f.Pleural + ((y[S.Ascending] - k[AscendingZeroVolumeMl]) / k[AscendingComplianceMlPerMmHg]);
        f.Opening[0] = p[S.RightAtrium] - p[S.RightVentricle];
        f.Opening[1] = p[S.RightVentricle] - p[S.PulmonaryArtery];
        f.Opening[2] = p[S.LeftAtrium] - p[S.LeftVentricle];
        f.Opening[3] = p[S.LeftVentricle] - p[S.Ascending];
    }

    /// <summary>Rates of change of the blood flow part of the state.</summary>
    /// <param name="clock">Clock, already set to the time.</param>
    /// <param name="open">One for each open one-way element, zero for each closed one: four valves and the circuit.</param>
    /// <param name="y">State.</param>
    /// <param name="dy">Where the rates go.</param>
    /// <param name="f">Where pressures and flows go.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Rates(BeatClock<T> clock, ReadOnlySpan<T> open, ReadOnlySpan<T> y, Span<T> dy, FlowField<T> f)
    {
        Pressures(clock, y, f);
        T one = T.Of(1);
        T zero = T.Of(0);
        T[] p = f.Pressure;
        T shrink = one - (T.Of(ReflexGains.VenousVolume) * y[S.ReflexVolume]);
        p[S.PulmonaryVein] = f.Pleural + ((y[S.PulmonaryVein] - k[PulmonaryVenousZeroVolumeMl]) / k[PulmonaryVenousComplianceMlPerMmHg]);
        p[S.Arch] = f.Pleural + ((y[S.Arch] - k[ArchZeroVolumeMl]) / k[ArchComplianceMlPerMmHg]);
        p[S.Descending] = (y[S.Descending] + (k[BalloonVolumeMl] * clock.Balloon) - k[DescendingZeroVolumeMl]) / k[DescendingComplianceMlPerMmHg];
        p[S.UpperVein] = (y[S.UpperVein] - k[UpperVenousZeroVolumeMl]) / k[UpperVenousComplianceMlPerMmHg];
        p[S.SplanchnicVein] = f.Abdominal + ((y[S.SplanchnicVein] - (k[SplanchnicZeroVolumeMl] * shrink)) / k[SplanchnicComplianceMlPerMmHg]);
        p[S.LowerVein] = (y[S.LowerVein] - (k[LowerVenousZeroVolumeMl] * shrink)) / k[LowerVenousComplianceMlPerMmHg];
        T superior = y[S.SuperiorCava] / k[SuperiorCavaZeroVolumeMl];
        T thoracic = y[S.ThoracicCava] / k[ThoracicCavaZeroVolumeMl];
        T abdominal = y[S.AbdominalCava] / k[AbdominalCavaZeroVolumeMl];
        p[S.SuperiorCava] = f.Pleural + Tube(superior);
        p[S.ThoracicCava] = f.Pleural + Tube(thoracic);
        p[S.AbdominalCava] = f.Abdominal + Tube(abdominal);

        // Arterioles and veins.
        T conductance = one / (k[SystemicResistanceMmHgSPerMl] * (one + (T.Of(ReflexGains.Resistance) * y[S.ReflexResistance])));
        T upper = conductance * k[UpperShare];
        f.CoronaryFlow = conductance * k[CoronaryShare] * (p[S.Ascending] - p[S.RightAtrium]);
        f.UpperFromAscending = upper * k[AscendingPartOfUpper] * (p[S.Ascending] - p[S.UpperVein]);
        f.UpperFromArch = upper * (one - k[AscendingPartOfUpper]) * (p[S.Arch] - p[S.UpperVein]);
        f.SplanchnicFlow = conductance * k[SplanchnicShare] * (p[S.Descending] - p[S.SplanchnicVein]);
        f.LowerFlow = conductance * (one - k[CoronaryShare] - k[UpperShare] - k[SplanchnicShare]) * (p[S.Descending] - p[S.LowerVein]);

        // A vein falls in where it enters chest or belly: a cava sucked below the pressure around that place draws no more.
        f.UpperVenousFlow = Inlet(p[S.UpperVein], p[S.SuperiorCava], zero) / k[UpperVenousResistanceMmHgSPerMl];
        f.HepaticFlow = Inlet(p[S.SplanchnicVein], p[S.AbdominalCava], f.Abdominal) / k[SplanchnicVenousResistanceMmHgSPerMl];
        f.LowerVenousFlow = Inlet(p[S.LowerVein], p[S.AbdominalCava], f.Abdominal) / k[LowerVenousResistanceMmHgSPerMl];
        f.SuperiorCavaFlow = superior * superior * (p[S.SuperiorCava] - p[S.RightAtrium]) / k[SuperiorCavaResistanceMmHgSPerMl];
        f.ThoracicCavaFlow = thoracic * thoracic * (p[S.ThoracicCava] - p[S.RightAtrium]) / k[ThoracicCavaResistanceMmHgSPerMl];
        f.DiaphragmFlow = abdominal * abdominal * (p[S.AbdominalCava] - p[S.ThoracicCava]) / k[AbdominalCavaResistanceMmHgSPerMl];

        // Lungs: alveolar pressure takes the place of venous pressure where it is higher.
        T behind = SmoothMax(p[S.PulmonaryVein], k[AlveolarVesselShare] * f.Alveolar);
        f.LungFlow = T.Max(zero, (p[S.PulmonaryArtery] - behind) / k[PulmonaryResistanceMmHgSPerMl]);
        f.PulmonaryVenousFlow = (p[S.PulmonaryVein] - p[S.LeftAtrium]) / k[PulmonaryVenousResistanceMmHgSPerMl];

        // Leaks and openings: Q = K ΔP / sqrt(|ΔP| + 1), an orifice above 1 mmHg and linear below.
        f.AorticLeak = Leak(T.Max(zero, -f.Opening[3]), k[AorticLeakAreaCm2]);
        f.MitralLeak = Leak(T.Max(zero, -f.Opening[2]), k[MitralLeakAreaCm2]);
        f.SeptalFlow = Leak(p[S.LeftAtrium] - p[S.RightAtrium], k[SeptalOpeningCm2]);

        Circuit(open[4], y, dy, f);
        T fill = y[S.LeftVentricle] * y[S.LeftVentricle];
        T half = T.Of(2) * k[LeftVentricleZeroVolumeMl] * k[LeftVentricleZeroVolumeMl];
        f.TransvalvularFlow = k[TransvalvularFlowLPerMin] / T.Of(LPerMinPerMlPerS) * fill / (fill + half);

        Volumes(y, dy, f);
        for (int v = 0; v < 4; v++)
        {
            T q = y[S.TricuspidFlow + v];
            dy[S.TricuspidFlow + v] = open[v] * (f.Opening[v] - (k[ValveResistanceMmHgSPerMl] * q) - (orifice[v] * q * T.Abs(q))) / inertance[v];
        }

        dy[S.ArchFlow] = (p[S.Ascending] - p[S.Arch] - (k[AorticResistanceMmHgSPerMl] * y[S.ArchFlow])) / k[ArchInertanceMmHgS2PerMl];
        dy[S.DescendingFlow] = (p[S.Arch] - p[S.Descending] - (k[AorticResistanceMmHgSPerMl] * y[S.DescendingFlow])) / k[DescendingInertanceMmHgS2PerMl];

        T want = (k[ReflexPressureMmHg] - y[S.SensedPressure]) / T.Of(ReflexGains.WidthMmHg);
        T drive = k[ReflexGain] * want / T.Sqrt(one + (want * want));
        dy[S.SensedPressure] = (p[S.Arch] - y[S.SensedPressure]) / T.Of(ReflexGains.SensorS);
        dy[S.ReflexRate] = (drive - y[S.ReflexRate]) / T.Of(ReflexGains.RateS);
        dy[S.ReflexResistance] = (drive - y[S.ReflexResistance]) / T.Of(ReflexGains.ResistanceS);
        dy[S.ReflexElastance] = (drive - y[S.ReflexElastance]) / T.Of(ReflexGains.ElastanceS);
        dy[S.ReflexVolume] = (drive - y[S.ReflexVolume]) / T.Of(ReflexGains.VenousVolumeS);
    }

    private static T Orifice(T areaCm2) => T.Of(OrificeFactor) / (areaCm2 * areaCm2);

    private static T Ventricle(T activation, T stretch, T elastance, T scale, T exponent) =>
        (activation * elastance * stretch) + ((T.Of(1) - activation) * scale * (T.Exp(T.Min(T.Of(6), exponent * stretch)) - T.Of(1)));

    /// <summary>Elastic above the zero volume v = 1; below it the walls fall in with the exponent of the cava, without a kink: −K(v^(−3/2) − 1 − 3/2 (1 − v)).</summary>
    private T Atrium(T activation, T volume, T zeroVolume, T resting, T contracted)
    {
        T one = T.Of(1);
        T v = T.Min(one, T.Max(volume / zeroVolume, T.Of(0.02)));
        T collapse = k[CavalStiffnessMmHg] * ((one / (v * T.Sqrt(v))) - one - (T.Of(1.5) * (one - v)));
        return ((resting + (activation * (contracted - resting))) * (volume - zeroVolume)) - collapse;
    }

    /// <summary>Larger of two pressures with a corner of 1 mmHg.</summary>
    private static T SmoothMax(T a, T b)
    {
        T d = a - b;
        return T.Of(0.5) * (a + b + T.Sqrt((d * d) + T.Of(1)));
    }

    /// <summary>Pressure that drives a vein into a cava through a place that collapses below a pressure around it.</summary>
    private static T Inlet(T vein, T cava, T around) => SmoothMax(vein, around) - SmoothMax(cava, around);

    // Without the square root of the orifice equation at zero, where its slope has no bound.
    private static T Leak(T pressure, T areaCm2) =>
        areaCm2 * pressure / T.Sqrt(T.Of(OrificeFactor) * (T.Abs(pressure) + T.Of(1)));

    /// <summary>Transmural pressure of a cava at a volume over its zero volume: K(v² − v^(−3/2)).</summary>
    private T Tube(T v)
    {
        T kept = T.Max(v, T.Of(0.02));
        return k[CavalStiffnessMmHg] * ((kept * kept) - (T.Of(1) / (kept * T.Sqrt(kept))));
    }

    /// <summary>How open a site of relative volume v is to the holes: one at v = 1, zero when empty.</summary>
    private static T OpennessOf(T v)
    {
        T two = v * v;
        return T.Min(T.Of(1), T.Of(1.15) * two / (two + T.Of(0.15)));
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Circuit(T on, ReadOnlySpan<T> y, Span<T> dy, FlowField<T> f)
    {
        T one = T.Of(1);
        T[] p = f.Pressure;
        T q = y[S.CircuitFlow];
        T flow = q * T.Of(LPerMinPerMlPerS);
        T o0 = siteShare[0] * OpennessOf(y[S.SuperiorCava] / k[SuperiorCavaZeroVolumeMl]);
        T o1 = siteShare[1] * OpennessOf(y[S.RightAtrium] / k[RightAtriumZeroVolumeMl]);
        T o2 = siteShare[2] * OpennessOf(y[S.ThoracicCava] / k[ThoracicCavaZeroVolumeMl]);
        T o3 = siteShare[3] * OpennessOf(y[S.AbdominalCava] / k[AbdominalCavaZeroVolumeMl]);
        T openness = T.Max(o0 + o1 + o2 + o3, T.Of(1e-4));
        f.Openness = openness;
        T source = ((o0 * p[S.SuperiorCava]) + (o1 * p[S.RightAtrium]) + (o2 * p[S.ThoracicCava]) + (o3 * p[S.AbdominalCava])) / openness;
        T fill = y[S.LeftVentricle] * y[S.LeftVentricle];
        T half = T.Of(2) * k[LeftVentricleZeroVolumeMl] * k[LeftVentricleZeroVolumeMl];
        f.VentFlow = T.Min(T.Max(q, T.Of(0)), k[VentFlowLPerMin] / T.Of(LPerMinPerMlPerS) * fill / (fill + half));
        f.DrainageFlow = q - f.VentFlow;

        T venousPressure = T.Of(0);
        T toVein = q * (one - k[ArterialShareOfReturn]);
        f.VenousReturnFlow = toVein;
        for (int c = 0; c < AxisPorts.CellCount; c++)
        {
            T site = c < 2 ? o0 : c < 6 ? o1 : c < 7 ? o2 : o3;
            T share = c < 2 ? siteShare[0] : c < 6 ? siteShare[1] : c < 7 ? siteShare[2] : siteShare[3];
            f.Drained[c] = f.DrainageFlow * k.Drainage[c] * site / (T.Max(share, T.Of(1e-12)) * openness);
            f.ReturnedTo[c] = toVein * k.VenousReturn[c];
            venousPressure += k.VenousReturn[c] * p[c < 2 ? S.SuperiorCava : c < 6 ? S.RightAtrium : c < 7 ? S.ThoracicCava : S.AbdominalCava];
        }

        T toArtery = q * k[ArterialShareOfReturn];
        f.ReturnToAscending = toArtery * k[AscendingShareOfArterialReturn];
        f.ReturnToDescending = toArtery - f.ReturnToAscending;
        T arterialPressure = (k[AscendingShareOfArterialReturn] * p[S.Ascending]) + ((one - k[AscendingShareOfArterialReturn]) * p[S.Descending]);
        T sink = (k[ArterialShareOfReturn] * arterialPressure) + ((one - k[ArterialShareOfReturn]) * venousPressure);

        T n = y[S.SpeedRatio];
        T head = (k[PumpShutOffMmHg] * n * n) + (k[PumpLinearMmHgPerLPerMin] * n * flow) + (k[PumpQuadraticMmHgPerLPerMin2] * flow * T.Abs(flow));
        T suction = k[SuctionResistanceMmHgSPerMl] * ((one / openness) - one) * q;
        f.InletPressure = source - suction - (flow * (k[DrainageLinearMmHgPerLPerMin] + (k[DrainageQuadraticMmHgPerLPerMin2] * T.Abs(flow))));
        f.OutletPressure = sink + (flow * (k[ReturnLinearMmHgPerLPerMin] + (k[ReturnQuadraticMmHgPerLPerMin2] * T.Abs(flow))));
        f.Opening[4] = (k[CircuitOn] * (f.InletPressure + head - f.OutletPressure)) - (T.Of(1e3) * (one - k[CircuitOn]));
        dy[S.CircuitFlow] = on * f.Opening[4] / k[CircuitInertanceMmHgS2PerMl];
        T spare = T.Max(T.Of(0), one - (n / k[HighestSpeedRatio]));
        T step = k[FlowControlPerS] * (k[TargetFlowLPerMin] - flow) / k[TargetFlowLPerMin];
        dy[S.SpeedRatio] = k[CircuitOn] * (T.Min(step, T.Of(0)) + (T.Max(step, T.Of(0)) * T.Min(one, T.Of(10) * spare)));
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Volumes(ReadOnlySpan<T> y, Span<T> dy, FlowField<T> f)
    {
        T[] d = f.Drained;
        T[] r = f.ReturnedTo;
        T tricuspid = y[S.TricuspidFlow];
        T pulmonary = y[S.PulmonaryValveFlow];
        T mitral = y[S.MitralFlow];
        T aortic = y[S.AorticValveFlow];
        T arch = y[S.ArchFlow];
        T descending = y[S.DescendingFlow];
        f.SuperiorCavaChange = f.UpperVenousFlow - f.SuperiorCavaFlow + (r[0] + r[1]) - (d[0] + d[1]);
        f.ThoracicCavaChange = f.DiaphragmFlow - f.ThoracicCavaFlow + r[6] - d[6];
        f.AbdominalCavaChange = f.HepaticFlow + f.LowerVenousFlow - f.DiaphragmFlow + (r[7] + r[8] + r[9]) - (d[7] + d[8] + d[9]);
        f.AtriumChange = f.SuperiorCavaFlow + f.ThoracicCavaFlow + f.CoronaryFlow + f.SeptalFlow - tricuspid
            + (r[2] + r[3] + r[4] + r[5]) - (d[2] + d[3] + d[4] + d[5]);
        dy[S.SuperiorCava] = f.SuperiorCavaChange;
        dy[S.ThoracicCava] = f.ThoracicCavaChange;
        dy[S.AbdominalCava] = f.AbdominalCavaChange;
        dy[S.RightAtrium] = f.AtriumChange;
        dy[S.RightVentricle] = tricuspid - pulmonary;
        dy[S.PulmonaryArtery] = pulmonary - f.LungFlow;
        dy[S.PulmonaryVein] = f.LungFlow - f.PulmonaryVenousFlow;
        dy[S.LeftAtrium] = f.PulmonaryVenousFlow + f.MitralLeak - mitral - f.SeptalFlow;
        dy[S.LeftVentricle] = mitral - f.MitralLeak - aortic + f.AorticLeak - f.VentFlow - f.TransvalvularFlow;
        dy[S.Ascending] = aortic - f.AorticLeak + f.TransvalvularFlow + f.ReturnToAscending - arch - f.UpperFromAscending - f.CoronaryFlow;
        dy[S.Arch] = arch - descending - f.UpperFromArch;
        dy[S.Descending] = descending + f.ReturnToDescending - f.SplanchnicFlow - f.LowerFlow;
        dy[S.UpperVein] = f.UpperFromAscending + f.UpperFromArch - f.UpperVenousFlow;
        dy[S.SplanchnicVein] = f.SplanchnicFlow - f.HepaticFlow;
        dy[S.LowerVein] = f.LowerFlow - f.LowerVenousFlow;
    }
}
