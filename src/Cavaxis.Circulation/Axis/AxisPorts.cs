using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Axis;

/// <summary>Where along the axis blood is drained and where returned blood comes to rest: one share for each <see cref="AxisCell"/>.</summary>
public sealed class AxisPorts
{
    /// <summary>Number of parts of the axis.</summary>
    public const int CellCount = 10;

    /// <summary>Makes the shares.</summary>
    /// <param name="drainage">Share of the drainage flow from each part; sums to one.</param>
    /// <param name="venousReturn">Share of the venous return to each part; sums to one.</param>
    /// <exception cref="InputFaultException">Not ten shares, a share outside 0 to 1, or a sum that is not one.</exception>
    public AxisPorts(ReadOnlySpan<double> drainage, ReadOnlySpan<double> venousReturn)
    {
        Drainage = Checked(drainage, "drainage");
        VenousReturn = Checked(venousReturn, "venousReturn");
    }

    /// <summary>Drainage in the lower atrium and the upper inferior cava, return into the upper and middle atrium.</summary>
    public static AxisPorts Default { get; } = new(
        [0, 0, 0, 0, 0, 0.4, 0.3, 0.3, 0, 0], [0, 0, 0.4, 0.4, 0.2, 0, 0, 0, 0, 0]);

    /// <summary>Share of the drainage flow from each part.</summary>
    public ImmutableArray<double> Drainage { get; }

    /// <summary>Share of the venous return to each part.</summary>
    public ImmutableArray<double> VenousReturn { get; }

    private static ImmutableArray<double> Checked(ReadOnlySpan<double> shares, string field)
    {
        double sum = 0;
        bool good = shares.Length == CellCount;
        foreach (double share in shares)
        {
            good &= share >= 0 && share <= 1;
            sum += share;
        }

        return good && Math.Abs(sum - 1) < 1e-9
            ? [.. shares]
            : throw new InputFaultException(new InputFault(
                FaultCode.OutOfRange,
                field,
                sum.ToString("G6", CultureInfo.InvariantCulture),
                "ten shares from 0 to 1 that sum to 1",
                "Give one share for each part of the axis."));
    }
}
