using Cavaxis.Bedside.Courses;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Web.CaseTexts;
using Cavaxis.Web.Pages.Run;
using Cavaxis.Web.Shelf;

namespace Cavaxis.Web.Tests.Run;

public class CaseReadingsTests
{
    private static readonly DateTimeOffset Now = new(2031, 2, 3, 4, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Readings_come_into_the_fields_of_their_name_and_the_case_is_still_one()
    {
        CaseDraft draft = CaseDraft.Of(DemoCases.All().Single(static c => c.Name == "running-veno-venous.json").Json);
        ReadingsAtHand readings = Of(
            Reading.Of(ObservedQuantity.PumpFlowLPerMin, 3.9), Reading.Of(ObservedQuantity.RightArmSaturationPercent, 84, 1.5),
            Reading.Of(ObservedQuantity.HaemoglobinGPerDl, 8.7), Reading.Of(ObservedQuantity.PeepCmH2O, 10), Reading.Of(ObservedQuantity.DDimerMgPerL, 3));
        (CaseDraft changed, IReadOnlyList<string> words) = CaseReadings.Into(draft, readings);
        Assert.Equal("3.9", changed.At("running.flowLPerMin")!.ToJsonString());
        Assert.Equal("84", changed.At("observations.rightArmSaturationPercent.value")?.ToJsonString() ?? changed.At("observations.rightArmSaturationPercent")!["value"]!.ToJsonString());
        Assert.Equal("8.7", changed.At("blood.haemoglobinGPerDl")!.ToJsonString());
        Assert.Equal("10", changed.At("ventilation.peepCmH2O")!.ToJsonString());
        Assert.Contains(words, static w => w.Contains("3.9 (was 4.6)", StringComparison.Ordinal));
        Assert.Equal(4, words.Count);
        Assert.NotNull(CaseCheck.Of(changed.Json).Case);
        Assert.Empty(CaseReadings.Into(changed, readings).Changed);
    }

    private static ReadingsAtHand Of(params Reading[] readings) => ReadingsAtHand.Of(
        PatientCourse.Of([new CourseEntry(1, Now.AddMinutes(-5), Now, "Rhea (invented)", new Observed { Readings = readings })]), Now)!;
}
