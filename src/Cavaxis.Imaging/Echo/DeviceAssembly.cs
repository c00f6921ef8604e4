using System.Globalization;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Echo;

/// <summary>Wire, introducer and cannula bent along a curve. Distances "from the tip" run from the cannula's tip back to its hub.</summary>
public sealed class DeviceAssembly
{
    /// <summary>Length over which a tip narrows, mm (assumption of this project).</summary>
    public const double TaperMm = 6;

    /// <summary>Play between introducer and wall, and between wire and introducer, mm (assumption of this project).</summary>
    public const double PlayMm = 0.1;

    private readonly (double FromTip, double Radius, double Angle)[] holes;

    /// <summary>An assembly.</summary>
    /// <param name="cannula">The cannula: one lumen.</param>
    /// <param name="state">What of it is in.</param>
    /// <param name="curve">The curve, from outside towards the tip.</param>
    /// <param name="tipMm">Length along the curve at which the cannula's tip lies (or would lie, where the wire is alone), mm.</param>
    /// <param name="wireDiameterMm">Diameter of the wire, 0.2 to 2 mm; it must pass the lumen.</param>
    /// <param name="wireBeyondTipMm">How far the wire reaches beyond that, −300 to 600 mm.</param>
    /// <param name="introducerBeyondTipMm">How far the introducer reaches beyond the cannula, 5 to 80 mm.</param>
    /// <param name="turnDeg">Turn of the cannula about itself.</param>
    /// <param name="winding">The wire in its wall; null for a plain wall.</param>
    /// <exception cref="InputFaultException">A number is outside its bounds, or the cannula has two lumens.</exception>
    public DeviceAssembly(
        Cannula cannula, AssemblyState state, SpaceCurve curve, double tipMm, double wireDiameterMm = 0.97, double wireBeyondTipMm = 80,
        double introducerBeyondTipMm = 30, double turnDeg = 0, CoilWinding? winding = null)
    {
        ArgumentNullException.ThrowIfNull(cannula);
        ArgumentNullException.ThrowIfNull(curve);
        if (cannula.Lumens.Count != 1)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.NotAChoice, "device.cannula", InputFault.Shown(cannula.Id), "a cannula with one lumen",
                "Choose a drainage or return cannula: those with two lumens cannot be drawn in ultrasound yet."));
        }

        (Cannula, State, Curve, Winding) = (cannula, state, curve, winding);
        TipMm = Require.InRange(tipMm, 0, SpaceCurve.LongestMm, "device.tipMm", "Give where along its curve the tip lies.");
        double narrowest = cannula.Lumens[0].Segments.Min(static s => s.InnerDiameterMm);
        WireDiameterMm = Require.InRange(wireDiameterMm, 0.2, Math.Min(2, narrowest - (2 * PlayMm)), "device.wireDiameterMm", "Give a wire that passes the cannula.");
        WireBeyondTipMm = Require.InRange(wireBeyondTipMm, -300, 600, "device.wireBeyondTipMm", "Give how far the wire reaches beyond the tip.");
        IntroducerBeyondTipMm = Require.InRange(introducerBeyondTipMm, 5, 80, "device.introducerBeyondTipMm", "Give how far the introducer reaches beyond the tip.");
        TurnDeg = Require.InRange(turnDeg, -360, 360, "device.turnDeg", "Give the turn in degrees.");
        holes = [.. cannula.Lumens[0].HoleGroups.Where(static g => g.Facing != HoleFacing.End).SelectMany(Spread)];
    }

    /// <summary>The cannula.</summary>
    public Cannula Cannula { get; }

    /// <summary>What of it is in.</summary>
    public AssemblyState State { get; }

    /// <summary>The curve that it lies along.</summary>
    public SpaceCurve Curve { get; }

    /// <summary>Length along the curve at which the tip lies, mm.</summary>
    public double TipMm { get; }

    /// <summary>Diameter of the wire, mm.</summary>
    public double WireDiameterMm { get; }

    /// <summary>How far the wire reaches beyond the tip, mm.</summary>
    public double WireBeyondTipMm { get; }

    /// <summary>How far the introducer reaches beyond the tip, mm.</summary>
    public double IntroducerBeyondTipMm { get; }

    /// <summary>Turn of the cannula about itself, degrees.</summary>
    public double TurnDeg { get; }

    /// <summary>The wire in the wall; null for a plain wall.</summary>
    public CoilWinding? Winding { get; }

    /// <summary>Whether a cannula is in.</summary>
    public bool HasCannula => State != AssemblyState.WireOnly;

    /// <summary>Whether a wire is in.</summary>
    public bool HasWire => State != AssemblyState.CannulaAlone;

    /// <summary>Whether the introducer is in.</summary>
    public bool HasIntroducer => State == AssemblyState.Assembly;

    /// <summary>Length along the curve at which the wire ends, mm.</summary>
    public double WireEndMm => TipMm + WireBeyondTipMm;

    /// <summary>Radius of the wire, mm.</summary>
    public double WireRadiusMm => WireDiameterMm / 2;

    /// <summary>Thickness of the cannula's wall along its body, mm.</summary>
    public double WallMm => OuterRadiusMm(BodyMm) - InnerRadiusMm(BodyMm);

    /// <summary>Distance from the tip that stands for the body, mm: half of the length that goes in.</summary>
    public double BodyMm => Cannula.InsertableLengthMm / 2;

    /// <summary>Holes in the wall, each with its distance from the tip, its radius and its angle about the cannula, radians.</summary>
    internal IReadOnlyList<(double FromTip, double Radius, double Angle)> Holes => holes;

    /// <summary>Inner radius of the cannula, mm.</summary>
    /// <param name="fromTipMm">Distance from the tip, mm.</param>
    public double InnerRadiusMm(double fromTipMm)
    {
        double left = fromTipMm;
        IReadOnlyList<TubeSegment> segments = Cannula.Lumens[0].Segments;
        for (int i = segments.Count - 1; i > 0; i--)
        {
            left -= segments[i].LengthMm;
            if (left < 0)
            {
                return segments[i].InnerDiameterMm / 2;
            }
        }

        return segments[0].InnerDiameterMm / 2;
    }

    /// <summary>Outer radius of the cannula, mm: narrows towards the tip.</summary>
    /// <param name="fromTipMm">Distance from the tip, mm.</param>
    public double OuterRadiusMm(double fromTipMm)
    {
        double whole = Math.Max(Cannula.OuterDiameterMm / 2, InnerRadiusMm(fromTipMm) + 0.2);
        double share = Math.Clamp(fromTipMm / TaperMm, 0, 1);
        double tip = InnerRadiusMm(0) + (0.4 * (whole - InnerRadiusMm(0)));
        return ((1 - share) * tip) + (share * whole);
    }

    /// <summary>Outer radius of the introducer, mm: fills the cannula and narrows beyond its tip down to the wire.</summary>
    /// <param name="fromTipMm">Distance from the cannula's tip, mm; negative beyond it.</param>
    public double IntroducerRadiusMm(double fromTipMm)
    {
        double full = InnerRadiusMm(Math.Max(fromTipMm, 0)) - PlayMm;
        double share = Math.Clamp(-fromTipMm / IntroducerBeyondTipMm, 0, 1);
        return ((1 - share) * full) + (share * (WireRadiusMm + 0.25));
    }

    /// <summary>Where the middle of the wire lies beside the curve: put back in, it leans against the wall; else it is in the middle.</summary>
    /// <param name="fromTipMm">Distance from the tip, mm; negative beyond it.</param>
    /// <returns>Parts along the frame, mm.</returns>
    public (double A, double B) WireOffsetMm(double fromTipMm)
    {
        if (State != AssemblyState.WireBackIn)
        {
            return (0, 0);
        }

        double lean = Math.Max(0, InnerRadiusMm(0) - WireRadiusMm - 0.3) * Math.Clamp((fromTipMm + 20) / 20, 0, 1);
        (double sin, double cos) = Math.SinCos((fromTipMm / 60) + (TurnDeg * Math.PI / 180));
        return (lean * cos, lean * sin);
    }

    /// <summary>Whether the wall has a hole at a place.</summary>
    /// <param name="fromTipMm">Distance from the tip, mm.</param>
    /// <param name="angle">Angle about the cannula, radians.</param>
    /// <param name="radiusMm">Radius at which the hole is asked for, mm.</param>
    public bool IsHole(double fromTipMm, double angle, double radiusMm)
    {
        foreach ((double from, double radius, double at) in holes)
        {
            double along = fromTipMm - from;
            if (Math.Abs(along) < radius)
            {
                double about = radiusMm * Math.IEEERemainder(angle - at, 2 * Math.PI);
                if ((along * along) + (about * about) < radius * radius)
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>The same with its wire elsewhere.</summary>
    /// <param name="beyondTipMm">How far the wire reaches beyond the tip, mm.</param>
    /// <exception cref="InputFaultException">The number is outside its bounds.</exception>
    public DeviceAssembly WithWire(double beyondTipMm) =>
        new(Cannula, State, Curve, TipMm, WireDiameterMm, beyondTipMm, IntroducerBeyondTipMm, TurnDeg, Winding);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Cannula.Id}, {State}, tip at {TipMm:F0} mm");

    // Spread evenly over the group's length, each a quarter turn from the last; where they look to one side, all in one row.
    private IEnumerable<(double FromTip, double Radius, double Angle)> Spread(HoleGroup group)
    {
        double turn = TurnDeg * Math.PI / 180;
        for (int i = 0; i < group.Count; i++)
        {
            double share = group.Count == 1 ? 0 : ((double)i / (group.Count - 1)) - 0.5;
            double room = Math.Max(0, group.SpanMm - group.DiameterMm);
            yield return (group.FromTipMm + (share * room), group.DiameterMm / 2, group.Facing == HoleFacing.OneSide ? turn : turn + (i * Math.PI / 2));
        }
    }
}
