namespace Cavaxis.Planning.Outlook;

/// <summary>Finds the pump flow above which the aortic valve stays shut.</summary>
internal static class ValveClosing
{
    /// <summary>Share of the beat below which a valve counts as shut, percent: one sample of the record.</summary>
    private const double ShutPercent = 0.5;

    /// <summary>The flow at which the open share reaches zero, by a straight line through the last two flows at which it opens.</summary>
    /// <param name="points">Pump flow and share of the beat with the valve open, percent, by rising flow.</param>
    /// <returns>The flow, or null where the valve opens at the highest flow; zero where it opens at none.</returns>
    public static double? FlowLPerMin(IReadOnlyList<(double FlowLPerMin, double OpenPercent)> points)
    {
        int shut = 0;
        while (shut < points.Count && points[shut].OpenPercent > ShutPercent)
        {
            shut++;
        }

        if (shut == points.Count)
        {
            return null;
        }

        if (shut == 0)
        {
            return 0;
        }

        (double flow, double open) = points[shut - 1];
        double next = points[shut].FlowLPerMin;
        if (shut == 1)
        {
            return 0.5 * (flow + next);
        }

        (double before, double openBefore) = points[shut - 2];
        double slope = (openBefore - open) / (flow - before);
        return slope <= 0 ? 0.5 * (flow + next) : Math.Min(next, flow + (open / slope));
    }
}
