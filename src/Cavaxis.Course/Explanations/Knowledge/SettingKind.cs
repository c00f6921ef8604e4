namespace Cavaxis.Course.Explanations.Knowledge;

/// <summary>What people set. A change of it is no sign; what it does to the signs is taken off.</summary>
public enum SettingKind
{
    /// <summary>Pump speed, /min.</summary>
    PumpSpeed,

    /// <summary>Sweep gas, L/min.</summary>
    Sweep,

    /// <summary>Oxygen fraction of the sweep gas.</summary>
    SweepOxygen,

    /// <summary>Inspired oxygen fraction.</summary>
    InspiredOxygen,

    /// <summary>End-expiratory pressure, cmH₂O.</summary>
    Peep,
}
