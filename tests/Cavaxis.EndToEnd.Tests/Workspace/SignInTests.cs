using System.Net;
using System.Text.RegularExpressions;
using Cavaxis.EndToEnd.Tests.Programs;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

[Collection(nameof(InTheBrowser))]
public sealed class SignInTests(WorkspaceBrowser browser) : IDisposable
{
    private readonly WorkFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task From_a_machine_where_nobody_signs_in_to_people_who_do_each_with_their_role()
    {
        using WorkspaceServer server = await WorkspaceServer.StartAsync(folder["data"]);
        IPage page = await browser.OpenElsewhereAsync(server.Address);
        await page.ClickAsync(".person a");
        await page.FillAsync("#person-name", "Ada (invented)");
        await page.FillAsync("#person-id", "ada");
        await page.FillAsync("#person-password", "short");
        await page.ClickAsync("button:has-text('Register, and sign in from now on')");
        await Expect(page.Locator(".trouble").First).ToContainTextAsync("12");
        await page.FillAsync("#person-password", RegisteredPeople.Password);
        await page.ClickAsync("button:has-text('Register, and sign in from now on')");
        await Expect(page.Locator("h1")).ToHaveTextAsync("Sign in");
        await CleanAsync(page);

        await RegisteredPeople.SignInAsync(page, "ada", "plum lantern river eight");
        await Expect(page.Locator(".trouble")).ToHaveTextAsync("Name and password do not belong together.");
        await RegisteredPeople.SignInAsync(page, "nobody", "plum lantern river eight");
        await Expect(page.Locator(".trouble")).ToHaveTextAsync("Name and password do not belong together.");
        await RegisteredPeople.SignInAsync(page, "ada");
        await WorkspaceBrowser.AliveAsync(page);
        await Expect(page.Locator("h1")).ToHaveTextAsync("Who works here?");
        await AddAsync(page, "Lena (invented)", "lena", "Lead");
        await AddAsync(page, "Rhea (invented)", "rhea", "Reader");
        await CleanAsync(page);

        // An administrator keeps people and reads no patient.
        await page.GotoAsync(server.Address.ToString());
        await Expect(page.Locator("main [role=status]")).ToHaveTextAsync("0 of 0 patients.");
        await page.ClickAsync("text=Sign out");
        await page.ClickAsync("button:has-text('Sign out')");
        await Expect(page.Locator("h1")).ToHaveTextAsync("Sign in");

        await RegisteredPeople.SignInAsync(page, "lena");
        await page.Locator(".patient-open").First.ClickAsync();
        await Expect(page.Locator("#f-title")).ToHaveValueAsync(new Regex(@"\w"));
        string patient = page.Url;
        string title = await page.InputValueAsync("#f-title");

        IPage reading = await browser.OpenElsewhereAsync(new Uri(patient), "rhea");
        await Expect(reading.Locator("#f-title")).ToHaveValueAsync(title);
        await reading.FillAsync("#f-title", "Written by a reader");
        await reading.PressAsync("#f-title", "Tab");
        await Expect(reading.Locator(".trouble").First).ToContainTextAsync("role");
        await page.ReloadAsync();
        await WorkspaceBrowser.AliveAsync(page);
        await Expect(page.Locator("#f-title")).ToHaveValueAsync(title);

        // A window that is open ends with the sign-in.
        IPage second = await page.Context.NewPageAsync();
        await second.GotoAsync(new Uri(server.Address, "sign-out").ToString());
        await second.ClickAsync("button:has-text('Sign out')");
        await Expect(second.Locator("h1")).ToHaveTextAsync("Sign in");
        await page.FillAsync("#f-title", "Written after signing out");
        await page.PressAsync("#f-title", "Tab");
        await Expect(page.Locator(".trouble").First).ToContainTextAsync("Sign in again");
        await page.Context.CloseAsync();
        await reading.Context.CloseAsync();
    }

    [Fact]
    public async Task Every_address_is_refused_to_whoever_has_not_signed_in()
    {
        RegisteredPeople.Register(folder, folder["data"]);
        using WorkspaceServer server = await WorkspaceServer.StartAsync(folder["data"]);
        using HttpClientHandler staying = new() { AllowAutoRedirect = false };
        using HttpClient client = new(staying);
        foreach (string address in new[]
        {
            "", "people", "sign-out", "patient/0123456789abcdef/know", "report/0123456789abcdef/1/1/plan.html", "report/0123456789abcdef/1/1/plan.pdf",
            "report/0123456789abcdef/1/case.json", "models/blood.md", "_framework/blazor.web.js", "built/insertion.js", "js/entry.js", "anything",
            "report/course/0123456789abcdef/handover.pdf", "report/course/0123456789abcdef/course.html", "report/course/0123456789abcdef/bundle.json",
            "patient/0123456789abcdef/position", "patient/0123456789abcdef/wean", "patient/0123456789abcdef/after",
            "patient/0123456789abcdef/share", "opinion", "outcomes", "outcomes/own/programme.csv", "report/kept/0123456789abcdef0123456789abcdef/question.pack",
        })
        {
            using HttpResponseMessage plain = await client.GetAsync(new Uri(server.Address, address));
            Assert.True(plain.StatusCode == HttpStatusCode.Unauthorized, $"{address}: {plain.StatusCode}");
            using HttpRequestMessage asPage = new(HttpMethod.Get, new Uri(server.Address, address));
            asPage.Headers.Add("Accept", "text/html");
            using HttpResponseMessage sent = await client.SendAsync(asPage);
            Assert.Equal(HttpStatusCode.Redirect, sent.StatusCode);
            Assert.StartsWith("/sign-in?to=", sent.Headers.Location!.ToString(), StringComparison.Ordinal);
            Assert.Empty(await sent.Content.ReadAsStringAsync());
        }

        using HttpResponseMessage socket = await client.PostAsync(new Uri(server.Address, "_blazor/negotiate?negotiateVersion=1"), null);
        Assert.Equal(HttpStatusCode.Unauthorized, socket.StatusCode);
        using FormUrlEncodedContent forged = new(new Dictionary<string, string> { ["name"] = "lena", ["password"] = RegisteredPeople.Password });
        using HttpResponseMessage unasked = await client.PostAsync(new Uri(server.Address, "sign-in"), forged);
        Assert.Equal(HttpStatusCode.BadRequest, unasked.StatusCode);
        Assert.False(unasked.Headers.Contains("Set-Cookie") && unasked.Headers.GetValues("Set-Cookie").Any(static c => c.Contains("cavaxis-session", StringComparison.Ordinal)));
    }

    private static async Task AddAsync(IPage page, string name, string id, string role)
    {
        await page.FillAsync("#person-name", name);
        await page.FillAsync("#person-id", id);
        await page.FillAsync("#person-password", RegisteredPeople.Password);
        await page.SelectOptionAsync("#person-role", role);
        await page.PressAsync("#person-role", "Tab");
        await page.ClickAsync("button:text-is('Register')");
        await Expect(page.Locator($"th:text-is('{name}')")).ToBeVisibleAsync();
    }

    private static async Task CleanAsync(IPage page)
    {
        await WorkspaceBrowser.CleanAsync(page);
        Assert.Contains("not a certified medical device", await page.InnerTextAsync("footer.caution"), StringComparison.Ordinal);
    }
}
