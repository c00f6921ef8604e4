using System.Diagnostics;
using Microsoft.Playwright;

namespace Cavaxis.Bench.Web;

/// <summary>The waves of "What if?", and how long a question takes.</summary>
internal static class WaveFigures
{
    /// <summary>Measures both running demo cases and prints.</summary>
    /// <param name="browser">The browser.</param>
    /// <param name="address">Address of a workspace with the demo cases.</param>
    public static async Task PrintAsync(IBrowser browser, Uri address)
    {
        IPage page = await browser.NewPageAsync(new BrowserNewPageOptions { ViewportSize = new ViewportSize { Width = 1280, Height = 800 } });
        foreach (string title in (string[])["Veno-venous support running", "Femoral veno-arterial support running"])
        {
            await page.GotoAsync(address.ToString());
            await page.Locator(".patient-open", new PageLocatorOptions { HasTextString = title }).ClickAsync();
            Stopwatch watch = Stopwatch.StartNew();
            await page.Locator(".questions a", new PageLocatorOptions { HasTextString = "What if?" }).ClickAsync();
            await page.Locator(".wave-canvas").WaitForAsync(new LocatorWaitForOptions { Timeout = 120_000 });
            Console.WriteLine($"{title}: fitted and drawn after {watch.Elapsed.TotalSeconds:F1} s");
            Print("waves of the settled breath", await FrameTimes.OfAsync(page));
            await page.Locator("[data-step=flow-more]").ClickAsync();
            watch.Restart();
            await page.Locator(".reading-list li").First.WaitForAsync(new LocatorWaitForOptions { Timeout = 120_000 });
            Console.WriteLine($"  one step of pump flow: answered after {watch.Elapsed.TotalSeconds:F1} s");
            Print("waves of the way to the new rest", await FrameTimes.OfAsync(page));
        }
    }

    private static void Print(string what, FrameTimes times) => Console.WriteLine(
        $"  {what}: {times.PerSecond:F1} frames/s; between frames median {times.MedianMs:F1} ms, 95 % {times.P95Ms:F1} ms, longest {times.LongestMs:F1} ms; drawn at most {times.Rate}/s");
}
