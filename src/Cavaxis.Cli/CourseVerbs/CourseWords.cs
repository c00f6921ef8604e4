using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Cli.Output;
using Cavaxis.Course.Criteria;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>Numbers and times of a course in words.</summary>
internal static class CourseWords
{
    /// <summary>Stands under every sheet that shows a clinical number.</summary>
    public const string Caution = Planner.Caution;

    /// <summary>A moment.</summary>
    /// <param name="moment">The moment.</param>
    /// <returns>In UTC, to the minute.</returns>
    public static string Time(DateTimeOffset moment) => moment.UtcDateTime.ToString("yyyy-MM-dd HH:mm'Z'", CultureInfo.InvariantCulture);

    /// <summary>A number with unit, interval and origin.</summary>
    /// <param name="estimate">The number.</param>
    /// <param name="unit">Unit; 1 for none.</param>
    /// <param name="format">How many digits.</param>
    /// <returns>Such as "3.1 L/min (90 % interval 2.9 to 3.3), calculated".</returns>
    public static string Number(Estimate estimate, string unit, string format = "0.##")
    {
        string after = unit == "1" ? string.Empty : " " + unit;
        string Of(double value) => value.ToString(format, CultureInfo.InvariantCulture);
        return $"{Of(estimate.Value)}{after} (90 % interval {Of(estimate.Low)} to {Of(estimate.High)}), {CommandFault.CodeOf(estimate.Origin)}";
    }

    /// <summary>A reading with unit, error, origin and time.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>The words.</returns>
    public static string Of(ReadingAtHand reading)
    {
        string unit = reading.Unit == "1" ? string.Empty : " " + reading.Unit;
        string method = reading.Method is null || reading.Origin != Origin.Measured ? string.Empty : $" ({reading.Method})";
        return string.Create(
            CultureInfo.InvariantCulture, $"{reading.Words} {reading.Value:0.####} ± {reading.Sd:0.####}{unit} ({(reading.SdGiven ? "given" : "usual")} error), {CommandFault.CodeOf(reading.Origin)}{method}, {Time(reading.At)}");
    }

    /// <summary>A criterion with reading, threshold, verdict and source.</summary>
    /// <param name="judgement">The judgement.</param>
    /// <returns>The words.</returns>
    public static string Of(CriterionJudgement judgement)
    {
        Criterion criterion = judgement.Criterion;
        string verdict = judgement.Verdict switch { CriterionVerdict.Met => "met", CriterionVerdict.NotMet => "NOT met", _ => "unknown, not measured" };
        string value = judgement.Observed is Estimate read ? Number(read, criterion.Unit) : "no reading";
        return $"{criterion.Words} {criterion.Condition}: {verdict}{(judgement.WithinError ? " within its error" : string.Empty)}; {value}; {criterion.Source}";
    }

    /// <summary>A probability; never told as certain.</summary>
    /// <param name="probability">0 to 1.</param>
    /// <returns>In percent.</returns>
    public static string Percent(double probability) =>
        probability switch { < 0.01 => "under 1 %", > 0.99 => "over 99 %", _ => string.Create(CultureInfo.InvariantCulture, $"{100 * probability:F0} %") };
}
