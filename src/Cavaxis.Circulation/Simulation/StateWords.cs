using Cavaxis.Circulation.Equations;

namespace Cavaxis.Circulation.Simulation;

/// <summary>Plain words for a part of the state.</summary>
internal static class StateWords
{
    /// <summary>Why a circulation is not at rest.</summary>
    /// <param name="index">The quantity that moves most.</param>
    /// <param name="change">Its relative change in a breath.</param>
    /// <param name="spentS">Simulated time.</param>
    /// <returns>A sentence.</returns>
    public static string NotSettled(int index, double change, double spentS) => FormattableString.Invariant(
        $"The circulation did not come to rest within {spentS:F0} s of simulated time: {Of(index)} still changes by {change:P3} in a breath.");

    /// <summary>What moves in a circulation that hardly changes and yet does not balance.</summary>
    public const string CarbonDioxide = "the carbon dioxide of a part of the blood";

    /// <summary>Why a circulation that hardly changes is not at rest all the same.</summary>
    /// <param name="share">Carbon dioxide made less taken away, as a share of what is made.</param>
    /// <param name="spentS">Simulated time.</param>
    /// <returns>A sentence.</returns>
    public static string NotBalanced(double share, double spentS) => FormattableString.Invariant(
        $"The circulation did not come to rest within {spentS:F0} s of simulated time: the carbon dioxide made and that taken away differ by {share:P1}.");

    /// <summary>The part of the state in words.</summary>
    /// <param name="index">Which quantity.</param>
    /// <returns>Words within a sentence.</returns>
    public static string Of(int index) => index switch
    {
        < StateIndex.VolumeCount => "a volume of blood",
        < StateIndex.SpeedRatio => "a flow",
        StateIndex.SpeedRatio => "the pump speed",
        < StateIndex.Oxygen => "the reflex",
        < StateIndex.CarbonDioxide => "the oxygen of a part of the blood",
        < StateIndex.Returned => CarbonDioxide,
        < StateIndex.AlveolarOxygen => "the returned blood in the axis",
        _ => "the gas in the lungs",
    };
}
