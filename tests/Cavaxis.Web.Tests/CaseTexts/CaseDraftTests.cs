using System.Text.Json.Nodes;
using Cavaxis.Web.CaseTexts;
using CsCheck;

namespace Cavaxis.Web.Tests.CaseTexts;

public class CaseDraftTests
{
    private const string Jugular = "vessels[vessel=internalJugularVein,side=right]";

    [Fact]
    public void A_new_case_asks_for_age_sex_height_and_weight() => Assert.Equal(
        ["patient.ageYears", "patient.heightCm", "patient.sex", "patient.weightKg"],
        CaseCheck.Of(CaseDraft.Empty.Json).Faults.Select(static f => f.Field).Order(StringComparer.Ordinal));

    [Fact]
    public void An_entry_is_made_found_and_taken_out_with_its_last_value()
    {
        CaseDraft made = CaseDraft.Empty.With($"{Jugular}.diameterMm", JsonValue.Create(14)).With("vessels[vessel=commonFemoralVein,side=left].patency", JsonValue.Create("patent"));
        Assert.Equal("vessels[1].patency", made.FaultPath("vessels[vessel=commonFemoralVein,side=left].patency"));
        Assert.Equal(14, made.At($"{Jugular}.diameterMm")!.GetValue<int>());
        CaseDraft less = made.With($"{Jugular}.diameterMm", null);
        Assert.Null(less.FaultPath($"{Jugular}.diameterMm"));
        Assert.Equal("vessels[0].patency", less.FaultPath("vessels[vessel=commonFemoralVein,side=left].patency"));
        Assert.Equal(CaseDraft.Empty.Json, less.With("vessels[vessel=commonFemoralVein,side=left].patency", null).Json);
    }

    [Fact]
    public void A_draft_does_not_change_when_another_is_made_from_it()
    {
        string before = CaseDraft.Empty.Json;
        CaseDraft.Empty.With("blood.arterialPh", JsonValue.Create(7.3));
        Assert.Equal(before, CaseDraft.Empty.Json);
    }

    [Fact]
    public void Setting_fields_in_any_order_and_taking_them_out_again_leaves_the_case_as_it_was() =>
        Gen.Select(Gen.OneOf(new[] { "blood.arterialPh", "heart.ratePerMin", $"{Jugular}.depthMm", "axis[dimension=svcDiameter].value" }.Select(Gen.Const).ToArray()), Gen.Int[0, 99]).Array[1, 12].Sample(edits =>
        {
            CaseDraft draft = CaseDraft.Empty;
            foreach ((string path, int value) in edits)
            {
                draft = draft.With(path, JsonValue.Create(value));
                Assert.Equal(value, draft.At(path)!.GetValue<int>());
            }

            foreach (string path in edits.Select(static e => e.Item1).Distinct())
            {
                draft = draft.With(path, null);
            }

            Assert.Equal(CaseDraft.Empty.Json, draft.Json);
        });

    [Fact]
    public void Differences_name_the_fields() => Assert.Equal(
        ["patient.ageYears", "blood", "vessels[0].side"],
        CaseDifference.Of(
            """{"patient":{"ageYears":1,"sex":"male"},"vessels":[{"side":"left"}]}""",
            """{"patient":{"ageYears":2,"sex":"male"},"blood":{},"vessels":[{"side":"right"}]}""").Order(StringComparer.Ordinal).OrderBy(static p => p[0] switch { 'p' => 0, 'b' => 1, _ => 2 }));
}
