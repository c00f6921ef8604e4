namespace Cavaxis.Planning.Case;

/// <summary>Who moves the chest.</summary>
public enum VentilationMode
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>The patient: pleural pressure falls in inspiration.</summary>
    Spontaneous,

    /// <summary>The ventilator alone: pleural pressure rises in inspiration.</summary>
    Controlled,
}
