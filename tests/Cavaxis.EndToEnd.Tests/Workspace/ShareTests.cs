using Cavaxis.Course.Events;
using Cavaxis.EndToEnd.Tests.Programs;
using Cavaxis.Planning.Case;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>A second opinion through the browser: out of one workspace, answered at another, and back.</summary>
[Collection(nameof(InTheBrowser))]
public sealed class ShareTests(WorkspaceBrowser browser) : IDisposable
{
    private const string Words = "gravel hammock under seven quiet boats";
    private const string Asks = "Is it recirculation, and what would you look at next?";
    private const string Says = "Pull the return cannula back 2 cm, then measure again.";

    private readonly WorkFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_question_goes_out_sealed_is_answered_at_another_workspace_and_comes_back_once()
    {
        MadeUpProgramme.Register(folder, folder["data"]);
        string patient = (await MadeUpProgramme.AdmitAsync(folder["data"],
        [
            (30.0, new SupportStarted { Configuration = RunningConfiguration.VvTwoSite }),
            (20.0, new NoteWritten { Text = "Line shakes when coughing." }),
            (10.0, new NoteWritten { Text = "Told Lena (invented) about it." }),
        ]))[0];
        using WorkspaceServer server = await WorkspaceServer.StartAsync(folder["data"]);
        Uri share = new(server.Address, $"patient/{patient}/share");
        IPage page = await browser.OpenElsewhereAsync(share, "lena");
        string packAddress = await MakeAsync(page);
        IDownload download = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("#pack-file"));
        byte[] pack = await File.ReadAllBytesAsync(await download.PathAsync());
        Assert.Equal("question.pack", download.SuggestedFilename);
        Assert.DoesNotContain("hammock", await page.EvaluateAsync<string>("JSON.stringify(localStorage) + JSON.stringify(sessionStorage) + document.documentElement.outerHTML"), StringComparison.Ordinal);
        await Expect(page.Locator(".opinion")).ToContainTextAsync("lena asked the night desk elsewhere.");

        (byte[] answer, string contents) = await AnswerAsync(pack);
        Assert.Contains("Line shakes when coughing.", contents, StringComparison.Ordinal);
        Assert.DoesNotContain("Lena", contents, StringComparison.Ordinal);
        Assert.DoesNotContain(patient, contents, StringComparison.Ordinal);

        byte[] tampered = [.. answer];
        tampered[^9] ^= 4;
        await TakeAsync(page, tampered, Words);
        await Expect(page.Locator("[aria-labelledby=answer-in-title] .trouble")).ToContainTextAsync("the passphrase is another one, or the file was changed");
        await TakeAsync(page, answer, Words + "x");
        await Expect(page.Locator("[aria-labelledby=answer-in-title] .trouble")).ToContainTextAsync("Type the passphrase again");
        await TakeAsync(page, new byte[2 * 1024 * 1024], Words);
        await Expect(page.Locator("[aria-labelledby=answer-in-title] .trouble")).ToContainTextAsync("an answer of at most 1 MiB");
        await TakeAsync(page, pack, Words);
        await Expect(page.Locator("[aria-labelledby=answer-in-title] .trouble")).ToContainTextAsync("perhaps a pack");
        await Expect(page.Locator(".opinion-answer")).ToHaveCountAsync(0);
        await TakeAsync(page, answer, Words);
        await Expect(page.Locator("#answer-state")).ToContainTextAsync("The answer is in the record");
        await Expect(page.Locator(".opinion-answer")).ToContainTextAsync(Says);
        await Expect(page.Locator(".opinion-answer")).ToContainTextAsync("taken in");
        await WorkspaceBrowser.CleanAsync(page);
        await TakeAsync(page, answer, Words);
        await Expect(page.Locator("[aria-labelledby=answer-in-title] .trouble")).ToContainTextAsync("in the record already; nothing was written twice");
        await Expect(page.Locator(".opinion-answer")).ToHaveCountAsync(1);

        // What was made for one person is there for no other, and a reader asks no one.
        IPage reading = await browser.OpenElsewhereAsync(share, "rita");
        await Expect(reading.Locator("main .trouble")).ToContainTextAsync("Your role does not allow");
        await Expect(reading.Locator("#pack-question, #answer-take")).ToHaveCountAsync(0);
        await Expect(reading.Locator(".opinion-answer")).ToContainTextAsync(Says);
        Assert.Equal(404, (await reading.Context.APIRequest.GetAsync(new Uri(server.Address, packAddress).ToString())).Status);
        IAPIResponse own = await page.Context.APIRequest.GetAsync(new Uri(server.Address, packAddress).ToString());
        Assert.Equal((200, "no-store"), (own.Status, own.Headers["cache-control"]));
        Assert.Equal(pack, await own.BodyAsync());

