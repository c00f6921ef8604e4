using Cavaxis.EndToEnd.Tests.Programs;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

[Collection(nameof(InTheBrowser))]
public class WindowTests(WorkspaceBrowser browser)
{
    private const string Haemoglobin = "#f-blood-haemoglobinGPerDl";

    [Fact]
    public async Task Two_windows_on_one_patient_see_each_other_and_lose_nothing()
    {
        IPage one = await browser.NewPatientAsync("Two windows");
        string address = one.Url.Split('?')[0] + "?group=blood";
        await one.GotoAsync(address);
        await WorkspaceBrowser.AliveAsync(one);
        IPage other = await browser.OpenAsync(address);

        await one.FillAsync("#f-blood-lactateMmolPerL", "4.2");
        await Expect(other.Locator("#f-blood-lactateMmolPerL")).ToHaveValueAsync("4.2");

        // The other window stands in the field when the first one saves it: what it types then must not pass over that unseen.
        await other.FocusAsync(Haemoglobin);
        await other.EvaluateAsync("() => new Promise(r => setTimeout(r, 200))");
        await one.FillAsync(Haemoglobin, "9.8");
        await one.PressAsync(Haemoglobin, "Tab");
        await Expect(other.Locator(".groups a:has-text('Blood')")).ToContainTextAsync("2 of 11");
        await other.FillAsync(Haemoglobin, "11");
        await other.PressAsync(Haemoglobin, "Tab");
        await Expect(other.Locator(".conflict")).ToContainTextAsync("9.8");
        await Expect(other.Locator(".conflict")).ToContainTextAsync("11");
        await other.ClickAsync(".conflict button:has-text('Save what I typed')");
        await Expect(other.Locator(".conflict")).ToHaveCountAsync(0);
        await Expect(one.Locator(Haemoglobin)).ToHaveValueAsync("11");
        await one.GotoAsync(address.Replace("group=blood", "group=file", StringComparison.Ordinal));
        await Expect(one.Locator(".history li:has-text('blood.haemoglobinGPerDl')")).ToHaveCountAsync(2);
        await one.Context.CloseAsync();
        await other.Context.CloseAsync();
    }

    [Fact]
    public async Task A_killed_server_and_a_reload_lose_no_saved_value_and_what_was_typed_meanwhile_comes_in()
    {
        using WorkFolder folder = new();
        using WorkspaceServer server = await WorkspaceServer.StartAsync(folder["data"]);
        IPage page = await browser.OpenAsync(server.Address.ToString());
        await page.ClickAsync("#new-patient");
        await page.FillAsync("#f-title", "Power cut");
        await page.FillAsync("#f-patient-heightCm", "180");
        await page.PressAsync("#f-patient-heightCm", "Tab");
        await Expect(page.Locator(".patient-bar .patient-title")).ToHaveTextAsync("Power cut");
        await Expect(page.Locator(".answer-value")).ToHaveTextAsync("3");
        server.Kill();
        await Expect(page.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        await page.FillAsync("#f-patient-weightKg", "80");
        await server.RestartAsync();
        await Expect(page.Locator(".answer-value")).ToHaveTextAsync("2", new() { Timeout = 60_000 });
        await page.ReloadAsync();
        await Expect(page.Locator("#f-title")).ToHaveValueAsync("Power cut");
        await Expect(page.Locator("#f-patient-heightCm")).ToHaveValueAsync("180");
        await Expect(page.Locator("#f-patient-weightKg")).ToHaveValueAsync("80");
        await page.Context.CloseAsync();
    }
}
