using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Solver;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>Waves in arteries against exact theory: a single pulse, its friction, its reflection at a fork, the order of convergence, rest.</summary>
public sealed class ArteryWaveChecks : IReferenceChecks
{
    private const string Room = "Arteries";
    private const double CellLength = 0.0025;
    private const double PulseFlow = 1e-6;
    private const double PulseTime = 0.05;
    private const double Radius = 0.01;
    private const double Frequency = 10 * Math.PI;
    private const double WallViscosity = 1000;

    private static readonly Source Pulse = new("Boileau et al. 2015, Int J Numer Meth Biomed Engng 31:e02732, case 1; linear theory on its parameters", Certainty.Derived);
    private static readonly Source Simple = new("Simple wave of the tube law: its crest runs at c + 5U/4", Certainty.ClosedForm);
    private static readonly Source Fork = new("Reflection at a fork, (Y0 - 2 Y1)/(Y0 + 2 Y1), on case 4 of Boileau et al. 2015", Certainty.Derived);
    private static readonly Source Voigt = new("Harmonic wave in a tube with a Voigt wall: modulus E (1 + i w phi/E)", Certainty.ClosedForm);
    private static readonly Source Exact = new("Exact theory of the scheme: second order, well balanced", Certainty.ClosedForm);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows()
    {
        double stiffness = TubeLaw.Stiffness(Radius, 0.0015, 400e3);
        double speed = TubeLaw.WaveSpeed(stiffness, TubeLaw.Area(Radius), 1050);
        yield return Row("Wave speed of the single pulse's tube", Pulse, 6.1721, speed, "m/s", Tolerance.Absolute, 1e-4);
        ArterialSimulation free = Tube(0, 9, CellLength);
        (double first, _) = Crest(free, 2, 0.30, 0.45);
        (double second, double height) = Crest(free, 5, 0.80, 0.92);
        yield return Row("Speed of the crest from 2 to 5 m", Simple, speed + (1.25 * PulseFlow / TubeLaw.Area(Radius)), 3 / (second - first), "m/s", Tolerance.Relative, 2e-4);
        yield return Row("Arrival of the crest at 5 m", Pulse, 0.8601, second, "s", Tolerance.Absolute, 0.0006, "Linear theory leaves out that the crest is faster by 5U/4.");
        yield return Row("Highest pressure at 5 m without friction", Pulse, 20.63, height, "Pa", Tolerance.Relative, 0.004);
        foreach ((double profile, double left) in ((double, double)[])[(9, 0.712), (2, 0.884)])
        {
            (_, double damped) = Crest(Tube(0.004, profile, CellLength), 5, 0.80, 0.92);
            yield return Row(
                FormattableString.Invariant($"Part of the pulse that friction leaves at 5 m, profile exponent {profile}"), Pulse, left, damped / height, "1", Tolerance.Absolute, 0.004,
                "Linear theory for short waves; this pulse has long ones in it, which lose a little less.");
        }

        yield return Row("Part of a small pulse that a fork sends back", Fork, 0.0972, Reflected(), "1", Tolerance.Absolute, 5e-4);
        yield return Row("Part of a wave of 5 Hz that a viscous wall leaves over 2 m", Voigt, ViscousTheory(speed), ViscousLoss(), "1", Tolerance.Relative, 0.01);
        yield return Row("Order of convergence on the pulse with friction, cells of 10 to 2.5 mm", Exact, 1.9, Order(), "1", Tolerance.AtLeast, 0);
        yield return Row("Fastest blood after 1 s of rest in tapered and stiffened vessels with a body in one", Exact, 1e-12, FastestAtRest(), "m/s", Tolerance.AtMost, 0);
    }

    private static ValidationRow Row(string check, Source source, double expected, double got, string unit, Tolerance tolerance, double bound, string note = "") =>
        new(Room, check, source, expected, got, unit, tolerance, bound, note);

    private static ArterialSimulation Tube(double viscosity, double profile, double cellLength) => new(new ArterialSetup(
        new ArterialNetwork([new("tube", "in", "out", 10, Radius, Radius, 0.0015, 0.0015, 400e3, 0)], new BloodFluid(1050, viscosity, profile)),
        [new("in", new FlowInlet(static t => PulseFlow * Math.Exp(-1e4 * (t - PulseTime) * (t - PulseTime)))), new("out", new NonReflectingEnd(0))],
        0)
    { CellLength = cellLength });

    private static (double Time, double Pressure) Crest(ArterialSimulation simulation, double place, double from, double to)
    {
        const double Step = 0.0005;
        simulation.Advance(from - simulation.Time);
        ArterialProbe probe = simulation.Locate(new("tube", place));
        List<double> read = [];
        while (simulation.Time < to)
        {
            read.Add(simulation.Pressure(probe));
            simulation.Advance(Step);
        }

        int top = Math.Clamp(read.IndexOf(read.Max()), 1, read.Count - 2);
        double left = read[top - 1], middle = read[top], right = read[top + 1], shift = 0.5 * (left - right) / (left - (2 * middle) + right);
        return (from + (Step * (top + shift)), middle - (0.25 * (left - right) * shift));
    }

