using System.Globalization;
using Cavaxis.Imaging.Exercises;
using Microsoft.Playwright;
using static Cavaxis.EndToEnd.Tests.Workspace.WorkspaceBrowser;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>The exercises: what is pointed at is judged as the engine judges it, and why is said.</summary>
[Collection(nameof(InTheBrowser))]
public class ExerciseTests(WorkspaceBrowser browser)
{
    private const float Patience = 60_000;

    [Fact]
    public async Task Pointing_at_the_tip_finds_it_and_the_next_picture_is_another()
    {
        Exercise exercise = InView();
        IPage page = await OpenAsync(exercise);
        await Expect(page.Locator("#question")).ToContainTextAsync(exercise.Question);
        await PointAsync(page, exercise.Truth.X + 0.5, exercise.Truth.Y + 0.5);
        await page.ClickAsync("#answer");
        await Expect(page.Locator("#score-title")).ToContainTextAsync("● Found: 100 of 100 points");
        await CleanAsync(page);
        await page.ClickAsync("#next");
        await Expect(page.Locator("#answer")).ToBeDisabledAsync(new() { Timeout = Patience });
        await Expect(page.Locator("main")).Not.ToContainTextAsync($"number {exercise.Seed.ToString(CultureInfo.InvariantCulture)}.");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Pointing_elsewhere_is_told_with_its_distance_and_why()
    {
        Exercise exercise = InView();
        (double x, double y) = (exercise.Truth.X > exercise.Frame.Image.Width / 2.0 ? 30 : exercise.Frame.Image.Width - 30, exercise.Truth.Y);
        ExerciseScore expected = ExerciseJudge.Judge(exercise, ExerciseAnswer.At(exercise.Frame, x, y));
        IPage page = await OpenAsync(exercise);
        await PointAsync(page, x + 0.5, y + 0.5);
        await page.ClickAsync("#answer");
        await Expect(page.Locator("#score-title")).ToContainTextAsync("▲ Not found");
        await Expect(page.Locator("#score")).ToContainTextAsync(expected.Explanation[0]);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Keys_alone_answer_an_exercise_of_another_level()
    {
        IPage page = await OpenAsync(InView());
        await page.FocusAsync("#level-2");
        await page.Keyboard.PressAsync("Space");
        await Expect(page.Locator("main")).ToContainTextAsync("Level 2, number", new() { Timeout = Patience });
        await page.Locator("#scan[data-mounted]").WaitForAsync(new() { Timeout = Patience });
        await page.FocusAsync("#scan");
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#answer")).ToBeEnabledAsync();
        await page.FocusAsync("#answer");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#score-title")).ToContainTextAsync("of 100 points");
        await page.Context.CloseAsync();
    }

    private static Exercise InView() => Enumerable.Range(1, 50).Select(static seed => ExerciseMaker.Make((ulong)seed, 1)).First(static e => e.Truth.InView);

    private async Task<IPage> OpenAsync(Exercise exercise)
    {
        IPage page = await browser.OpenAsync($"exercises?seed={exercise.Seed.ToString(CultureInfo.InvariantCulture)}");
        await page.Locator(".pointing-stage[data-mounted]").WaitForAsync(new() { Timeout = Patience });
        return page;
    }

    private static async Task PointAsync(IPage page, double x, double y)
    {
        await Pointed.ClickAsync(page, x, y);
        await Expect(page.Locator(".pointing-point")).ToHaveCountAsync(1);
    }
}
