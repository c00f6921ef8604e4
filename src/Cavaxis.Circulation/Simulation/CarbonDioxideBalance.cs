using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Simulation;

/// <summary>
/// One Newton step for the stores of carbon dioxide, which take a quarter of an hour to fill or empty: removal goes with tension, tension with
/// content to the power 1/b, so a removal that is short by a share e needs contents higher by b·e.
/// </summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal static class CarbonDioxideBalance<T>
    where T : unmanaged, ILane<T>
{
    private const double MostShare = 0.2;

    /// <summary>Moves all amounts of carbon dioxide.</summary>
    /// <param name="constants">Parameters.</param>
    /// <param name="before">State a breath ago.</param>
    /// <param name="now">State; its amounts are changed.</param>
    /// <param name="least">Smallest share of removal that is worth a step.</param>
    public static void Apply(ModelConstants<T> constants, ReadOnlySpan<T> before, Span<T> now, double least)
    {
        T made = now[S.CarbonDioxideProduced] - before[S.CarbonDioxideProduced];
        T removed = now[S.CarbonDioxideByLungs] - before[S.CarbonDioxideByLungs]
            + (now[S.CarbonDioxideByMembrane] - before[S.CarbonDioxideByMembrane]);
        T share = (made - removed) / T.Max(removed, T.Of(1e-6));
        T bound = T.Of(MostShare);
        share = T.IfPositive(T.Abs(share) - T.Of(least), share, T.Of(0));
        T factor = T.Of(1) + (constants[CirculationParameter.CarbonDioxideExponent] * T.Max(-bound, T.Min(bound, share)));
        for (int i = 0; i < GasNode.Count; i++)
        {
            now[S.CarbonDioxide + i] *= factor;
        }

        now[S.AlveolarCarbonDioxide] *= T.Of(1) + ((factor - T.Of(1)) / constants[CirculationParameter.CarbonDioxideExponent]);
    }
}
