using System.Globalization;
using Microsoft.Playwright;

namespace Cavaxis.Bench.Web;

/// <summary>From the pointer that moves a cannula to the numbers on the page, measured in the browser itself.</summary>
/// <param name="Plan">Plan that was moved.</param>
/// <param name="FitMs">Until ports and probabilities are shown, ascending.</param>
/// <param name="CirculationMs">Until recirculation and saturation are shown, ascending.</param>
/// <param name="FramesMs">Times between drawn frames while the hand moved, ascending.</param>
internal sealed record DragFigures(string Plan, double[] FitMs, double[] CirculationMs, double[] FramesMs)
{
    private const int Moves = 60;
    private const int BetweenMs = 60;

    /// <summary>Watches the readings and notes when each move's numbers stand there; a number that is overtaken counts with the one that overtakes it.</summary>
    private const string Watch = """
        () => {
          const readings = document.querySelector('.lie-readings');
          const stage = document.querySelector('.lie');
          const seen = window.seen = { moved: [], fit: [], circulation: [], frames: [] };
          new MutationObserver(() => seen.moved.push([Number(stage.dataset.moved), performance.now()])).observe(stage, { attributes: true, attributeFilter: ['data-moved'] });
          new MutationObserver(() => {
            seen.fit.push([Number(readings.dataset.fit), performance.now()]);
            seen.circulation.push([Number(readings.dataset.circulation), performance.now()]);
          }).observe(readings, { attributes: true });
          let last = performance.now();
          const frame = () => { const now = performance.now(); seen.frames.push(now - last); last = now; requestAnimationFrame(frame); };
          requestAnimationFrame(frame);
        }
        """;

    private const string Latencies = """
        (which) => window.seen.moved.map(([n, at]) => { const shown = window.seen[which].find(([m]) => m >= n); return shown ? shown[1] - at : 1e6; })
        """;

    /// <summary>Measures the first plan and the one that returns through a side port.</summary>
    /// <param name="browser">The browser.</param>
    /// <param name="address">Address of a workspace with the demo cases.</param>
    public static async Task<IReadOnlyList<DragFigures>> MeasureAsync(IBrowser browser, Uri address)
    {
        List<DragFigures> all = [];
        foreach (string plan in (string[])["fem-jug", "dual-lumen"])
        {
            all.Add(await OneAsync(browser, address, plan));
        }

        return all;
    }

    /// <summary>The figures as a line.</summary>
    /// <param name="culture">How numbers are written.</param>
    public string ToString(CultureInfo culture) => string.Create(culture,
        $"{Plan}: {FitMs.Length} moves; ports and zones median {At(FitMs, 0.5):F0} ms, 95th percentile {At(FitMs, 0.95):F0} ms; recirculation and saturation median {At(CirculationMs, 0.5):F0} ms, 95th percentile {At(CirculationMs, 0.95):F0} ms; frames median {At(FramesMs, 0.5):F1} ms, 95th percentile {At(FramesMs, 0.95):F1} ms");

    private static double At(double[] ascending, double share) => ascending[Math.Min(ascending.Length - 1, (int)Math.Ceiling(share * ascending.Length) - 1)];

    private static async Task<DragFigures> OneAsync(IBrowser browser, Uri address, string plan)
    {
        IPage page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 1280, Height = 900 } });
        await page.GotoAsync(address.ToString());
        string patient = (await page.Locator("a:has-text('Tall man')").First.GetAttributeAsync("href"))!.Split('/')[1].Split('?')[0];
        await page.GotoAsync(new Uri(address, $"patient/{patient}/ways").ToString());
        await page.Locator(".plan-state", new() { HasText = "up to date" }).WaitForAsync(new() { Timeout = 120_000 });
        ILocator row = page.Locator(".ways-list li", new() { HasText = plan == "fem-jug" ? "jugular return" : plan }).First;
        await row.Locator("input").CheckAsync();
        string rank = (await row.GetAttributeAsync("data-plan"))!;
        await page.Locator($".ways-table th[data-plan='{rank}'] button").ClickAsync();
        await page.Locator($".ways-table th.chosen[data-plan='{rank}']").WaitForAsync();
        await page.ClickAsync(".questions a:has-text('Where does it lie')");
        await page.Locator(".lie[data-ready]").WaitForAsync();

        // The circulation is fitted once for a patient; what is measured is moving, not the first opening.
        await page.Locator(".lie-hand").First.FocusAsync();
        await page.Keyboard.PressAsync("ArrowLeft");
        await page.WaitForFunctionAsync("() => document.querySelector('.lie-readings').dataset.circulation === document.querySelector('.lie').dataset.moved", null, new() { Timeout = 60_000 });
        await page.WaitForTimeoutAsync(1500);
        await page.EvaluateAsync(Watch);
        ILocator handle = page.Locator(".lie-hand .lie-grip").First;
        await handle.EvaluateAsync("e => e.scrollIntoView({ block: 'center' })");
        LocatorBoundingBoxResult grip = (await handle.BoundingBoxAsync())!;
        (float x, float y) = (grip.X + (grip.Width / 2), grip.Y + (grip.Height / 2));
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        for (int i = 1; i <= Moves; i++)
        {
            await page.Mouse.MoveAsync(x, y + ((plan == "fem-jug" ? 1.5f : -1.5f) * i));
            await page.WaitForTimeoutAsync(BetweenMs);
        }

        await page.Mouse.UpAsync();
        await page.WaitForTimeoutAsync(1500);
        DragFigures figures = new(
            plan, await AscendingAsync(page, Latencies, "fit"), await AscendingAsync(page, Latencies, "circulation"), await AscendingAsync(page, "() => window.seen.frames", null));
        await page.CloseAsync();
        return figures;
    }

    private static async Task<double[]> AscendingAsync(IPage page, string script, string? which) => [.. (await page.EvaluateAsync<double[]>(script, which)).Order()];
}
