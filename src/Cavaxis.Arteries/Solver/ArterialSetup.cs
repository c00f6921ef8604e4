using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;

namespace Cavaxis.Arteries.Solver;

/// <summary>All that a simulation starts from.</summary>
/// <param name="Network">The vessels.</param>
/// <param name="Ends">One condition for each open node.</param>
/// <param name="InitialPressure">Pressure at which everything is at rest at the start, Pa.</param>
public sealed record ArterialSetup(ArterialNetwork Network, IReadOnlyList<EndSpecification> Ends, double InitialPressure)
{
    /// <summary>What gives or takes blood inside the network.</summary>
    public IReadOnlyList<ISideFlow> SideFlows { get; init; } = [];

    /// <summary>Bodies in the lumen.</summary>
    public IReadOnlyList<LumenBody> Bodies { get; init; } = [];

    /// <summary>Concentration of each tracer everywhere at the start; empty where none is carried.</summary>
    public IReadOnlyList<double> InitialTracers { get; init; } = [];

    /// <summary>Length of a cell at most, m.</summary>
    public double CellLength { get; init; } = 0.005;

    /// <summary>Cells of a segment at least. One suits a tree with segments much shorter than the others: they would else set the time step for all.</summary>
    public int FewestCells { get; init; } = 1;

    /// <summary>Part of the largest stable time step that is taken, below 1.</summary>
    public double Courant { get; init; } = 0.9;
}
