namespace Cavaxis.Course.Events;

/// <summary>What keeps blood from clotting.</summary>
public enum AnticoagulationAgent
{
    /// <summary>None, on purpose.</summary>
    None,

    /// <summary>Unfractionated heparin.</summary>
    Heparin,

    /// <summary>Low-molecular-weight heparin.</summary>
    LowMolecularWeightHeparin,

    /// <summary>Bivalirudin.</summary>
    Bivalirudin,

    /// <summary>Argatroban.</summary>
    Argatroban,

    /// <summary>Another, named in the remark.</summary>
    Other,
}
