using System.Text.RegularExpressions;
using Cavaxis.EndToEnd.Tests.Programs;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

[Collection(nameof(InTheBrowser))]
public class WhatIfTests(WorkspaceBrowser browser)
{
    private const float Patience = 60_000;

    [Theory]
    [InlineData("Veno-venous support running", "Recirculation", "dark")]
    [InlineData("Femoral veno-arterial support running", "Share of the beat with the aortic valve open", "bright")]
    public async Task A_change_is_answered_by_bands_waves_and_a_reading(string title, string matters, string room)
    {
        IPage page = await OpenedAsync(title, room);
        await Expect(page.Locator(".answer-title")).ToContainTextAsync(matters);
        await Expect(page.Locator(".bands thead").First).Not.ToContainTextAsync("After");
        string still = await PictureAsync(page);

        // By the keyboard alone: Tab leads to the stepper, Enter steps.
        await page.FocusAsync("[data-step=flow-less]");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator("[data-step=flow-more]")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".reading-list li").First).ToBeVisibleAsync(new() { Timeout = Patience });
        await Expect(page.Locator(".reading-asked")).ToContainTextAsync("Pump flow +");
        await Expect(page.Locator(".reading-list")).ToContainTextAsync(new Regex(@"Pump flow rises from \d\.\d+ to \d\.\d+ L/min"));
        await Expect(page.Locator(".bands thead").First).ToContainTextAsync("After");
        await Expect(page.Locator(".band-picture").First).ToBeVisibleAsync();
        await Expect(page.Locator(".loop-after")).ToHaveCountAsync(1);
        await Expect(page.Locator(".answer-title")).ToContainTextAsync("after the change");
        Assert.NotEqual(still, await PictureAsync(page));

        // Without motion the picture stands still until a step is asked for.
        string before = await PictureAsync(page);
        await page.ClickAsync("[data-act=step]");
        Assert.NotEqual(before, await PictureAsync(page));

        var found = (await page.RunAxe()).Violations.Where(static v => v.Impact is "serious" or "critical").Select(static v => $"{v.Id}: {v.Nodes[0].Html}");
        Assert.Empty(found);
        await page.ClickAsync(".controls-back");
        await Expect(page.Locator(".answer-title")).ToContainTextAsync("now");
        await Expect(page.Locator(".reading")).ToHaveCountAsync(0);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Waves_move_by_themselves_where_motion_is_wanted()
    {
        IPage page = await OpenedAsync("Veno-venous support running", "dark");
        await page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.NoPreference });
        await Expect(page.Locator("[data-act=hold]")).ToHaveAttributeAsync("aria-pressed", "false");
        string first = await PictureAsync(page);
        await page.EvaluateAsync("() => new Promise(r => setTimeout(r, 300))");
        Assert.NotEqual(first, await PictureAsync(page));

        await page.ClickAsync("[data-act=hold]");
        string held = await PictureAsync(page);
        await page.EvaluateAsync("() => new Promise(r => setTimeout(r, 200))");
        Assert.Equal(held, await PictureAsync(page));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task After_a_lost_connection_and_a_reload_the_page_answers_again()
    {
        using WorkFolder folder = new();
        using WorkspaceServer server = await WorkspaceServer.StartAsync(folder["data"]);
        IPage page = await browser.OpenAsync(server.Address.ToString());
        string address = (await page.Locator(".patient-open", new() { HasText = "Veno-venous support running" }).First.GetAttributeAsync("href"))!;
        await page.GotoAsync(new Uri(server.Address, address.Replace("/know", "/whatif", StringComparison.Ordinal)).ToString());
        await Expect(page.Locator(".wave-canvas")).ToBeVisibleAsync(new() { Timeout = Patience });
        server.Kill();
        await Expect(page.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        await Expect(page.Locator(".wave-canvas")).ToBeVisibleAsync();
        await server.RestartAsync();
        await page.ReloadAsync();
        await Expect(page.Locator(".wave-canvas")).ToBeVisibleAsync(new() { Timeout = Patience });
        await page.ClickAsync("[data-step=flow-more]");
        await Expect(page.Locator(".reading-list li").First).ToBeVisibleAsync(new() { Timeout = Patience });
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_fit_that_takes_long_can_be_stopped_and_asked_for_again()
    {
        using WorkFolder folder = new();
        using WorkspaceServer server = await WorkspaceServer.StartAsync(folder["data"]);
        IPage page = await browser.OpenAsync(server.Address.ToString());
        string address = (await page.Locator(".patient-open", new() { HasText = "Femoral veno-arterial support running" }).First.GetAttributeAsync("href"))!;
        string whatIf = new Uri(server.Address, address.Replace("/know", "/whatif", StringComparison.Ordinal)).ToString();
        await page.GotoAsync(whatIf);
        await page.ClickAsync(".whatif-state button:has-text('Stop')");
        await Expect(page.Locator(".whatif-progress")).ToHaveCountAsync(0);
        await Expect(page.Locator(".wave-canvas")).ToHaveCountAsync(0);
        await page.GotoAsync(whatIf);
        await Expect(page.Locator(".wave-canvas")).ToBeVisibleAsync(new() { Timeout = Patience });
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Two_windows_on_one_patient_ask_their_own_questions()
    {
        IPage one = await OpenedAsync("Veno-venous support running", "dark");
        IPage two = await OpenedAsync("Veno-venous support running", "bright");
        await one.ClickAsync("[data-step=flow-more]");
        await two.ClickAsync("[data-step=flow-less]");
        await Expect(one.Locator(".reading-asked")).ToContainTextAsync("Pump flow +", new() { Timeout = Patience });
        await Expect(two.Locator(".reading-asked")).ToContainTextAsync("Pump flow −", new() { Timeout = Patience });
        await two.ClickAsync(".controls-back");
        await Expect(two.Locator(".reading")).ToHaveCountAsync(0);
        await Expect(one.Locator(".reading")).ToHaveCountAsync(1);
        await one.Context.CloseAsync();
        await two.Context.CloseAsync();
    }

    private async Task<IPage> OpenedAsync(string title, string room)
    {
        string know = await browser.DemoAsync(title);
        IPage page = await browser.OpenAsync(know.Replace("/know", "/whatif", StringComparison.Ordinal), room);
        await Expect(page.Locator(".wave-canvas")).ToBeVisibleAsync(new() { Timeout = Patience });
        await Expect(page.Locator("[data-loop-point]")).Not.ToHaveAttributeAsync("cx", "-20");
        return page;
    }

    private static Task<string> PictureAsync(IPage page) => page.EvaluateAsync<string>("() => document.querySelector('.wave-canvas').toDataURL()");
}
