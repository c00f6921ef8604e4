using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Mechanics.Insertion;

/// <summary>What a step moves, and how far it can.</summary>
internal sealed class StepPlan
{
    private readonly InsertionStep step;
    private readonly InsertionKit kit;
    private readonly InsertedAssembly from;
    private readonly double lead;

    /// <summary>Reads a step against what is inserted.</summary>
    /// <exception cref="InputFaultException">The step needs a device that the kit lacks.</exception>
    public StepPlan(InsertionStep step, InsertionKit kit, InsertedAssembly from)
    {
        (this.step, this.kit, this.from) = (step, kit, from);
        if (Moved is Device device && kit.Of(device) is null)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.Contradiction, "script.steps", step.Action.ToString(), "a step for a device of the kit", $"Give the kit its {device.ToString().ToLowerInvariant()}."));
        }

        Whole = Math.Abs(step.Amount);
        lead = step.Action == InsertionAction.AdvanceCannula && IntroducerGoesIn && from.Depths.IntroducerMm <= 0 ? kit.IntroducerLeadMm : 0;
        Whole = step.Action switch
        {
            InsertionAction.WithdrawWire => Math.Min(Whole, from.Depths.WireMm),
            InsertionAction.WithdrawIntroducer => Math.Min(Whole, from.Depths.IntroducerMm),
            InsertionAction.WithdrawCannula => Math.Min(Whole, Math.Max(from.Depths.CannulaMm, from.Depths.IntroducerMm)),
            _ => Whole + lead,
        };

        Fault = Refusal();
    }

    /// <summary>Length or angle to be moved, positive.</summary>
    public double Whole { get; }

    /// <summary>Why the step cannot begin.</summary>
    public RodFault? Fault { get; }

    private Device? Moved => step.Action switch
    {
        InsertionAction.FeedWire or InsertionAction.WithdrawWire => Device.Wire,
        InsertionAction.AdvanceCannula or InsertionAction.WithdrawCannula => Device.Cannula,
        InsertionAction.WithdrawIntroducer => Device.Introducer,
        _ => null,
    };

    /// <summary>What was done, with the sign that the step has.</summary>
    public double Signed(double done) => Math.CopySign(Math.Max(0, done - lead), step.Amount);

    /// <summary>Depths after a part of the step.</summary>
    public InsertedDepths DepthsAt(double done)
    {
        InsertedDepths d = from.Depths;
        return step.Action switch
        {
            InsertionAction.FeedWire => d with { WireMm = d.WireMm + done },
            InsertionAction.WithdrawWire => d with { WireMm = Out(d.WireMm - done) },
            InsertionAction.WithdrawIntroducer => d with { IntroducerMm = Out(d.IntroducerMm - done) },
            InsertionAction.AdvanceCannula => d with { CannulaMm = d.CannulaMm + Math.Max(0, done - lead), IntroducerMm = d.IntroducerMm + (IntroducerGoesIn ? done : 0) },
            InsertionAction.WithdrawCannula => d with { CannulaMm = Out(d.CannulaMm - done), IntroducerMm = Out(d.IntroducerMm - done) },
            _ => d,
        };
    }

    /// <summary>Turn at the skin after a part of the step.</summary>
    public double RotationAt(double done) => step.Action == InsertionAction.Rotate ? from.RotationRad + Signed(done) : from.RotationRad;

    private static double Out(double depth) => depth > 1e-9 ? depth : 0;

    /// <summary>The introducer goes in with the cannula from the start, its tip ahead; once pulled out it stays out.</summary>
    private bool IntroducerGoesIn => kit.Introducer is not null && (from.Depths.CannulaMm <= 0 || from.Depths.IntroducerMm > 0);

    private RodFault? Refusal()
    {
        InsertedDepths end = DepthsAt(Whole);
        foreach (Device device in Enum.GetValues<Device>())
        {
            if (kit.Of(device) is RodProfile profile && end.Of(device) > profile.LengthMm && end.Of(device) > from.Depths.Of(device))
            {
                return new RodFault(
                    RodFaultCause.DeviceTooShort,
                    FormattableString.Invariant($"The {device.ToString().ToLowerInvariant()} is {profile.LengthMm:F0} mm long; the step asks for {end.Of(device):F0} mm."), 0, 0);
            }
        }

        bool nothing = step.Action == InsertionAction.Rotate ? from.Rod is null : Whole <= 0 && step.Amount > 0;
        return nothing ? new RodFault(RodFaultCause.NothingToMove, "Nothing is inserted that this step could move.", 0, 0) : null;
    }
}
