namespace Cavaxis.Arteries.Solver;

/// <summary>How a flow can leave what the equations describe.</summary>
public enum ArterialFlowFault
{
    /// <summary>Blood as fast as the waves in it.</summary>
    Supercritical,

    /// <summary>No blood left at a place, or a number that is none.</summary>
    Emptied,

    /// <summary>No state of the vessel's end carries the flow or pressure asked for.</summary>
    NoSolutionAtEnd,
}
