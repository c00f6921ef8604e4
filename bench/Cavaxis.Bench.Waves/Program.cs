using System.Diagnostics;
using System.Globalization;
using Cavaxis.Bench.Waves;
using Microsoft.Playwright;

// Measures the waves of "What if?" in headless Chromium without a graphics processor, and how long a question takes.
// Usage: dotnet run -c Release --project bench/Cavaxis.Bench.Waves
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
using WorkspaceProcess workspace = WorkspaceProcess.Start();
using IPlaywright playwright = await Playwright.CreateAsync();
await using IBrowser browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
{
    ExecutablePath = "/usr/bin/chromium",
    Args = ["--no-sandbox", "--disable-gpu"],
});
IPage page = await browser.NewPageAsync(new BrowserNewPageOptions { ViewportSize = new ViewportSize { Width = 1280, Height = 800 } });
Console.WriteLine($"{Environment.ProcessorCount} cores, 1280 x 800, no graphics processor; load {File.ReadAllText("/proc/loadavg").Split(' ')[0]}");
foreach (string title in (string[])["Veno-venous support running", "Femoral veno-arterial support running"])
{
    await page.GotoAsync(workspace.Address);
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

static void Print(string what, FrameTimes times) => Console.WriteLine(
    $"  {what}: {times.PerSecond:F1} frames/s; between frames median {times.MedianMs:F1} ms, 95 % {times.P95Ms:F1} ms, longest {times.LongestMs:F1} ms; drawn at most {times.Rate}/s");
