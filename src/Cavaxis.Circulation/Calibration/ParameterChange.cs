using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Circulation.Calibration;

/// <summary>A change whose effect is asked for. Added amounts and factors go onto each member's own value.</summary>
/// <param name="Parameter">What is changed.</param>
/// <param name="Kind">How.</param>
/// <param name="Amount">New value or added amount in the unit of the table, or factor.</param>
public sealed record ParameterChange(CirculationParameter Parameter, ChangeKind Kind, double Amount)
{
    /// <summary>A new value.</summary>
    /// <param name="parameter">What is changed.</param>
    /// <param name="value">New value in the unit of the table.</param>
    /// <returns>The change.</returns>
    public static ParameterChange To(CirculationParameter parameter, double value) => new(parameter, ChangeKind.Set, value);

    /// <summary>An added amount.</summary>
    /// <param name="parameter">What is changed.</param>
    /// <param name="amount">Amount in the unit of the table; below zero to take away.</param>
    /// <returns>The change.</returns>
    public static ParameterChange Plus(CirculationParameter parameter, double amount) => new(parameter, ChangeKind.Add, amount);

    /// <summary>A factor.</summary>
    /// <param name="parameter">What is changed.</param>
    /// <param name="factor">Factor on the present value.</param>
    /// <returns>The change.</returns>
    public static ParameterChange By(CirculationParameter parameter, double factor) => new(parameter, ChangeKind.Multiply, factor);

    /// <summary>The value after the change.</summary>
    /// <param name="present">The value before.</param>
    /// <returns>The value after, not checked against the range of the model.</returns>
    public double After(double present) => Kind switch
    {
        ChangeKind.Set => Amount,
        ChangeKind.Add => present + Amount,
        _ => present * Amount,
    };

    /// <summary>The patient after the change.</summary>
    /// <param name="patient">The patient before.</param>
    /// <returns>The changed patient.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">The new value is out of the model's range.</exception>
    public CirculationParameters Apply(CirculationParameters patient)
    {
        ArgumentNullException.ThrowIfNull(patient);
        return patient.With(Parameter, After(patient[Parameter]));
    }
}
