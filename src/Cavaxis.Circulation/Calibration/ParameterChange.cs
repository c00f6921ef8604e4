using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Circulation.Calibration;

/// <summary>A change whose effect is asked for: a new value, or a factor on each member's own value.</summary>
/// <param name="Parameter">What is changed.</param>
/// <param name="Amount">New value in the unit of the table, or factor.</param>
/// <param name="IsFactor">True where the amount is a factor.</param>
public sealed record ParameterChange(CirculationParameter Parameter, double Amount, bool IsFactor)
{
    /// <summary>A new value.</summary>
    /// <param name="parameter">What is changed.</param>
    /// <param name="value">New value in the unit of the table.</param>
    /// <returns>The change.</returns>
    public static ParameterChange To(CirculationParameter parameter, double value) => new(parameter, value, false);

    /// <summary>A factor.</summary>
    /// <param name="parameter">What is changed.</param>
    /// <param name="factor">Factor on the present value.</param>
    /// <returns>The change.</returns>
    public static ParameterChange By(CirculationParameter parameter, double factor) => new(parameter, factor, true);

    /// <summary>The patient after the change.</summary>
    /// <param name="patient">The patient before.</param>
    /// <returns>The changed patient.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">The new value is out of the model's range.</exception>
    public CirculationParameters Apply(CirculationParameters patient)
    {
        ArgumentNullException.ThrowIfNull(patient);
        return IsFactor ? patient.Times(Parameter, Amount) : patient.With(Parameter, Amount);
    }
}
