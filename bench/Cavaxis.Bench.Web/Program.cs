using System.Globalization;
using Cavaxis.Bench.Web;
using Microsoft.Playwright;

// Measures the built workspace in headless Chromium without a graphics processor: pages, moved cannulae, then the waves of "What if?".
// Usage: dotnet run -c Release --project bench/Cavaxis.Bench.Web [-- --crowd]; with --crowd fifty people who sign in at once, without a browser.
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
if (args.Contains("--crowd"))
{
    using WorkspaceProcess shared = WorkspaceProcess.Start(CrowdFigures.Register);
    Console.WriteLine($"{Environment.ProcessorCount} cores, load {File.ReadAllText("/proc/loadavg").Split(' ')[0]}");
    await CrowdFigures.PrintAsync(shared.Address);
    return;
}

using WorkspaceProcess workspace = WorkspaceProcess.Start();
using IPlaywright playwright = await Playwright.CreateAsync();
await using IBrowser browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
{
    ExecutablePath = "/usr/bin/chromium",
    Args = ["--no-sandbox", "--disable-gpu"],
});
Console.WriteLine($"{Environment.ProcessorCount} cores, 1280 x 800, no graphics processor; load {File.ReadAllText("/proc/loadavg").Split(' ')[0]}");
await ViewFigures.PrintAsync(browser, workspace.Address);
foreach (DragFigures figures in await DragFigures.MeasureAsync(browser, workspace.Address))
{
    Console.WriteLine(figures.ToString(CultureInfo.InvariantCulture));
}

await WaveFigures.PrintAsync(browser, workspace.Address);
