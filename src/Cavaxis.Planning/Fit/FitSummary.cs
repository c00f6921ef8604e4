using System.Globalization;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Fit;

/// <summary>Turns the depth windows of a cannula into what a person reads: depth, probabilities, positions, and why it fails.</summary>
internal static class FitSummary
{
    /// <summary>Quantiles for display are taken from every fifth anatomy; probabilities always from all.</summary>
    private const int Stride = 5;

    /// <summary>Share of anatomies below which a reason would mislead more than it tells.</summary>
    private const double WorthTelling = 0.01;

    /// <summary>Summarises one cannula.</summary>
    /// <param name="windows">Its depth windows.</param>
    /// <param name="choice">Its planned depth.</param>
    /// <param name="zones">Bounds of the rules.</param>
    /// <param name="landmarks">Landmarks of the anatomies.</param>
    /// <returns>The fit.</returns>
    public static CannulaFit Of(DepthWindows windows, DepthChoice choice, ZoneBounds zones, AxisLandmarks landmarks)
    {
        int count = landmarks.Count;
        (string? rule, string reason) = Limiting(windows, zones, landmarks);
        bool sideJet = windows.Rules.Any(r => r.Part == PortPart.JetAim);
        return new CannulaFit(
            DepthCm(windows, choice),
            (double)windows.SuitableCount / count,
            (double)choice.SuitedCount / count,
            rule,
            reason,
            windows.DeepestMm / 10,
            [.. windows.Rules.Select(r => Position(windows, choice.DepthMm, 0, r, zones, landmarks))],
            sideJet ? Thinned(landmarks.RotationWindowDeg) : null);
    }

    /// <summary>The middle of each anatomy's depth window, for anatomies that have one.</summary>
    /// <param name="windows">Depth windows.</param>
    /// <returns>Depths in mm.</returns>
    public static double[] SuitableMiddles(DepthWindows windows)
    {
        double[] middles = new double[windows.SuitableCount];
        int next = 0;
        (double[] lows, double[] highs) = (windows.Low, windows.High);
        for (int i = 0; i < lows.Length; i++)
        {
            if (lows[i] <= highs[i])
            {
                middles[next++] = (lows[i] + highs[i]) / 2;
            }
        }

        return middles;
    }

    private static Estimate DepthCm(DepthWindows windows, DepthChoice choice)
    {
        double planned = choice.DepthMm / 10;
        double[] middles = SuitableMiddles(windows);
        if (middles.Length < 2)
        {
            return Estimate.WithInterval(planned, 0, planned, planned, Origin.Calculated);
        }

        Estimate spread = Estimate.FromSamples(middles, Origin.Calculated);
        return Estimate.WithInterval(planned, spread.Sd / 10, Math.Min(planned, spread.Low / 10), Math.Max(planned, spread.High / 10), Origin.Calculated);
    }

    /// <summary>Where one port comes to lie when the cannula is advanced to a depth and turned.</summary>
    /// <param name="windows">Depth windows of the cannula.</param>
    /// <param name="depthMm">Its depth.</param>
    /// <param name="turnDeg">Turn of a side jet away from the tricuspid valve; without meaning for other ports.</param>
    /// <param name="rule">The rule that speaks of the port.</param>
    /// <param name="zones">Bounds of the rules.</param>
    /// <param name="landmarks">Landmarks of the anatomies.</param>
    /// <returns>Position and probability in the zone.</returns>
    internal static PortPosition Position(
        DepthWindows windows, double depthMm, double turnDeg, ZoneRule rule, ZoneBounds zones, AxisLandmarks landmarks)
    {
        PortExtent port = PortExtent.Of(windows.Cannula, rule)
            ?? throw new InvalidOperationException($"{windows.Cannula.Id} lost the port of rule {rule.Id}.");
        ReadOnlySpan<double> skin = landmarks.Skin(windows.Entry);
        ReadOnlySpan<double> from = zones.From(rule);
        ReadOnlySpan<double> to = zones.To(rule);
        (Estimate From, Estimate To) shown = zones.Shown(rule);
        double[] position = new double[(landmarks.Count + Stride - 1) / Stride];
        bool jet = rule.Part == PortPart.JetAim;
        int inside = 0;
        for (int i = 0; i < landmarks.Count; i++)
        {
            double z = skin[i] + (windows.Entry.Direction * (depthMm - port.MiddleFromTipMm));
            bool lies = z - port.HalfSpanMm >= from[i] && z + port.HalfSpanMm <= to[i]
                && (!jet || TurnedJet.Enters(z, from[i], to[i], landmarks.RotationWindowDeg[i], turnDeg));
            inside += lies ? 1 : 0;
            if (i % Stride == 0)
            {
                position[i / Stride] = z;
            }
        }

        return new PortPosition(
            rule.Port ?? "tip",
            rule.Id,
            Estimate.FromSamples(position, Origin.Calculated),
            shown.From,
            shown.To,
            (double)inside / landmarks.Count);
    }

