using System.Text.Json;
using Microsoft.Playwright;

namespace Cavaxis.Bench.Web;

/// <summary>Times between frames of the browser while the waves are drawn.</summary>
/// <param name="PerSecond">Frames a second over the whole stretch.</param>
/// <param name="MedianMs">Median time between frames.</param>
/// <param name="P95Ms">95th percentile.</param>
/// <param name="LongestMs">Longest.</param>
/// <param name="Rate">Pictures a second that the drawing has settled on.</param>
internal sealed record FrameTimes(double PerSecond, double MedianMs, double P95Ms, double LongestMs, string Rate)
{
    private const string Script = """
        () => new Promise((done) => {
          const deltas = [];
          let last;
          const tick = (now) => {
            if (last !== undefined) deltas.push(now - last);
            last = now;
            if (deltas.length < 480) requestAnimationFrame(tick);
            else done({ deltas, rate: document.querySelector('.waves').dataset.rate });
          };
          requestAnimationFrame(tick);
        })
        """;

    /// <summary>Measures.</summary>
    /// <param name="page">A page that draws waves.</param>
    /// <returns>The times.</returns>
    public static async Task<FrameTimes> OfAsync(IPage page)
    {
        JsonElement result = (await page.EvaluateAsync<JsonElement?>(Script))!.Value;
        double[] deltas = [.. result.GetProperty("deltas").EnumerateArray().Select(static d => d.GetDouble()).Order()];
        return new FrameTimes(
            1000 * deltas.Length / deltas.Sum(), deltas[deltas.Length / 2], deltas[(int)(0.95 * deltas.Length)], deltas[^1], result.GetProperty("rate").GetString()!);
    }
}
