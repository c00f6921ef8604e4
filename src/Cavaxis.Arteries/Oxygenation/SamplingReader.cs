using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Anatomy.Body;
using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Support;
using Cavaxis.Arteries.Tree;

namespace Cavaxis.Arteries.Oxygenation;

/// <summary>Says which arm to sample, with the numbers of this result.</summary>
public static class SamplingReader
{
    private const double Notable = 3;

    /// <summary>The advice.</summary>
    /// <param name="organs">All organs.</param>
    /// <param name="entry">How the pump returns; null without support.</param>
    /// <param name="native">Saturation of the lungs' blood, %.</param>
    /// <returns>The advice.</returns>
    public static SamplingAdvice Of(ImmutableArray<OrganReading> organs, ArterialReturn? entry, double native)
    {
        double right = organs[(int)ArterialOrgan.HandRight].SaturationPercent.Mean;
        double left = organs[(int)ArterialOrgan.HandLeft].SaturationPercent.Mean;
        double heart = organs[(int)ArterialOrgan.Heart].SaturationPercent.Mean;
        BodySide arm = entry?.Artery == AccessArtery.AxillaryRight ? BodySide.Left : BodySide.Right;
        string numbers = string.Create(
            CultureInfo.InvariantCulture, $"right hand {right:F0} %, left hand {left:F0} %, heart muscle {heart:F0} %, blood of the lungs {native:F0} %");
        string why = (entry, arm) switch
        {
            (null, _) => "Without a pump both arms carry the blood of the lungs.",
            (_, BodySide.Left) => "The pump returns into the right axillary artery, so that the right arm shows the membrane lung; the left arm shows what passes the arch.",
            ({ Artery: AccessArtery.AxillaryLeft }, _) => "The pump returns into the left axillary artery, so that the left arm shows the membrane lung; the right arm's artery is the first to leave the aorta.",
            _ => "The right arm's artery is the first to leave the aorta beyond the heart: blood of the lungs reaches it before the left arm, the legs or any line further on.",
        };
        double hand = arm == BodySide.Right ? right : left;
        bool misses = hand - heart > Notable;
        string warning = misses
            ? string.Create(CultureInfo.InvariantCulture, $" The heart muscle gets blood {hand - heart:F0} points less saturated than that hand, which cannot warn of it: look at the lungs and at echo of the valve as well.")
            : string.Empty;
        string differ = Math.Abs(right - left) > Notable ? " The hands differ, so that the two halves of the brain do too." : string.Empty;
        return new SamplingAdvice(arm, $"{why} Here: {numbers}.{differ}{warning}", misses);
    }
}
