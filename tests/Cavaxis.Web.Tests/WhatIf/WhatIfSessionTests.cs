using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Planning.Case;
using Cavaxis.Web.CaseTexts;
using Cavaxis.Web.Pages.WhatIf;
using Cavaxis.Web.Shelf;

namespace Cavaxis.Web.Tests.WhatIf;

/// <summary>The latest question wins, and a stop leaves what was shown.</summary>
public class WhatIfSessionTests
{
    private static readonly CaseFile Case = CaseCheck.Of(DemoCases.All().First(static d => d.Name.StartsWith("running-veno-v", StringComparison.Ordinal)).Json).Case!;

    private readonly SlowSource source = new();

    [Fact]
    public async Task An_answer_that_comes_after_a_newer_question_is_never_shown()
    {
        using WhatIfSession session = await Opened();
        source.Waiting[1] = new TaskCompletionSource();
        Task older = session.AskAsync([Flow(1)]);
        await session.AskAsync([Flow(2)]);
        source.Waiting[1].SetResult();
        await older;

        Assert.Equal(2, Assert.Single(session.Outcome!.Changes).Amount);
        Assert.False(session.IsAsking);
    }

    [Fact]
    public async Task A_stopped_question_leaves_the_answer_before_it()
    {
        using WhatIfSession session = await Opened();
        await session.AskAsync([Flow(2)]);
        source.Waiting[3] = new TaskCompletionSource();
        Task asked = session.AskAsync([Flow(3)]);
        Assert.True(session.IsAsking);
        session.Cancel();
        source.Waiting[3].SetResult();
        await asked;

        Assert.Equal(2, Assert.Single(session.Outcome!.Changes).Amount);
        Assert.False(session.IsAsking);
    }

    [Fact]
    public async Task A_newer_state_of_the_case_wins_over_an_older_that_is_still_fitted()
    {
        using WhatIfSession session = new(source);
        source.Opening["old"] = new TaskCompletionSource();
        Task older = session.OpenAsync(Case, "old", null);
        await session.OpenAsync(Case, "new", null);
        source.Opening["old"].SetResult();
        await older;

        Assert.Equal("new", session.Picture!.Key);
        Assert.False(session.IsOpening);
    }

    [Fact]
    public async Task While_a_newer_state_is_fitted_the_older_picture_stays_and_is_marked()
    {
        using WhatIfSession session = await Opened();
        source.Opening["next"] = new TaskCompletionSource();
        Task next = session.OpenAsync(Case, "next", null);
        Assert.True(session is { IsStale: true, IsOpening: true, Picture.Key: "case" });
        source.Opening["next"].SetResult();
        await next;

        Assert.True(session is { IsStale: false, IsOpening: false, Picture.Key: "next" });
    }

    [Fact]
    public async Task Two_windows_keep_their_own_questions()
    {
        using WhatIfSession one = await Opened();
        using WhatIfSession two = await Opened();
        await one.AskAsync([Flow(2)]);

        Assert.NotNull(one.Outcome);
        Assert.Null(two.Outcome);
    }

    [Fact]
    public async Task Going_back_to_no_change_takes_the_answer_away()
    {
        using WhatIfSession session = await Opened();
        await session.AskAsync([Flow(2)]);
        await session.AskAsync([]);

        Assert.Null(session.Outcome);
    }

    [Fact]
    public async Task A_fault_of_the_program_is_told_and_the_session_stays_usable()
    {
        using WhatIfSession session = new(source);
        await session.OpenAsync(Case, "broken", null);
        Assert.Contains("broken", session.Trouble, StringComparison.Ordinal);
        await session.OpenAsync(Case, "whole", null);

        Assert.Equal(("whole", string.Empty), (session.Picture!.Key, session.Trouble));
    }

    private static ParameterChange Flow(double value) => ParameterChange.To(CirculationParameter.TargetFlowLPerMin, value);

    private async Task<WhatIfSession> Opened()
    {
        WhatIfSession session = new(source);
        await session.OpenAsync(Case, "case", null);
        return session;
    }
}
