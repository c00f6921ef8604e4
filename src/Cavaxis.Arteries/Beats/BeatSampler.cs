using Cavaxis.Arteries.Heart;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Solver;

namespace Cavaxis.Arteries.Beats;

/// <summary>Reads a beat at equal steps of time.</summary>
internal sealed class BeatSampler
{
    private const int Moments = 64;
    private readonly ArterialSimulation simulation;
    private readonly PatientTree tree;
    private readonly double period;
    private readonly ArterialProbe[] middle;
    private readonly ArterialProbe[] end;
    private readonly ArterialProbe[] aorta;
    private readonly ArterialProbe root;

    /// <summary>Finds the places to read at.</summary>
    public BeatSampler(ArterialSimulation simulation, PatientTree tree, double period)
    {
        (this.simulation, this.tree, this.period) = (simulation, tree, period);
        middle = [.. tree.Segments.Select(s => simulation.Locate(new NetworkPlace(s.Table.Name, 0.5 * s.LengthM)))];
        end = [.. tree.Segments.Select(s => simulation.Locate(new NetworkPlace(s.Table.Name, s.LengthM)))];
        AortaPath path = new(tree);
        aorta = [.. path.PlacesM.Select(at => path.Locate(at)).Select(p => simulation.Locate(new NetworkPlace(p.Table.Name, p.WithinM)))];
        root = simulation.Locate(new NetworkPlace(tree.Segments[0].Table.Name, 0));
    }

    /// <summary>Moves the simulation on by one beat and reads pressures and flows.</summary>
    public FlowSamples Flow(LeftVentricle heart)
    {
        double[][] pressure = new double[Moments][], flow = new double[Moments][], ends = new double[Moments][];
        double[] rootPa = new double[Moments];
        (double ejected, double open, long steps, double start) = (heart.EjectedMl, heart.OpenS, simulation.Steps, simulation.Time);
        for (int m = 0; m < Moments; m++)
        {
            simulation.Advance(start + ((m + 1) * period / Moments) - simulation.Time);
            pressure[m] = [.. middle.Select(simulation.Pressure)];
            flow[m] = [.. middle.Select(simulation.Flow)];
            ends[m] = [.. tree.Segments.Select((s, i) => s.EndResistancePaSPerM3 is null ? 0 : simulation.Flow(end[i]))];
            rootPa[m] = simulation.Pressure(root);
        }

        return new FlowSamples(
            [.. pressure], [.. flow], [.. ends], [.. rootPa], heart.EjectedMl - ejected, (heart.OpenS - open) / period, (int)(simulation.Steps - steps));
    }

    /// <summary>Carries the blood over one more beat and reads its shares.</summary>
    public ShareSamples Shares(BeatTransport transport)
    {
        double[][] share = new double[Moments][], ends = new double[Moments][], along = new double[Moments][];
        int m = 0;
        void Read()
        {
            share[m] = [.. middle.Select(p => transport.Concentration(p, 0))];
            ends[m] = [.. end.Select(p => transport.Concentration(p, 0))];
            along[m] = [.. aorta.Select(p => transport.Concentration(p, 0))];
            m++;
        }

        transport.Beat(at =>
        {
            while (m < Moments && at.TimeInBeat >= (m + 1) * period / Moments * (1 - 1e-9))
            {
                Read();
            }
        });
        while (m < Moments)
        {
            Read();
        }

        return new ShareSamples([.. share], [.. ends], [.. along]);
    }
}
