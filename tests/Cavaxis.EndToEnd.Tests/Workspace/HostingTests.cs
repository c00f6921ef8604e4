using System.Net;
using Cavaxis.EndToEnd.Tests.Programs;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

[Collection(nameof(InTheBrowser))]
public sealed class HostingTests : IDisposable
{
    private const string Name = "plan.example";
    private readonly WorkspaceBrowser browser;
    private readonly WorkFolder folder = new();

    public HostingTests(WorkspaceBrowser browser)
    {
        this.browser = browser;
        OwnCertificate.Write(Name, folder["chain.pem"], folder["key.pem"]);
    }

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task With_a_certificate_of_its_own_it_answers_by_TLS_alone_and_under_its_name_alone()
    {
        using WorkspaceServer server = await WorkspaceServer.StartAsync(
            folder["data"], "--certificate", folder["chain.pem"], "--key", folder["key.pem"], "--host-name", Name);
        Assert.Equal("https", server.Address.Scheme);
        IPage page = await browser.OpenElsewhereAsync(server.Address);
        await SavesAsync(page, server.Address);

        using HttpClient plain = new();
        await Assert.ThrowsAnyAsync<HttpRequestException>(() => plain.GetAsync(new UriBuilder(server.Address) { Scheme = "http" }.Uri));

        // Only the certificate that was given is trusted here: the server shows that one and no other.
        string own = System.Security.Cryptography.X509Certificates.X509Certificate2.CreateFromPem(await File.ReadAllTextAsync(folder["chain.pem"])).Thumbprint;
        using HttpClientHandler trusting = new() { ServerCertificateCustomValidationCallback = (_, shown, _, _) => shown?.Thumbprint == own };
        using HttpClient client = new(trusting);
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(client, server.Address, Name));
        Assert.Equal(HttpStatusCode.BadRequest, await StatusAsync(client, server.Address, "elsewhere.example"));
    }

    [Fact]
    public async Task Behind_a_proxy_that_ends_TLS_everything_works_under_the_path_that_it_is_shown_at()
    {
        const string Path = "/cavaxis";
        RegisteredPeople.Register(folder, folder["data"]);
        using WorkspaceServer server = await WorkspaceServer.StartAsync(
            folder["data"], "--behind-proxy", "--host-name", "localhost", "--base-path", Path);
        await using ProxyInFront proxy = await ProxyInFront.StartAsync(server.Address, Path, folder["chain.pem"], folder["key.pem"]);
        Uri outside = new(new UriBuilder(proxy.Address) { Host = "localhost" }.Uri, Path + "/");
        IPage page = await browser.OpenElsewhereAsync(outside, "lena");
        List<string> failed = [];
        page.Response += (_, answer) =>
        {
            if (answer.Status >= 400)
            {
                failed.Add($"{answer.Status} {answer.Url}");
            }
        };
        await SavesAsync(page, outside);
        await page.ClickAsync(".questions a:has-text('On paper')");
        await Expect(page.Locator("h1")).ToHaveTextAsync("On paper");
        string[] links = await page.EvaluateAsync<string[]>("[...document.querySelectorAll('a[href], link[href], script[src]')].map(e => e.href || e.src)");
        Assert.NotEmpty(links);
        Assert.All(links, link => Assert.StartsWith(outside.ToString(), link, StringComparison.Ordinal));
        Assert.Empty(failed);
    }

    [Fact]
    public async Task A_proxy_that_asks_under_another_name_is_refused()
    {
        RegisteredPeople.Register(folder, folder["data"]);
        using WorkspaceServer server = await WorkspaceServer.StartAsync(folder["data"], "--behind-proxy", "--host-name", Name);
        using HttpClient client = new();
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(client, server.Address, "127.0.0.1", forwarded: Name));
        Assert.Equal(HttpStatusCode.BadRequest, await StatusAsync(client, server.Address, "elsewhere.example"));

        // A name that is not this workspace's is not taken over from the proxy: the pages keep to the name that was asked.
        using HttpRequestMessage foreign = new(HttpMethod.Get, server.Address);
        foreign.Headers.Add("X-Forwarded-Host", "elsewhere.example");
        foreign.Headers.Add("Accept", "text/html");
        using HttpResponseMessage answer = await client.SendAsync(foreign);
        Assert.DoesNotContain("elsewhere.example", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Others_are_not_let_in_where_nobody_is_registered()
    {
        InvalidOperationException refused = await Assert.ThrowsAsync<InvalidOperationException>(() => WorkspaceServer.StartAsync(folder["data"], "--behind-proxy", "--host-name", Name));
        Assert.Contains("./run record create", refused.Message, StringComparison.Ordinal);
    }

    /// <summary>A value goes over the page's own socket into the store and is there after a reload.</summary>
    private static async Task SavesAsync(IPage page, Uri root)
    {
        await page.ClickAsync("#new-patient");
        await page.FillAsync("#f-title", "Over a proxy");
        await page.PressAsync("#f-title", "Tab");
        await Expect(page.Locator(".patient-title")).ToHaveTextAsync("Over a proxy");
        Assert.StartsWith(root.ToString(), page.Url, StringComparison.Ordinal);
        await page.ReloadAsync();
        await WorkspaceBrowser.AliveAsync(page);
        await Expect(page.Locator("#f-title")).ToHaveValueAsync("Over a proxy");
    }

    private static async Task<HttpStatusCode> StatusAsync(HttpClient client, Uri address, string host, string? forwarded = null)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, address);
        request.Headers.Host = host;
        request.Headers.Add("Accept", "text/html");
        if (forwarded is not null)
        {
            request.Headers.Add("X-Forwarded-Host", forwarded);
        }

        using HttpResponseMessage answer = await client.SendAsync(request);
        return answer.StatusCode;
    }
}
