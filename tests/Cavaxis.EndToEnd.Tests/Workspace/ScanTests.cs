using Cavaxis.EndToEnd.Tests.Images;
using Cavaxis.EndToEnd.Tests.Programs;
using Microsoft.Playwright;
using static Cavaxis.EndToEnd.Tests.Workspace.WorkspaceBrowser;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>A series of tomography on its page: two places set on three views, the veins between them found, looked at, confirmed and put into the case.</summary>
[Collection(nameof(InTheBrowser))]
public class ScanTests(WorkspaceBrowser browser)
{
    private const float Patience = 120_000;

    [Fact]
    public async Task Two_places_on_three_views_give_the_veins_between_them_and_their_measures_reach_the_case()
    {
        using WorkFolder work = new();
        List<string> files = [];
        foreach (byte[] slice in WrittenDicom.Tomography())
        {
            files.Add(work[$"slice-{files.Count.ToString(System.Globalization.CultureInfo.InvariantCulture)}.dcm"]);
            await File.WriteAllBytesAsync(files[^1], slice);
        }

        IPage page = await browser.NewPatientAsync("Scan");
        string root = new Uri(page.Url.Split('?')[0]).AbsolutePath.TrimStart('/').Replace("/know", string.Empty, StringComparison.Ordinal);
        await page.GotoAsync(new Uri(browser.Address, $"{root}/images").ToString());
        await AliveAsync(page);
        await Chosen.FilesAsync(page, "#images-in", "#images-take", files);
        await page.ClickAsync("#images-take");
        await page.Locator("#coronal[data-mounted]").WaitForAsync(new() { Timeout = Patience });

        // The middle of the scan lies in the atrium, 0 mm; 60 mm up lies the upper vein. Both are looked at on the view from the front.
        await GoAsync(page, 160, 64, " 60 mm up");
        await page.ClickAsync("#seed-upper");
        await Expect(page.Locator("#seed-upper")).ToHaveAttributeAsync("aria-pressed", "true");
        await GoAsync(page, 160, 310, " 34 mm down");
        await GoAsync(page, 160, 202, " 60 mm down");
        await page.ClickAsync("#seed-lower");
        await Expect(page.Locator("#seed-lower")).ToHaveAttributeAsync("aria-pressed", "true");
        await page.ClickAsync("#trace");
        await Expect(page.Locator("#axis, #failure").First).ToBeVisibleAsync(new() { Timeout = Patience });
        await Expect(page.Locator("#failure")).ToHaveCountAsync(0);
        await Expect(page.Locator("#axis")).ToContainTextAsync("proposed, look at it");
        await Expect(page.Locator("#readings")).ToContainTextAsync("SVC diameter");
        await CleanAsync(page);

        // A junction that a person points out takes the place of the proposed one.
        await page.ClickAsync("#axis button:has-text('Go there') >> nth=0");
        await page.ClickAsync("#confirm-landmark");
        await Expect(page.Locator("#axis")).ToContainTextAsync("● confirmed", new() { Timeout = Patience });
        await page.ClickAsync("#into-case");
        await Expect(page.Locator("#into-case ~ [role=status]")).ToContainTextAsync("stand in the case now and in the record", new() { Timeout = Patience });
        await page.GotoAsync(new Uri(browser.Address, $"{root}/run").ToString());
        await AliveAsync(page);
        await Expect(page.Locator(".timeline")).ToContainTextAsync("Cavo-atrial axis traced");
        await page.Context.CloseAsync();
    }

    private static async Task GoAsync(IPage page, double x, double y, string told)
    {
        await Pointed.ClickAsync(page, x, y, "#coronal");
        await Expect(page.Locator("main")).ToContainTextAsync(told);
    }
}
