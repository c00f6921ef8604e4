using System.Text.Json.Nodes;
using Cavaxis.Course.Events;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;
using Cavaxis.Web.Happenings;

namespace Cavaxis.Web.Tests.Happenings;

public class HappeningDraftTests
{
    public static TheoryData<string> Kinds => [.. CourseEventTable.All.Select(static k => k.Text)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_has_a_form_whose_fields_have_names_of_their_own(string kind)
    {
        IReadOnlyList<HappeningField> fields = HappeningForm.Of(CourseEventTable.Get(kind));
        Assert.Equal(fields.Count, fields.Select(static f => f.Label).Distinct().Count());
        Assert.Equal(fields.Count, fields.Select(static f => f.Id).Distinct().Count());
        Assert.All(fields, static f => Assert.True(f.Label.Length > 0 && char.IsUpper(f.Label[0]), f.Path));
    }

    [Fact]
    public void What_was_typed_becomes_the_event()
    {
        (CourseEvent? read, IReadOnlyList<InputFault> faults) = Read<PositionRead>(
            ("cannula", "drainage"), ("depthCm", "42,5"), ("seenBy", "fluoroscopy"), ("tip.landmark", FirstWord("tip.landmark")), ("tip.offsetCm", "-1.5"), ("tip.isInferred", "yes"));
        Assert.Empty(faults);
        PositionRead position = Assert.IsType<PositionRead>(read);
        Assert.Equal(42.5, position.DepthCm);
        Assert.Equal(PositionSight.Fluoroscopy, position.SeenBy);
        Assert.Equal(-1.5, position.Tip!.OffsetCm);
        Assert.True(position.Tip.IsInferred);
        Assert.Null(position.ReturnPort);
    }

    [Fact]
    public void What_is_missing_or_wrong_is_named_as_the_form_names_it()
    {
        (CourseEvent? read, IReadOnlyList<InputFault> faults) = Read<PositionRead>(("cannula", "drainage"), ("depthCm", "400"));
        Assert.Null(read);
        Assert.Contains(faults, static f => f.Field == "Depth at the skin" && f.Code == FaultCode.OutOfRange);
        Assert.Contains(faults, static f => f.Field == "Seen by" && f.Code == FaultCode.MissingField);
    }

    [Fact]
    public void A_row_of_which_nothing_was_typed_is_left_out_and_faults_keep_their_row()
    {
        CourseEventKind kind = CourseEventTable.Of<FollowUpFound>();
        Dictionary<string, int> rows = new() { ["veins"] = 3 };
        HappeningDraft draft = new();
        draft.Begin(new Dictionary<string, string> { ["veins[0].vein"] = "internalJugular", ["veins[0].side"] = "right", ["veins[1].vein"] = "commonFemoral", ["veins[1].side"] = "left" });
        draft["veins[1].clot"] = "partial";
        (CourseEvent? read, IReadOnlyList<InputFault> faults) = draft.Read(kind, HappeningForm.Of(kind, rows));
        Assert.Empty(faults);
        VeinFinding one = Assert.Single(Assert.IsType<FollowUpFound>(read).Veins);
        Assert.Equal(FollowUpVein.CommonFemoral, one.Vein);

        draft["veins[2].clot"] = "none";
        (_, faults) = draft.Read(kind, HappeningForm.Of(kind, rows));
        Assert.Equal("Veins 3: vein", Assert.Single(faults).Field);
    }

    [Fact]
    public void What_this_program_knows_is_joined_to_what_was_typed()
    {
        CourseEventKind kind = CourseEventTable.Of<WeaningStepped>();
        HappeningDraft draft = new();
        draft["flowLPerMin"] = "1.5";
        JsonObject ours = new() { ["trialEntry"] = 7, ["readings"] = new JsonArray(new JsonObject { ["quantity"] = "outflowVtiCm", ["value"] = 11 }) };
        WeaningStepped step = Assert.IsType<WeaningStepped>(draft.Read(kind, HappeningForm.Of(kind), ours).Event);
        Assert.Equal(7, step.TrialEntry);
        Assert.Equal(11, Assert.Single(step.Readings).Value);
        Assert.Equal(["trialEntry", "readings"], ours.Select(static p => p.Key));
    }

    private static string FirstWord(string path) =>
        HappeningForm.Of(CourseEventTable.Of<PositionRead>()).Single(f => f.Path == path).Shape.Words.First(static w => w != JsonName.Unknown);

    private static (CourseEvent? Event, IReadOnlyList<InputFault> Faults) Read<T>(params (string Path, string Text)[] typed)
        where T : CourseEvent
    {
        HappeningDraft draft = new();
        foreach ((string path, string text) in typed)
        {
            draft[path] = text;
        }

        CourseEventKind kind = CourseEventTable.Of<T>();
        return draft.Read(kind, HappeningForm.Of(kind));
    }
}
