using Cavaxis.EndToEnd.Tests.Programs;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>One server and one browser for all tests in the browser; each test opens windows of its own.</summary>
public sealed class WorkspaceBrowser : IAsyncLifetime, IDisposable
{
    /// <summary>How long is waited for what a page is expected to show, ms.</summary>
    private const float Patience = 30_000;

    private readonly WorkFolder folder = new();
    private IPlaywright? playwright;
    private IBrowser? browser;
    private WorkspaceServer? server;

    /// <summary>Where the workspace answers.</summary>
    public Uri Address => server!.Address;

    /// <summary>Folder in which the workspace keeps its data.</summary>
    public string Data => folder["data"];

    public async Task InitializeAsync()
    {
        server = await WorkspaceServer.StartAsync(folder["data"]);
        playwright = await Playwright.CreateAsync();

        // All projects are tested at once, and studies of the tests before go on in the server: what is expected may come later than on an idle machine.
        Assertions.SetDefaultExpectTimeout(Patience);
        browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = ["--no-sandbox"] });
    }

    public async Task DisposeAsync()
    {
        await browser!.CloseAsync();
        playwright!.Dispose();
        server!.Dispose();
    }

    public void Dispose() => folder.Dispose();

    /// <summary>Opens a window that shares nothing with others.</summary>
    /// <param name="address">Address from the workspace's root, or a whole one.</param>
    /// <param name="room">dark or bright.</param>
    /// <param name="width">Width of the window.</param>
    public async Task<IPage> OpenAsync(string address = "", string room = "dark", int width = 1280)
    {
        IBrowserContext window = await browser!.NewContextAsync(new()
        {
            ViewportSize = new() { Width = width, Height = 800 },
            ColorScheme = room == "bright" ? ColorScheme.Light : ColorScheme.Dark,
            ReducedMotion = ReducedMotion.Reduce,
        });
        window.SetDefaultTimeout(20_000);
        IPage page = await window.NewPageAsync();
        await page.GotoAsync(new Uri(Address, address).ToString());
        await AliveAsync(page);
        return page;
    }

    /// <summary>Opens a page of another server, whose certificate nobody has signed, in a window that shares nothing with others.</summary>
    /// <param name="address">The whole address.</param>
    /// <param name="name">Who signs in first; null where no one does.</param>
    public async Task<IPage> OpenElsewhereAsync(Uri address, string? name = null)
    {
        IBrowserContext window = await browser!.NewContextAsync(new() { IgnoreHTTPSErrors = true, ReducedMotion = ReducedMotion.Reduce });
        window.SetDefaultTimeout(20_000);
        IPage page = await window.NewPageAsync();
        await page.GotoAsync(address.ToString());
        if (name is not null)
        {
            await RegisteredPeople.SignInAsync(page, name);
        }

        await AliveAsync(page);
        return page;
    }

    /// <summary>Waits until the page can be worked with.</summary>
    public static Task AliveAsync(IPage page) => page.Locator("html[data-alive]").WaitForAsync(new() { State = WaitForSelectorState.Attached });

    /// <summary>No serious or critical finding on the page as it stands.</summary>
    public static async Task CleanAsync(IPage page)
    {
        var result = await page.RunAxe();
        Assert.NotEmpty(result.Passes);
        Assert.Empty(result.Violations.Where(static v => v.Impact is "serious" or "critical").Select(static v => $"{v.Id} {string.Join(" | ", v.Nodes.Select(static n => n.Html).Take(3))}"));
    }

    /// <summary>Makes a patient with the least that is needed and opens it in a window.</summary>
    public async Task<IPage> NewPatientAsync(string title)
    {
        IPage page = await OpenAsync();
        await page.ClickAsync("#new-patient");
        await page.FillAsync("#f-title", title);
        await page.FillAsync("#f-patient-ageYears", "50");
        await page.ClickAsync("label:has(#f-patient-sex-male)");
        await page.FillAsync("#f-patient-heightCm", "180");
        await page.FillAsync("#f-patient-weightKg", "80");
        await page.PressAsync("#f-patient-weightKg", "Tab");
        await page.Locator(".answer-title", new() { HasText = "had to assume" }).WaitForAsync(new() { Timeout = 60_000 });
        return page;
    }

    /// <summary>Address of the demo patient of a title.</summary>
    public async Task<string> DemoAsync(string title)
    {
        IPage page = await OpenAsync();
        string? address = await page.Locator(".patient-open", new() { HasText = title }).First.GetAttributeAsync("href");
        await page.Context.CloseAsync();
        return address!;
    }
}
