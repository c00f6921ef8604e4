using System.Globalization;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tips;

/// <summary>A part of the device that was seen, and where it lies on the device.</summary>
public sealed record SeenFeature
{
    /// <summary>Name in the catalogue of the port that returns between two groups of drainage holes.</summary>
    public const string ReturnPortName = "return port";

    /// <summary>Name of the drainage hole nearest the hub.</summary>
    public const string FirstHoleName = "first drainage hole";

    private SeenFeature(string name, double fromTipMm, double sdMm) => (Name, FromTipMm, SdMm) = (name, fromTipMm, sdMm);

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>Distance from the tip along the device, mm; negative for a wire that reaches beyond it.</summary>
    public double FromTipMm { get; }

    /// <summary>Standard deviation of that distance, mm.</summary>
    public double SdMm { get; }

    /// <summary>The tip itself.</summary>
    public static SeenFeature Tip { get; } = new("tip", 0, 0);

    /// <summary>The return port of a dual-lumen cannula.</summary>
    /// <param name="cannula">The cannula.</param>
    /// <returns>The middle of its port.</returns>
    /// <exception cref="InputFaultException">It has none.</exception>
    public static SeenFeature ReturnPort(Cannula cannula) => Holes(cannula, ReturnPortName);

    /// <summary>A group of holes, by its name; groups of one name count together.</summary>
    /// <param name="cannula">The cannula.</param>
    /// <param name="group">Name of the group.</param>
    /// <param name="part">Which point of it was seen.</param>
    /// <returns>The feature.</returns>
    /// <exception cref="InputFaultException">The cannula has no such group.</exception>
    public static SeenFeature Holes(Cannula cannula, string group, HolePart part = HolePart.Middle)
    {
        ArgumentNullException.ThrowIfNull(cannula);
        HoleGroup[] meant = [.. cannula.Lumens.SelectMany(static l => l.HoleGroups).Where(g => string.Equals(g.Name, group, StringComparison.Ordinal))];
        if (meant.Length == 0)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.NotFound, "feature", InputFault.Shown(group),
                string.Join(", ", cannula.Lumens.SelectMany(static l => l.HoleGroups).Select(static g => g.Name).Distinct()), $"Name a group of holes of {cannula.Id}."));
        }

        double nearTip = meant.Min(static g => g.FromTipMm - (g.SpanMm / 2));
        double nearHub = meant.Max(static g => g.FromTipMm + (g.SpanMm / 2));
        return part switch
        {
            HolePart.NearestHub => new SeenFeature($"{group}, the hole nearest the hub", nearHub, 0),
            HolePart.NearestTip => new SeenFeature($"{group}, the hole nearest the tip", nearTip, 0),
            _ => new SeenFeature(group, (nearTip + nearHub) / 2, 0),
        };
    }

    /// <summary>The drainage hole nearest the hub, which most of the flow enters.</summary>
    /// <param name="cannula">The cannula.</param>
    /// <returns>The feature.</returns>
    /// <exception cref="InputFaultException">It drains through no hole.</exception>
    public static SeenFeature FirstHole(Cannula cannula)
    {
        ArgumentNullException.ThrowIfNull(cannula);
        HoleGroup[] holes = [.. cannula.Lumens.Where(static l => l.Purpose == LumenPurpose.Drainage).SelectMany(static l => l.HoleGroups)];
        return holes.Length > 0
            ? new SeenFeature(FirstHoleName, holes.Max(static g => g.FromTipMm + (g.SpanMm / 2)), 0)
            : throw new InputFaultException(new InputFault(FaultCode.NotFound, "feature", cannula.Id, "a cannula that drains", "Choose a part that this cannula has."));
    }

    /// <summary>The end of a wire that reaches beyond the tip.</summary>
    /// <param name="beyondTipMm">How far, mm: length of the wire less what is seen of it outside and the length of the device.</param>
    /// <param name="sdMm">Standard deviation of that, mm.</param>
    /// <returns>The feature.</returns>
    /// <exception cref="InputFaultException">Out of range.</exception>
    public static SeenFeature WireEnd(double beyondTipMm, double sdMm) => new(
        string.Create(CultureInfo.InvariantCulture, $"end of the wire, {beyondTipMm:F0} mm beyond the tip"),
        -Require.InRange(beyondTipMm, 0, 1500, "wire.beyondTipMm", "Give how far the wire reaches beyond the tip, mm."),
        Require.InRange(sdMm, 0, 200, "wire.sdMm", "Give the standard deviation of that length, mm."));
}
