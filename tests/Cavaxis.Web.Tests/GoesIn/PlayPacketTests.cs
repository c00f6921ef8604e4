using System.Runtime.InteropServices;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Wires;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities;
using Cavaxis.Web.Desk;
using Cavaxis.Web.Pages.GoesIn;

namespace Cavaxis.Web.Tests.GoesIn;

public class PlayPacketTests
{
    private static readonly Lazy<InsertionResult> Study = new(static () => InsertionStudy.Of(
        PlannedCase.File,
        DeviceCatalogue.BuiltIn,
        PlannedCase.Result,
        PlannedCase.Result.Plans.First(static p => p.Cannulae.Count == 1),
        new InsertionOptions { Anatomies = 10, Advice = false, Plays = true }));

    [Fact]
    public void Points_of_every_moment_and_of_every_wire_are_where_the_head_says()
    {
        CannulaInsertion cannula = Study.Value.Cannulae[0];
        InsertionPlay play = cannula.Plays[0];
        PlayPacket packet = PlayPacket.Of("one", play, cannula);
        float[] paths = MemoryMarshal.Cast<byte, float>(packet.Paths).ToArray();
        Assert.Equal(play.Frames.Count, packet.Head.Frames.Count);
        for (int f = 0; f < play.Frames.Count; f++)
        {
            PlayFrame head = packet.Head.Frames[f];
            Assert.Equal(play.Frames[f].PathMm.Count, head.Count);
            int last = head.Start + head.Count - 1;
            Assert.Equal(play.Frames[f].PathMm[^1].Z, paths[(4 * last) + 2], 1e-3);
            Assert.Equal(play.Frames[f].ArcsMm[^1], paths[(4 * last) + 3], 1e-3);
        }

        Assert.Equal(paths.Length, 4 * packet.Head.Frames.Sum(static f => f.Count));
        Assert.Equal(packet.Wires.Length, 16 * packet.Head.Sampled.Sum(static w => w.Count));
        Assert.Equal(cannula.Paths!.Ends.Count(e => e != cannula.Paths.Wanted), packet.Head.Sampled.Count(static w => w.Astray));
        Assert.Equal(nameof(InsertionPhase.WireFeed), packet.Head.Frames[packet.Head.Fed].Phase);
        Assert.NotEqual(nameof(InsertionPhase.WireFeed), packet.Head.Frames[packet.Head.Fed + 1].Phase);
    }

    [Fact]
    public void The_surface_stands_upright_and_every_triangle_has_its_corners()
    {
        CannulaInsertion cannula = Study.Value.Cannulae[0];
        PlayPacket packet = PlayPacket.Of("one", cannula.Plays[0], cannula);
        float[] points = MemoryMarshal.Cast<byte, float>(packet.Points).ToArray();
        int[] corners = MemoryMarshal.Cast<byte, int>(packet.Corners).ToArray();
        Assert.Equal(packet.Points.Length, packet.Normals.Length);
        Assert.All(corners, c => Assert.InRange(c, 0, (points.Length / 3) - 1));
        float[] heights = [.. points.Where(static (_, i) => i % 3 == 1)];

        // From groin to neck a tall man is more than half a metre; the SCAJ is the origin.
        Assert.InRange(heights.Max() - heights.Min(), 500, 1200);
        Assert.True(heights.Max() > 0 && heights.Min() < 0);
    }

    [Fact]
    public async Task A_study_is_computed_once_for_all_windows_and_known_from_then_on()
    {
        using PlanRunner runner = new();
        using InsertionSource source = new(runner);
        CannulationPlan plan = PlannedCase.Result.Plans.First(static p => p.Cannulae.Count == 1);
        Assert.Null(source.LatestOf("text", plan));
        InsertionQuestion question = new(PlannedCase.File, "text", PlannedCase.Result, plan, WireClass.Stiff, 10);
        InsertionResult[] both = await Task.WhenAll(source.StudyAsync(question, CancellationToken.None), source.StudyAsync(question, CancellationToken.None));
        Assert.Same(both[0], both[1]);
        Assert.Same(both[0], source.LatestOf("text", plan));
        Assert.Null(source.LatestOf("another text", plan));
        Assert.Null(source.ProgressOf(question));
        Assert.Equal(Study.Value.EveryCannulaRight, both[0].EveryCannulaRight);
    }

    [Fact]
    public async Task A_study_that_nobody_waits_for_is_stopped()
    {
        using PlanRunner runner = new();
        using InsertionSource source = new(runner);
        CannulationPlan plan = PlannedCase.Result.Plans.First(static p => p.Cannulae.Count == 1);
        using CancellationTokenSource gone = new();
        Task<InsertionResult> asked = source.StudyAsync(new InsertionQuestion(PlannedCase.File, "text", PlannedCase.Result, plan, WireClass.Stiff, 5000), gone.Token);
        await gone.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => asked);

        // The next one gets its turn: the long one has let go of it.
        InsertionResult next = await source.StudyAsync(new InsertionQuestion(PlannedCase.File, "text", PlannedCase.Result, plan, WireClass.Floppy, 10), CancellationToken.None);
        Assert.Equal(WireClass.Floppy, next.Wire);
        Assert.Null(source.LatestOf("text", plan) is { Anatomies: 5000 } ? "kept" : null);
    }

    [Theory]
    [InlineData(0.5, 0.25, 0.75, "50 % (25 to 75)")]
    [InlineData(0, 0, 0.13, "0 % (0 to 13)")]
    public void Shares_are_told_in_whole_percent_with_their_interval(double value, double low, double high, string words) =>
        Assert.Equal(words, GoesInWords.Share(Estimate.WithInterval(value, 0.1, low, high, Origin.Calculated)));
}
