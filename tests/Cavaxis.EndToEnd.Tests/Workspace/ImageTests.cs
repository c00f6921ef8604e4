using System.Globalization;
using System.Text;
using Cavaxis.EndToEnd.Tests.Images;
using Cavaxis.EndToEnd.Tests.Programs;
using Microsoft.Playwright;
using static Cavaxis.EndToEnd.Tests.Workspace.WorkspaceBrowser;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>Images on their page: taken in without identity, measured with mouse and keys, written into the record.</summary>
[Collection(nameof(InTheBrowser))]
public class ImageTests(WorkspaceBrowser browser)
{
    private const string Name = "ZZNOBODY^INVENTED";

    [Fact]
    public async Task A_disc_of_known_size_is_measured_with_mouse_and_keys_and_stands_in_the_record()
    {
        using WorkFolder work = new();
        (IPage page, string root) = await OpenedAsync("Images one", work, [50], 0.02);

        // With the mouse: from the left edge to the right edge, 100 pixels of 0.2 mm.
        await PointAsync(page, 50, 100);
        await PointAsync(page, 150, 100);
        await Expect(page.Locator("#measured .measured-value")).ToContainTextAsync("mm");
        Assert.InRange(await MeasuredAsync(page), 19.5, 20.5);

        // With keys: the cross stands in the middle; 50 to the left, then 100 to the right.
        await page.FocusAsync("#picture");
        await page.Keyboard.PressAsync("Backspace");
        await page.Keyboard.PressAsync("Backspace");
        await Expect(page.Locator(".pointing-point")).ToHaveCountAsync(0);
        await page.Keyboard.PressAsync("ArrowDown");
        for (int i = 0; i < 5; i++)
        {
            await page.Keyboard.PressAsync("Shift+ArrowLeft");
        }

        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".pointing-point")).ToHaveCountAsync(1);
        for (int i = 0; i < 9; i++)
        {
            await page.Keyboard.PressAsync("Shift+ArrowRight");
        }

        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".pointing-point")).ToHaveCountAsync(2);
        await Expect(page.Locator("#measured .measured-value")).ToContainTextAsync("18.0");

        await page.FillAsync("#keep-what", "invented disc");
        await page.ClickAsync("#keep");
        await Expect(page.Locator("#keep ~ [role=status]")).ToHaveTextAsync("Written down.");
        await CleanAsync(page);
        await page.GotoAsync(new Uri(browser.Address, $"{root}/run").ToString());
        await AliveAsync(page);
        await Expect(page.Locator(".timeline")).ToContainTextAsync("invented disc: distance 18.0");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task No_name_of_the_file_is_left_on_the_page_or_on_the_disk()
    {
        using WorkFolder work = new();
        (IPage page, _) = await OpenedAsync("Images two", work, [40], 0.02);
        Assert.DoesNotContain("ZZNOBODY", await page.ContentAsync(), StringComparison.Ordinal);
        string[] kept = Directory.GetFiles(browser.Data, "*.dcm", SearchOption.AllDirectories);
        Assert.NotEmpty(kept);
        Assert.All(kept, static f => Assert.DoesNotContain("ZZNOBODY", Encoding.Latin1.GetString(File.ReadAllBytes(f)), StringComparison.Ordinal));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Without_a_scale_the_page_says_so_and_measures_by_a_known_length()
    {
        using WorkFolder work = new();
        (IPage page, _) = await OpenedAsync("Images three", work, [50], null);
        await Expect(page.Locator(".warned")).ToContainTextAsync("no scale of length");
        await Expect(page.Locator("#tool-knownlength")).ToBeCheckedAsync();
        await PointAsync(page, 50, 100);
        await PointAsync(page, 150, 100);
        await page.FillAsync("#known-mm", "20");
        await page.PressAsync("#known-mm", "Tab");
        await Expect(page.Locator(".tool-how")).ToContainTextAsync("takes the place of the calibration");
        await page.ClickAsync("label:has(#tool-distance)");

        // The points of the tool before go with it; only then is it clear which points are counted.
        await Expect(page.Locator(".pointing-point")).ToHaveCountAsync(0);
        await PointAsync(page, 100, 50);
        await PointAsync(page, 100, 150);
        await Expect(page.Locator("#measured-notes")).ToContainTextAsync("known length");
        Assert.InRange(await MeasuredAsync(page), 19.3, 20.7);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_vein_that_narrows_by_a_quarter_over_the_loop_is_followed()
    {
        using WorkFolder work = new();
        (IPage page, _) = await OpenedAsync("Images four", work, [.. Enumerable.Range(0, 20).Select(static i => 35 + (5 * Math.Cos(2 * Math.PI * i / 20)))], 0.02);
        await page.ClickAsync("label:has(#tool-breath)");
        await Expect(page.Locator(".tool-how")).ToContainTextAsync("both walls on this frame");
        await PointAsync(page, 100, 60);
        await PointAsync(page, 100, 140);
        await page.ClickAsync("#follow");
        await Expect(page.Locator("#measured")).ToContainTextAsync("Collapsibility", new() { Timeout = 60_000 });
        Assert.InRange(await MeasuredAsync(page), 23, 27);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_diameter_goes_into_the_case_by_one_press_says_where_it_comes_from_and_replaces_nothing_unasked()
    {
        const string Vein = "right internal jugular vein, diameter: ";
        const string Field = "#f-vessels-vessel-internalJugularVein-side-right--diameterMm";
        using WorkFolder work = new();
        (IPage page, string root) = await OpenedAsync("Images six", work, [35], 0.02);
        await PointAsync(page, 65, 100);
        await PointAsync(page, 135, 100);
        await ChooseAsync(page, Vein + "14.0");
        await page.ClickAsync("#fill");
        await Expect(page.Locator("#filled")).ToContainTextAsync("stands in the case now");
        await CleanAsync(page);

        // Pulled wider with the mouse: 80 pixels of 0.2 mm, and the same field is still meant.
        await page.FocusAsync("#picture");
        await page.Keyboard.PressAsync("Backspace");
        await Expect(page.Locator(".pointing-point")).ToHaveCountAsync(1);
        await PointAsync(page, 145, 100);
        await ChooseAsync(page, Vein + "16.0");
        await page.ClickAsync("#fill");
        await Expect(page.Locator("#fill-asked")).ToContainTextAsync("In the case stands 14");
        await page.ClickAsync("#fill-leave");
        await Expect(page.Locator("#fill-asked")).ToHaveCountAsync(0);
        string image = page.Url;
        await ShownAsync("14");
        await page.GotoAsync(image);
        await page.Locator(".pointing-stage[data-mounted]").WaitForAsync(new() { Timeout = 120_000 });
        await PointAsync(page, 65, 100);
        await PointAsync(page, 145, 100);
        await ChooseAsync(page, Vein + "16.0");
        await page.ClickAsync("#fill");
        await page.ClickAsync("#fill-replace");
        await Expect(page.Locator("#filled")).ToContainTextAsync("stands in the case now");
        await ShownAsync("16");
        await page.Context.CloseAsync();

        async Task ShownAsync(string value)
        {
            await page.GotoAsync(new Uri(browser.Address, $"{root}/know?group=vessels").ToString());
            await AliveAsync(page);
            await Expect(page.Locator(Field)).ToHaveValueAsync(new System.Text.RegularExpressions.Regex($"^{value}(\\.\\d+)? ± 0\\.\\d+$"));
            await Expect(page.Locator($"{Field}-measured")).ToContainTextAsync("measured on an image: ultrasound still");
            await CleanAsync(page);
        }
    }

    [Fact]
    public async Task The_tip_is_found_from_what_was_seen_drawn_to_scale_and_kept_among_the_positions()
    {
        using WorkFolder work = new();
        (IPage page, string root) = await OpenedAsync("Images seven", work, [50], 0.02);
        string image = page.Url;
        await page.GotoAsync(new Uri(browser.Address, $"{root}/position").ToString());
        await AliveAsync(page);
        await page.FillAsync("#placed-cannula", "dual");
        await page.SelectOptionAsync("#placed-role", "dualLumen");
        await page.FillAsync("#placed-device", "bicaval-27fr-29cm");
        await page.SelectOptionAsync("#placed-route", "jugular");
        await page.SelectOptionAsync("#placed-side", "right");
        await page.FillAsync("#placed-depthCm", "20");
        await page.ClickAsync("#placed-write");
        await Expect(page.Locator(".cannula h2")).ToHaveTextAsync("dual");
        await page.GotoAsync(image);
        await page.Locator(".pointing-stage[data-mounted]").WaitForAsync(new() { Timeout = 120_000 });
        await PointAsync(page, 50, 100);
        await PointAsync(page, 150, 100);
        await Expect(page.Locator("#tip-mm")).ToHaveValueAsync("20");
        await Expect(page.Locator("#tip-device")).ToContainTextAsync("dual, which lies");

        // The tip itself, seen along the vein: only the lean of the picture makes it longer, by 2 % in the middle of the belief.
        await page.SelectOptionAsync("#tip-part", "tip");
        await page.SelectOptionAsync("#tip-edge", "AppendageBorder");
        await page.SelectOptionAsync("#tip-way", "AlongVein");
        await page.ClickAsync("#tip-find");
        await Expect(page.Locator("#tip-answer .measured-value")).ToContainTextAsync(new System.Text.RegularExpressions.Regex("^2[0-1] ± [0-9] mm towards the feet"));

        // From the return port the tip lies deeper by the dimensions of the device.
        await page.SelectOptionAsync("#tip-part", "return port");
        await page.ClickAsync("#tip-find");
        await Expect(page.Locator("#tip-answer .measured-value")).ToContainTextAsync(new System.Text.RegularExpressions.Regex("^1[0-9]{2} ± [0-9]+ mm towards the feet"));
        await Expect(page.Locator(".tip-picture .tip-seen")).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await CleanAsync(page);
        await page.ClickAsync("#tip-keep");
        await Expect(page.Locator("#tip-kept")).ToHaveTextAsync("Written down.");
        await page.GotoAsync(new Uri(browser.Address, $"{root}/position").ToString());
        await AliveAsync(page);
        await Expect(page.Locator(".cannula .log")).ToContainTextAsync("(calculated)");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task What_is_no_image_is_refused_by_name_and_nothing_is_taken_in()
    {
        using WorkFolder work = new();
        IPage page = await browser.NewPatientAsync("Images five");
        await page.GotoAsync(new Uri(browser.Address, $"{RootOf(page)}/images").ToString());
        await AliveAsync(page);
        await Chosen.FilesAsync(page, "#images-in", "#images-take", [work.Write("letter.dcm", "Dear colleague")]);
        await page.ClickAsync("#images-take");
        await Expect(page.Locator(".trouble")).ToContainTextAsync("image-1.dcm");
        await Expect(page.Locator("main")).ToContainTextAsync("No image has been taken in");
        await CleanAsync(page);
        await page.Context.CloseAsync();
    }

    private async Task<(IPage Page, string Root)> OpenedAsync(string title, WorkFolder work, IReadOnlyList<double> radii, double? cmPerPixel)
    {
        IPage page = await browser.NewPatientAsync(title);
        string root = RootOf(page);
        await page.GotoAsync(new Uri(browser.Address, $"{root}/images").ToString());
        await AliveAsync(page);
        string file = work["image.dcm"];
        await File.WriteAllBytesAsync(file, WrittenDicom.Ultrasound(radii, cmPerPixel, Name));
        await Chosen.FilesAsync(page, "#images-in", "#images-take", [file]);
        await page.ClickAsync("#images-take");
        await page.Locator(".pointing-stage[data-mounted]").WaitForAsync(new() { Timeout = 120_000 });
        return (page, root);
    }

    private static string RootOf(IPage page) => new Uri(page.Url.Split('?')[0]).AbsolutePath.TrimStart('/').Replace("/know", string.Empty, StringComparison.Ordinal);

    /// <summary>Chooses a field of the case by how its line begins.</summary>
    private static async Task ChooseAsync(IPage page, string words)
    {
        ILocator option = page.Locator("#fill-target option", new() { HasText = words });
        await Expect(option).ToHaveCountAsync(1);
        await page.SelectOptionAsync("#fill-target", (await option.GetAttributeAsync("value"))!);
        await Expect(page.Locator("#fill")).ToBeEnabledAsync();
    }

    /// <summary>Points with the mouse at a place of the picture.</summary>
    private static async Task PointAsync(IPage page, double x, double y)
    {
        int before = await page.Locator(".pointing-point").CountAsync();
        await Pointed.ClickAsync(page, x, y);
        await Expect(page.Locator(".pointing-point")).ToHaveCountAsync(before + 1);
    }

    private static async Task<double> MeasuredAsync(IPage page) =>
        double.Parse((await page.Locator("#measured .measured-value").First.TextContentAsync())!.Split(' ')[0], CultureInfo.InvariantCulture);
}
