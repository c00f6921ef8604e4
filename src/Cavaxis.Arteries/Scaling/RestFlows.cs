using Cavaxis.Arteries.Numbers;
using Cavaxis.Arteries.Tree;
using static Cavaxis.Arteries.Numbers.ArterialConstant;

namespace Cavaxis.Arteries.Scaling;

/// <summary>Flow through every segment at rest without support, from the shares of the organs.</summary>
internal static class RestFlows
{
    /// <summary>Flows in the order of the table, m³/s.</summary>
    public static double[] Of(ArterialTable table, BedState beds)
    {
        double[] weight = [.. table.Segments.Select(s => s.Territory is null ? 0 : Weight(s))];
        Dictionary<Group, double> sum = [];
        for (int i = 0; i < weight.Length; i++)
        {
            if (weight[i] > 0)
            {
                Group group = GroupOf(table.Segments[i]);
                sum[group] = sum.GetValueOrDefault(group) + weight[i];
            }
        }

        double[] flow = new double[weight.Length];
        for (int i = flow.Length - 1; i >= 0; i--)
        {
            ArterySegment s = table.Segments[i];
            if (s.Territory is not null)
            {
                Group group = GroupOf(s);
                flow[i] = beds.FlowM3PerS * Share(group, beds) * weight[i] / sum[group];
            }
            else
            {
                for (int j = i + 1; j < flow.Length; j++)
                {
                    flow[i] += table.Segments[j].From == s.To ? flow[j] : 0;
                }
            }
        }

        return flow;
    }

    // Conductance of the table within a group; the two coronary outlets, which the table has not, share 2 to 1 (left dominance, from memory).
    private static double Weight(ArterySegment s) => s.TableResistancePaSPerM3 is double r ? 1 / r : s.Name == "coronary_L" ? 2 : 1;

    private static Group GroupOf(ArterySegment s) => s.Territory switch
    {
        ArterialTerritory.Heart => Group.Heart,
        ArterialTerritory.BrainRight or ArterialTerritory.BrainLeft =>
            s.Name.StartsWith("internal_carotid", StringComparison.Ordinal) ? Group.Carotid : Group.Vertebral,
        ArterialTerritory.FaceRight or ArterialTerritory.FaceLeft or ArterialTerritory.ArmRight or ArterialTerritory.ArmLeft
            or ArterialTerritory.ChestWall => Group.OtherUpper,
        ArterialTerritory.Gut => Group.Gut,
        ArterialTerritory.KidneyRight or ArterialTerritory.KidneyLeft => Group.Kidney,
        _ => Group.Lower,
    };

    private static double Share(Group group, BedState beds)
    {
        double brain = Math.Min(ArterialNumbers.Value(BrainShare), 0.8 * beds.UpperShare);
        return group switch
        {
            Group.Heart => beds.CoronaryShare,
            Group.Carotid => brain * ArterialNumbers.Value(CarotidShareOfBrain),
            Group.Vertebral => brain * (1 - ArterialNumbers.Value(CarotidShareOfBrain)),
            Group.OtherUpper => beds.UpperShare - brain,
            Group.Gut => beds.SplanchnicShare,
            Group.Kidney => beds.RenalShare,
            _ => 1 - beds.CoronaryShare - beds.UpperShare - beds.SplanchnicShare - beds.RenalShare,
        };
    }

    private enum Group
    {
        Heart,
        Carotid,
        Vertebral,
        OtherUpper,
        Gut,
        Kidney,
        Lower,
    }
}
