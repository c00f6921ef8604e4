using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities;

namespace Cavaxis.Web.Pages.GoesIn;

/// <summary>Insertions in words.</summary>
internal static class GoesInWords
{
    /// <summary>A share with its interval, %.</summary>
    public static string Share(Estimate share) => FormattableString.Invariant($"{100 * share.Value:F0} % ({100 * share.Low:F0} to {100 * share.High:F0})");

    /// <summary>A part of the insertion as it is told to people.</summary>
    public static string Phase(InsertionPhase phase) => phase switch
    {
        InsertionPhase.WireFeed => "while the wire is fed",
        InsertionPhase.CannulaAdvance => "while the cannula goes in over it",
        InsertionPhase.Removal => "when introducer and wire come out",
        _ => "nowhere",
    };

    /// <summary>Where a wire ends.</summary>
    public static string End(WireEnd end) => end switch
    {
        WireEnd.UpperSvc => "upper SVC",
        WireEnd.DeepIvc => "deep IVC",
        WireEnd.AtrialLoop => "a loop in the atrium",
        WireEnd.Short => "short of its place",
        WireEnd.OtherVein => "another vein",
        WireEnd.NotComputed => "not computed",
        _ => $"the {PlainWords.FromName(end.ToString())}",
    };

    /// <summary>One moment.</summary>
    public static string Moment(InsertionFrame frame) => frame.Phase switch
    {
        InsertionPhase.WireFeed => FormattableString.Invariant($"Wire {frame.WireMm / 10:F0} cm in; its tip in the {PlainWords.FromName(frame.TipAt.ToString())}, {frame.TipForceN:F2} N on the wall."),
        InsertionPhase.CannulaAdvance => FormattableString.Invariant($"Cannula {frame.CannulaMm / 10:F0} cm in over the wire, whose tip lies in the {PlainWords.FromName(frame.TipAt.ToString())}; at most {frame.LargestContactN:F1} N in one place."),
        _ => frame.WireMm > frame.CannulaMm + 1 ? FormattableString.Invariant($"Coming out: the wire still {frame.WireMm / 10:F0} cm in.")
            : FormattableString.Invariant($"Cannula alone, {frame.CannulaMm / 10:F0} cm in; its tip in the {PlainWords.FromName(frame.TipAt.ToString())}."),
    };

    /// <summary>What goes wrong in a play, for the place where it does; empty where nothing does.</summary>
    public static string Astray(InsertionPlay play) => play.WrongAt switch
    {
        InsertionPhase.WireFeed => $"wire ends in {End(play.End)}",
        InsertionPhase.CannulaAdvance => $"wire pushed to {End(play.EndAfterCannula)}",
        InsertionPhase.Removal => $"cannula's tip in the {PlainWords.FromName(play.CannulaTip.ToString())}",
        _ => string.Empty,
    };

    /// <summary>The name of a play in the list.</summary>
    public static string Name(InsertionPlay play) => (play.Anatomy, play.WrongAt) switch
    {
        (0, InsertionPhase.None) => "Middle anatomy: goes as it should",
        (0, _) => $"Middle anatomy: {Astray(play)}",
        _ => FormattableString.Invariant($"Anatomy {play.Anatomy}: {Astray(play)}, as in {(play.Share is Estimate share ? Share(share) : string.Empty)} of them"),
    };
}
