using Cavaxis.Bedside.Images;
using Cavaxis.Dicom.Headers;
using Cavaxis.Dicom.Series;
using Cavaxis.Imaging.Volumes;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Tests.Images;

public class SeriesCacheTests
{
    private const int Side = 10;
    private const long Bytes = Side * Side * Side * sizeof(short);

    [Fact]
    public async Task Many_who_ask_at_once_wait_for_one_reading()
    {
        SeriesCache cache = new();
        TaskCompletionSource<ScanSeries> one = new();
        int readings = 0;
        Task<ScanSeries>[] asked = [.. Enumerable.Range(0, 20).Select(_ => cache.GetAsync("a", () =>
        {
            Interlocked.Increment(ref readings);
            return one.Task;
        }))];
        one.SetResult(Series());
        ScanSeries[] all = await Task.WhenAll(asked);
        Assert.All(all, s => Assert.Same(all[0], s));
        Assert.Equal((1, Bytes), (readings, cache.HeldBytes));
    }

    [Fact]
    public async Task Memory_is_bounded_and_what_was_asked_last_stays()
    {
        SeriesCache cache = new(2 * Bytes);
        ScanSeries a = await cache.GetAsync("a", () => Task.FromResult(Series()));
        _ = await cache.GetAsync("b", () => Task.FromResult(Series()));
        Assert.Same(a, await cache.GetAsync("a", () => Task.FromResult(Series())));
        _ = await cache.GetAsync("c", () => Task.FromResult(Series()));
        Assert.Equal(2 * Bytes, cache.HeldBytes);
        Assert.Same(a, await cache.GetAsync("a", () => Task.FromResult(Series())));
        int again = 0;
        _ = await cache.GetAsync("b", () => Task.FromResult(Counted()));
        Assert.Equal(1, again);

        ScanSeries Counted()
        {
            again++;
            return Series();
        }
    }

    [Fact]
    public async Task One_larger_than_the_bound_is_held_alone()
    {
        SeriesCache cache = new(1);
        _ = await cache.GetAsync("a", () => Task.FromResult(Series()));
        _ = await cache.GetAsync("b", () => Task.FromResult(Series()));
        Assert.Equal(Bytes, cache.HeldBytes);
    }

    [Fact]
    public async Task A_reading_that_failed_is_tried_again()
    {
        SeriesCache cache = new();
        await Assert.ThrowsAsync<InputFaultException>(() => cache.GetAsync("a", () => throw new InputFaultException(new InputFault(FaultCode.NotFound, "f", "v", "a", "r"))));
        Assert.NotNull(await cache.GetAsync("a", () => Task.FromResult(Series())));
    }

    private static ScanSeries Series() => new(
        new ScanVolume(Side, Side, Side, new short[Side * Side * Side], default, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)), (ImageHeader)null!, [], "hash", []);
}
