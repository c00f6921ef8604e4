using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>"How does it go in?" in a browser that draws in three dimensions without a graphics processor. The study is computed once for all windows.</summary>
[Collection(nameof(InTheBrowser))]
public class GoesInTests(WorkspaceBrowser browser)
{
    /// <summary>A study of two dozen anatomies takes half a minute on a quiet machine.</summary>
    private const float Patience = 300_000;

    private const string Bent =
        """{"cavaxisCase":1,"title":"Bent axis","invented":true,"patient":{"ageYears":45,"sex":"male","heightCm":175,"weightKg":80},"support":{"goal":"gasExchange"},"axis":[{"dimension":"cavalBendSagittal","value":60,"sd":3}]}""";

    private static string? patient;

    [Fact]
    public async Task An_insertion_is_played_step_by_step_and_turned()
    {
        IPage page = await OpenAsync();
        ILocator way = page.Locator(".way");
        Assert.Equal("yes", await way.GetAttributeAsync("data-space"));
        await Expect(page.Locator(".answer-title")).ToContainTextAsync("go as they should");
        await Expect(page.Locator(".answer .origin")).ToHaveTextAsync("calculated");

        // Something is drawn: a lumen with devices has many more tones than an empty ground.
        Assert.True(await TonesAsync(page) > 40, "the drawing is empty");

        // From its beginning to its end, with the step of each moment marked.
        ILocator slider = page.Locator("[data-act=moment]");
        await slider.FocusAsync();
        await page.Keyboard.PressAsync("Home");
        await Expect(way).ToHaveAttributeAsync("data-moment", "0");
        await Expect(page.Locator(".way-moment")).ToContainTextAsync("Wire");
        await Expect(page.Locator(".way-steps li[data-now]").First).ToHaveAttributeAsync("data-phase", "WireFeed");
        await page.Keyboard.PressAsync("End");
        await Expect(page.Locator(".way-moment")).ToContainTextAsync("Cannula alone");
        await Expect(page.Locator(".way-steps li[data-now]").First).ToHaveAttributeAsync("data-phase", "Removal");

        // Played from the beginning it goes on by itself, and holds when told to.
        await page.ClickAsync("[data-act=play]");
        await Expect(way).ToHaveAttributeAsync("data-moment", new Regex("^([89]|[1-9][0-9]+)$"), new() { Timeout = Patience });
        await page.ClickAsync("[data-act=play]");
        string held = (await way.GetAttributeAsync("data-moment"))!;
        await page.WaitForTimeoutAsync(400);
        await Expect(way).ToHaveAttributeAsync("data-moment", held);

        // Turned by button, by keys and by dragging.
        await page.ClickAsync("[data-view=left]");
        await Expect(way).ToHaveAttributeAsync("data-turn", "90");
        await page.ClickAsync("[data-view=front]");
        await page.FocusAsync(".way-canvas");
        await page.Keyboard.PressAsync("ArrowRight");
        await Expect(way).ToHaveAttributeAsync("data-turn", "15");
        await page.Locator(".way-canvas").ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await page.Locator(".way-canvas").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + 60, box.Y + 60);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + 160, box.Y + 60, new() { Steps = 5 });
        await page.Mouse.UpAsync();
        await Expect(way).Not.ToHaveAttributeAsync("data-turn", "15");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_pitfall_stands_at_its_step_and_is_marked_in_the_anatomy_that_shows_it()
    {
        IPage page = await OpenAsync();
        await page.ClickAsync(".way-choice label:has-text('venous return')");
        ILocator astray = page.Locator(".way-choice label", new() { HasTextRegex = new Regex(@"^\s*Anatomy \d") });
        await Expect(page.Locator(".way")).ToHaveAttributeAsync("data-ready", "Stiff-VenousReturn-0", new() { Timeout = Patience });
        Assert.True(await astray.CountAsync() > 0, "in none of the anatomies anything goes wrong");
        string words = await astray.First.InnerTextAsync();
        await astray.First.ClickAsync();
        await Expect(page.Locator(".way")).ToHaveAttributeAsync("data-ready", new Regex("-1$"), new() { Timeout = Patience });
        await Expect(page.Locator(".way")).ToHaveAttributeAsync("data-astray", "true");
        string marked = await page.Locator(".way-astray").TextContentAsync() ?? string.Empty;
        Assert.Contains(marked, words, StringComparison.Ordinal);
        await page.Locator("[data-act=moment]").FocusAsync();
        await page.Keyboard.PressAsync("Home");
        await Expect(page.Locator(".way")).ToHaveAttributeAsync("data-astray", "false");
        await Expect(page.Locator(".way-pitfall").First).ToContainTextAsync("Goes wrong here first in");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Wires_stand_side_by_side_and_one_of_them_is_drawn()
    {
        IPage page = await OpenAsync();
        await Expect(page.Locator(".way-table td:has-text('not tried')")).Not.ToHaveCountAsync(0);
        await page.ClickAsync("button:has-text('Try the other 3 wires')");
        await Expect(page.Locator(".way-table td:has-text('not tried')")).ToHaveCountAsync(0, new() { Timeout = 3 * Patience });
        await page.ClickAsync("th[data-wire=Floppy] button");
        await Expect(page.Locator(".way")).ToHaveAttributeAsync("data-ready", new Regex("^Floppy-"), new() { Timeout = Patience });
        await Expect(page.Locator(".answer-interval")).ToContainTextAsync("floppy wire");
        await Expect(page.Locator(".answer-more")).ToContainTextAsync("wire:");
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData("dark")]
    [InlineData("bright")]
    public async Task The_page_has_no_serious_finding_fits_every_window_and_goes_on_paper_with_its_two_views(string room)
    {
        IPage page = await OpenAsync(room);
        var result = await page.RunAxe();
        Assert.Empty(result.Violations.Where(static v => v.Impact is "serious" or "critical").Select(v => $"{v.Id} {string.Join(" | ", v.Nodes.Select(static n => n.Html).Take(3))}"));
        Assert.NotEmpty(result.Passes);
        foreach (int width in new[] { 820, 390, 1280 })
        {
            await page.SetViewportSizeAsync(width, 800);
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth - window.innerWidth") <= 0, $"at {width}");
        }

        await page.ClickAsync(".way-flat summary");
        await Expect(page.Locator(".way-sheet svg")).ToBeVisibleAsync();
        using PdfDocument paper = PdfDocument.Open(await page.PdfAsync(new() { Format = "A4" }));
        string words = PaperText.Bare(string.Join(' ', paper.GetPages().Select(static p => p.Text)));
        Assert.Contains(PaperText.Bare("not a certified medical device"), words, StringComparison.Ordinal);
        Assert.Contains(PaperText.Bare("go as they should"), words, StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    private async Task<IPage> OpenAsync(string room = "dark")
    {
        patient ??= await BentPatientAsync();
        IPage page = await browser.OpenAsync(patient, room);
        await page.Locator(".way[data-ready]").WaitForAsync(new() { Timeout = Patience });
        return page;
    }

    /// <summary>An invented patient whose cavae meet at a wide angle, so that a wire from the neck goes astray in part of the anatomies.</summary>
    private async Task<string> BentPatientAsync()
    {
        IPage page = await browser.NewPatientAsync("Bent axis");
        string know = page.Url.Split('?')[0];
        await page.GotoAsync($"{know}?group=file");
        await WorkspaceBrowser.AliveAsync(page);
        await page.FillAsync("#case-text", Bent);
        await page.ClickAsync("button:has-text('Save this text')");
        await Expect(page.Locator(".patient-title")).ToHaveTextAsync("Bent axis");
        await Expect(page.Locator(".plan-state")).ToContainTextAsync("up to date", new() { Timeout = Patience });
        await page.Context.CloseAsync();
        return know.Replace("/know", "/goesin", StringComparison.Ordinal);
    }

    /// <summary>How many different tones the drawing has.</summary>
    private static Task<int> TonesAsync(IPage page) => page.EvaluateAsync<int>("""
        () => {
          const from = document.querySelector('.way-canvas');
          const copy = document.createElement('canvas');
          [copy.width, copy.height] = [from.width, from.height];
          const pen = copy.getContext('2d');
          pen.drawImage(from, 0, 0);
          const tones = new Set();
          const data = pen.getImageData(0, 0, copy.width, copy.height).data;
          for (let i = 0; i < data.length; i += 4) {
            tones.add((data[i] << 16) | (data[i + 1] << 8) | data[i + 2]);
          }
          return tones.size;
        }
        """);
}
