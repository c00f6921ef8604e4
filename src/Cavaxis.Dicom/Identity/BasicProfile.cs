using System.Globalization;
using System.Reflection;

namespace Cavaxis.Dicom.Identity;

/// <summary>
/// The basic application level confidentiality profile (PS3.15 annex E, edition 2024b), as embedded data. Where the table leaves a choice
/// that hangs on the kind of image, the choice is taken that keeps the file whole: empty before removed, dummy before both.
/// </summary>
public static class BasicProfile
{
    private static readonly Dictionary<uint, ProfileAction> Table = Read();

    /// <summary>How many attributes the table names.</summary>
    public static int Count => Table.Count;

    /// <summary>All attributes of the table with what becomes of each.</summary>
    public static IReadOnlyDictionary<uint, ProfileAction> Actions => Table;

    /// <summary>What becomes of an attribute; null where the profile leaves it as it is.</summary>
    /// <param name="tag">Group and element.</param>
    public static ProfileAction? Of(uint tag) => (tag >> 16) switch
    {
        // Makers' own, commands, directories, curves and overlays: 60xx,3000 and 50xx,xxxx of the table; what is left of an overlay without its data is of no use.
        uint group when group % 2 == 1 => ProfileAction.Remove,
        0x0000 or 0x0004 => ProfileAction.Remove,
        uint group when (group & 0xFF00) is 0x5000 or 0x6000 => ProfileAction.Remove,
        _ => (tag & 0xFFFF) == 0 ? ProfileAction.Remove : Table.TryGetValue(tag, out ProfileAction action) ? action : null,
    };

    private static Dictionary<uint, ProfileAction> Read()
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("Cavaxis.Dicom.Identity.basic-profile.txt")!;
        using StreamReader reader = new(stream);
        Dictionary<uint, ProfileAction> table = [];
        ProfileAction action = ProfileAction.Remove;
        while (reader.ReadLine() is { } line)
        {
            if (line.StartsWith('['))
            {
                action = line switch
                {
                    "[X]" => ProfileAction.Remove,
                    "[Z]" or "[X/Z]" => ProfileAction.Empty,
                    "[U]" => ProfileAction.Replace,
                    "[X/Z/U*]" => ProfileAction.ReplaceWithin,
                    _ => ProfileAction.Dummy,
                };
            }
            else if (!line.StartsWith('#'))
            {
                foreach (string tag in line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
                {
                    table.Add(uint.Parse(tag, NumberStyles.HexNumber, CultureInfo.InvariantCulture), action);
                }
            }
        }

        return table;
    }
}
