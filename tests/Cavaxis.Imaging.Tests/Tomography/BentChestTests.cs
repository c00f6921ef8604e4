namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>
/// The second family of made-up chests. All 28 are counted in docs/models/tomography.md; one or two of each kind are held here.
/// </summary>
public sealed class BentChestTests
{
    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(13)]
    [InlineData(14)]
    public void Bent_flat_veins_in_grainy_noise_come_out_within_the_bars(int n)
    {
        BentVerdict verdict = BentVerdict.Of(n);
        Assert.True(verdict.IsRight, verdict.ToString());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(0)]
    [InlineData(17)]
    [InlineData(20)]
    [InlineData(27)]
    public void What_comes_out_far_off_the_truth_is_refused_or_named_and_what_happens_far_from_the_atrium_does_not_move_the_junctions(int n)
    {
        BentVerdict verdict = BentVerdict.Of(n);
        Assert.True(verdict.Refusal is not null || !verdict.IsFarOff || verdict.IsNamed, verdict.ToString());
        Assert.True(Math.Abs(verdict.SvcMm) < 3 && Math.Abs(verdict.IvcMm) < 3, verdict.ToString());
    }
}
