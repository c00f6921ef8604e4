using Microsoft.Playwright;
using UglyToad.PdfPig;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

[Collection(nameof(InTheBrowser))]
public class JourneyTests(WorkspaceBrowser browser)
{
    [Fact]
    public async Task From_an_empty_start_over_an_entry_with_errors_to_the_printed_report()
    {
        IPage page = await browser.OpenAsync();
        await Expect(page.Locator(".patient-open:has-text('Tall man') .invented").First).ToBeVisibleAsync();
        await page.ClickAsync("#new-patient");
        await Expect(page.Locator("h1")).ToHaveTextAsync("What do we know?");
        await Expect(page.Locator(".answer-value")).ToHaveTextAsync("4");
        await page.FillAsync("#f-title", "Invented for this test");
        await page.FillAsync("#f-patient-ageYears", "fifty");
        await page.PressAsync("#f-patient-ageYears", "Tab");
        await Expect(page.Locator("#f-patient-ageYears-fault")).ToContainTextAsync("Write digits");
        await page.FillAsync("#f-patient-ageYears", "50");
        await page.ClickAsync("label:has(#f-patient-sex-male)");
        await page.FillAsync("#f-patient-heightCm", "1800");
        await page.FillAsync("#f-patient-weightKg", "80");
        await page.PressAsync("#f-patient-weightKg", "Tab");
        await Expect(page.Locator("#f-patient-heightCm-fault")).ToContainTextAsync("40 to 230 cm");
        await Expect(page.Locator("#f-patient-heightCm")).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(page.Locator(".plan-state")).ToContainTextAsync("No plan");
        await page.FillAsync("#f-patient-heightCm", "1.8 m");
        await page.PressAsync("#f-patient-heightCm", "Tab");
        await Expect(page.Locator("#f-patient-heightCm")).ToHaveValueAsync("180");
        await Expect(page.Locator("#f-patient-heightCm-fault")).ToHaveTextAsync(string.Empty);
        await Expect(page.Locator(".answer-title")).ToContainTextAsync("had to assume");
        await page.ClickAsync(".groups a:has-text('Goal')");
        await page.ClickAsync("label:has(#f-support-goal-circulation)");
        await Expect(page.Locator(".line-picture")).ToBeVisibleAsync();
        await page.ClickAsync(".questions a:has-text('On paper')");
        await Expect(page.Locator(".steps > li")).Not.ToHaveCountAsync(0);
        await Expect(page.Locator(".caution")).ToContainTextAsync("not a certified medical device");
        await Expect(page.Locator(".plan-state")).ToContainTextAsync("Plan up to date", new() { Timeout = 60_000 });

        string pdf = new Uri(browser.Address, await page.Locator("a[href$='plan.pdf']").GetAttributeAsync("href")).ToString();
        IAPIResponse answer = await page.APIRequest.GetAsync(pdf);
        Assert.Equal(200, answer.Status);
        using PdfDocument report = PdfDocument.Open(await answer.BodyAsync());
        string words = string.Join(' ', report.GetPages().Select(static p => p.Text));
        Assert.Contains("Invented for this test", words, StringComparison.Ordinal);
        Assert.Contains("not a certified medical device", words, StringComparison.Ordinal);

        // What the printer gets of the page itself: steps and caution, without what can only be clicked.
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Expect(page.Locator(".caution")).ToBeVisibleAsync();
        await Expect(page.Locator(".steps > li").First).ToBeVisibleAsync();
        await Expect(page.Locator(".questions")).ToBeHiddenAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Not_known_is_an_answer_and_is_kept()
    {
        IPage page = await browser.NewPatientAsync("Not known");
        await page.ClickAsync(".groups a:has-text('Blood')");
        ILocator notKnown = page.Locator("#f-blood-lactateMmolPerL-box .not-known");
        await notKnown.ClickAsync();
        await Expect(notKnown).ToHaveAttributeAsync("aria-pressed", "true");
        await page.FillAsync("#f-blood-arterialPh", "?");
        await page.PressAsync("#f-blood-arterialPh", "Tab");
        await Expect(page.Locator("#f-blood-arterialPh-box .not-known")).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(page.Locator(".groups a:has-text('Blood')")).ToContainTextAsync("2 not known");
        await page.ReloadAsync();
        await WorkspaceBrowser.AliveAsync(page);
        await Expect(page.Locator("#f-blood-lactateMmolPerL-box .not-known")).ToHaveAttributeAsync("aria-pressed", "true");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task What_to_look_at_next_leads_to_the_field()
    {
        IPage page = await browser.OpenAsync(await browser.DemoAsync("Tall man"));
        ILocator next = page.Locator(".next a").First;
        string address = Uri.UnescapeDataString((await next.GetAttributeAsync("href"))!);
        await next.ClickAsync();
        string path = address[(address.IndexOf("field=", StringComparison.Ordinal) + 6)..];
        string id = "f-" + string.Concat(path.Select(static c => char.IsAsciiLetterOrDigit(c) ? c : '-'));
        await Expect(page.Locator($"#{id}")).ToBeFocusedAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_number_is_explained_with_equation_and_source()
    {
        IPage page = await browser.OpenAsync(await browser.DemoAsync("Tall man"));
        await page.ClickAsync(".answer .help-mark");
        await Expect(page.Locator(".help-sheet")).ToBeVisibleAsync();
        await Expect(page.Locator(".help-sheet .help-equation")).Not.ToBeEmptyAsync();
        await Expect(page.Locator(".help-sheet")).ToContainTextAsync("Source:");
        await page.Keyboard.PressAsync("Escape");
        await Expect(page.Locator(".help-sheet")).ToBeHiddenAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_guide_walks_through_every_question_and_remembers_that_it_was_left()
    {
        IPage page = await browser.OpenAsync();
        await page.ClickAsync("#guide-start");
        foreach (string heading in new[] { "What do we know?", "Which way in?", "Where does it lie?", "How does it go in?", "What if?", "On paper" })
        {
            await page.ClickAsync("#guide-next");
            await Expect(page.Locator("h1")).ToHaveTextAsync(heading, new() { Timeout = 60_000 });
        }

        await Expect(page.Locator(".guide")).ToContainTextAsync("Step 7 of 7");
        await page.ReloadAsync();
        await Expect(page.Locator(".guide")).ToContainTextAsync("Step 7 of 7");
        await page.ClickAsync("#guide-leave");
        await Expect(page.Locator(".guide")).ToHaveCountAsync(0);
        await page.ReloadAsync();
        await WorkspaceBrowser.AliveAsync(page);
        await Expect(page.Locator(".guide")).ToHaveCountAsync(0);
        await page.Context.CloseAsync();
    }
}
