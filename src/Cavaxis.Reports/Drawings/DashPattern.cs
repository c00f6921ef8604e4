namespace Cavaxis.Reports.Drawings;

/// <summary>The lengths behind a dash style, one place for both renderers.</summary>
internal static class DashPattern
{
    /// <summary>Stroke and gap lengths in mm, in turn; empty for an unbroken line.</summary>
    /// <param name="dash">The style.</param>
    /// <returns>The lengths.</returns>
    internal static IReadOnlyList<double> LengthsMm(Dash dash) => dash switch
    {
        Dash.Dashed => [1.4, 0.9],
        Dash.Dotted => [0.3, 0.7],
        Dash.DashDot => [1.8, 0.7, 0.3, 0.7],
        Dash.LongDash => [3.2, 1.0],
        _ => [],
    };
}
