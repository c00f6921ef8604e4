using Microsoft.Playwright;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>Chooses files as a person would: the page listens a moment after the field is drawn, and a person is never that fast.</summary>
public static class Chosen
{
    /// <summary>Chooses files and waits until the page has taken notice.</summary>
    /// <param name="page">The page.</param>
    /// <param name="field">The field for files.</param>
    /// <param name="button">What can be pressed once files are chosen.</param>
    /// <param name="files">Their paths.</param>
    public static async Task FilesAsync(IPage page, string field, string button, IEnumerable<string> files)
    {
        string[] paths = [.. files];
        for (int i = 0; ; i++)
        {
            await page.SetInputFilesAsync(field, paths);
            try
            {
                await Assertions.Expect(page.Locator(button)).ToBeEnabledAsync(new() { Timeout = 6_000 });
                return;
            }
            catch (PlaywrightException) when (i < 3)
            {
                // Once more.
            }
        }
    }
}
