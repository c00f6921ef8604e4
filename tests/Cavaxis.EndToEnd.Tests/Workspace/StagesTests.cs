using Microsoft.Playwright;
using static Cavaxis.EndToEnd.Tests.Workspace.WorkspaceBrowser;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>One invented patient from the cannula in its vein to the examination after it, on the pages of the course.</summary>
[Collection(nameof(InTheBrowser))]
public class StagesTests(WorkspaceBrowser browser)
{
    [Fact]
    public async Task From_the_placed_cannula_through_a_weaning_trial_to_the_examination_after_it()
    {
        IPage page = await browser.NewPatientAsync("Stages");
        string root = page.Url.Split('?')[0].Replace("/know", string.Empty, StringComparison.Ordinal);

        // Placed, read at the skin, and told that no image showed it.
        await GoAsync(page, $"{root}/position");
        await Expect(page.Locator("main")).ToContainTextAsync("No cannula lies");
        await page.ClickAsync("#placed-write");
        await Expect(page.Locator("#placed .field-fault").First).ToContainTextAsync("Name of the cannula");
        await page.FillAsync("#placed-cannula", "drainage");
        await page.SelectOptionAsync("#placed-role", "drainage");
        await page.SelectOptionAsync("#placed-route", "femoralVein");
        await page.SelectOptionAsync("#placed-side", "right");
        await page.FillAsync("#placed-depthCm", "42");
        await page.ClickAsync("#placed-write");
        await Expect(page.Locator(".cannula h2")).ToHaveTextAsync("drainage");
        await Expect(page.Locator(".cannula .warned")).ToContainTextAsync("No image of \"drainage\"");

        // An image, then a shift that the record tells.
        await page.ClickAsync(".cannula summary:has-text('Read its position')");
        ILocator read = page.Locator(".cannula .happening").Nth(0);
        await read.Locator("[id$=-depthCm]").FillAsync("42");
        await read.Locator("[id$=-seenBy]").SelectOptionAsync("fluoroscopy");
        await read.Locator("button").ClickAsync();
        await Expect(page.Locator(".cannula .log tbody tr")).ToHaveCountAsync(2);
        await Expect(page.Locator(".cannula .warned")).ToHaveCountAsync(0);
        await read.Locator("[id$=-depthCm]").FillAsync("38.5");
        await read.Locator("[id$=-seenBy]").SelectOptionAsync("skinMark");
        await read.Locator("button").ClickAsync();
        await Expect(page.Locator(".cannula .warned")).ToContainTextAsync("3.5 cm");
        await CleanAsync(page);

        // A complication and its end on the page of what runs.
        await GoAsync(page, $"{root}/run");
        await page.SelectOptionAsync("#else-kind", "course.complication-seen");
        await page.SelectOptionAsync("#else-course-complication-seen-complication", "cannulationSiteBleeding");
        await page.SelectOptionAsync("#else-course-complication-seen-gravity", "treated");
        await page.ClickAsync("#else-course-complication-seen-write");
        await Expect(page.Locator(".timeline")).ToContainTextAsync("bleeding");
        await page.SelectOptionAsync("#connection", "VaFemoral");
        await page.ClickAsync("#start-support");
        await Expect(page.Locator("main")).ToContainTextAsync("running for");

        // A trial beside its criteria: a reading that meets one, none that was not read counts as met.
        await GoAsync(page, $"{root}/wean");
        await Expect(page.Locator("#wean-method")).ToHaveValueAsync("FlowSteps");
        await page.ClickAsync("#trial-write");
        await Expect(page.Locator("#step-title")).ToBeVisibleAsync();
        ILocator step = page.Locator(".happening").First;
        await step.Locator("[id$=-flowLPerMin]").FillAsync("1.2");
        await step.Locator("[id$=-minutesHeld]").FillAsync("15");
        await step.GetByLabel("velocity-time integral").FillAsync("12");
        await step.Locator("button").ClickAsync();
        await Expect(page.Locator(".verdict tr", new() { HasText = "velocity-time" }).First).ToContainTextAsync("✓ met");
        await Expect(page.Locator(".verdict")).ToContainTextAsync("? not measured");
        await Expect(page.Locator(".verdict")).ToContainTextAsync("The decision is with the clinicians at the bedside.");
        await CleanAsync(page);
        await page.ClickAsync("summary:has-text('The trial ends')");
        ILocator end = page.Locator(".happening").Nth(1);
        await end.Locator("[id$=-end]").SelectOptionAsync("completed");
        await end.Locator("button").ClickAsync();
        await Expect(page.Locator("#past-title")).ToBeVisibleAsync();

        // Taken out: the examinations come due with their reason.
        await GoAsync(page, $"{root}/position");
        await page.ClickAsync(".cannula summary:has-text('It was taken out')");
        ILocator outForm = page.Locator(".cannula .happening").Nth(2);
        await outForm.Locator("[id$=-method]").SelectOptionAsync("pulledAndCompressed");
        await outForm.Locator("button").ClickAsync();
        await Expect(page.Locator("#out-title")).ToBeVisibleAsync();
        await GoAsync(page, $"{root}/after");
        ILocator vein = page.Locator(".due > li", new() { HasText = "duplex of every vein" });
        await Expect(vein).ToContainTextAsync("ahead");
        await vein.Locator("summary:has-text('what was found')").ClickAsync();
        await vein.Locator("[id$=veins-0--clot]").SelectOptionAsync("partial");
        await vein.Locator(".happening button").First.ClickAsync();
        await Expect(vein).ToContainTextAsync("right common femoral vein: thrombus, part of the lumen open");
        await Expect(vein).ToContainTextAsync("✓ done");
        await page.SelectOptionAsync("#outcome-outcome", "weanedFromSupport");
        await page.ClickAsync("#outcome-write");
        await Expect(page.Locator("main")).ToContainTextAsync("Weaned from support (");
        await CleanAsync(page);
        await page.ReloadAsync();
        await AliveAsync(page);
        await Expect(page.Locator("main")).ToContainTextAsync("right common femoral vein: thrombus, part of the lumen open");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_running_demo_tells_what_may_be_behind_its_change_and_its_readings_reach_the_case()
    {
        string run = (await browser.DemoAsync("Veno-venous support running")).Replace("/know", "/run", StringComparison.Ordinal);
        IPage page = await browser.OpenAsync(run);
        await Expect(page.Locator(".cause").First).ToContainTextAsync("recirculation", new() { IgnoreCase = true });
        await Expect(page.Locator("#does")).ToContainTextAsync("mmHg");
        await page.ClickAsync("#into-case");
        await Expect(page.Locator("main")).ToContainTextAsync("Taken over:");
        await page.ClickAsync("#into-case");
        await Expect(page.Locator("main")).ToContainTextAsync("The case holds these readings already.");
        await page.GotoAsync(new Uri(browser.Address, run.Replace("/run", "/know?group=running", StringComparison.Ordinal)).ToString());
        await AliveAsync(page);
        await Expect(page.Locator("main")).ToContainTextAsync("What do we know?");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_file_is_seen_with_its_faults_before_its_rows_are_taken_in_and_comes_in_once()
    {
        IPage page = await browser.NewPatientAsync("Import");
        await GoAsync(page, page.Url.Split('?')[0].Replace("/know", "/run", StringComparison.Ordinal));
        await page.ClickAsync("#import summary");
        byte[] file = "time,pumpFlowLPerMin\n2026-01-02T03:04+00:00,4.1\n2026-01-02T03:05+00:00,abc\n2026-01-02T03:06+00:00,4.3\n"u8.ToArray();
        FilePayload payload = new() { Name = "pump.csv", MimeType = "text/csv", Buffer = file };
        await page.SetInputFilesAsync("#import input[type=file]", payload);
        await Expect(page.Locator("#import")).ToContainTextAsync("2 rows can be taken in, 1 faults");
        await Expect(page.Locator("#import .field-fault")).ToContainTextAsync("line 3");
        await page.ClickAsync("#take-in");
        await Expect(page.Locator("#import")).ToContainTextAsync("2 rows taken in.");
        await Expect(page.Locator(".trend").First).ToContainTextAsync("4.3");
        await page.SetInputFilesAsync("#import input[type=file]", payload);
        await page.ClickAsync("#take-in");
        await Expect(page.Locator("main .trouble").First).ToContainTextAsync("stand in the record already");
        await page.Context.CloseAsync();
    }

    private static async Task GoAsync(IPage page, string address)
    {
        await page.GotoAsync(address);
        await AliveAsync(page);
    }
}
