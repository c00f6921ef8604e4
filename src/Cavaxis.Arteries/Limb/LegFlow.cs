using Cavaxis.Anatomy.Body;
using Cavaxis.Arteries.Scaling;

namespace Cavaxis.Arteries.Limb;

/// <summary>Reads the flow of a leg off the flows of the tree.</summary>
internal static class LegFlow
{
    /// <summary>Flow into the tissue of a leg below the groin, in the unit of the flows.</summary>
    /// <param name="tree">The tree.</param>
    /// <param name="endFlows">Flow at the end of each segment.</param>
    /// <param name="side">Which leg.</param>
    public static double Of(PatientTree tree, IReadOnlyList<double> endFlows, BodySide side)
    {
        Tree.ArterialTerritory territory = side == BodySide.Right ? Tree.ArterialTerritory.LegRight : Tree.ArterialTerritory.LegLeft;
        double sum = 0;
        for (int i = 0; i < endFlows.Count; i++)
        {
            sum += tree.Segments[i].Table.Territory == territory ? endFlows[i] : 0;
        }

        return sum;
    }
}
