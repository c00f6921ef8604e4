using System.Collections.Immutable;
using Cavaxis.Anatomy.Body;
using Cavaxis.Arteries.Beats;
using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Limb;
using Cavaxis.Arteries.Numbers;
using Cavaxis.Arteries.Oxygenation;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Solver;
using Cavaxis.Arteries.Tree;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Running;

/// <summary>The arterial tree of a patient under support: the one service that command line, plan and pages call.</summary>
public static class ArterialSupport
{
    private const double MlPerMinPerM3PerS = 6e7;

    // Two inputs moved against each other by 1.645/√2 standard deviations each reach the 5th and 95th percentile of what both do.
    private static readonly double Corner = Estimate.NormalQuantile95 / Math.Sqrt(2);

    /// <summary>Runs the closed loop and the tree.</summary>
    /// <param name="request">What to compute.</param>
    /// <param name="progress">Told the finished share, 0 to 1; null for none.</param>
    /// <param name="cancellation">Stops between the parts of the run.</param>
    /// <returns>The result.</returns>
    /// <exception cref="NotSettledException">The closed loop has not settled with these numbers.</exception>
    /// <exception cref="ArterialFlowException">The flow left what the equations describe.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static ArterialSupportResult Run(
        ArterialSupportRequest request, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        bool supported = request.Return is not null;
        double strength = Corner * ArterialNumbers.Value(ArterialConstant.ContractilityVaried);
        double flow = Corner * ArterialNumbers.Value(ArterialConstant.PumpFlowVaried);
        IReadOnlyList<SettledState> settled = CirculationSimulator.SettleForComparison(
            supported && request.WithIntervals
                ? [
                    ClosedLoopSetting.Of(request), ClosedLoopSetting.Of(request, 1 + strength, 1 - flow),
                    ClosedLoopSetting.Of(request, 1 - strength, 1 + flow),
                ]
                : [ClosedLoopSetting.Of(request)],
            cancellation);
        settled[0].RequireBreath();
        progress?.Report(0.2);
        SettledState[] usable = [.. settled.Where(static s => s.Settled)];
        TreeCase[] cases = Cases(request, usable, cancellation);
        progress?.Report(1);
        return Result(request, cases);
    }

    /// <summary>Mixing zone and saturations over pump flow and contractility.</summary>
    /// <param name="request">The patient; its pump must return somewhere.</param>
    /// <param name="pumpFlowsLPerMin">Pump flows, L/min.</param>
    /// <param name="contractilityFactors">Factors on the elastance of the left ventricle.</param>
    /// <param name="progress">Told the finished share, 0 to 1; null for none.</param>
    /// <param name="cancellation">Stops between the parts of the run.</param>
    /// <returns>The points that settle and can be computed, contractility by contractility.</returns>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static ImmutableArray<ArterialSweepPoint> Sweep(
        ArterialSupportRequest request,
        IReadOnlyList<double> pumpFlowsLPerMin,
        IReadOnlyList<double> contractilityFactors,
        IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(pumpFlowsLPerMin);
        ArgumentNullException.ThrowIfNull(contractilityFactors);
        ArterialSupportRequest[] points =
        [
            .. contractilityFactors.SelectMany(factor => pumpFlowsLPerMin.Select(q => request with
            {
                PumpFlowLPerMin = q,
                ContractilityFactor = request.ContractilityFactor * factor,
            })),
        ];
        IReadOnlyList<SettledState> settled = CirculationSimulator.SettleForComparison([.. points.Select(static p => ClosedLoopSetting.Of(p))], cancellation);
        progress?.Report(0.2);
        ArterialSweepPoint?[] found = new ArterialSweepPoint?[points.Length];
        int done = 0;
        Parallel.For(0, points.Length, Options(cancellation), i =>
        {
            if (settled[i].Settled)
            {
                found[i] = PointOf(points[i], contractilityFactors[i / pumpFlowsLPerMin.Count], settled[i], cancellation);
            }

            progress?.Report(0.2 + (0.8 * Interlocked.Increment(ref done) / points.Length));
        });
        return [.. found.OfType<ArterialSweepPoint>()];
    }

    private static ArterialSweepPoint? PointOf(ArterialSupportRequest request, double factor, SettledState settled, CancellationToken cancellation)
    {
        TreeCase at;
        try
        {
            at = TreeCase.Of(request, settled, cancellation);
        }
        catch (ArterialFlowException)
        {
            return null;
        }

        OverBeat half = MixingReader.Reached(at.Beat, 0.5);
        double Saturation(ArterialOrgan organ) => OrganReader.MeanSaturation(organ, at.Beat, at.Blood);
        return new ArterialSweepPoint(
            request.Return is null ? 0 : at.PumpLPerMin, factor, at.Beat.NativeOutputLPerMin, at.Beat.RootPa.Average() / UnitFactors.PascalsPerMmHg, half,
            MixingReader.InWords(at.Beat, half.Mean), Saturation(ArterialOrgan.Heart), Saturation(ArterialOrgan.BrainRight),
            Saturation(ArterialOrgan.BrainLeft), Saturation(ArterialOrgan.HandRight), Saturation(ArterialOrgan.HandLeft));
    }

    /// <summary>The main tree, and those varied ones that can be computed.</summary>
    private static TreeCase[] Cases(ArterialSupportRequest request, SettledState[] settled, CancellationToken cancellation)
    {
        TreeCase?[] cases = new TreeCase?[settled.Length];
        ArterialFlowException? fault = null;
        Parallel.For(0, settled.Length, Options(cancellation), i =>
        {
            try
            {
                cases[i] = TreeCase.Of(request, settled[i], cancellation);
            }
            catch (ArterialFlowException beyond)
            {
                fault = i == 0 ? beyond : fault;
            }
        });
        return fault is null ? [.. cases.OfType<TreeCase>()] : throw fault;
    }

    private static ParallelOptions Options(CancellationToken cancellation) =>
        new() { CancellationToken = cancellation, MaxDegreeOfParallelism = Environment.ProcessorCount };

    private static ArterialSupportResult Result(ArterialSupportRequest request, TreeCase[] cases)
    {
        TreeCase main = cases[0];
        TreeCase[] varied = cases[1..];
        (TreeBeat beat, BloodPair blood) = (main.Beat, main.Blood);
        ImmutableArray<OrganReading> organs = OrganReader.Of(beat, blood, [.. varied.Select(static v => (v.Beat, v.Blood))]);
        double native = blood.SaturationPercent(0);
        return new ArterialSupportResult(
            main.PumpLPerMin, ResultWords.Return(request.Return), native, blood.Po2(0), blood.SaturationPercent(1), blood.Po2(1),
            Heart(main), [.. ArteryReader.Of(beat, blood, request.Return)], organs,
            request.Return is null ? null : MixingReader.Of(beat, [.. varied.Select(static v => v.Beat)]),
            [Leg(request, main, BodySide.Right), Leg(request, main, BodySide.Left)],
            SamplingReader.Of(organs, request.Return, native), ResultWords.Varied(request.Return is not null && request.WithIntervals, varied.Length), ResultWords.NotModelled(request, main.Tree),
            [ArterialTable.BuiltIn.Source, .. ArterialNumbers.All.Select(static n => new Source(n.Meaning + " " + n.Source, n.Certainty))],
            new SettlingRecord(beat.Beats, beat.FlowChange, beat.TransportBeats, beat.BloodSettled, Imbalance(beat, blood), beat.Cells, beat.StepsPerBeat))
        {
            ReturnSegment = request.Return?.EntrySegment,
        };
    }

    /// <summary>Oxygen is native content times volume plus the difference times the membrane's part: so are their errors.</summary>
    private static double Imbalance(TreeBeat beat, BloodPair blood) =>
        (Math.Abs(beat.VolumeImbalance * blood.NativeMlPerDl) + Math.Abs(beat.Imbalance * (blood.MembraneMlPerDl - blood.NativeMlPerDl)))
        / Math.Max(blood.NativeMlPerDl, 1e-9);

    private static HeartReading Heart(TreeCase main)
    {
        TreeBeat beat = main.Beat;
        BreathRecord breath = main.Settled.RequireBreath();
        int radial = ArterialTable.BuiltIn.IndexOf("radial_R");
        double[] wrist = TreeBeat.At(beat.PressurePa, radial);
        return new HeartReading(
            beat.NativeOutputLPerMin, beat.StrokeMl, 100 * beat.ValveOpenShare, beat.RootPa.Average() / UnitFactors.PascalsPerMmHg,
            wrist.Max() / UnitFactors.PascalsPerMmHg, wrist.Min() / UnitFactors.PascalsPerMmHg,
            breath.Mean(Signal.AorticValveFlow), breath.Mean(Signal.AscendingAorticPressure));
    }

    private static LimbReading Leg(ArterialSupportRequest request, TreeCase main, BodySide side)
    {
        AccessArtery artery = side == BodySide.Right ? AccessArtery.FemoralRight : AccessArtery.FemoralLeft;
        double[] flows = [.. Enumerable.Range(0, main.Tree.Segments.Length).Select(i => TreeBeat.At(main.Beat.EndFlowM3PerS, i).Average())];
        Estimate diameter = main.Tree.AccessDiametersMm[(int)artery];
        PatientTree With(double mm) => TreeScaling.Of(
            ArterialTable.BuiltIn, request.Body, [.. request.Measured, new MeasuredDiameter(artery, Estimate.Normal(mm, 0, Origin.Calculated))], main.Tree.Beds);
        return LegJudgement.Of(new LegInputs(
            side, request.Return, main.PumpLPerMin, main.Beat.RootPa.Average(), LegFlow.Of(main.Tree, flows, side) * MlPerMinPerM3PerS,
            request.Body.WeightKg, With, diameter));
    }
}
