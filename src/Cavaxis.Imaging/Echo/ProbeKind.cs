namespace Cavaxis.Imaging.Echo;

/// <summary>How the lines of a probe are laid out.</summary>
public enum ProbeKind
{
    /// <summary>Parallel lines.</summary>
    Linear,

    /// <summary>Lines square to a curved face.</summary>
    Convex,

    /// <summary>Lines that are steered from one point.</summary>
    Phased,
}
