using System.Globalization;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

[Collection(nameof(InTheBrowser))]
public class LieTests(WorkspaceBrowser browser)
{
    [Fact]
    public async Task A_cannula_is_dragged_by_mouse_and_words_of_its_zone_follow()
    {
        IPage page = await OpenAsync();
        ILocator tip = page.Locator("tr[data-rule='vv-return-end'] .zone-word");
        await Expect(tip).ToContainTextAsync("in its zone");
        ILocator hand = page.Locator(".lie-hand[data-shape*='VenousReturn'] .lie-grip");
        await hand.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await hand.BoundingBoxAsync())!;
        double before = await DepthAsync(page, "VenousReturn");
        await page.Mouse.MoveAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2) - 150, new() { Steps = 12 });
        await page.Mouse.UpAsync();
        Assert.True(await DepthAsync(page, "VenousReturn") < before - 3);
        await Expect(tip).ToContainTextAsync("out of its zone");
        await page.ClickAsync("[data-planned]");
        await Expect(tip).ToHaveTextAsync("● in its zone");
        await Expect(page.Locator(".answer-interval")).ToContainTextAsync("as planned");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Arrow_keys_move_a_cannula_and_recirculation_follows()
    {
        IPage page = await OpenAsync("dual-lumen");
        ILocator recirculation = page.Locator("[data-reading='recirculation']");
        await Expect(recirculation).ToContainTextAsync("% of pump flow");
        double planned = Number(await recirculation.InnerTextAsync());
        double depth = await DepthAsync(page, "DualLumen");
        await page.Locator(".lie-hand").FocusAsync();
        await page.Keyboard.PressAsync("ArrowUp");
        await LiesAtAsync(page, "DualLumen", depth - 0.1);
        for (int i = 0; i < 4; i++)
        {
            await page.Keyboard.PressAsync("Shift+ArrowUp");
        }

        await LiesAtAsync(page, "DualLumen", depth - 4.1);
        await SettledAsync(page);
        Assert.True(Number(await recirculation.InnerTextAsync()) > planned + 5);

        // Where it was put it lies when one comes back.
        await page.ClickAsync(".questions a:has-text('Which way in')");
        await page.ClickAsync(".questions a:has-text('Where does it lie')");
        await page.Locator(".lie[data-ready]").WaitForAsync();
        await LiesAtAsync(page, "DualLumen", depth - 4.1);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_return_port_of_a_dual_lumen_cannula_is_turned()
    {
        IPage page = await OpenAsync("dual-lumen");
        await page.Locator("[data-turn]").FocusAsync();
        await page.Keyboard.PressAsync("End");
        await Expect(page.Locator(".lie-turn")).ToContainTextAsync("180°");
        await Expect(page.Locator("tr[data-rule='dual-return-port'] .zone-word")).ToContainTextAsync("out of its zone");
        await SettledAsync(page);
        await page.Context.CloseAsync();
    }

    /// <summary>The tall man's port does not reach the valve, so that turning it changes little; the child's does.</summary>
    [Fact]
    public async Task Turned_away_from_the_valve_a_port_that_reaches_it_recirculates_more()
    {
        IPage page = await OpenAsync("dual-lumen", patient: "Child with lung failure");
        double planned = await RecirculationOfAllAsync(page);
        await page.Locator("[data-turn]").FocusAsync();
        await page.Keyboard.PressAsync("End");
        await SettledAsync(page);
        double turned = await RecirculationOfAllAsync(page);
        Assert.True(turned > planned + 3, $"{planned} % as planned, {turned} % turned away");
        await page.ClickAsync("[data-planned]");
        await SettledAsync(page);
        Assert.Equal(planned, await RecirculationOfAllAsync(page));
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData("dark")]
    [InlineData("bright")]
    public async Task Neither_page_of_plans_has_a_serious_or_critical_finding(string room)
    {
        IPage page = await OpenAsync(room: room);
        List<string> found = await SeriousAsync(page);
        await page.ClickAsync(".questions a:has-text('Which way in')");
        await page.Locator(".ways-table").WaitForAsync();
        found.AddRange(await SeriousAsync(page));
        Assert.True(found.Count == 0, string.Join('\n', found));
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(1280)]
    [InlineData(820)]
    [InlineData(390)]
    public async Task Nothing_runs_out_of_the_page_and_handles_are_large_enough(int width)
    {
        IPage page = await OpenAsync(width: width);
        foreach (string question in new[] { "Which way in", "Where does it lie" })
        {
            await page.ClickAsync($".questions a:has-text('{question}')");
            await Expect(page.Locator("h1")).ToContainTextAsync(question);
            await page.Locator(".ways-table, .lie[data-ready]").First.WaitForAsync();
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth - window.innerWidth") <= 0, question);
        }

        string[] small = await page.EvaluateAsync<string[]>("""
            [...document.querySelectorAll('.lie-grip circle, .lie button')].filter(e => { const b = e.getBoundingClientRect(); return Math.min(b.width, b.height) < 43.5; }).map(e => `${e.outerHTML.slice(0, 60)} ${e.getBoundingClientRect().height}`)
            """);
        Assert.True(small.Length == 0, string.Join('\n', small));
        await page.Context.CloseAsync();
    }

    private async Task<IPage> OpenAsync(string? plan = null, string room = "dark", int width = 1280, string patient = "Tall man")
    {
        string know = await browser.DemoAsync(patient);
        string ways = know.Replace("/know", "/ways", StringComparison.Ordinal);
        IPage page = await browser.OpenAsync(plan is null ? ways.Replace("/ways", "/lie", StringComparison.Ordinal) : ways, room, width);
        await Expect(page.Locator(".plan-state")).ToContainTextAsync("Plan up to date", new() { Timeout = 60_000 });
        if (plan is not null)
        {
            await page.Locator(".ways-list li", new() { HasText = plan }).Last.Locator("input").CheckAsync();
            await page.Locator(".ways-table thead th", new() { HasText = plan }).Locator("button").ClickAsync();
            await Expect(page.Locator(".ways-table thead th.chosen")).ToContainTextAsync(plan);
            await page.ClickAsync(".questions a:has-text('Where does it lie')");
        }

        await page.Locator(".lie[data-ready]").WaitForAsync();
        return page;
    }

    private static async Task<double> DepthAsync(IPage page, string role) =>
        Number((await page.Locator($".lie-hand[data-shape*='{role}']").GetAttributeAsync("aria-valuenow"))!);

    /// <summary>The drawing follows with the next picture: the depth is waited for, not read at once.</summary>
    private static Task<IJSHandle> LiesAtAsync(IPage page, string role, double depthCm) => page.WaitForFunctionAsync(
        $"() => Math.abs(document.querySelector(\".lie-hand[data-shape*='{role}']\").ariaValueNow - {depthCm.ToString(CultureInfo.InvariantCulture)}) < 0.051");

    private static Task<IJSHandle> SettledAsync(IPage page) => page.WaitForFunctionAsync(
        "() => { const r = document.querySelector('.lie-readings').dataset; const s = document.querySelector('.lie').dataset.moved; return r.fit === s && r.circulation === s; }");

    /// <summary>The median of all patients of the plan, which is told with its interval once the cannula rests.</summary>
    private static async Task<double> RecirculationOfAllAsync(IPage page)
    {
        ILocator told = page.Locator("[data-reading='recirculation']");
        await Expect(told).ToContainTextAsync("(", new() { Timeout = 20_000 });
        return Number(await told.InnerTextAsync());
    }

    private static async Task<List<string>> SeriousAsync(IPage page) => [.. (await page.RunAxe()).Violations
        .Where(static v => v.Impact is "serious" or "critical")
        .Select(v => $"{page.Url}: {v.Id} {string.Join(" | ", v.Nodes.Select(static n => n.Html).Take(3))}")];

    private static double Number(string text) => double.Parse(text.Split(' ', '%')[0], CultureInfo.InvariantCulture);
}