    /// <summary>An estimate from every fifth anatomy.</summary>
    /// <param name="values">One value for each anatomy.</param>
    /// <returns>The estimate.</returns>
    internal static Estimate Thinned(ReadOnlySpan<double> values)
    {
        double[] some = new double[(values.Length + Stride - 1) / Stride];
        for (int i = 0; i < some.Length; i++)
        {
            some[i] = values[i * Stride];
        }

        return Estimate.FromSamples(some, Origin.Calculated);
    }

    /// <summary>Which pair of demands most often cannot both be met, and by how much.</summary>
    private static (string? Rule, string Reason) Limiting(DepthWindows windows, ZoneBounds zones, AxisLandmarks landmarks)
    {
        int failures = landmarks.Count - windows.SuitableCount;
        if (failures < WorthTelling * landmarks.Count)
        {
            return (null, failures == 0
                ? "No sampled anatomy rules this cannula out."
                : "Fewer than one in a hundred of the sampled anatomies rule this cannula out.");
        }

        int rules = windows.Rules.Count;
        int reach = rules;
        int[,] clashes = new int[rules + 1, rules + 1];
        List<double>[,] gaps = new List<double>[rules + 1, rules + 1];
        PortExtent[] ports = [.. windows.Rules.Select(rule => PortExtent.Of(windows.Cannula, rule)!.Value)];
        ReadOnlySpan<double> skin = landmarks.Skin(windows.Entry);
        for (int i = 0; i < landmarks.Count; i++)
        {
            if (windows.Low[i] <= windows.High[i])
            {
                continue;
            }

            (int asks, double least, int allows, double most) = (reach, 0, reach, windows.DeepestMm);
            for (int r = 0; r < rules; r++)
            {
                (double low, double high) = DepthWindows.Depths(
                    skin[i], zones.From(windows.Rules[r])[i], zones.To(windows.Rules[r])[i], ports[r], windows.Entry.Direction);
                (asks, least) = low > least ? (r, low) : (asks, least);
                (allows, most) = high < most ? (r, high) : (allows, most);
            }

            clashes[asks, allows]++;
            (gaps[asks, allows] ??= []).Add(least - most);
        }

        (int a, int b) worst = (0, 0);
        for (int a = 0; a <= rules; a++)
        {
            for (int b = 0; b <= rules; b++)
            {
                worst = clashes[a, b] > clashes[worst.a, worst.b] ? (a, b) : worst;
            }
        }

        double[] missing = [.. gaps[worst.a, worst.b]];
        Array.Sort(missing);
        double share = 100.0 * clashes[worst.a, worst.b] / landmarks.Count;
        double median = Estimate.Quantile(missing, 0.5);
        string asking = worst.a == reach ? "the skin" : Zone(windows.Rules[worst.a]);
        string text = worst.b == reach
            ? string.Create(CultureInfo.InvariantCulture, $"Cannot reach: in {share:F0} % of anatomies {asking} needs more than the {windows.DeepestMm / 10:F1} cm that can be inserted, by {median:F0} mm (median).")
            : string.Create(CultureInfo.InvariantCulture, $"In {share:F0} % of anatomies {asking} and {Zone(windows.Rules[worst.b])} cannot both be met; they miss each other by {median:F0} mm (median).");
        return (worst.a == reach ? windows.Rules[worst.b].Id : windows.Rules[worst.a].Id, text);
    }

    private static string Zone(ZoneRule rule) => $"the zone of the {rule.Port ?? "tip"} ({rule.Id})";
}
