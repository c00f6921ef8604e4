using System.Numerics;
using System.Runtime.InteropServices;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Fit;

/// <summary>
/// For one cannula at one entry: in each sampled anatomy the stretch of insertion depths at which every port lies in its
/// zone. A port rides rigidly on the tip along the vein, so each zone is an interval of depths and all zones together are
/// the intersection; it is empty where the device cannot fit that anatomy at any depth.
/// </summary>
internal sealed class DepthWindows
{
    private readonly ZoneBounds zones;
    private readonly AxisLandmarks landmarks;
    private readonly AnatomyRows rows;
    private (double[] Low, double[] High)? computed;

    private DepthWindows(
        Cannula cannula, VenousEntry entry, IReadOnlyList<ZoneRule> rules, double deepestMm, ZoneBounds zones, AxisLandmarks landmarks, AnatomyRows rows)
    {
        (Cannula, Entry, Rules, DeepestMm) = (cannula, entry, rules, deepestMm);
        (this.zones, this.landmarks, this.rows) = (zones, landmarks, rows);
        Suits = new ulong[AnatomyBits.WordsFor(landmarks.Count)];
        SuitableCount = AnatomyBits.WhereAtMost(Low, High, Suits);
    }

    /// <summary>The cannula.</summary>
    public Cannula Cannula { get; }

    /// <summary>Where it enters.</summary>
    public VenousEntry Entry { get; }

    /// <summary>The zone rules it is held against.</summary>
    public IReadOnlyList<ZoneRule> Rules { get; }

    /// <summary>Greatest depth: insertable length less the length left outside, mm.</summary>
    public double DeepestMm { get; }

    /// <summary>Least suitable depth in each anatomy, mm.</summary>
    public double[] Low => (computed ??= Compute()).Low;

    /// <summary>Greatest suitable depth in each anatomy, mm; below <see cref="Low"/> where no depth suits.</summary>
    public double[] High => (computed ??= Compute()).High;

    /// <summary>One bit for each anatomy: set where some depth suits.</summary>
    public ulong[] Suits { get; }

    /// <summary>Number of anatomies in which some depth suits.</summary>
    public int SuitableCount { get; }

    /// <summary>Computes the windows.</summary>
    /// <param name="cannula">The cannula.</param>
    /// <param name="entry">Where it enters.</param>
    /// <param name="rules">Zone rules of its role in its configuration.</param>
    /// <param name="zones">Bounds of the rules.</param>
    /// <param name="landmarks">Landmarks of the anatomies.</param>
    /// <param name="lengthOutsideMm">Length left outside for fixing.</param>
    /// <param name="rows">Where the rows come from; null for rows of their own.</param>
    /// <returns>The windows, or null when a rule names a port that the cannula lacks.</returns>
    public static DepthWindows? Of(
        Cannula cannula,
        VenousEntry entry,
        IReadOnlyList<ZoneRule> rules,
        ZoneBounds zones,
        AxisLandmarks landmarks,
        double lengthOutsideMm,
        AnatomyRows? rows = null)
    {
        if (rules.Any(rule => PortExtent.Of(cannula, rule) is null))
        {
            return null;
        }

        double deepest = Math.Max(0, cannula.InsertableLengthMm - lengthOutsideMm);
        return new DepthWindows(cannula, entry, rules, deepest, zones, landmarks, rows ?? new AnatomyRows(landmarks.Count));
    }

    /// <summary>
    /// Gives the two rows back. What is known of the set of anatomies stays; whoever asks for the depths again pays for
    /// computing them again. Not for use while another thread reads them.
    /// </summary>
    public void Release()
    {
        if (computed is var (low, high))
        {
            computed = null;
            rows.Return(low);
            rows.Return(high);
        }
    }

    private (double[] Low, double[] High) Compute()
    {
        double[] low = rows.Rent();
        double[] high = rows.Rent();
        Array.Clear(low);
        Array.Fill(high, DeepestMm);
        foreach (ZoneRule rule in Rules)
        {
            PortExtent port = PortExtent.Of(Cannula, rule)!.Value;
            Narrow(low, high, landmarks.Skin(Entry), zones.From(rule), zones.To(rule), port, Entry.Direction);
        }

        return (low, high);
    }

    /// <summary>The depths of one anatomy that one rule allows, mm.</summary>
    /// <param name="skinMm">Skin position, mm below SCAJ.</param>
    /// <param name="fromMm">Upper bound of the zone.</param>
    /// <param name="toMm">Lower bound of the zone.</param>
    /// <param name="port">The port.</param>
    /// <param name="direction">+1 from the neck, −1 from the groin.</param>
    /// <returns>Least and greatest depth.</returns>
    public static (double LowMm, double HighMm) Depths(double skinMm, double fromMm, double toMm, PortExtent port, int direction) =>
        direction > 0
            ? (fromMm + port.HalfSpanMm - skinMm + port.MiddleFromTipMm, toMm - port.HalfSpanMm - skinMm + port.MiddleFromTipMm)
            : (skinMm + port.MiddleFromTipMm - toMm + port.HalfSpanMm, skinMm + port.MiddleFromTipMm - fromMm - port.HalfSpanMm);

    private static void Narrow(
        double[] low, double[] high, ReadOnlySpan<double> skin, ReadOnlySpan<double> from, ReadOnlySpan<double> to, PortExtent port, int direction)
    {
        Span<Vector<double>> lows = MemoryMarshal.Cast<double, Vector<double>>(low.AsSpan());
        Span<Vector<double>> highs = MemoryMarshal.Cast<double, Vector<double>>(high.AsSpan());
        ReadOnlySpan<Vector<double>> skins = MemoryMarshal.Cast<double, Vector<double>>(skin);
        ReadOnlySpan<Vector<double>> froms = MemoryMarshal.Cast<double, Vector<double>>(from);
        ReadOnlySpan<Vector<double>> tos = MemoryMarshal.Cast<double, Vector<double>>(to);
        Vector<double> near = new(port.MiddleFromTipMm + port.HalfSpanMm);
        Vector<double> far = new(port.MiddleFromTipMm - port.HalfSpanMm);
        for (int i = 0; i < lows.Length; i++)
        {
            if (direction > 0)
            {
                lows[i] = Vector.Max(lows[i], froms[i] - skins[i] + near);
                highs[i] = Vector.Min(highs[i], tos[i] - skins[i] + far);
            }
            else
            {
                lows[i] = Vector.Max(lows[i], skins[i] - tos[i] + near);
                highs[i] = Vector.Min(highs[i], skins[i] - froms[i] + far);
            }
        }

        for (int i = lows.Length * Vector<double>.Count; i < low.Length; i++)
        {
            (double least, double greatest) = Depths(skin[i], from[i], to[i], port, direction);
            low[i] = Math.Max(low[i], least);
            high[i] = Math.Min(high[i], greatest);
        }
    }
}
