using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Case;

namespace Cavaxis.Bedside.Tests.Readouts;

public class CourseTrendTests
{
    private static readonly DateTimeOffset Start = new(2031, 2, 3, 4, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Without_support_or_readings_nothing_is_explained()
    {
        Assert.Null(CourseTrend.Of(PatientCourse.Empty, Start));
        Assert.Null(CourseTrend.Of(Course([]), Start.AddHours(10)));
    }

    [Fact]
    public void A_drainage_saturation_that_rises_while_the_arm_falls_is_recirculation_first_and_the_probabilities_sum_to_one()
    {
        List<(double Hour, Reading[] Readings)> read = [];
        for (int hour = 1; hour <= 12; hour++)
        {
            bool late = hour > 9;
            read.Add((hour, [
                Reading.Of(ObservedQuantity.PumpFlowLPerMin, 4.5),
                Reading.Of(ObservedQuantity.PreMembraneSaturationPercent, late ? 88 : 70),
                Reading.Of(ObservedQuantity.RightArmSaturationPercent, late ? 82 : 92),
                Reading.Of(ObservedQuantity.InletPressureMmHg, -60),
                Reading.Of(ObservedQuantity.PostMembraneSaturationPercent, 100),
            ]));
        }

        CourseTrend trend = CourseTrend.Of(Course(read), Start.AddHours(12))!;
        Assert.InRange(trend.Change.Hour!.Value, 9, 10);
        Assert.Equal("Recirculation", trend.Report.Explanations[0].Cause.ToString());
        Assert.Equal(1, trend.Report.Explanations.Sum(static e => e.Probability), 1e-9);
        Assert.NotNull(trend.Report.Next);
        Assert.Contains(trend.Report.Missing, static m => m.Quantity == ObservedQuantity.AbdominalPressureMmHg);
    }

    private static PatientCourse Course(IReadOnlyList<(double Hour, Reading[] Readings)> read) => PatientCourse.Of(
    [
        new CourseEntry(1, Start, Start, "lena", new SupportStarted { Configuration = RunningConfiguration.VvTwoSite }),
        .. read.Select(static (r, i) => new CourseEntry(i + 2, Start.AddHours(r.Hour), Start.AddHours(r.Hour), "lena", new Observed { Readings = r.Readings })),
    ]);
}
