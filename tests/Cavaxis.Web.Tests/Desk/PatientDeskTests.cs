using System.Text.Json.Nodes;
using Cavaxis.Web.CaseTexts;
using Cavaxis.Web.Desk;
using Cavaxis.Web.Shelf;

namespace Cavaxis.Web.Tests.Desk;

public sealed class PatientDeskTests : IDisposable
{
    private const string Haemoglobin = "blood.haemoglobinGPerDl";

    private readonly TemporaryFolder folder = new();
    private readonly SqliteCaseShelf shelf;
    private readonly PlanRunner runner = new();
    private readonly PatientDesk one;
    private readonly PatientDesk other;

    public PatientDeskTests()
    {
        shelf = new SqliteCaseShelf(folder["cases.sqlite"], TimeProvider.System);
        (one, other) = (new PatientDesk(shelf, runner), new PatientDesk(shelf, runner));
    }

    public void Dispose()
    {
        one.Dispose();
        other.Dispose();
        runner.Dispose();
        shelf.Dispose();
        folder.Dispose();
    }

    [Fact]
    public async Task A_value_set_in_one_window_comes_to_the_other_by_itself()
    {
        await OpenAsync();
        TaskCompletionSource arrived = new();
        other.Changed += () =>
        {
            if (other.Version?.Number == 2)
            {
                arrived.TrySetResult();
            }
        };
        Assert.True(await one.SetAsync(Haemoglobin, null, JsonValue.Create(9.8)));
        await arrived.Task.WaitAsync(TimeSpan.FromSeconds(20));
        Assert.Equal(9.8, other.Draft.At(Haemoglobin)!.GetValue<double>());
        Assert.Empty(other.Conflicts);
    }

    [Fact]
    public async Task Two_windows_that_change_different_fields_keep_both()
    {
        await OpenAsync();
        bool[] saved = await Task.WhenAll(one.SetAsync(Haemoglobin, null, JsonValue.Create(9.8)), other.SetAsync("heart.ratePerMin", null, JsonValue.Create(90)));
        Assert.Equal([true, true], saved);
        CaseDraft newest = CaseDraft.Of((await shelf.OpenAsync(one.Id!))!.Json);
        Assert.Equal((9.8, 90), (newest.At(Haemoglobin)!.GetValue<double>(), newest.At("heart.ratePerMin")!.GetValue<int>()));
    }

    [Theory]
    [InlineData(true, 11.0)]
    [InlineData(false, 9.8)]
    public async Task The_second_of_two_windows_on_one_field_is_told_and_decides(bool keepMine, double kept)
    {
        await OpenAsync();
        await one.SetAsync(Haemoglobin, null, JsonValue.Create(9.8));
        Assert.False(await other.SetAsync(Haemoglobin, null, JsonValue.Create(11.0)));
        CaseConflict conflict = Assert.Single(other.Conflicts);
        Assert.Equal((Haemoglobin, 9.8, 11.0), (conflict.Path, conflict.Theirs!.GetValue<double>(), conflict.Mine!.GetValue<double>()));
        await other.DecideAsync(conflict, keepMine);
        Assert.Empty(other.Conflicts);
        Assert.Equal(kept, CaseDraft.Of((await shelf.OpenAsync(one.Id!))!.Json).At(Haemoglobin)!.GetValue<double>());
        Assert.Equal(9.8, CaseDraft.Of((await shelf.ReadAsync(one.Id!, 2))!.Json).At(Haemoglobin)!.GetValue<double>());
    }

    [Fact]
    public async Task A_conflict_that_was_found_twice_is_decided_once()
    {
        await OpenAsync();
        await one.SetAsync(Haemoglobin, null, JsonValue.Create(9.8));
        await other.SetAsync(Haemoglobin, null, JsonValue.Create(11.0));
        CaseConflict first = Assert.Single(other.Conflicts);
        await other.SetAsync(Haemoglobin, null, JsonValue.Create(11.0));
        await other.DecideAsync(first, keepMine: true);
        Assert.Empty(other.Conflicts);
        Assert.Equal(11.0, other.Draft.At(Haemoglobin)!.GetValue<double>());
    }

    [Fact]
    public async Task A_decision_on_values_that_have_changed_since_decides_nothing()
    {
        await OpenAsync();
        await one.SetAsync(Haemoglobin, null, JsonValue.Create(9.8));
        await other.SetAsync(Haemoglobin, null, JsonValue.Create(11.0));
        CaseConflict first = Assert.Single(other.Conflicts);
        await other.SetAsync(Haemoglobin, null, JsonValue.Create(11.5));
        await other.DecideAsync(first, keepMine: true);
        Assert.Equal(11.5, Assert.Single(other.Conflicts).Mine!.GetValue<double>());
        Assert.Equal(9.8, other.Draft.At(Haemoglobin)!.GetValue<double>());
    }

    [Fact]
    public async Task A_whole_case_made_from_an_older_version_is_not_saved_over_the_newer_one()
    {
        await OpenAsync();
        string mine = one.Draft.With("title", JsonValue.Create("mine")).Json;
        await other.SetAsync(Haemoglobin, null, JsonValue.Create(9.8));
        Assert.False(await one.ReplaceAsync(mine, 1, "case file edited"));
        CaseConflict conflict = Assert.Single(one.Conflicts);
        await one.DecideAsync(conflict, keepMine: true);
        Assert.Equal("mine", one.Draft.At("title")!.ToString());
        Assert.Equal(3, one.Version!.Number);
    }

    [Fact]
    public async Task A_wrong_value_is_kept_and_named_and_stops_planning_until_it_is_mended()
    {
        await OpenAsync();
        Assert.True(await one.SetAsync(Haemoglobin, null, JsonValue.Create(98)));
        Assert.Null(one.Case);
        Assert.Equal(Haemoglobin, Assert.Single(one.Check.Faults).Field);
        Assert.False(one.IsPlanCurrent);
        Assert.True(await one.SetAsync(Haemoglobin, JsonValue.Create(98), JsonValue.Create(9.8)));
        Assert.NotNull(one.Case);
    }

    [Fact]
    public async Task The_plan_follows_the_case_quickly_and_then_with_the_circulation_asked_for()
    {
        TaskCompletionSource planned = new();
        one.Changed += () =>
        {
            if (one.IsPlanCurrent)
            {
                planned.TrySetResult();
            }
        };
        await OpenAsync();
        await planned.Task.WaitAsync(TimeSpan.FromSeconds(60));
        Assert.NotEmpty(one.Plan!.Plans);
        Assert.Equal(1, one.Chosen!.Rank);
    }

    [Fact]
    public async Task A_patient_that_is_not_there_leaves_the_desk_as_it_is()
    {
        await OpenAsync();
        Assert.False(await one.OpenAsync("nobody"));
        Assert.Equal(other.Id, one.Id);
    }

    private async Task OpenAsync()
    {
        CaseVersion version = await shelf.AddAsync("""{"cavaxisCase":1,"patient":{"ageYears":50,"sex":"male","heightCm":180,"weightKg":80}}""", "new");
        Assert.True(await one.OpenAsync(version.Id));
        Assert.True(await other.OpenAsync(version.Id));
    }
}