        // Whoever leads another programme alone has no such patient.
        IPage foreign = await browser.OpenElsewhereAsync(share, "sven");
        await Expect(foreign.Locator("main")).ToContainTextAsync("There is no such patient.");
        await page.Context.CloseAsync();
        await reading.Context.CloseAsync();
        await foreign.Context.CloseAsync();
    }

    /// <summary>Looks, confirms one text, looks again, mistypes, seals.</summary>
    private static async Task<string> MakeAsync(IPage page)
    {
        await page.ClickAsync("#pack-look");
        await Expect(page.Locator("[aria-labelledby=ask-title] .trouble")).ToContainTextAsync("Say what you want to know.");
        await page.FillAsync("#pack-question", "Does Lena see it?");
        await page.ClickAsync("#pack-look");
        await Expect(page.Locator("[aria-labelledby=ask-title] .trouble")).ToContainTextAsync("names no one");
        await page.FillAsync("#pack-question", Asks);
        await page.FillAsync("#asked-of", "the night desk elsewhere");
        await page.ClickAsync("#pack-look");
        await Expect(page.Locator("#pack-looked")).ToContainTextAsync("a text that no one confirmed");
        await page.CheckAsync("label:has-text('Line shakes')");
        await page.CheckAsync("label:has-text('Told Lena')");
        await Expect(page.Locator("[aria-labelledby=ask-title]")).ToContainTextAsync("Changed since you looked: look again.");
        await page.ClickAsync("#pack-look");
        await Expect(page.Locator("[aria-labelledby=ask-title]")).ToContainTextAsync("Looked at; nothing has left yet.");
        await Expect(page.Locator("#pack-looked")).ToContainTextAsync("a text that was confirmed but holds a name or identifier of the record");
        await WorkspaceBrowser.CleanAsync(page);
        await page.FillAsync("#passphrase", Words);
        await page.FillAsync("#passphrase-again", Words + "s");
        await page.ClickAsync("#pack-seal");
        await Expect(page.Locator("[aria-labelledby=ask-title] .trouble")).ToContainTextAsync("the same passphrase twice");
        await page.FillAsync("#passphrase-again", Words);
        await page.ClickAsync("#pack-seal");
        await Expect(page.Locator("#pack-file")).ToBeVisibleAsync();
        return (await page.GetAttributeAsync("#pack-file", "href"))!;
    }

    /// <summary>Opens a pack at a workspace that knows nothing of the patient, and answers.</summary>
    private async Task<(byte[] Answer, string Contents)> AnswerAsync(byte[] pack)
    {
        IPage page = await browser.OpenAsync("opinion", room: "bright");
        await page.ClickAsync("#pack-open");
        await Expect(page.Locator(".trouble")).ToContainTextAsync("Choose it first.");
        await page.SetInputFilesAsync("#pack-in", new FilePayload { Name = "question.pack", MimeType = "application/octet-stream", Buffer = pack });
        await page.FillAsync("#open-passphrase", "gravel hammock under seven quiet goats");
        await page.ClickAsync("#pack-open");
        await Expect(page.Locator(".trouble")).ToContainTextAsync("the two cannot be told apart");
        await page.FillAsync("#open-passphrase", Words);
        await page.ClickAsync("#pack-open");
        await Expect(page.Locator("#pack-contents")).ToContainTextAsync(Asks);
        await WorkspaceBrowser.CleanAsync(page);
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth - window.innerWidth") <= 0);
        string contents = await page.InnerTextAsync("#pack-contents");
        await page.ClickAsync("#reply-seal");
        await Expect(page.Locator(".trouble")).ToContainTextAsync("Write what you say.");
        await page.FillAsync("#reply", Says);
        await page.FillAsync("#reply-by", "night desk (invented)");
        await page.ClickAsync("#reply-seal");
        await Expect(page.Locator("#answer-file-out")).ToBeVisibleAsync();
        IDownload download = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("#answer-file-out"));
        byte[] answer = await File.ReadAllBytesAsync(await download.PathAsync());
        await page.ClickAsync("#pack-close");
        await Expect(page.Locator("#pack-in")).ToBeVisibleAsync();
        await Expect(page.Locator("main")).Not.ToContainTextAsync(Asks);
        await page.Context.CloseAsync();
        return (answer, contents);
    }

    private static async Task TakeAsync(IPage page, byte[] file, string passphrase)
    {
        await page.SetInputFilesAsync("#answer-file", new FilePayload { Name = "question.answer", MimeType = "application/octet-stream", Buffer = file });
        await page.FillAsync("#answer-passphrase", passphrase);
        await page.ClickAsync("#answer-take");
        await Expect(page.Locator("#answer-take")).ToBeEnabledAsync();
    }
}
