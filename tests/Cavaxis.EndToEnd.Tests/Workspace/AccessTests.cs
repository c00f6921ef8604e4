using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

[Collection(nameof(InTheBrowser))]
public class AccessTests(WorkspaceBrowser browser)
{
    [Theory]
    [InlineData("dark")]
    [InlineData("bright")]
    public async Task No_page_has_a_serious_or_critical_finding(string room)
    {
        string know = await browser.DemoAsync("Tall man");
        string paper = know.Replace("/know", "/paper", StringComparison.Ordinal);
        IPage page = await browser.OpenAsync(room: room);
        List<string> found = [];
        string running = (await browser.DemoAsync("Veno-venous support running")).Replace("/know", string.Empty, StringComparison.Ordinal);
        foreach (string address in new[]
        {
            "", know, $"{know}?group=vessels", $"{know}?group=access", $"{know}?group=file", paper, "not-found",
            $"{running}/place", $"{running}/position", $"{running}/run", $"{running}/wean", $"{running}/after", $"{running}/share", "opinion", "outcomes",
        })
        {
            await page.GotoAsync(new Uri(browser.Address, address).ToString());
            await WorkspaceBrowser.AliveAsync(page);
            Assert.Equal(room, await page.Locator("html").GetAttributeAsync("data-room"));
            Assert.Equal(1, await page.Locator("h1").CountAsync());
            var result = await page.RunAxe();
            found.AddRange(result.Violations.Where(static v => v.Impact is "serious" or "critical").Select(v => $"{address}: {v.Id} {string.Join(" | ", v.Nodes.Select(static n => n.Html).Take(3))}"));
            Assert.NotEmpty(result.Passes);
        }

        Assert.True(found.Count == 0, string.Join('\n', found));
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(1280)]
    [InlineData(820)]
    [InlineData(390)]
    public async Task Nothing_runs_out_of_the_page_and_what_is_touched_is_large_enough(int width)
    {
        string know = await browser.DemoAsync("Tall man");
        IPage page = await browser.OpenAsync(know, width: width);
        string running = (await browser.DemoAsync("Veno-venous support running")).Replace("/know", string.Empty, StringComparison.Ordinal);
        foreach (string address in new[]
        {
            "", know, $"{know}?group=vessels", $"{know}?group=access", know.Replace("/know", "/paper", StringComparison.Ordinal),
            $"{running}/place", $"{running}/position", $"{running}/run", $"{running}/wean", $"{running}/after", $"{running}/share", "opinion", "outcomes",
        })
        {
            await page.GotoAsync(new Uri(browser.Address, address).ToString());
            await WorkspaceBrowser.AliveAsync(page);
            if (address.Length == 0)
            {
                await page.Locator("#guide-start").WaitForAsync();
            }

            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth - window.innerWidth") <= 0, $"at '{address}'");
            string[] small = await page.EvaluateAsync<string[]>("""
                [...document.querySelectorAll('button, select, input[type=text], .button, .questions a, .groups a, .next a, .choice-one span')]
                  .filter(e => e.offsetParent !== null && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML.slice(0, 80))
                """);
            Assert.True(small.Length == 0, $"{address}: {string.Join('\n', small)}");
        }

        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_patient_can_be_entered_with_the_keyboard_alone()
    {
        IPage page = await browser.OpenAsync();
        await ReachAsync(page, ".skip", "Shift+Tab");
        await ReachAsync(page, "#guide-leave");
        await page.Keyboard.PressAsync("Enter");
        await ReachAsync(page, "#new-patient");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("h1")).ToHaveTextAsync("What do we know?");
        await ReachAsync(page, "#f-title");
        await page.Keyboard.TypeAsync("By keyboard");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#f-patient-ageYears")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("34");
        await page.Keyboard.PressAsync("Tab");
        await ReachAsync(page, "#f-patient-sex");
        await page.Keyboard.PressAsync("Space");
        await ReachAsync(page, "#f-patient-heightCm");
        await page.Keyboard.TypeAsync("168");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#f-patient-weightKg")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("61");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".answer-title")).ToContainTextAsync("had to assume");
        await ReachAsync(page, ".questions a[href$='/paper']", "Shift+Tab");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("h1")).ToHaveTextAsync("On paper");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Foreign_content_is_kept_out_by_headers_and_foreign_names_are_refused()
    {
        using HttpClient client = new();
        using HttpResponseMessage answer = await client.GetAsync(browser.Address);
        string policy = string.Join(' ', answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.False(answer.Headers.Contains("Server"));
        using HttpRequestMessage foreign = new(HttpMethod.Get, browser.Address);
        foreign.Headers.Host = "elsewhere.example";
        using HttpResponseMessage refused = await client.SendAsync(foreign);
        Assert.Equal(System.Net.HttpStatusCode.BadRequest, refused.StatusCode);
    }

    private static async Task ReachAsync(IPage page, string selector, string key = "Tab")
    {
        for (int i = 0; i < 60; i++)
        {
            if (await page.EvaluateAsync<bool>("s => document.activeElement?.matches(s) === true", selector))
            {
                return;
            }

            await page.Keyboard.PressAsync(key);
        }

        Assert.Fail($"{selector} is not reached by {key}.");
    }
}
