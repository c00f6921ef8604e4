using System.Globalization;
using Cavaxis.Anatomy.Body;
using Cavaxis.Course.Events;
using Cavaxis.Course.FollowUp;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Web.Pages.After;

/// <summary>Plain words for what comes after support.</summary>
internal static class AfterWords
{
    /// <summary>How an examination stands: in a sign and in a word.</summary>
    public static string Of(DueState state) => state switch
    {
        DueState.Ahead => "○ ahead",
        DueState.Due => "● due",
        DueState.Overdue => "▲ overdue",
        DueState.Done => "✓ done",
        DueState.DoneLate => "✓ done late",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "Not a state."),
    };

    /// <summary>A finding in one vein.</summary>
    public static string Of(VeinFinding finding) =>
        $"{(finding.Side is BodySide side ? PlainWords.Side(side) + " " : string.Empty)}{PlainWords.FromName(finding.Vein.ToString())} vein: {ClotWord(finding.Clot)}{(finding.Remark is string remark ? $" ({remark})" : string.Empty)}";

    /// <summary>What was found in a vein.</summary>
    public static string ClotWord(ClotFinding clot) => clot switch
    {
        ClotFinding.None => "no thrombus",
        ClotFinding.Partial => "thrombus, part of the lumen open",
        ClotFinding.Complete => "thrombus, lumen filled",
        ClotFinding.NotSeen => "not seen",
        _ => throw new ArgumentOutOfRangeException(nameof(clot), clot, "Not a finding."),
    };

    /// <summary>The rows of the form for an examination: the veins that held a cannula, and what drains into and out of them.</summary>
    public static IReadOnlyDictionary<string, string> Known(DueItem item, PatientCourse course)
    {
        Dictionary<string, string> known = new() { ["item"] = item.Key };
        int row = 0;
        foreach ((FollowUpVein vein, BodySide? side) in Veins(course))
        {
            string at = string.Create(CultureInfo.InvariantCulture, $"veins[{row++}]");
            known[$"{at}.vein"] = JsonName.Of(vein.ToString());
            if (side is BodySide own)
            {
                known[$"{at}.side"] = JsonName.Of(own.ToString());
            }
        }

        return known;
    }

    /// <summary>Veins to look at, each once: those that were entered, then those they lead to.</summary>
    public static IReadOnlyList<(FollowUpVein Vein, BodySide? Side)> Veins(PatientCourse course)
    {
        List<(FollowUpVein, BodySide?)> veins = [];
        foreach (CannulaPlaced placed in course.Cannulae.Select(static c => c.Placed.Event))
        {
            switch (placed.Route)
            {
                case AccessRoute.Jugular:
                    veins.AddRange([(FollowUpVein.InternalJugular, placed.Side), (FollowUpVein.Brachiocephalic, placed.Side), (FollowUpVein.SuperiorCaval, null)]);
                    break;
                case AccessRoute.FemoralVein:
                    veins.AddRange([(FollowUpVein.CommonFemoral, placed.Side), (FollowUpVein.Femoral, placed.Side), (FollowUpVein.ExternalIliac, placed.Side), (FollowUpVein.CommonIliac, placed.Side), (FollowUpVein.InferiorCaval, null)]);
                    break;
            }
        }

        return [.. veins.Distinct()];
    }
}
