namespace Cavaxis.Quantities;

/// <summary>How a number came to be. Shown beside every number a person reads.</summary>
public enum Origin
{
    /// <summary>Read off this patient or this device by a person or an instrument.</summary>
    Measured,

    /// <summary>Follows from measured numbers by an equation.</summary>
    Calculated,

    /// <summary>Drawn from a population, a default or a rule because nothing was measured.</summary>
    Estimated,
}
