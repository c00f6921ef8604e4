using System.Text.RegularExpressions;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>What the hand does besides the mouse: touch, keys that lead to a page, paper, the form of what runs.</summary>
[Collection(nameof(InTheBrowser))]
public class HandTests(WorkspaceBrowser browser)
{
    private const float Patience = 60_000;
    private const int MostPresses = 4;

    private static readonly (string Key, string Heading)[] Pages =
        [("k", "What do we know?"), ("w", "Which way in?"), ("l", "Where does it lie?"), ("g", "How does it go in?"), ("i", "What if?"), ("p", "On paper")];

    [Fact]
    public async Task A_cannula_is_moved_by_a_finger()
    {
        IPage page = await browser.OpenAsync(await browser.DemoAsync("Tall man"));
        await page.ClickAsync(".questions a:has-text('Where does it lie')");
        await page.Locator(".lie[data-ready]").WaitForAsync(new() { Timeout = Patience });
        ILocator grip = page.Locator(".lie-hand .lie-grip").First;
        await grip.EvaluateAsync("e => e.scrollIntoView({ block: 'center' })");
        LocatorBoundingBoxResult box = (await grip.BoundingBoxAsync())!;
        Assert.True(box.Width >= 44 && box.Height >= 44, $"{box.Width} x {box.Height}");
        string before = (await page.Locator(".lie-hand").First.GetAttributeAsync("aria-valuenow"))!;
        ICDPSession touch = await page.Context.NewCDPSessionAsync(page);
        (double x, double y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await TouchAsync(touch, "touchStart", x, y);
        for (int i = 1; i <= 10; i++)
        {
            await TouchAsync(touch, "touchMove", x, y - (8 * i));
        }

        await touch.SendAsync("Input.dispatchTouchEvent", new Dictionary<string, object> { ["type"] = "touchEnd", ["touchPoints"] = Array.Empty<object>() });
        await Expect(page.Locator(".lie-hand").First).Not.ToHaveAttributeAsync("aria-valuenow", before);
        await page.Context.CloseAsync();
    }

    /// <summary>Alt and shift: what both browsers of this system take; the modifiers are bits of the browser's protocol.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(1 + 8)]
    public async Task Keys_with_Alt_lead_to_each_question(int modifiers)
    {
        IPage page = await browser.OpenAsync(await browser.DemoAsync("Tall man"));
        ICDPSession keys = await page.Context.NewCDPSessionAsync(page);
        foreach ((string key, string heading) in Pages.Reverse())
        {
            // The browser itself looks for the link of an access key, and drops the key where the page is just being replaced: then a person presses again.
            for (int press = 1; press <= MostPresses; press++)
            {
                await KeyAsync(keys, "keyDown", key, modifiers);
                await KeyAsync(keys, "keyUp", key, modifiers);
                try
                {
                    await Expect(page.Locator("h1")).ToHaveTextAsync(heading, new() { Timeout = Patience / MostPresses });
                    break;
                }
                catch (PlaywrightException) when (press < MostPresses)
                {
                    // Pressed again.
                }
            }
        }

        await page.Context.CloseAsync();
    }

    /// <summary>The page that takes half a minute to compute is printed in its own tests.</summary>
    [Fact]
    public async Task On_paper_every_page_keeps_its_answer_and_the_caution_and_leaves_out_what_can_only_be_pressed()
    {
        IPage page = await browser.OpenAsync(await browser.DemoAsync("Tall man"));
        await Expect(page.Locator(".plan-state")).ToContainTextAsync("up to date", new() { Timeout = Patience });
        foreach ((_, string heading) in Pages.Where(static p => p.Key != "g"))
        {
            await page.ClickAsync($".questions a:has-text('{heading.TrimEnd('?')}')");
            await page.Locator(".answer-value").WaitForAsync(new() { Timeout = Patience });
            string answer = await page.Locator(".answer-title").InnerTextAsync();
            using PdfDocument paper = PdfDocument.Open(await page.PdfAsync(new() { Format = "A4" }));
            string words = PaperText.Bare(string.Join(' ', paper.GetPages().Select(static p => p.Text)));
            Assert.Contains(PaperText.Bare(answer), words, StringComparison.OrdinalIgnoreCase);
            Assert.Contains(PaperText.Bare("not a certified medical device"), words, StringComparison.Ordinal);
            Assert.DoesNotContain(PaperText.Bare("Bright room"), words, StringComparison.Ordinal);
            Assert.DoesNotContain(PaperText.Bare("Not now"), words, StringComparison.Ordinal);
        }

        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_running_cannula_is_entered_in_the_form_and_drawn_in_the_line()
    {
        IPage page = await browser.NewPatientAsync("Runs by form");
        await page.ClickAsync(".groups a:has-text('Running support')");
        await page.ClickAsync("label:has(input[value=vvTwoSite])");
        ILocator row = page.Locator("fieldset.row:has(legend:has-text('venous return'))");
        await row.Locator("select").First.SelectOptionAsync(new SelectOptionValue { Index = 3 });
        await row.Locator("select").Nth(1).SelectOptionAsync("jugular");
        await row.Locator("select").Nth(2).SelectOptionAsync("right");
        await row.Locator("input[inputmode=decimal]").First.FillAsync("15");
        await row.Locator("input[inputmode=decimal]").First.PressAsync("Tab");
        await Expect(page.Locator(".line-plan")).ToContainTextAsync("Support that runs, V-V two site", new() { Timeout = Patience });
        await Expect(page.Locator(".line-cannula")).ToHaveCountAsync(1, new() { Timeout = Patience });

        // The line is drawn from role and vein alone: the length is saved only once its field counts as answered.
        await Expect(row.Locator(".field:has(input[inputmode=decimal])").First).Not.ToHaveClassAsync(new Regex("is-open"), new() { Timeout = Patience });
        await page.ReloadAsync();
        await WorkspaceBrowser.AliveAsync(page);
        await Expect(row.Locator("input[inputmode=decimal]").First).ToHaveValueAsync("15");

        // A cannula that this support does not have is told in its own row.
        ILocator dual = page.Locator("fieldset.row:has(legend:has-text('dual'))");
        await dual.Locator("select").First.SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await Expect(dual.Locator(".field-fault").First).ToContainTextAsync("accepted is");
        await page.Context.CloseAsync();
    }

    /// <summary>A key as the window system hands it to the browser. <c>Keyboard.PressAsync</c> leaves out the letter beside Alt, by which the browser finds access keys.</summary>
    private static async Task KeyAsync(ICDPSession keys, string type, string key, int modifiers) => await keys.SendAsync("Input.dispatchKeyEvent", new Dictionary<string, object>
    {
        ["type"] = type,
        ["modifiers"] = modifiers,
        ["key"] = key,
        ["code"] = $"Key{char.ToUpperInvariant(key[0])}",
        ["unmodifiedText"] = key,
        ["windowsVirtualKeyCode"] = (int)char.ToUpperInvariant(key[0]),
    });

    private static async Task TouchAsync(ICDPSession touch, string type, double x, double y) => await touch.SendAsync(
        "Input.dispatchTouchEvent",
        new Dictionary<string, object> { ["type"] = type, ["touchPoints"] = new[] { new Dictionary<string, object> { ["x"] = x, ["y"] = y } } });
}
