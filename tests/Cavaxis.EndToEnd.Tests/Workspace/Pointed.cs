using Microsoft.Playwright;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>Where a pixel of a picture lies in the window.</summary>
public static class Pointed
{
    /// <summary>The place of a pixel, brought into view.</summary>
    /// <param name="page">The page.</param>
    /// <param name="x">Column, from the left edge.</param>
    /// <param name="y">Row, from the upper edge.</param>
    /// <param name="stage">Which picture, where there are more than one.</param>
    /// <returns>To the right and downwards, in the window.</returns>
    public static async Task<double[]> AtAsync(IPage page, double x, double y, string stage = ".pointing-stage")
    {
        ILocator picture = page.Locator($"{stage} svg");
        await picture.ScrollIntoViewIfNeededAsync();
        return await picture.EvaluateAsync<double[]>("(svg, p) => { const q = new DOMPoint(p[0], p[1]).matrixTransform(svg.getScreenCTM()); return [q.x, q.y]; }", new[] { x, y });
    }
}
