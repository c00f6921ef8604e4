using Cavaxis.Arteries.Heart;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Solver;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Beats;

/// <summary>Runs the tree until its beat repeats itself, then carries the blood on that beat until the blood does too.</summary>
public static class TreeSettling
{
    private const int MostBeats = 40;
    private const int MostTransportBeats = 400;
    private const double FlowBound = 1e-3;
    private const double ShareBound = 3e-4;

    /// <summary>The settled beat.</summary>
    /// <param name="tree">The patient's tree.</param>
    /// <param name="circulation">Numbers of the ventricle and its valves.</param>
    /// <param name="filling">What fills it.</param>
    /// <param name="support">What the tree is supported by.</param>
    /// <param name="cancellation">Stops between the parts of the run.</param>
    /// <returns>The beat; the changes in it say how far it has settled.</returns>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    /// <exception cref="ArterialFlowException">The flow left what the equations describe.</exception>
    /// <exception cref="InputFaultException">The network cannot be made of these numbers.</exception>
    public static TreeBeat Run(
        PatientTree tree, CirculationParameters circulation, FillingRecord filling, TreeSupport support, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(tree);
        ArgumentNullException.ThrowIfNull(filling);
        ArgumentNullException.ThrowIfNull(support);
        VentricleNumbers numbers = new(circulation, filling.PeriodS);
        LeftVentricle heart = new(numbers, filling);
        (ArterialSetup setup, PatientTree around) = TreeModel.Of(tree, heart, numbers, filling.PeriodS, support);
        ArterialSimulation simulation = new(setup);
        double startVolume = simulation.VesselVolume + simulation.StoredVolume;
        PeriodicFlow periodic = PeriodicFlow.Settle(simulation, filling.PeriodS, FlowBound, MostBeats);
        cancellation.ThrowIfCancellationRequested();
        BeatSampler sampler = new(simulation, around, filling.PeriodS);
        FlowSamples flow = sampler.Flow(heart);
        double ejected = heart.EjectedMl * 1e-6;
        double leaked = simulation.VesselVolume + simulation.StoredVolume - startVolume - simulation.EnteredVolume;
        BeatTransport transport = BeatTransport.Record(simulation, filling.PeriodS);
        cancellation.ThrowIfCancellationRequested();
        double held = transport.TracerAmount(0) - transport.TracerEntered(0);
        bool carried = transport.RunUntilPeriodic(ShareBound, MostTransportBeats);
        ShareSamples shares = sampler.Shares(transport);
        double lost = transport.TracerAmount(0) - transport.TracerEntered(0) - held;
        double pumped = support.PumpMlPerS.Length == 0 ? 0 : support.PumpMlPerS.Average() * 1e-6;
        double time = transport.Beats * filling.PeriodS;
        return new TreeBeat(
            around, filling.PeriodS, flow.PressurePa, flow.FlowM3PerS, shares.Share, flow.EndFlowM3PerS, shares.EndShare, shares.AortaShare, flow.RootPa,
            flow.StrokeMl, flow.ValveOpenShare, periodic.Beats, periodic.Change, transport.Beats, carried,
            lost / Math.Max(1e-9, pumped * time), leaked / Math.Max(1e-9, ejected + (pumped * simulation.Time)), simulation.CellCount, flow.Steps);
    }
}
