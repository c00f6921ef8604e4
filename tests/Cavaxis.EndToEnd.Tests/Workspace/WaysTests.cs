using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

[Collection(nameof(InTheBrowser))]
public class WaysTests(WorkspaceBrowser browser)
{
    [Fact]
    public async Task Another_plan_can_be_chosen_and_is_drawn_and_kept_in_the_window()
    {
        IPage page = await OpenAsync();
        ILocator other = page.Locator(".ways-table thead th[data-plan]").Nth(1);
        string rank = (await other.GetAttributeAsync("data-plan"))!;
        await other.Locator("button").ClickAsync();
        await Expect(page.Locator($".ways-table th[data-plan='{rank}'] button")).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(page.Locator(".line-plan")).ToContainTextAsync($"Plan {rank}:");
        await page.ClickAsync(".questions a:has-text('Where does it lie')");
        await Expect(page.Locator(".lie-plan")).ToContainTextAsync($"Plan {rank}:");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Moving_the_weights_changes_the_ranking_and_the_rule_books_weights_bring_it_back()
    {
        IPage page = await OpenAsync();
        string before = string.Join(',', await OrderAsync(page));
        foreach (ILocator slider in await page.Locator("[data-weight]").AllAsync())
        {
            bool counts = await slider.GetAttributeAsync("data-weight") == "Punctures";
            await slider.FocusAsync();
            await page.Keyboard.PressAsync(counts ? "End" : "Home");
        }

        await Expect(page.Locator("#ranking-words")).ToContainTextAsync("weights as moved");
        await Expect(page.Locator(".answer-title")).ToContainTextAsync("weights as moved");
        Assert.NotEqual(before, string.Join(',', await OrderAsync(page)));
        await page.ClickAsync("button:has-text('Weights of the rule book')");
        await Expect(page.Locator("#ranking-words")).ToContainTextAsync("weights of the rule book");
        Assert.Equal(before, string.Join(',', await OrderAsync(page)));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Up_to_four_plans_stand_side_by_side()
    {
        IPage page = await OpenAsync();
        ILocator picks = page.Locator(".ways-pick input");
        await picks.Nth(await picks.CountAsync() - 1).CheckAsync();
        await Expect(page.Locator(".ways-table thead th[data-plan]")).ToHaveCountAsync(4);
        await Expect(page.Locator(".ways-pick input:not(:checked)").First).ToBeDisabledAsync();
        await Expect(page.Locator(".flow-chart")).ToHaveCountAsync(4);
        await Expect(page.Locator(".grade-stop").First).ToContainTextAsync("Stop");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task What_to_measure_next_leads_to_its_field()
    {
        IPage page = await OpenAsync();
        ILocator measure = page.Locator(".measure").First;
        string address = Uri.UnescapeDataString((await measure.GetAttributeAsync("href"))!);
        string path = address[(address.IndexOf("field=", StringComparison.Ordinal) + 6)..];
        await measure.ClickAsync();
        await Expect(page.Locator("#f-" + string.Concat(path.Select(static c => char.IsAsciiLetterOrDigit(c) ? c : '-')))).ToBeFocusedAsync();
        await page.Context.CloseAsync();
    }

    private async Task<IPage> OpenAsync()
    {
        IPage page = await browser.OpenAsync((await browser.DemoAsync("Tall man")).Replace("/know", "/ways", StringComparison.Ordinal));
        await Expect(page.Locator(".plan-state")).ToContainTextAsync("Plan up to date", new() { Timeout = 60_000 });
        await page.Locator(".ways-table").WaitForAsync();
        return page;
    }

    private static Task<string[]> OrderAsync(IPage page) =>
        page.EvaluateAsync<string[]>("[...document.querySelectorAll('.ways-list li')].map(e => e.dataset.plan)");
}
