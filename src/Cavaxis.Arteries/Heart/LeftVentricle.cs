using Cavaxis.Arteries.Boundaries;
using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Heart;

/// <summary>
/// The left ventricle at the aortic root. In every step the flow through the aortic valve is found together with the pressure that the vessel takes on at
/// that flow (implicit, backward Euler), so that the ventricle ejects only what its pressure can push against that of the pump. The valve is shut where
/// that flow would run back.
/// </summary>
public sealed class LeftVentricle : IEndCondition
{
    private const double MlPerM3 = 1e6;
    private const int MostIterations = 60;
    private readonly VentricleNumbers numbers;
    private readonly FillingRecord filling;
    private double mitralFlow;

    /// <summary>A ventricle at the start of a beat.</summary>
    /// <param name="numbers">Numbers of ventricle and valves.</param>
    /// <param name="filling">What fills it.</param>
    public LeftVentricle(VentricleNumbers numbers, FillingRecord filling)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        ArgumentNullException.ThrowIfNull(filling);
        this.numbers = numbers;
        this.filling = filling;
        VolumeMl = filling.StartVolumeMl;
        PressureMmHg = filling.Around(0) + numbers.Wall(numbers.Activation(0), VolumeMl);
    }

    /// <summary>Volume, mL.</summary>
    public double VolumeMl { get; private set; }

    /// <summary>Pressure, mmHg.</summary>
    public double PressureMmHg { get; private set; }

    /// <summary>Flow through the aortic valve into the aorta, mL/s.</summary>
    public double AorticFlowMlPerS { get; private set; }

    /// <summary>Blood that has entered the aorta since the start, mL.</summary>
    public double EjectedMl { get; private set; }

    /// <summary>Time for which the aortic valve has been open since the start, s.</summary>
    public double OpenS { get; private set; }

    /// <summary>True while the aortic valve is open.</summary>
    public bool ValveOpen { get; private set; }

    /// <inheritdoc/>
    public double StoredVolume => 0;

    /// <inheritdoc/>
    public double OnwardFlow => 0;

    /// <inheritdoc/>
    public double FlowOut(in VesselEnd end, double time, double timeStep)
    {
        double then = time + timeStep;
        double activation = numbers.Activation(then);
        double around = filling.Around(then);
        Fill(then, timeStep);
        double atrialInflow = mitralFlow * timeStep;
        double flow = Open(end, activation, around, atrialInflow, timeStep);
        ValveOpen = flow > 0;
        if (!ValveOpen)
        {
            flow = -numbers.Leak((end.Pressure / UnitFactors.PascalsPerMmHg) - PressureMmHg);
        }

        AorticFlowMlPerS = flow;
        EjectedMl += flow * timeStep;
        OpenS += ValveOpen ? timeStep : 0;
        VolumeMl += atrialInflow - (flow * timeStep);
        PressureMmHg = around + numbers.Wall(activation, VolumeMl);
        return -flow / MlPerM3;
    }

    private void Fill(double then, double timeStep)
    {
        double drive = filling.Atrial(then) - PressureMmHg;
        double step = timeStep / numbers.InflowInertance;
        mitralFlow = Math.Max(
            0, (mitralFlow + (step * drive)) / (1 + (step * (numbers.ValveResistance + (numbers.MitralOrifice * mitralFlow) + (timeStep * 0.05)))));
    }

    /// <summary>Flow at the end of the step through the open valve, mL/s; zero where it would run back.</summary>
    private double Open(in VesselEnd end, double activation, double around, double inflow, double timeStep)
    {
        double inertance = numbers.OutflowInertance / timeStep;
        double previous = Math.Max(0, AorticFlowMlPerS);
        double Misfit(double q, in VesselEnd at)
        {
            double ventricle = around + numbers.Wall(activation, VolumeMl + inflow - (q * timeStep));
            double aorta = at.PressureAtFlow(-q / MlPerM3) / UnitFactors.PascalsPerMmHg;
            return (inertance * (q - previous)) + (q * (numbers.ValveResistance + (numbers.AorticOrifice * q))) + aorta - ventricle;
        }

        if (Misfit(0, end) >= 0)
        {
            return 0;
        }

        // The misfit rises with flow: inertance, losses and aortic pressure grow, ventricular pressure falls.
        double impedance = end.Impedance / UnitFactors.PascalsPerMmHg / MlPerM3;
        double flow = previous;
        double low = 0;
        double high = double.PositiveInfinity;
        for (int i = 0; i < MostIterations; i++)
        {
            double misfit = Misfit(flow, end);
            if (double.IsNaN(misfit) || misfit > 0)
            {
                high = flow;
            }
            else
            {
                low = flow;
            }

            double slope = inertance + numbers.ValveResistance + (2 * numbers.AorticOrifice * flow) + impedance
                + (timeStep * numbers.WallSlope(activation, VolumeMl + inflow - (flow * timeStep)));
            double next = flow - (misfit / slope);
            if (!(next > low && next < high))
            {
                next = double.IsPositiveInfinity(high) ? (2 * flow) + 1 : 0.5 * (low + high);
            }

            if (Math.Abs(next - flow) <= 1e-9 * (1 + flow))
            {
                return next;
            }

            flow = next;
        }

        return flow;
    }
}
