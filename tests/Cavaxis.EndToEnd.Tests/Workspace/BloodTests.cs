using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>"Who gets which blood?" in the browser. The tree is computed once for all windows.</summary>
[Collection(nameof(InTheBrowser))]
public class BloodTests(WorkspaceBrowser browser)
{
    private const string Arterial = "Femoral veno-arterial support running";

    /// <summary>The circulation is fitted first, and the tree takes seconds on a quiet machine.</summary>
    private const float Patience = 300_000;

    [Fact]
    public async Task The_tree_is_drawn_with_numbers_and_words_and_less_flow_is_answered_anew()
    {
        IPage page = await OpenedAsync();
        await Expect(page.Locator(".answer-title")).ToContainTextAsync("heart muscle");
        await Expect(page.Locator(".answer .origin")).ToHaveTextAsync("calculated");
        await Expect(page.Locator(".blood-sheet svg path")).Not.ToHaveCountAsync(0);
        await Expect(page.Locator(".bands tbody tr")).ToHaveCountAsync(10);
        await Expect(page.Locator(".blood-legs li")).ToHaveCountAsync(2);
        double before = await HeartOutputAsync(page);

        // By the keyboard alone.
        await page.FocusAsync("[data-step=flow-less]");
        for (int i = 0; i < 4; i++)
        {
            await page.Keyboard.PressAsync("Enter");
        }

        await Expect(page.Locator(".stepper-changed")).ToHaveCountAsync(1);
        await Expect(page.Locator(".way-progress")).ToHaveCountAsync(0, new() { Timeout = Patience });
        await Expect(page.Locator(".stale")).ToHaveCountAsync(0, new() { Timeout = Patience });
        await Expect(page.Locator(".blood-part >> text=The heart gives")).Not.ToContainTextAsync(string.Create(CultureInfo.InvariantCulture, $"gives {before:F1} L/min"), new() { Timeout = Patience });
        Assert.True(await HeartOutputAsync(page) > before);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Steps_of_a_what_if_are_taken_along()
    {
        IPage page = await OpenedAsync("?steps=flow:-2,nothing:5");
        await Expect(page.Locator(".stepper-changed")).ToHaveCountAsync(1);
        await Expect(page.Locator(".stepper-changed .stepper-name")).ToContainTextAsync("Pump flow");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Support_into_a_vein_has_nothing_to_tell_apart_and_says_why()
    {
        IPage page = await browser.OpenAsync((await browser.DemoAsync("Veno-venous support running")).Replace("/know", "/blood", StringComparison.Ordinal));
        await Expect(page.Locator(".answer-value")).ToHaveTextAsync("Nothing to tell apart", new() { Timeout = Patience });
        await Expect(page.Locator("main")).ToContainTextAsync("all arteries carry the same blood");
        await WorkspaceBrowser.CleanAsync(page);
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData("dark")]
    [InlineData("bright")]
    public async Task The_page_has_no_serious_finding_fits_every_window_and_goes_on_paper(string room)
    {
        IPage page = await OpenedAsync(room: room);
        await WorkspaceBrowser.CleanAsync(page);
        foreach (int width in new[] { 820, 390, 1280 })
        {
            await page.SetViewportSizeAsync(width, 800);
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth - window.innerWidth") <= 0, $"at {width}");
        }

        using PdfDocument paper = PdfDocument.Open(await page.PdfAsync(new() { Format = "A4" }));
        string words = PaperText.Bare(string.Join(' ', paper.GetPages().Select(static p => p.Text)));
        Assert.Contains(PaperText.Bare("not a certified medical device"), words, StringComparison.Ordinal);
        Assert.Contains(PaperText.Bare("Which arm to sample"), words, StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    private async Task<IPage> OpenedAsync(string query = "", string room = "dark")
    {
        IPage page = await browser.OpenAsync((await browser.DemoAsync(Arterial)).Replace("/know", "/blood", StringComparison.Ordinal) + query, room);
        await page.Locator(".blood-sheet svg").WaitForAsync(new() { Timeout = Patience });
        await Expect(page.Locator(".way-progress")).ToHaveCountAsync(0, new() { Timeout = Patience });
        return page;
    }

    private static async Task<double> HeartOutputAsync(IPage page) => double.Parse(
        Regex.Match(await page.Locator(".blood-part >> text=The heart gives").TextContentAsync() ?? string.Empty, @"gives (\d+\.\d) L/min").Groups[1].Value, CultureInfo.InvariantCulture);
}
