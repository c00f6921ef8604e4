using Cavaxis.Planning.Rules;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Fit;

/// <summary>The bounds of every zone rule in every sampled anatomy. They do not depend on a device, so they are laid out once.</summary>
internal sealed class ZoneBounds
{
    private const double ReferenceHeightCm = 170;
    private readonly Dictionary<string, Bounds> bounds = new(StringComparer.Ordinal);

    /// <summary>Lays out all zones of a rule book.</summary>
    /// <param name="rules">The zone rules.</param>
    /// <param name="landmarks">The landmarks of the sampled anatomies.</param>
    /// <param name="heightCm">Height of the patient, for offsets that shrink with it.</param>
    public ZoneBounds(IReadOnlyList<ZoneRule> rules, AxisLandmarks landmarks, double heightCm)
    {
        foreach (ZoneRule rule in rules)
        {
            double scale = rule.ScalesWithHeight ? Math.Min(1, heightCm / ReferenceHeightCm) : 1;
            double[] from = new double[landmarks.Count];
            double[] to = new double[landmarks.Count];
            bool jet = rule.Part == PortPart.JetAim;
            ReadOnlySpan<double> fromLandmark = jet ? landmarks.JetFrom : landmarks.Of(rule.FromLandmark);
            ReadOnlySpan<double> toLandmark = jet ? landmarks.JetTo : landmarks.Of(rule.ToLandmark);
            for (int i = 0; i < from.Length; i++)
            {
                from[i] = fromLandmark[i] + (rule.FromOffsetMm * scale);
                to[i] = toLandmark[i] + (rule.ToOffsetMm * scale);
            }

            bounds.Add(rule.Id, new Bounds(from, to));
        }
    }

    /// <summary>Upper bounds of a rule, mm below SCAJ, one for each anatomy.</summary>
    public ReadOnlySpan<double> From(ZoneRule rule) => bounds[rule.Id].From;

    /// <summary>Lower bounds of a rule, mm below SCAJ, one for each anatomy.</summary>
    public ReadOnlySpan<double> To(ZoneRule rule) => bounds[rule.Id].To;

    /// <summary>Both bounds of a rule as a person reads them; the same for every plan, so made once and only when asked for.</summary>
    public (Estimate From, Estimate To) Shown(ZoneRule rule) => bounds[rule.Id].Shown.Value;

    private sealed record Bounds(double[] From, double[] To)
    {
        public Lazy<(Estimate From, Estimate To)> Shown { get; } = new(() => (FitSummary.Thinned(From), FitSummary.Thinned(To)));
    }
}
