using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Circulation.Axis;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Running;

/// <summary>
/// Where the running circuit drains and returns, from depth, side and turn of its cannulae in the middle anatomy of what is believed about this
/// patient. A cannula of unknown depth drains or returns where it usually does in its configuration, and that is recorded as an assumption.
/// </summary>
internal sealed class RunningPorts
{
    private static readonly AxisPorts UsualDualLumen = new([0, 0.45, 0, 0, 0, 0, 0.3, 0.25, 0, 0], [0, 0, 0.1, 0.2, 0.7, 0, 0, 0, 0, 0]);
    private readonly CavalAxis axis;
    private readonly CircuitPorts ports;
    private readonly AxisPorts usual;
    private readonly ParameterBook book;
    private readonly Dictionary<RunningDevice, LyingCannula?> placed = new(ReferenceEqualityComparer.Instance);
    private readonly List<string> tips = [];

    /// <summary>Prepares.</summary>
    /// <param name="configuration">How the circuit is connected.</param>
    /// <param name="belief">The patient's axis.</param>
    /// <param name="blood">The patient's blood.</param>
    /// <param name="book">Takes what is assumed.</param>
    public RunningPorts(RunningConfiguration configuration, AxisDistribution belief, Fluid blood, ParameterBook book)
    {
        this.book = book;
        axis = CavalAxis.OfMedians(belief);
        usual = configuration == RunningConfiguration.VvDualLumen ? UsualDualLumen : AxisPorts.Default;
        AxisGrid grid = CircuitPorts.Grid(
            axis[CavalLandmark.BrachiocephalicConfluence], axis[CavalLandmark.TricuspidCentre], axis[CavalLandmark.Icaj],
            axis[CavalLandmark.HepaticVein], axis[CavalLandmark.RenalVein], axis[CavalLandmark.IliacConfluence]);
        ports = new CircuitPorts(grid, belief.Median(AxisDimension.TricuspidDistance), belief.Median(AxisDimension.TricuspidDiameter) / 2, blood);
    }

    /// <summary>Where each tip was taken to lie, in words.</summary>
    public IReadOnlyList<string> Tips => tips;

    /// <summary>Shares of drainage and return.</summary>
    /// <param name="draining">Cannulae that drain, with their flows.</param>
    /// <param name="returning">Cannulae that return to a vein, with their flows; empty where none does.</param>
    /// <returns>The shares.</returns>
    /// <exception cref="InputFaultException">A cannula lies deeper than it is long, or enters a vessel that does not lead there.</exception>
    public AxisPorts Of(
        IReadOnlyList<(RunningDevice Device, double FlowLPerMin)> draining, IReadOnlyList<(RunningDevice Device, double FlowLPerMin)> returning)
    {
        double[] drained = Mean(draining, "drainage", usual.Drainage, ports.Drainage);
        double[] returned = returning.Count == 0
            ? [.. ports.VenousReturn(null)]
            : Mean(returning, "return", usual.VenousReturn, c => ports.VenousReturn(c));
        if (tips.Count > 0)
        {
            book.Leave("Ports lie where the depth puts them in the middle anatomy of this patient. The spread of anatomy and depth, bending, and movement with the breath do not move them.");
        }

        return new AxisPorts(drained, returned);
    }

    private double[] Mean(
        IReadOnlyList<(RunningDevice Device, double FlowLPerMin)> cannulae, string what, ImmutableArray<double> usually, Func<LyingCannula, ImmutableArray<double>> shares)
    {
        double[] mean = new double[AxisPorts.CellCount];
        double all = cannulae.Sum(static c => c.FlowLPerMin);
        foreach ((RunningDevice device, double flow) in cannulae)
        {
            LyingCannula? lying = Place(device, flow);
            if (lying is null)
            {
                book.Assume($"{device.Field}.depthCm", $"{what} of {device.Cannula.Id} where it usually lies in this configuration", "recirculation (side and turn of this cannula do not count)");
            }

            ImmutableArray<double> own = lying is { } c ? shares(c) : usually;
            for (int i = 0; i < mean.Length; i++)
            {
                mean[i] += own[i] * flow / all;
            }
        }

        return [.. mean.Select(static share => Math.Min(1, share))];
    }

