using Microsoft.Playwright;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>Points at a pixel of a picture as a person would: when the picture stands still, and where it stands then.</summary>
public static class Pointed
{
    /// <summary>Clicks at a pixel. The place is taken relative to the picture, so that a page which moves meanwhile (a line more above it) moves the click with it.</summary>
    /// <param name="page">The page.</param>
    /// <param name="x">Column, from the left edge.</param>
    /// <param name="y">Row, from the upper edge.</param>
    /// <param name="stage">Which picture, where there are more than one.</param>
    public static async Task ClickAsync(IPage page, double x, double y, string stage = ".pointing-stage")
    {
        ILocator picture = page.Locator($"{stage}[data-mounted] svg");
        double[] at = await picture.EvaluateAsync<double[]>(
            "(svg, p) => { const q = new DOMPoint(p[0], p[1]).matrixTransform(svg.getScreenCTM()); const box = svg.getBoundingClientRect(); return [q.x - box.x, q.y - box.y]; }", new[] { x, y });
        await picture.ClickAsync(new() { Position = new() { X = (float)at[0], Y = (float)at[1] } });
    }
}
