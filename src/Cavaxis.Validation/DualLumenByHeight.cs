using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Validation;

/// <summary>
/// The dual-lumen family whose return port lies 94 mm from the tip, over the height of a man: how often every port can be
/// brought into its zone under imaging, at which height that falls under one half, and what would have to change to move it.
/// </summary>
public static class DualLumenByHeight
{
    /// <summary>The device: 31 Fr, insertable 310 mm, return port 94 mm from the tip.</summary>
    public const string DeviceId = "bicaval-31fr-31cm";

    /// <summary>Height that common practice calls average, cm.</summary>
    public const double AverageHeightCm = 172;

    /// <summary>Height that common practice does not serve, cm.</summary>
    public const double TallHeightCm = 190;

    /// <summary>Length left outside for fixing, mm.</summary>
    public const double LengthOutsideMm = 30;

    /// <summary>Sampled anatomies at each height.</summary>
    public const int Anatomies = 4000;

    private const ulong Seed = 20260101;
    private const double AgeYears = 45;
    private const double BodyMassIndex = 24;
    private const int Halvings = 9;
    private static readonly Cannula Device = DeviceCatalogue.BuiltIn.Cannula(DeviceId);

    /// <summary>Heights of the printed curve, cm.</summary>
    public static IReadOnlyList<double> Heights { get; } = [.. Enumerable.Range(0, 12).Select(i => 150.0 + (5 * i))];

    /// <summary>Probability that every port can be brought into its zone, to be found under imaging.</summary>
    /// <param name="setting">Entry and zone.</param>
    /// <param name="heightCm">Height of the man.</param>
    /// <param name="shift">A change laid on every anatomy.</param>
    /// <param name="rule">Only this zone rule, or null for all of them.</param>
    /// <returns>0 to 1.</returns>
    public static double Probability(DualLumenSetting setting, double heightCm, AnatomyShift shift = default, string? rule = null)
    {
        ArgumentNullException.ThrowIfNull(setting);
        RuleBook book = Book(setting.PublishedTip);
        book = rule is null ? book : book with { Zones = [.. book.Zones.Where(zone => zone.Id == rule)] };
        FitQuestion question = new(
            Device, ConfigurationKind.VvDualLumenJugular, CannulaRole.DualLumen, BodySide.Right, heightCm, LengthOutsideMm)
        {
            Shift = shift,
        };
        return FitProbability.WithImaging(question, Samples(setting, heightCm), book);
    }

    /// <summary>Height at which the probability falls under one half.</summary>
    /// <param name="setting">Entry and zone.</param>
    /// <returns>Height in cm, or null where it is under one half already at 150 cm or still above it at 205 cm.</returns>
    public static double? CrossingHeightCm(DualLumenSetting setting) =>
        Where(height => Probability(setting, height) - 0.5, Heights[0], Heights[^1]);

    /// <summary>
    /// How much nearer to the heart the skin entry would have to lie for one half to be reached at a height. A millimetre less
    /// outside the skin does the same: both add a millimetre of cannula inside.
    /// </summary>
    /// <param name="setting">Entry and zone.</param>
    /// <param name="heightCm">Height.</param>
    /// <returns>Millimetres nearer (negative: farther), or null where no change of up to 80 mm does it.</returns>
    public static double? ReachChangeMm(DualLumenSetting setting, double heightCm) =>
        Where(mm => Probability(setting, heightCm, new AnatomyShift(-mm, 0)) - 0.5, -80, 80);

    /// <summary>How much longer the atrial span would have to be for one half to be reached at a height.</summary>
    /// <param name="setting">Entry and zone.</param>
    /// <param name="heightCm">Height.</param>
    /// <returns>Millimetres longer (negative: shorter), the smallest change that does it, or null where none of up to 40 mm does.</returns>
    public static double? SpanChangeMm(DualLumenSetting setting, double heightCm)
    {
        // Too long a span is out of reach, too short a one brings the return port above the valve: two roots are possible.
        double Excess(double mm) => Probability(setting, heightCm, new AnatomyShift(0, mm)) - 0.5;
        const double Step = 4;
        double here = Excess(0);
        for (double mm = Step; mm <= 40; mm += Step)
        {
            foreach (double side in new[] { -1.0, 1.0 })
            {
                if (here * Excess(side * mm) <= 0)
                {
                    return Where(Excess, side * (mm - Step), side * mm);
                }
            }
        }

        return null;
    }

    private static double? Where(Func<double, double> function, double from, double to)
    {
        double first = function(from);
        if (first * function(to) > 0)
        {
            return null;
        }

        for (int i = 0; i < Halvings; i++)
        {
            double middle = (from + to) / 2;
            (from, to) = first * function(middle) > 0 ? (middle, to) : (from, middle);
        }

        return (from + to) / 2;
    }

    private static AxisSamples Samples(DualLumenSetting setting, double heightCm)
    {
        BodyHabitus man = new(AgeYears, Sex.Male, heightCm, BodyMassIndex * heightCm * heightCm * 1e-4);
        return AxisSampler.Draw(PopulationModel.For(man, setting.Entry), Anatomies, Seed);
    }

    private static RuleBook Book(bool publishedTip)
    {
        RuleBook own = RuleBookReader.BuiltIn;
        return publishedTip
            ? own with { Zones = [.. own.Zones.Select(zone => zone.Id == "dual-tip" ? zone with { ToOffsetMm = 50 } : zone)] }
            : own;
    }
}
