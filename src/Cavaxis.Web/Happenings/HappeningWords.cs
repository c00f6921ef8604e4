using Cavaxis.Planning.Plans;
using Cavaxis.Web.Entry;

namespace Cavaxis.Web.Happenings;

/// <summary>Names of the fields of events as people say them.</summary>
internal static class HappeningWords
{
    private static readonly string[] Units = ["Cm", "Mm", "Deg", "LPerMin", "French"];

    private static readonly Dictionary<string, string> Said = new(StringComparer.Ordinal)
    {
        ["Cannula"] = "Name of the cannula",
        ["Role"] = "What it does",
        ["Device"] = "Device in the catalogue",
        ["OuterDiameterFrench"] = "Outer diameter",
        ["Route"] = "Vessel",
        ["DepthCm"] = "Depth at the skin",
        ["FromDepthCm"] = "Depth at the skin before",
        ["TurnDeg"] = "Turn of the return port, positive to the back",
        ["SeenBy"] = "Seen by",
        ["Landmark"] = "landmark",
        ["OffsetCm"] = "from it, positive to the feet",
        ["SdCm"] = "standard deviation",
        ["IsInferred"] = "worked out, not seen",
        ["ClotOnCannula"] = "Clot on the cannula",
        ["Gravity"] = "What it came to",
        ["DoseUnit"] = "Unit of the dose",
        ["SweepLPerMin"] = "Sweep gas",
        ["FlowLPerMin"] = "Pump flow",
        ["MinutesHeld"] = "Held for",
        ["End"] = "How it ended",
        ["Method"] = "How support is taken back",
        ["Modality"] = "Examination",
        ["Item"] = "Which examination",
    };

    /// <summary>The name of a property.</summary>
    public static string Of(string property)
    {
        if (Said.TryGetValue(property, out string? said))
        {
            return said;
        }

        string? unit = Units.FirstOrDefault(u => property.EndsWith(u, StringComparison.Ordinal) && property.Length > u.Length);
        return WordLabel.Capital(PlainWords.FromName(unit is null ? property : property[..^unit.Length]));
    }
}
