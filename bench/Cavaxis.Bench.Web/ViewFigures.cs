using System.Diagnostics;
using Microsoft.Playwright;

namespace Cavaxis.Bench.Web;

/// <summary>How long a page takes on loopback until something useful is seen, and until it can be worked with.</summary>
internal static class ViewFigures
{
    private const int Loads = 12;

    private static readonly (string Page, string Useful)[] Pages =
    [
        ("", ".patient-open"), ("know", ".answer-value"), ("ways", ".answer-value"), ("lie", ".answer-value"), ("whatif", ".answer"), ("place", "#begin-sheet"),
        ("position", "#placed-title"), ("run", "#read-title"), ("wean", "#begin-title"), ("after", "#outcome-title"), ("paper", ".answer"),
    ];

    /// <summary>Measures every page in an open window that keeps nothing of what it has fetched, and prints; the first line is the first page of a server
    /// that has just started in a browser that has just started.</summary>
    /// <param name="browser">The browser.</param>
    /// <param name="address">Address of a workspace that nobody has asked yet.</param>
    public static async Task PrintAsync(IBrowser browser, Uri address)
    {
        await using IBrowserContext window = await browser.NewContextAsync(new() { ViewportSize = new() { Width = 1280, Height = 800 } });
        IPage page = await window.NewPageAsync();
        await (await window.NewCDPSessionAsync(page)).SendAsync("Network.setCacheDisabled", new Dictionary<string, object> { ["cacheDisabled"] = true });
        await page.AddInitScriptAsync($$"""
            const useful = '{{string.Join(", ", Pages.Select(static p => p.Useful).Distinct())}}';
            const look = () => requestAnimationFrame(() => document.querySelector(useful) ? requestAnimationFrame(() => { window.seenAt = performance.now(); }) : look());
            look();
            """);
        (double seenMs, double usableMs) = await OneAsync(page, address);
        Console.WriteLine($"first page of a fresh server and browser: useful view {seenMs:F0} ms, usable {usableMs:F0} ms");
        string patient = (await page.Locator("a.patient-open:has-text('Tall man')").First.GetAttributeAsync("href"))!.Split('/')[1];
        foreach ((string name, _) in Pages)
        {
            Uri at = name.Length == 0 ? address : new Uri(address, $"patient/{patient}/{name}");
            List<(double SeenMs, double UsableMs)> all = [];
            for (int i = 0; i < Loads; i++)
            {
                all.Add(await OneAsync(page, at));
            }

            Console.WriteLine($"{(name.Length == 0 ? "patients" : name)}: useful view median {At(all, static o => o.SeenMs, 0.5):F0} ms, 95th percentile {At(all, static o => o.SeenMs, 0.95):F0} ms; usable median {At(all, static o => o.UsableMs, 0.5):F0} ms, 95th percentile {At(all, static o => o.UsableMs, 0.95):F0} ms");
        }
    }

    /// <summary>From the request to the frame after which the useful part stands there, and to a page that answers.</summary>
    private static async Task<(double SeenMs, double UsableMs)> OneAsync(IPage page, Uri address)
    {
        await page.GotoAsync("about:blank");
        Stopwatch watch = Stopwatch.StartNew();
        await page.GotoAsync(address.ToString(), new PageGotoOptions { WaitUntil = WaitUntilState.Commit });
        await page.Locator("html[data-alive]").WaitForAsync(new LocatorWaitForOptions { State = WaitForSelectorState.Attached });
        double usableMs = watch.Elapsed.TotalMilliseconds;
        await page.WaitForFunctionAsync("() => window.seenAt > 0");
        return (await page.EvaluateAsync<double>("() => Math.max(window.seenAt, performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0)"), usableMs);
    }

    private static double At(List<(double SeenMs, double UsableMs)> all, Func<(double SeenMs, double UsableMs), double> of, double share)
    {
        double[] ascending = [.. all.Select(of).Order()];
        return ascending[Math.Min(ascending.Length - 1, (int)Math.Ceiling(share * ascending.Length) - 1)];
    }
}
