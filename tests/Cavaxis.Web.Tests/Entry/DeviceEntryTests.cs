using System.Text.Json.Nodes;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Web.CaseTexts;
using Cavaxis.Web.Entry;

namespace Cavaxis.Web.Tests.Entry;

public class DeviceEntryTests
{
    private const string Least = """{"cavaxisCase":1,"patient":{"ageYears":50,"sex":"male","heightCm":180,"weightKg":80}}""";

    public static TheoryData<CannulaRole> Roles => [.. Enum.GetValues<CannulaRole>()];

    [Theory]
    [MemberData(nameof(Roles))]
    public void A_running_cannula_is_chosen_and_described_in_a_row_of_its_own(CannulaRole role)
    {
        string at = $"running.cannulae[role={JsonName.Of(role.ToString())}]";
        EntryField device = EntryForm.FieldOf($"{at}.device")!;
        Assert.NotEmpty(device.Choices);
        Assert.All(device.Choices, choice => Assert.NotNull(DeviceCatalogue.BuiltIn.FindCannula(choice.Value)));
        CaseDraft filled = CaseDraft.Of(Least)
            .With("running.configuration", JsonValue.Create(role switch { CannulaRole.DualLumen => "vvDualLumen", CannulaRole.VenousReturn => "vvTwoSite", _ => "vaFemoral" }))
            .With(device.Path, JsonValue.Create(device.Choices[^1].Value))
            .With($"{at}.side", JsonValue.Create("left"))
            .With($"{at}.depthCm", JsonValue.Create(12.5));
        CaseCheck check = CaseCheck.Of(filled.Json);
        Assert.Empty(check.Faults);
        RunningCannula read = Assert.Single(check.Case!.Running.Cannulae);
        Assert.Equal((role, device.Choices[^1].Value, 12.5), (read.Role, read.Device, read.DepthCm!.Value));

        // A depth without a device is no cannula yet: the field that is missing says so.
        CaseDraft depthOnly = CaseDraft.Of(Least).With($"{at}.depthCm", JsonValue.Create(12.5));
        Assert.NotEmpty(CaseCheck.Of(depthOnly.Json).At(depthOnly.FaultPath(device.Path)));
        Assert.Null(depthOnly.With($"{at}.depthCm", null).At("running"));
    }

    [Fact]
    public void A_cannula_that_does_not_belong_to_the_support_is_faulted_in_its_row()
    {
        CaseDraft wrong = CaseDraft.Of(Least)
            .With("running.configuration", JsonValue.Create("vvTwoSite"))
            .With("running.cannulae[role=dualLumen].device", JsonValue.Create(DeviceCatalogue.BuiltIn.Cannulae[0].Id));
        EntryField device = EntryForm.FieldOf("running.cannulae[role=dualLumen].device")!;
        Assert.NotEmpty(CaseCheck.Of(wrong.Json).At(wrong.FaultPath(device.NamedBy!)));
        Assert.Equal(1, EntryCount.Of(EntryForm.GroupOf(device.Path)!, wrong, CaseCheck.Of(wrong.Json)).Faulty);
    }

    [Fact]
    public void Only_what_turns_is_asked_for_its_turn() => Assert.Equal(
        "running.cannulae[role=dualLumen].rotationDeg",
        Assert.Single(EntryForm.Groups.SelectMany(static g => g.Fields), static f => f.Path.EndsWith("rotationDeg", StringComparison.Ordinal)).Path);

    [Fact]
    public void Every_cannula_on_hand_that_can_be_chosen_is_taken_by_the_planning()
    {
        EntryField field = EntryForm.FieldOf("devicesOnHand")!;
        Assert.Equal(DeviceCatalogue.BuiltIn.Cannulae.Select(static c => c.Id), field.Choices.Select(static c => c.Value));
        CaseDraft all = CaseDraft.Of(Least).With(field.Path, new JsonArray([.. field.Choices.Select(static c => (JsonNode)JsonValue.Create(c.Value))]));
        PlanningResult result = Planner.Plan(CaseCheck.Of(all.Json).Case!, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, new PlanningOptions { Anatomies = 200 });
        Assert.NotEmpty(result.Plans);
    }

    [Theory]
    [InlineData("vvTwoSite", "V-V two site")]
    [InlineData("vavFemoral", "V-AV femoral")]
    [InlineData("variable", "variable")]
    public void Supports_are_named_as_at_the_bedside(string word, string words) => Assert.Equal(words, WordLabel.Of(word));
}
