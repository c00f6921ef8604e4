using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Circulation.Tests.Calibration;

public class RecoveryStudyTests
{
    private const int FullStudy = 200;
    private const int EveryRun = 32;

    // What is asked of the pooled intervals of the full study, in percent.
    private const double LeastCoverage = 85;
    private const double MostCoverage = 95;

    // In 99 of 100 samples a share scatters by less than so many binomial standard deviations (0.5 % beyond on each side).
    private const double Scatter = 2.576;

    // The full study takes some minutes; it runs whenever its page is written. Every run repeats it on its first patients, with
    // bounds wider by the binomial scatter of so few: 85 % of 230 intervals scatter by 6 %, 95 % by 4 %.
    private static readonly bool WritesPage = Environment.GetEnvironmentVariable("CAVAXIS_WRITE_DOCS") == "1";
    private static readonly int Patients = WritesPage ? FullStudy : EveryRun;

    [Fact]
    public void Nine_tenths_intervals_hold_the_truth_in_synthetic_patients()
    {
        SyntheticPatients drawn = SyntheticPatients.Draw(Patients);
        IReadOnlyList<CalibrationResult> fits = CirculationCalibrator.FitMany(
            [.. drawn.All.Select(static p => (p.Prior, p.Readings))], new CalibrationOptions { EnsembleSize = 0, MostRounds = 5 });
        List<(FittedParameter Fit, bool Held)> all = [];
        for (int i = 0; i < Patients; i++)
        {
            foreach (FittedParameter p in fits[i].Parameters)
            {
                double truth = drawn.All[i].Truth[p.Parameter];
                all.Add((p, truth >= p.Posterior.Low && truth <= p.Posterior.High));
            }
        }

        (FittedParameter Fit, bool Held)[] determined = [.. all.Where(static a => a.Fit.IsDetermined)];
        double coverage = 100.0 * determined.Count(static a => a.Held) / determined.Length;
        int found = fits.Count(static f => f.Found);
        string table = Table(drawn, fits, all, coverage);
        if (WritesPage)
        {
            File.WriteAllText(Path.Combine(Root(), "docs", "models", "calibration-recovery.md"), table);
        }

        Assert.True(found >= 0.98 * Patients, table);
        Assert.True(determined.Length > 4 * Patients, table);
        Assert.True(coverage >= LeastCoverage - (WritesPage ? 0 : Binomial(LeastCoverage, determined.Length)), table);
        Assert.True(coverage <= MostCoverage + (WritesPage ? 0 : Binomial(MostCoverage, determined.Length)), table);

        // Each parameter alone has at most one interval of each patient: too few to hold to the same bounds without their scatter.
        foreach (IGrouping<CirculationParameter, (FittedParameter Fit, bool Held)> group in all.GroupBy(static a => a.Fit.Parameter))
        {
            double alone = 100.0 * group.Count(static a => a.Held) / group.Count();
            Assert.True(alone >= LeastCoverage - Binomial(LeastCoverage, group.Count()), group.Key + table);
        }
    }

    private static double Binomial(double percent, int count) => Scatter * Math.Sqrt(percent * (100 - percent) / count);

    private static string Table(
        SyntheticPatients drawn, IReadOnlyList<CalibrationResult> fits, List<(FittedParameter Fit, bool Held)> all, double coverage)
    {
        CultureInfo culture = CultureInfo.InvariantCulture;
        StringBuilder text = new();
        text.Append("# Recovery study of the calibration\n\n");
        text.Append(culture, $"Written by `RecoveryStudyTests` with CAVAXIS_WRITE_DOCS=1. {Patients} synthetic patients, half venovenous and half venoarterial, ");
        text.Append(culture, $"drawn from the prior ({drawn.Rejected} draws were rejected because they did not settle or showed values of no living patient), read with noise of the default spreads; ");
        text.Append(culture, $"readings per patient {drawn.All.Average(static p => p.Readings.Count):F1} on average. ");
        text.Append(culture, $"Fits found: {fits.Count(static f => f.Found)}; came to rest: {fits.Count(static f => f.Converged)}.\n\n");
        text.Append(culture, $"Pooled over determined parameters, 90 % intervals hold the truth in **{coverage:F1} %**; ");
        text.Append(culture, $"over all parameters in {100.0 * all.Count(static a => a.Held) / all.Count:F1} %.\n\n");
        text.Append("| parameter | determined in | held, determined | held, all |\n|---|---|---|---|\n");
        foreach (IGrouping<CirculationParameter, (FittedParameter Fit, bool Held)> group in all.GroupBy(static a => a.Fit.Parameter).OrderBy(static g => g.Key))
        {
            (FittedParameter Fit, bool Held)[] sure = [.. group.Where(static a => a.Fit.IsDetermined)];
            string held = sure.Length == 0 ? "-" : string.Create(culture, $"{100.0 * sure.Count(static a => a.Held) / sure.Length:F0} %");
            text.Append(culture, $"| {PriorTable.Of(group.Key).Words} | {sure.Length} of {group.Count()} | {held} | {100.0 * group.Count(static a => a.Held) / group.Count():F0} % |\n");
        }

        return text.ToString();
    }

    private static string Root([CallerFilePath] string file = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", "..", ".."));
}
