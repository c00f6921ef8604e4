using System.Collections.Immutable;
using Cavaxis.Circulation.Axis;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Parameters;

/// <summary>One patient's numbers with one circuit and one set of ports. Immutable; every value lies in its accepted range.</summary>
public sealed class CirculationParameters
{
    private readonly ImmutableArray<double> values;

    private CirculationParameters(ImmutableArray<double> values, AxisPorts ports, double massKg) =>
        (this.values, Ports, MassKg) = (values, ports, massKg);

    /// <summary>The resting adult of the table, 70 kg, without support.</summary>
    public static CirculationParameters Adult { get; } = ForMass(ParameterTable.ReferenceMassKg);

    /// <summary>Where blood is drained and returned.</summary>
    public AxisPorts Ports { get; }

    /// <summary>Body mass that the values were scaled to.</summary>
    public double MassKg { get; }

    /// <summary>All values, in the order of <see cref="CirculationParameter"/>.</summary>
    public ReadOnlySpan<double> Values => values.AsSpan();

    /// <summary>The value of a parameter.</summary>
    /// <param name="parameter">The parameter.</param>
    public double this[CirculationParameter parameter] => values[(int)parameter];

    /// <summary>The table scaled to a body mass, each value by mass to its exponent.</summary>
    /// <param name="massKg">Body mass, 1 to 300 kg.</param>
    /// <returns>The numbers.</returns>
    /// <exception cref="InputFaultException">The mass is out of range.</exception>
    public static CirculationParameters ForMass(double massKg)
    {
        Require.InRange(massKg, 1, 300, "massKg", "Give the body mass in kg.");
        double ratio = massKg / ParameterTable.ReferenceMassKg;
        return new CirculationParameters(
            [.. ParameterTable.All.Select(d => d.Value * Math.Pow(ratio, d.MassExponent))], AxisPorts.Default, massKg);
    }

    /// <summary>The same with one value changed.</summary>
    /// <param name="parameter">Which.</param>
    /// <param name="value">New value in the unit of the table.</param>
    /// <returns>The new set.</returns>
    /// <exception cref="InputFaultException">The value lies outside the model's range.</exception>
    public CirculationParameters With(CirculationParameter parameter, double value)
    {
        (double low, double high) = ParameterTable.Bounds(parameter, MassKg);
        Require.InRange(value, low, high, ParameterTable.Of(parameter).Name, "Stay inside the range of the model: " + ParameterTable.Of(parameter).Meaning);
        return new CirculationParameters(values.SetItem((int)parameter, value), Ports, MassKg);
    }

    /// <summary>The same with one value changed, or the nearest value inside the model's range.</summary>
    /// <param name="parameter">Which.</param>
    /// <param name="value">Value wished for, in the unit of the table.</param>
    /// <returns>The new set.</returns>
    public CirculationParameters WithNearest(CirculationParameter parameter, double value)
    {
        (double low, double high) = ParameterTable.Bounds(parameter, MassKg);
        return With(parameter, Math.Clamp(value, low, high));
    }

    /// <summary>The same with several values changed.</summary>
    /// <param name="changes">The changes.</param>
    /// <returns>The new set.</returns>
    /// <exception cref="InputFaultException">A value lies outside the model's range.</exception>
    public CirculationParameters With(params IEnumerable<(CirculationParameter Parameter, double Value)> changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        return changes.Aggregate(this, static (set, change) => set.With(change.Parameter, change.Value));
    }

    /// <summary>The same with a value multiplied.</summary>
    /// <param name="parameter">Which.</param>
    /// <param name="factor">Factor.</param>
    /// <returns>The new set.</returns>
    /// <exception cref="InputFaultException">The value would lie outside the model's range.</exception>
    public CirculationParameters Times(CirculationParameter parameter, double factor) => With(parameter, this[parameter] * factor);

    /// <summary>The same with other ports.</summary>
    /// <param name="ports">Where blood is drained and returned.</param>
    /// <returns>The new set.</returns>
    public CirculationParameters With(AxisPorts ports)
    {
        ArgumentNullException.ThrowIfNull(ports);
        return new CirculationParameters(values, ports, MassKg);
    }
}
