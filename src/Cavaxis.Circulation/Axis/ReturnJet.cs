namespace Cavaxis.Circulation.Axis;

/// <summary>
/// Where a round turbulent jet leaves its blood (docs/models/recirculation.md, section 3). Spread: half-width 0.094 x (Hussein, Capp and
/// George 1994); a jet in a vessel ends where two half-widths fill it. Every result is continuous in position and turn.
/// </summary>
internal static class ReturnJet
{
    /// <summary>Half-width of the velocity profile over distance.</summary>
    public const double HalfWidthSlope = 0.094;

    /// <summary>Radius of the way of an axial jet (cava and line of the atrium), mm: assumption within 20 to 30 mm of width.</summary>
    public const double WayRadiusMm = 10;

    /// <summary>Length along the wall over which a jet that misses the valve spreads to either side, mm: assumption.</summary>
    public const double WallSpreadMm = 25;

    /// <summary>Part of what an axial jet leaves right at the valve that turns into it: vestibule over vestibule and middle by volume.</summary>
    public const double SideShare = 0.2 / 0.55;

    /// <summary>Adds the shares of the return.</summary>
    /// <param name="grid">The line.</param>
    /// <param name="site">The port.</param>
    /// <param name="shares">Ten shares, added to; one in all.</param>
    public static void Deposit(AxisGrid grid, ReturnSite site, Span<double> shares)
    {
        if (site.Direction == JetDirection.TowardsTricuspid)
        {
            double caught = CaughtByValve(grid, site);
            shares[(int)AxisCell.Vestibule] += caught;
            grid.Spread(site.PositionMm - WallSpreadMm, site.PositionMm + WallSpreadMm, 1 - caught, shares);
            return;
        }

        double length = Math.Max(WayRadiusMm / (2 * HalfWidthSlope), 2 * site.DiameterMm);
        double end = site.PositionMm + (site.Direction == JetDirection.TowardsFeet ? length : -length);
        double low = Math.Min(site.PositionMm, end);
        double high = Math.Max(site.PositionMm, end);
        double beside = Math.Max(0, Math.Min(high, grid.TricuspidMm + site.AnnulusRadiusMm) - Math.Max(low, grid.TricuspidMm - site.AnnulusRadiusMm));
        double turned = SideShare * beside / length;
        shares[(int)AxisCell.Vestibule] += turned;
        grid.Spread(low, high, 1 - turned, shares);
    }

    /// <summary>Share of a side jet that reaches the vestibule.</summary>
    /// <param name="grid">The line.</param>
    /// <param name="site">The port.</param>
    /// <returns>0 to 1.</returns>
    public static double CaughtByValve(AxisGrid grid, ReturnSite site)
    {
        double turn = Math.Abs(site.RotationDeg) * Math.PI / 180;
        if (turn >= 0.5 * Math.PI)
        {
            return 0;
        }

        double distance = site.LateralDistanceToTricuspidMm;
        double away = distance * Math.Tan(turn);
        double along = site.PositionMm - grid.TricuspidMm;
        double miss = Math.Sqrt((away * away) + (along * along));
        double path = Math.Sqrt((distance * distance) + (away * away));
        double width = (0.5 * site.DiameterMm) + (HalfWidthSlope * path);

        // The annulus widened by the half-width of the jet still draws it in; over two half-widths the catch fades.
        double edge = (miss - site.AnnulusRadiusMm - width) / width;
        return 1 / (1 + Math.Exp(2 * Math.Min(edge, 300)));
    }
}
