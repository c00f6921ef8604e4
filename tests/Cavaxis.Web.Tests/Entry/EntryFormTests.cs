using System.Text.Json.Nodes;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Json;
using Cavaxis.Web.CaseTexts;
using Cavaxis.Web.Entry;

namespace Cavaxis.Web.Tests.Entry;

public class EntryFormTests
{
    public static TheoryData<string> Paths => [.. EntryForm.Groups.SelectMany(static g => g.Fields).Select(static f => f.Path)];

    [Fact]
    public void Every_field_of_the_case_that_can_be_typed_is_asked_for()
    {
        string[] sections = ["patient", "support", "blood", "heart", "access", "obstacles", "resources", "ventilation", "running", "observations"];
        HashSet<string> asked = [.. EntryForm.Groups.SelectMany(static g => g.Fields).Select(static f => f.Path)];
        Assert.All(sections, section => Assert.All(
            RecordShape.Of(RecordShape.Of(typeof(CaseFile)).Find(section)!.Type).Fields.Where(static f => f.Kind is not (FieldKind.List or FieldKind.Record)),
            f => Assert.Contains($"{section}.{f.Name}", asked)));
    }

    [Fact]
    public void Paths_and_elements_are_asked_for_once()
    {
        EntryField[] all = [.. EntryForm.Groups.SelectMany(static g => g.Fields)];
        Assert.Equal(all.Length, all.Select(static f => f.Path).Distinct().Count());
        Assert.Equal(all.Length, all.Select(static f => f.ElementId).Distinct().Count());
        Assert.All(all, static f => Assert.False(string.IsNullOrWhiteSpace(f.Label)));
    }

    [Fact]
    public void Each_number_names_its_range() => Assert.All(
        EntryForm.Groups.SelectMany(static g => g.Fields).Where(static f => f.IsNumber && f.Shape.Name != "sd"),
        static f => Assert.Contains(" to ", f.Hint, StringComparison.Ordinal));

    // The value each field accepts lands where the case reader looks for it, and one beyond the range gets a fault at that very field.
    [Theory]
    [MemberData(nameof(Paths))]
    public void A_value_reaches_its_field_and_a_wrong_one_is_faulted_there(string path)
    {
        CaseDraft basis = CaseDraft.Of("""{"cavaxisCase":1,"patient":{"ageYears":50,"sex":"male","heightCm":180,"weightKg":80}}""");
        CaseDraft wrong = basis.With(path, JsonNode.Parse("[[1]]"));
        Assert.NotEmpty(CaseCheck.Of(wrong.Json).At(wrong.FaultPath(path)));
        CaseDraft back = wrong.With(path, null);
        Assert.True(JsonNode.DeepEquals(path.StartsWith("patient.", StringComparison.Ordinal) ? basis.With(path, null).At("patient") : basis.At("patient"), back.At("patient")));
        Assert.DoesNotContain("[[1]]", back.Json.Replace("\n", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_measurement_that_the_plan_may_ask_for_has_a_field() =>
        Assert.All(UsualMeasurement.All, static m => Assert.NotNull(EntryForm.FieldOf(EntryForm.PathOf(m.Dimension))));

    [Fact]
    public void A_section_leads_to_its_first_field_and_a_path_that_is_none_to_nothing()
    {
        Assert.Equal("vessels", EntryForm.GroupOf("vessels")!.Key);
        Assert.Equal("support.goal", EntryForm.FieldOf("support")!.Path);
        Assert.Null(EntryForm.FieldOf("nothing.here"));
        Assert.Null(EntryForm.FieldOf(null));
    }
}
