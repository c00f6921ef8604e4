using System.Collections.Immutable;
using Cavaxis.Arteries.Beats;
using Cavaxis.Arteries.Heart;
using Cavaxis.Arteries.Oxygenation;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Support;
using Cavaxis.Arteries.Tree;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;

namespace Cavaxis.Arteries.Running;

/// <summary>One settled closed loop and the tree that stands on it.</summary>
/// <param name="Settled">The closed loop.</param>
/// <param name="Tree">The patient's tree.</param>
/// <param name="Beat">Its beat.</param>
/// <param name="Blood">The two kinds of blood.</param>
/// <param name="PumpLPerMin">Flow into the artery, L/min.</param>
internal sealed record TreeCase(SettledState Settled, PatientTree Tree, TreeBeat Beat, BloodPair Blood, double PumpLPerMin)
{
    /// <summary>Runs the tree on a settled closed loop.</summary>
    public static TreeCase Of(ArterialSupportRequest request, SettledState settled, CancellationToken cancellation)
    {
        CirculationParameters p = settled.Parameters;
        BreathRecord breath = settled.RequireBreath();
        PatientTree tree = TreeScaling.Of(ArterialTable.BuiltIn, request.Body, request.Measured, ClosedLoopSetting.Beds(request, settled));
        double share = p[CirculationParameter.ArterialShareOfReturn];
        double pump = request.Return is null ? 0 : breath.Mean(Signal.CircuitFlow) * share;
        TreeSupport support = new(null, [], 0, p[CirculationParameter.BalloonVolumeMl]);
        if (request.Return is ArterialReturn entry)
        {
            CannulaPlacement placement = CannulaPlacement.Of(tree, entry);
            ImmutableArray<double> wave = [.. ClosedLoopBeat.MeanBeat(breath, Signal.CircuitFlow).Select(q => q * share / 0.06)];
            support = support with { Placement = placement, PumpMlPerS = wave, PerfusionLPerMin = Perfusion(tree, placement, entry, pump) };
        }

        TreeBeat beat = TreeSettling.Run(tree, p, ClosedLoopBeat.Filling(settled), support, cancellation);
        return new TreeCase(settled, tree, beat, ClosedLoopSetting.Blood(settled, request.Return is not null), pump);
    }

    private static double Perfusion(PatientTree tree, CannulaPlacement placement, ArterialReturn entry, double pump) =>
        entry.DistalPerfusion is null || !entry.IsFemoral
            ? 0
            : PerfusionFlow.LPerMin(
                new SteadyTree(tree, placement, SteadyTree.UsualFriction), tree, placement, entry, entry.DistalPerfusion, pump, tree.Beds.MeanPressurePa);
}
