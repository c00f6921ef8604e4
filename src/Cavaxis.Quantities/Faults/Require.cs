using System.Globalization;

namespace Cavaxis.Quantities.Faults;

/// <summary>Checks at public entries. Each throws an <see cref="InputFaultException"/> that names field, value, range and remedy.</summary>
public static class Require
{
    /// <summary>A finite number inside closed bounds.</summary>
    /// <param name="value">The number given.</param>
    /// <param name="low">Lowest accepted value.</param>
    /// <param name="high">Highest accepted value.</param>
    /// <param name="field">Name of the field with its unit.</param>
    /// <param name="remedy">What the caller should do.</param>
    /// <returns>The same number.</returns>
    /// <exception cref="InputFaultException">The number is not finite or outside the bounds.</exception>
    public static double InRange(double value, double low, double high, string field, string remedy) =>
        value >= low && value <= high
            ? value
            : throw new InputFaultException(OutOfRange(value, low, high, field, remedy));

    /// <summary>The fault for a number outside closed bounds, for callers that collect faults.</summary>
    /// <param name="value">The number given.</param>
    /// <param name="low">Lowest accepted value.</param>
    /// <param name="high">Highest accepted value.</param>
    /// <param name="field">Name of the field with its unit.</param>
    /// <param name="remedy">What the caller should do.</param>
    /// <returns>The fault.</returns>
    public static InputFault OutOfRange(double value, double low, double high, string field, string remedy) => new(
        FaultCode.OutOfRange,
        field,
        value.ToString("G6", CultureInfo.InvariantCulture),
        string.Create(CultureInfo.InvariantCulture, $"a finite number from {low:G6} to {high:G6}"),
        remedy);
}
