namespace Cavaxis.Course.GasExchange;

/// <summary>How recirculation was found.</summary>
public enum RecirculationMethod
{
    /// <summary>From three saturations; dissolved oxygen is left out.</summary>
    Saturation,

    /// <summary>From three oxygen contents, dissolved oxygen counted.</summary>
    Content,

    /// <summary>From the areas of a dilution curve on both sides of the circuit.</summary>
    Dilution,
}
