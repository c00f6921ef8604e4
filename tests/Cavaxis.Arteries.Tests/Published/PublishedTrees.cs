using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Tests.References;

namespace Cavaxis.Arteries.Tests.Published;

/// <summary>Two published trees, built from the tables beside the repository.</summary>
internal static class PublishedTrees
{
    /// <summary>77 segments (adan56_table.csv), walls by the radius function of mechanics-and-arteries.md a.2, which reproduces the table at the proximal ends.</summary>
    public static ArterialNetwork Adult()
    {
        string[][] rows = ReferenceData.Table("adan56-json/adan56_table.csv");
        Dictionary<string, string> parent = rows.SelectMany(static r => Words(r[9]).Select(child => (child, r[0]))).ToDictionary(static p => p.child, static p => p.Item2);
        return new ArterialNetwork(
            [.. rows.Select(r => new ArterialSegment(
                r[1], parent.TryGetValue(r[0], out string? above) ? $"n{above}" : "root", $"n{r[0]}", ReferenceData.Number(r[2]), ReferenceData.Number(r[3]), ReferenceData.Number(r[4]),
                Wall(ReferenceData.Number(r[3])), Wall(ReferenceData.Number(r[4])), 225e3, 10_000))],
            new BloodFluid(1040, 0.004, 2));
    }

    /// <summary>Windkessels of the 77 segments: node, R1, R2, C.</summary>
    public static (string Node, double Proximal, double Distal, double Compliance)[] AdultEnds() =>
        [.. ReferenceData.Table("adan56-json/adan56_table.csv").Where(static r => r[9].Length == 0)
            .Select(static r => ($"n{r[0]}", ReferenceData.Number(r[10]), ReferenceData.Number(r[11]), ReferenceData.Number(r[12])))];

    /// <summary>37 silicone tubes (invitro37_table.csv); walls recalled from Alastruey 2011, taken as the same along a tube, radii taken to hold without pressure.</summary>
    public static ArterialNetwork Silicone(double wallViscosity) => new(
        [.. ReferenceData.Table("invitro37/invitro37_table.csv").Select(r => new ArterialSegment(
            r[1], $"n{r[2]}", $"n{r[3]}", ReferenceData.Number(r[4]), ReferenceData.Number(r[5]), ReferenceData.Number(r[6]),
            ReferenceData.Number(r[8]), ReferenceData.Number(r[8]), ReferenceData.Number(r[10]), 0, wallViscosity))],
        new BloodFluid(1050, 0.0025, 9));

    /// <summary>Resistances at the ends of the 37 tubes.</summary>
    public static (string Node, double Resistance)[] SiliconeEnds() =>
        [.. ReferenceData.Table("invitro37/invitro37_table.csv").Where(static r => r[7].Length > 0).Select(static r => ($"n{r[3]}", ReferenceData.Number(r[7])))];

    private static string[] Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static double Wall(double radius)
    {
        double r = 100 * radius;
        return 0.01 * r * ((0.2802 * Math.Exp(-5.053 * r)) + (0.1324 * Math.Exp(-0.1114 * r)));
    }
}
