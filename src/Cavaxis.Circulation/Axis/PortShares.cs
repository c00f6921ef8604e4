using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Axis;

/// <summary>
/// From positions of holes and return port to shares of the ten parts of the axis (docs/models/recirculation.md). Shares change smoothly with
/// position, since holes draw from a neighbourhood and a jet spreads.
/// </summary>
public static class PortShares
{
    /// <summary>Width of the neighbourhood that a hole draws from, mm: about a caval radius.</summary>
    public const double CaptureMm = 9;

    /// <summary>Decay of the centre-line velocity of a round jet, u/u₀ = B d/x (Hussein, Capp and George 1994: 5.8).</summary>
    public const double JetDecay = 5.8;

    /// <summary>Growth of the half width of a round jet with distance (Hussein, Capp and George 1994: 0.094).</summary>
    public const double JetSpread = 0.094;

    /// <summary>Width over which blood that missed the valve comes to rest about the port, mm.</summary>
    public const double ScatterMm = 14;

    /// <summary>Share of the blood of an axial jet spent beside the valve that goes straight into the inflow of the valve.</summary>
    public const double BesideValve = 0.5;

    /// <summary>Half width to standard deviation of a normal profile: √(2 ln 2).</summary>
    private const double HalfWidthInSd = 1.1774100225154747;

    private const int PathPoints = 24;
    private const int Middle = (int)AxisCell.MiddleAtrium;
    private const int Vestibule = (int)AxisCell.Vestibule;

    /// <summary>Shares for a set of holes and one venous return port.</summary>
    /// <param name="geometry">The axis.</param>
    /// <param name="drainage">Hole groups; their shares sum to one.</param>
    /// <param name="back">The port that returns to the veins; null where all blood returns to an artery.</param>
    /// <returns>The shares.</returns>
    /// <exception cref="InputFaultException">A geometry out of range, or shares that do not sum to one.</exception>
    public static AxisPorts Of(in CavalGeometry geometry, ReadOnlySpan<DrainageSite> drainage, ReturnSite? back)
    {
        CavalGeometry g = geometry.Checked();
        Span<double> taken = stackalloc double[AxisPorts.CellCount];
        Span<double> given = stackalloc double[AxisPorts.CellCount];
        Span<double> edges = stackalloc double[Edges];
        Fill(g, edges);
        taken.Clear();
        given.Clear();
        foreach (DrainageSite site in drainage)
        {
            const int Points = 5;
            for (int i = 0; i < Points; i++)
            {
                double at = site.PositionMm + (site.HalfSpanMm * ((2.0 * i / (Points - 1)) - 1));
                Spread(edges, at, CaptureMm, site.Share / Points, taken);
            }
        }

        if (back is { } port)
        {
            Return(g, edges, port, given);
        }
        else
        {
            given[Middle] = 1;
        }

        Normalise(given);
        return new AxisPorts(taken, given);
    }

    /// <summary>Share of a sideways jet that enters the tricuspid ring.</summary>
    /// <param name="geometry">The axis.</param>
    /// <param name="port">The port.</param>
    /// <returns>0 to 1.</returns>
    public static double ThroughTheValve(in CavalGeometry geometry, in ReturnSite port)
    {
        if (port.Direction != ReturnDirection.TowardsTricuspid || Math.Abs(port.RotationDeg) >= 85)
        {
            return 0;
        }

        double turn = Math.Abs(port.RotationDeg) * Math.PI / 180;
        double way = geometry.TricuspidDistanceMm / Math.Cos(turn);
        double sd = ((0.5 * port.DiameterMm) + (JetSpread * way)) / HalfWidthInSd;
        double along = port.PositionMm - geometry.TricuspidMm;
        double across = geometry.TricuspidDistanceMm * Math.Tan(turn);
        double r = geometry.AnnulusRadiusMm;
        return Inside(-r, r, along, sd) * Inside(-r, r, across, sd);
    }

    // Edges of the nine parts that lie on the axis: the vestibule lies beside it.
    private const int Edges = 10;

    private static readonly int[] OnAxis = [0, 1, 2, 3, 5, 6, 7, 8, 9];

    private static void Fill(in CavalGeometry g, Span<double> edges)
    {
        edges[0] = double.NegativeInfinity;
        edges[1] = -0.5 * g.SvcLengthMm;
        edges[2] = 0;
        edges[3] = 0.28 * g.AtrialLengthMm;
        edges[4] = 0.75 * g.AtrialLengthMm;
        edges[5] = g.AtrialLengthMm;
        edges[6] = Math.Max(g.AtrialLengthMm + 1, g.HepaticVeinMm - 5);
        edges[7] = 0.5 * (g.HepaticVeinMm + g.RenalVeinMm);
        edges[8] = g.RenalVeinMm + 25;
        edges[9] = double.PositiveInfinity;
    }

    private static void Return(in CavalGeometry g, ReadOnlySpan<double> edges, in ReturnSite port, Span<double> given)
    {
        if (port.Direction == ReturnDirection.TowardsTricuspid)
        {
            double through = ThroughTheValve(g, port);
            given[Vestibule] += through;
            Spread(edges, port.PositionMm, ScatterMm, 1 - through, given);
            return;
        }

        // An axial jet gives its blood up along its way: what still runs in it beyond s is 1/(1 + (s/(B d))²).
        double sign = port.Direction == ReturnDirection.TowardsFeet ? 1 : -1;
        double reach = JetDecay * port.DiameterMm;
        for (int i = 0; i < PathPoints; i++)
        {
            double quantile = (i + 0.5) / PathPoints;
            double way = reach * Math.Sqrt(quantile / (1 - quantile));
            double at = port.PositionMm + (sign * Math.Min(way, 4 * reach));
            Spread(edges, at, CaptureMm, 1.0 / PathPoints, given);
        }

        double beside = BesideValve * given[Middle];
        given[Middle] -= beside;
        given[Vestibule] += beside;
    }

    private static void Spread(ReadOnlySpan<double> edges, double at, double sd, double share, Span<double> cells)
    {
        double before = 0;
        for (int i = 0; i < OnAxis.Length; i++)
        {
            double after = i == OnAxis.Length - 1 ? 1 : Cumulative((edges[i + 1] - at) / sd);
            cells[OnAxis[i]] += share * (after - before);
            before = after;
        }
    }

    private static void Normalise(Span<double> cells)
    {
        double sum = 0;
        foreach (double cell in cells)
        {
            sum += cell;
        }

        for (int i = 0; i < cells.Length; i++)
        {
            cells[i] = Math.Clamp(cells[i] / sum, 0, 1);
        }
    }

    private static double Inside(double low, double high, double middle, double sd) =>
        Cumulative((high - middle) / sd) - Cumulative((low - middle) / sd);

    /// <summary>Logistic stand-in for the normal distribution function (largest difference 0.01): smooth, and exact at its ends.</summary>
    private static double Cumulative(double z) => 1 / (1 + Math.Exp(-1.702 * z));
}