    /// <summary>The cannula in the axis; null where the case does not say how deep. A dual-lumen cannula is asked twice and told once.</summary>
    private LyingCannula? Place(RunningDevice device, double flow)
    {
        if (device.Lying?.DepthCm is not { } depth)
        {
            return null;
        }

        if (placed.TryGetValue(device, out LyingCannula? known))
        {
            return known;
        }

        Cannula cannula = device.Cannula;
        if (10 * depth.Value > cannula.InsertableLengthMm)
        {
            throw Fault($"{device.Field}.depthCm", depth.Value.ToString("G4", CultureInfo.InvariantCulture), FormattableString.Invariant($"at most the {cannula.InsertableLengthMm / 10:G4} cm of {cannula.Id} that can be inserted"), "Check depth and device.");
        }

        bool fromNeck = Route(device) == AccessRoute.Jugular;
        if (device.Lying.Side is null)
        {
            book.Assume($"{device.Field}.side", "right", "position of the ports, recirculation");
        }

        BodySide side = device.Lying.Side ?? BodySide.Right;
        double tip = fromNeck ? axis.FromNeck(side, 10 * depth.Value) : axis.FromGroin(side, 10 * depth.Value);
        if (device.Lying.Role == CannulaRole.DualLumen && device.Lying.RotationDeg is null)
        {
            book.Assume($"{device.Field}.rotationDeg", "0: the return port faces the tricuspid valve", "recirculation");
        }

        tips.Add(FormattableString.Invariant($"{cannula.Id} ({device.Role}), {depth.Value:G4} cm from the {(side == BodySide.Right ? "right" : "left")} {(fromNeck ? "neck" : "groin")}: tip {Where(tip)}"));
        LyingCannula lying = new(cannula, tip, fromNeck, flow, device.Lying.RotationDeg?.Value ?? 0);
        placed.Add(device, lying);
        return lying;
    }

    private AccessRoute Route(RunningDevice device)
    {
        RunningCannula lying = device.Lying!;
        AccessRoute usually = lying.Role == CannulaRole.Drainage ? AccessRoute.FemoralVein : AccessRoute.Jugular;
        if (lying.Route is null)
        {
            book.Assume($"{device.Field}.route", JsonName.Of(usually.ToString()), "position of the ports, recirculation");
        }

        AccessRoute route = lying.Route ?? usually;
        return route is AccessRoute.Jugular or AccessRoute.FemoralVein ? route : throw Fault(
            $"{device.Field}.route", JsonName.Of(route.ToString()), $"{JsonName.Of(nameof(AccessRoute.Jugular))} or {JsonName.Of(nameof(AccessRoute.FemoralVein))} for {device.Role}",
            "Check role and vessel.");
    }

    private string Where(double tipMm)
    {
        double inferior = axis[CavalLandmark.Icaj];
        return tipMm < axis[CavalLandmark.BrachiocephalicConfluence] ? "above the superior cava, whose upper end is taken"
            : tipMm > axis[CavalLandmark.IliacConfluence] ? "below the iliac confluence, whose cava is taken"
            : tipMm < 0 ? FormattableString.Invariant($"{-tipMm / 10:F1} cm above the superior cavo-atrial junction")
            : tipMm <= inferior ? FormattableString.Invariant($"in the atrium, {tipMm / 10:F1} cm below the superior and {(inferior - tipMm) / 10:F1} cm above the inferior junction")
            : FormattableString.Invariant($"{(tipMm - inferior) / 10:F1} cm below the inferior cavo-atrial junction");
    }

    private static InputFaultException Fault(string field, string value, string accepted, string remedy) =>
        new(new InputFault(FaultCode.Contradiction, field, value, accepted, remedy));
}
