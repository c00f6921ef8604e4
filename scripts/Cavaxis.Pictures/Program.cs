using Cavaxis.Bench.Web;
using Cavaxis.Pictures;
using Microsoft.Playwright;

// Takes the pictures of the workspace from the built program and its invented demo cases.
// Usage: dotnet run -c Release --project scripts/Cavaxis.Pictures -- FOLDER
if (args is not [string folder])
{
    Console.Error.WriteLine("Name the folder for the pictures.");
    return 2;
}

using WorkspaceProcess workspace = WorkspaceProcess.Start();
using IPlaywright playwright = await Playwright.CreateAsync();
await using IBrowser browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = ["--no-sandbox", "--disable-gpu"] });
foreach (PictureOrder order in PictureOrder.All)
{
    await using IBrowserContext window = await browser.NewContextAsync(new()
    {
        ViewportSize = new() { Width = 1280, Height = 800 },
        ColorScheme = order.Room == "dark" ? ColorScheme.Dark : ColorScheme.Light,
        ReducedMotion = ReducedMotion.Reduce,
    });
    window.SetDefaultTimeout(120_000);
    IPage page = await window.NewPageAsync();
    string address = order.Question;
    if (order.Patient.Length > 0)
    {
        await page.GotoAsync(workspace.Address.ToString());
        string first = (await page.Locator($"a.patient-open:has-text('{order.Patient}')").First.GetAttributeAsync("href"))!;
        address = first.Replace("/know", "/" + order.Question, StringComparison.Ordinal);
    }

    await page.GotoAsync(new Uri(workspace.Address, address).ToString());
    await page.Locator("html[data-alive]").WaitForAsync(new() { State = WaitForSelectorState.Attached });
    if (order.Press.Length > 0)
    {
        await page.Locator(order.Press).ClickAsync();
    }

    await page.Locator(order.Ready).First.WaitForAsync();
    if (order.Show.Length > 0)
    {
        await page.EvaluateAsync("s => window.scrollTo(0, document.querySelector(s).getBoundingClientRect().top + window.scrollY - 12)", order.Show);
    }

    // What follows the last word, such as a curve that is drawn anew, is given a moment.
    await page.WaitForTimeoutAsync(1500);
    await page.ScreenshotAsync(new() { Path = Path.Combine(folder, order.File), Type = ScreenshotType.Jpeg, Quality = 82 });
    Console.WriteLine(order.File);
}

return 0;
