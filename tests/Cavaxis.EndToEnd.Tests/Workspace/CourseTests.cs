using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

[Collection(nameof(InTheBrowser))]
public class CourseTests(WorkspaceBrowser browser)
{
    [Fact]
    public async Task A_hard_stop_holds_until_it_was_seen_and_by_whom_else_and_a_second_window_follows()
    {
        IPage page = await browser.NewPatientAsync("Sheet");
        string place = page.Url.Split('?')[0].Replace("/know", "/place", StringComparison.Ordinal);
        await page.GotoAsync(place);
        await WorkspaceBrowser.AliveAsync(page);
        await page.ClickAsync("#begin-sheet", new() { Timeout = 60_000 });
        await Expect(page.Locator("#now-title")).ToContainTextAsync("Step 1 of");
        await CleanAsync(page);

        IPage other = await browser.OpenAsync(new Uri(place).PathAndQuery.TrimStart('/'));
        await Expect(other.Locator("#now-title")).ToContainTextAsync("Step 1 of");
        int step = 1;
        while (await page.Locator(".sheet-now .step-stop").CountAsync() == 0)
        {
            await page.ClickAsync("#step-done");
            await Expect(page.Locator("#now-title")).ToContainTextAsync($"Step {++step} of");
        }

        await page.ClickAsync("#step-done");
        await Expect(page.Locator(".sheet-now .trouble").First).ToContainTextAsync("seen");
        await Expect(page.Locator("#now-title")).ToContainTextAsync($"Step {step} of");
        if (await page.Locator(".sheet-views .choice-one").CountAsync() > 0)
        {
            await page.Locator(".sheet-views .choice-one").First.ClickAsync();
        }

        await page.FillAsync("#seen", "Seen (invented)");
        await page.ClickAsync("#step-done");
        await Expect(page.Locator(".sheet-now .trouble").First).ToContainTextAsync("second person");
        await page.FillAsync("#second", "Rhea (invented)");
        await page.ClickAsync("#step-done");
        await Expect(page.Locator("#now-title")).ToContainTextAsync($"Step {step + 1} of");
        await Expect(other.Locator("#now-title")).ToContainTextAsync($"Step {step + 1} of");

        await page.ClickAsync("summary:has-text('Done otherwise')");
        await page.ClickAsync("#step-skip");
        await Expect(page.Locator(".sheet-now .trouble").First).ToContainTextAsync("reason");
        await page.ReloadAsync();
        await WorkspaceBrowser.AliveAsync(page);
        await Expect(page.Locator("#now-title")).ToContainTextAsync($"Step {step + 1} of");
        await Expect(page.Locator(".steps")).ToContainTextAsync("Rhea (invented)");
        await page.Context.CloseAsync();
        await other.Context.CloseAsync();
    }

    [Fact]
    public async Task What_is_read_becomes_a_trend_with_what_may_be_behind_it_and_what_to_look_at_next()
    {
        IPage page = await browser.NewPatientAsync("Running");
        await page.GotoAsync(page.Url.Split('?')[0].Replace("/know", "/run", StringComparison.Ordinal));
        await WorkspaceBrowser.AliveAsync(page);
        await page.SelectOptionAsync("#connection", "VvTwoSite");
        await page.ClickAsync("#start-support");
        await Expect(page.Locator("main")).ToContainTextAsync("Veno-venous, two sites, running for");

        await page.FillAsync("#q-pumpFlowLPerMin", "42");
        await page.FillAsync("#q-preMembraneSaturationPercent", "88");
        await page.ClickAsync("#write-readings");
        await Expect(page.Locator(".field-fault")).ToContainTextAsync("0 to 10 L/min");
        await Expect(page.Locator("#q-preMembraneSaturationPercent")).ToHaveValueAsync("88");
        await page.FillAsync("#q-pumpFlowLPerMin", "4,2");
        await page.ClickAsync("#write-readings");
        await Expect(page.Locator("main")).ToContainTextAsync("2 written down.");
        await Expect(page.Locator(".trend").First).ToContainTextAsync("L/min");
        await Expect(page.Locator("#why-title")).ToHaveTextAsync("What may be behind it");
        await Expect(page.Locator(".cause")).ToHaveCountAsync(3);
        await Expect(page.Locator(".next-look h3")).ToContainTextAsync("Look at next:");
        await CleanAsync(page);

        await page.ReloadAsync();
        await WorkspaceBrowser.AliveAsync(page);
        await Expect(page.Locator(".timeline")).ToContainTextAsync("Pump flow");
        ILocator taking = page.Locator(".timeline li", new() { HasText = "pump flow" }).First.Locator("button");
        await taking.ClickAsync();
        await taking.ClickAsync();
        await Expect(page.Locator(".timeline .withdrawn")).ToHaveCountAsync(1);
        await Expect(page.Locator(".trend")).ToHaveCountAsync(0);
        await page.Context.CloseAsync();
    }

    private static async Task CleanAsync(IPage page)
    {
        await WorkspaceBrowser.CleanAsync(page);
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth - window.innerWidth") <= 0);
    }
}
