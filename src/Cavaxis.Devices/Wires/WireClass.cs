namespace Cavaxis.Devices.Wires;

/// <summary>Classes of guide wires by the bending modulus of their body, not by a word on a package.</summary>
public enum WireClass
{
    /// <summary>Softer than the softest plain wire that was measured.</summary>
    Floppy,

    /// <summary>Plain and heavy-duty wires.</summary>
    Standard,

    /// <summary>Stiff wires.</summary>
    Stiff,

    /// <summary>The stiffest wires.</summary>
    ExtraStiff,
}
