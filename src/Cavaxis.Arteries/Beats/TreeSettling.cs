using System.Collections.Immutable;
using Cavaxis.Arteries.Heart;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Solver;
using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Arteries.Beats;

/// <summary>Runs the tree beat by beat until pressures and blood repeat themselves, and keeps the last beat.</summary>
public static class TreeSettling
{
    /// <summary>Moments that are kept of a beat.</summary>
    public const int Moments = 64;

    private const int FewestBeats = 8;
    private const int MostBeats = 60;
    private const double PressureBound = 2e-3;
    private const double ShareBound = 4e-3;

    /// <summary>The settled beat.</summary>
    /// <param name="tree">The patient's tree.</param>
    /// <param name="circulation">Numbers of the ventricle and its valves.</param>
    /// <param name="filling">What fills it.</param>
    /// <param name="support">What the tree is supported by.</param>
    /// <param name="cancellation">Stops between beats.</param>
    /// <returns>The beat; the changes in it say how far it has settled.</returns>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    /// <exception cref="ArterialFlowException">The flow left what the equations describe.</exception>
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
        BeatSampler sampler = new(simulation, around, heart, filling.PeriodS);
        double startAmount = simulation.TracerAmount(0);
        double startVolume = simulation.VesselVolume + simulation.StoredVolume;
        TreeBeat? last = null;
        for (int beat = 1; beat <= MostBeats; beat++)
        {
            cancellation.ThrowIfCancellationRequested();
            TreeBeat now = sampler.Beat(beat, last);
            last = now;
            if (beat >= FewestBeats && now.PressureChange < PressureBound && now.ShareChange < ShareBound)
            {
                break;
            }
        }

        double pumped = support.PumpMlPerS.Length == 0 ? 0 : support.PumpMlPerS.Average() * 1e-6 * simulation.Time;
        double entered = pumped + Math.Max(1e-9, sampler.EjectedM3);
        double lost = simulation.TracerAmount(0) - startAmount - simulation.TracerEntered(0);
        double leaked = simulation.VesselVolume + simulation.StoredVolume - startVolume - simulation.EnteredVolume;
        return last! with { Imbalance = lost / Math.Max(entered, 1e-9), VolumeImbalance = leaked / entered };
    }

    private sealed class BeatSampler
    {
        private readonly ArterialSimulation simulation;
        private readonly PatientTree tree;
        private readonly LeftVentricle heart;
        private readonly double period;
        private readonly ArterialProbe[] middle;
        private readonly ArterialProbe[] end;
        private readonly ArterialProbe[] aorta;
        private readonly ArterialProbe root;

        public BeatSampler(ArterialSimulation simulation, PatientTree tree, LeftVentricle heart, double period)
        {
            (this.simulation, this.tree, this.heart, this.period) = (simulation, tree, heart, period);
            middle = [.. tree.Segments.Select(s => simulation.Locate(new NetworkPlace(s.Table.Name, 0.5 * s.LengthM)))];
            end = [.. tree.Segments.Select(s => simulation.Locate(new NetworkPlace(s.Table.Name, s.LengthM)))];
            AortaPath path = new(tree);
            aorta = [.. path.PlacesM.Select(at => path.Locate(at)).Select(p => simulation.Locate(new NetworkPlace(p.Table.Name, p.WithinM)))];
            root = simulation.Locate(new NetworkPlace(tree.Segments[0].Table.Name, 0));
        }

        /// <summary>Blood ejected since the start, m³.</summary>
        public double EjectedM3 => heart.EjectedMl * 1e-6;

        public TreeBeat Beat(int beat, TreeBeat? before)
        {
            double[][] pressure = new double[Moments][], flow = new double[Moments][], share = new double[Moments][];
            double[][] endFlow = new double[Moments][], endShare = new double[Moments][], aortaShare = new double[Moments][];
            double[] rootPa = new double[Moments];
            double ejected = heart.EjectedMl;
            double open = heart.OpenS;
            long steps = simulation.Steps;
            for (int m = 0; m < Moments; m++)
            {
                simulation.Advance(((beat - 1 + ((m + 1.0) / Moments)) * period) - simulation.Time);
                pressure[m] = [.. middle.Select(simulation.Pressure)];
                flow[m] = [.. middle.Select(simulation.Flow)];
                share[m] = [.. middle.Select(p => simulation.Concentration(p, 0))];
                endFlow[m] = [.. tree.Segments.Select((s, i) => s.EndResistancePaSPerM3 is null ? 0 : simulation.Flow(end[i]))];
                endShare[m] = [.. end.Select(p => simulation.Concentration(p, 0))];
                aortaShare[m] = [.. aorta.Select(p => simulation.Concentration(p, 0))];
                rootPa[m] = simulation.Pressure(root);
            }

            ImmutableArray<double[]> p = [.. pressure], c = [.. endShare];
            return new TreeBeat(
                tree, period, p, [.. flow], [.. share], [.. endFlow], c, [.. aortaShare], [.. rootPa],
                heart.EjectedMl - ejected, (heart.OpenS - open) / period, beat,
                before is null ? 1 : Change(p, before.PressurePa) / rootPa.Average(), before is null ? 1 : Change(c, before.EndShare),
                0, 0, simulation.CellCount, (int)(simulation.Steps - steps));
        }

        private static double Change(ImmutableArray<double[]> now, ImmutableArray<double[]> before)
        {
            double largest = 0;
            for (int m = 0; m < now.Length; m++)
            {
                for (int i = 0; i < now[m].Length; i++)
                {
                    largest = Math.Max(largest, Math.Abs(now[m][i] - before[m][i]));
                }
            }

            return largest;
        }
    }
}