    private static double Reflected()
    {
        ArterialSimulation simulation = new(new ArterialSetup(
            new ArterialNetwork(
                [
                    new("aorta", "in", "fork", 2, 0.0086, 0.0086, 0.001032, 0.001032, 500e3, 0),
                    new("right", "fork", "outRight", 2, 0.006, 0.006, 0.00072, 0.00072, 700e3, 0),
                    new("left", "fork", "outLeft", 2, 0.006, 0.006, 0.00072, 0.00072, 700e3, 0),
                ],
                new BloodFluid(1060, 0, 9)),
            [
                new("in", new FlowInlet(static t => 1e-7 * Math.Exp(-4e3 * (t - 0.06) * (t - 0.06)))), new("outRight", new NonReflectingEnd(0)), new("outLeft", new NonReflectingEnd(0)),
            ],
            0)
        { CellLength = 0.005 });
        ArterialProbe probe = simulation.Locate(new("aorta", 1));
        double coming = 0, returning = 0;
        while (simulation.Time < 0.8)
        {
            simulation.Advance(0.0005);
            double pressure = simulation.Pressure(probe);
            coming = simulation.Time < 0.4 ? Math.Max(coming, pressure) : coming;
            returning = simulation.Time > 0.4 ? Math.Max(returning, pressure) : returning;
        }

        return returning / coming;
    }

    private static double Order()
    {
        double[][] runs = [.. ((double[])[0.01, 0.005, 0.0025]).Select(static cell =>
        {
            ArterialSimulation simulation = Tube(0.004, 9, cell);
            simulation.Advance(0.4);
            return Enumerable.Range(0, 200).Select(i => simulation.Pressure(simulation.Locate(new("tube", 0.5 + (0.02 * i))))).ToArray();
        })];
        double[] differences = [.. runs.Zip(runs.Skip(1), static (coarse, fine) => coarse.Zip(fine, static (a, b) => Math.Abs(a - b)).Sum())];
        return Math.Log2(differences[0] / differences[1]);
    }

    private static double ViscousLoss()
    {
        const double From = 1, To = 3;
        ArterialSimulation simulation = new(new ArterialSetup(
            new ArterialNetwork([new("tube", "in", "out", 10, Radius, Radius, 0.0015, 0.0015, 400e3, 0, WallViscosity)], new BloodFluid(1050, 0, 9)),
            [new("in", new FlowInlet(static t => 1e-7 * Math.Sin(Frequency * t) * Math.Min(1, 5 * t))), new("out", new NonReflectingEnd(0))],
            0)
        { CellLength = 0.01 });
        simulation.Advance(1.2);
        ArterialProbe near = simulation.Locate(new("tube", From)), far = simulation.Locate(new("tube", To));
        double atNear = 0, atFar = 0;
        while (simulation.Time < 1.6)
        {
            simulation.Advance(0.001);
            atNear = Math.Max(atNear, simulation.Flow(near));
            atFar = Math.Max(atFar, simulation.Flow(far));
        }

        return atFar / atNear;
    }

    private static double ViscousTheory(double speed)
    {
        // Modulus E (1 + i w phi/E): k = (w/c)/sqrt(1 + i w phi/E), the part left over 2 m is exp(2 Im k).
        System.Numerics.Complex k = Frequency / speed / System.Numerics.Complex.Sqrt(new System.Numerics.Complex(1, Frequency * WallViscosity / 400e3));
        return Math.Exp(2 * k.Imaginary);
    }

    private static double FastestAtRest()
    {
        const double Pressure = 11_000;
        ArterialSimulation simulation = new(new ArterialSetup(
            new ArterialNetwork(
                [
                    new("aorta", "root", "fork", 0.2, 0.015, 0.008, 0.0015, 0.0009, 400e3, 9000),
                    new("stiff", "fork", "far", 0.1, 0.006, 0.0055, 0.0007, 0.0007, 4e6, 12_000),
                    new("thin", "fork", "end", 0.3, 0.004, 0.001, 0.0005, 0.0003, 700e3, 5000),
                ],
                new BloodFluid(1060, 0.004, 9)),
            [new("root", new FlowInlet(static _ => 0)), new("far", new Resistance(1e9, Pressure)), new("end", new Windkessel(1e8, 1e9, 1e-10, Pressure, Pressure))],
            Pressure)
        { Bodies = [new LumenBody(new("aorta", 0.05), 0.08, static _ => 2e-5, false)] });
        simulation.Advance(1);
        return simulation.Network.Segments.SelectMany(s => Enumerable.Range(0, 21).Select(i => simulation.Locate(new(s.Name, s.Length * i / 20))))
            .Max(probe => Math.Abs(simulation.Velocity(probe)));
    }
}
