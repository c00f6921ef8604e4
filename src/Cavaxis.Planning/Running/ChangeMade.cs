using System.Globalization;
using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Planning.Json;

namespace Cavaxis.Planning.Running;

/// <summary>A change that was asked for.</summary>
/// <param name="Name">Name of the number.</param>
/// <param name="Kind">Set to a value, added to or multiplied.</param>
/// <param name="Amount">The value or added amount in the unit, or the factor.</param>
/// <param name="From">Value before.</param>
/// <param name="To">Value after.</param>
/// <param name="Unit">Unit.</param>
public sealed record ChangeMade(string Name, ChangeKind Kind, double Amount, double From, double To, string Unit)
{
    /// <summary>A requested change as it is told.</summary>
    /// <param name="change">The change.</param>
    /// <returns>With name and unit.</returns>
    public static ChangeMade Of(RequestedChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        ParameterDefinition definition = ParameterTable.Of(change.Parameter);
        return new ChangeMade(JsonName.Of(definition.Name), change.Change.Kind, change.Change.Amount, change.From, change.To, definition.Unit);
    }

    /// <summary>What is done to each member, in words: "set to 4.5 L/min", "raised by 500 mL", "times 1.1".</summary>
    /// <returns>The words.</returns>
    public string Asked()
    {
        string unit = Unit == "1" ? string.Empty : " " + Unit;
        return Kind switch
        {
            ChangeKind.Set => string.Create(CultureInfo.InvariantCulture, $"set to {Amount:G5}{unit}"),
            ChangeKind.Add => string.Create(CultureInfo.InvariantCulture, $"{(Amount < 0 ? "lowered" : "raised")} by {Math.Abs(Amount):G5}{unit}"),
            _ => string.Create(CultureInfo.InvariantCulture, $"times {Amount:G5}"),
        };
    }
}
