using System.Net;
using Cavaxis.Course.Events;
using Cavaxis.EndToEnd.Tests.Programs;
using Cavaxis.Planning.Case;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

[Collection(nameof(InTheBrowser))]
public sealed class OutcomeTests(WorkspaceBrowser browser) : IDisposable
{
    private readonly WorkFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_lead_sees_counts_with_Wilsons_intervals_the_case_mix_and_a_chart_and_nobody_else_does()
    {
        MadeUpProgramme.Register(folder, folder["data"]);
        ComplicationSeen limb = new() { Complication = ComplicationKind.LimbIschaemia, Gravity = ComplicationGravity.Procedure };
        await MadeUpProgramme.AdmitAsync(folder["data"],
        [
            .. Enumerable.Range(0, 8).Select(i => MadeUpProgramme.Course(9000 - (100 * i), RunningConfiguration.VvTwoSite, survived: false)),
            .. Enumerable.Range(8, 9).Select(i => MadeUpProgramme.Course(9000 - (100 * i), RunningConfiguration.VvTwoSite, survived: true)),
            .. Enumerable.Range(17, 3).Select(i => MadeUpProgramme.Course(9000 - (100 * i), RunningConfiguration.VaFemoral, survived: true, i == 17 ? [limb] : [])),
            [(4, new SupportStarted { Configuration = RunningConfiguration.VvTwoSite })],
        ]);
        using WorkspaceServer server = await WorkspaceServer.StartAsync(folder["data"]);
        IPage page = await browser.OpenElsewhereAsync(server.Address, "lena");
        await page.ClickAsync("text=How do we do?");
        await Expect(page.Locator("h1")).ToHaveTextAsync("How do we do?");

        // Wilson 1927, by hand: (k + z²/2 ± z √(k(n − k)/n + z²/4))/(n + z²), z² = 3.8415.
        // 12 of 20: (13.921 ± 1.960 √(4.8 + 0.960))/23.842 = 0.3866 and 0.7812.
        await RowAsync(page, "SurvivedToDischarge", "12 of 20", "60 %", "39 to 78 %");
        // 0 of 20: 0 to 3.8415/23.842 = 0.1611.
        await RowAsync(page, "Stroke", "0 of 20", "0 %", "0 to 16 %");
        // 1 of 3, those with an arterial cannula alone: (2.921 ± 1.960 √(0.6667 + 0.960))/6.842 = 0.0615 and 0.7923.
        await RowAsync(page, "LimbIschaemia", "1 of 3", "33 %", "6 to 79 %");
        await Expect(Row(page, "LimbIschaemia")).ToContainTextAsync("Few cases");
        await Expect(Row(page, "VenousThrombosis")).ToContainTextAsync("not known");
        await Expect(page.Locator(".answer-value")).ToHaveTextAsync("60");
        await Expect(page.Locator("#mix")).ToContainTextAsync("20 cases: 17 veno-venous, 3 veno-arterial; age 30 to 49");
        await Expect(page.Locator("main")).ToContainTextAsync("Not counted: 1 on support now.");
        await Expect(page.Locator("#no-chart")).ToContainTextAsync("no expected risk is given");

        // Weights at 40 %, doubled odds: ln 2 − ln 1.4 = 0.357 a death, −ln 1.4 = −0.336 a survivor. Eight deaths first: 2.85.
        await page.FillAsync("#risk", "40");
        await page.ClickAsync("#draw");
        await Expect(page.Locator(".cusum-chart")).ToHaveAttributeAsync("aria-label", "Cumulative sum over 20 cases: highest 2.9, last 0.0, control limit 4.5; no signal.");
        await WorkspaceBrowser.CleanAsync(page);
        await page.FillAsync("#limit", "2");
        await page.ClickAsync("#draw");

        // 6 · 0.357 = 2.14 is the first sum of 2 or more.
        await Expect(page.Locator(".cusum-chart")).ToContainTextAsync("signal, case 6");
        await page.FillAsync("#limit", "200");
        await page.ClickAsync("#draw");
        await Expect(page.Locator(".field-fault")).ToContainTextAsync("20");

        IDownload table = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("#table-file"));
        string[] lines = await File.ReadAllLinesAsync(await table.PathAsync());
        Assert.StartsWith("patient,configuration,", lines[0], StringComparison.Ordinal);
        Assert.Equal(12, lines.Count(static l => l.EndsWith(",yes", StringComparison.Ordinal)));
        IAPIResponse fetched = await page.Context.APIRequest.GetAsync(new Uri(server.Address, "outcomes/own/programme.csv").ToString());
        Assert.Equal((200, "no-store"), (fetched.Status, fetched.Headers["cache-control"]));
        Assert.Equal(404, (await page.Context.APIRequest.GetAsync(new Uri(server.Address, "outcomes/south/programme.csv").ToString())).Status);

        IPage reading = await browser.OpenElsewhereAsync(new Uri(server.Address, "outcomes"), "rita");
        await Expect(reading.Locator(".trouble")).ToContainTextAsync("Your role does not allow");
        await Expect(reading.Locator("#table-file")).ToHaveCountAsync(0);
        Assert.Equal((int)HttpStatusCode.Forbidden, (await reading.Context.APIRequest.GetAsync(new Uri(server.Address, "outcomes/own/programme.csv").ToString())).Status);
        Assert.Equal((int)HttpStatusCode.NotFound, (await reading.Context.APIRequest.GetAsync(new Uri(server.Address, "outcomes/south/programme.csv").ToString())).Status);

        IPage elsewhere = await browser.OpenElsewhereAsync(new Uri(server.Address, "outcomes"), "sven");
        await Expect(elsewhere.Locator("#empty-title")).ToHaveTextAsync("Nothing to count yet");
        await Expect(elsewhere.Locator("main")).ToContainTextAsync("There is no patient in it.");
        await WorkspaceBrowser.CleanAsync(elsewhere);
        await page.Context.CloseAsync();
        await reading.Context.CloseAsync();
        await elsewhere.Context.CloseAsync();
    }

    private static ILocator Row(IPage page, string outcome) => page.Locator($"tr[data-outcome={outcome}]").First;

    private static async Task RowAsync(IPage page, string outcome, string count, string share, string interval)
    {
        ILocator cells = Row(page, outcome).Locator("td");
        await Expect(cells.Nth(0)).ToHaveTextAsync(count);
        await Expect(cells.Nth(1)).ToHaveTextAsync(share);
        await Expect(cells.Nth(2)).ToHaveTextAsync(interval);
    }
}
