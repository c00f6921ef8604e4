namespace Cavaxis.Reports.Charts;

/// <summary>What stands along one side of a chart.</summary>
/// <param name="Name">The quantity, such as "Pump flow".</param>
/// <param name="Unit">Its unit, such as "L/min"; empty for a pure number.</param>
/// <param name="Scale">Linear or logarithmic.</param>
/// <param name="Low">A value that the axis must reach down to; none where null.</param>
/// <param name="High">A value that the axis must reach up to; none where null.</param>
public sealed record ChartAxis(
    string Name, string Unit, ChartScale Scale = ChartScale.Linear, double? Low = null, double? High = null)
{
    /// <summary>Quantity with its unit in brackets.</summary>
    public string Label => Unit.Length == 0 ? Name : $"{Name} ({Unit})";
}
