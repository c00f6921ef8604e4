using System.Text;
using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Configurations;

namespace Cavaxis.Planning.Plans;

/// <summary>Names of routes, sides and roles as people say them.</summary>
public static class PlainWords
{
    private static readonly Dictionary<string, string> Abbreviations = new(StringComparer.Ordinal)
    {
        ["Icaj"] = "ICAJ",
        ["Scaj"] = "SCAJ",
        ["Svc"] = "SVC",
        ["Ivc"] = "IVC",
        ["L"] = "L",
        ["Po2"] = "PO2",
    };

    /// <summary>A vessel with its side.</summary>
    /// <param name="route">Route.</param>
    /// <param name="side">Side.</param>
    /// <returns>Such as "right internal jugular vein".</returns>
    public static string Vessel(AccessRoute route, BodySide side) => $"{Side(side)} {Route(route)}";

    /// <summary>A route without its side.</summary>
    /// <param name="route">Route.</param>
    /// <returns>Such as "common femoral vein".</returns>
    public static string Route(AccessRoute route) => route switch
    {
        AccessRoute.Jugular => "internal jugular vein",
        AccessRoute.FemoralVein => "common femoral vein",
        AccessRoute.FemoralArtery => "common femoral artery",
        AccessRoute.AxillaryGraft => "axillary artery (8 mm graft)",
        AccessRoute.SuperficialFemoralArtery => "superficial femoral artery",
        _ => throw new ArgumentOutOfRangeException(nameof(route), route, "Not a route."),
    };

    /// <summary>A side.</summary>
    /// <param name="side">Side.</param>
    /// <returns>"right" or "left".</returns>
    public static string Side(BodySide side) => side == BodySide.Right ? "right" : "left";

    /// <summary>A role.</summary>
    /// <param name="role">Role.</param>
    /// <returns>Such as "venous return".</returns>
    public static string Role(CannulaRole role) => role switch
    {
        CannulaRole.Drainage => "drainage",
        CannulaRole.VenousReturn => "venous return",
        CannulaRole.ArterialReturn => "arterial return",
        CannulaRole.DualLumen => "dual lumen",
        CannulaRole.DistalPerfusion => "distal perfusion",
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "Not a role."),
    };

    /// <summary>A role as part of an identifier.</summary>
    /// <param name="role">Role.</param>
    /// <returns>Such as "venous-return".</returns>
    public static string Key(CannulaRole role) => Role(role).Replace(' ', '-');

    /// <summary>A name from the code as words: "RightGroinSkinToIcaj" becomes "right groin skin to ICAJ".</summary>
    /// <param name="name">A name in Pascal case.</param>
    /// <returns>Words.</returns>
    public static string FromName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        StringBuilder words = new();
        int start = 0;
        for (int i = 1; i <= name.Length; i++)
        {
            if (i < name.Length && !char.IsUpper(name[i]))
            {
                continue;
            }

            string word = name[start..i];
            words.Append(words.Length == 0 ? string.Empty : " ").Append(Abbreviations.GetValueOrDefault(word, word.ToLowerInvariant()));
            start = i;
        }

        return words.Replace("mm hg", "mmHg").Replace("L per min per m2", "(L/min/m²)").ToString();
    }
}
