using System.Collections.Immutable;
using Cavaxis.Anatomy.Body;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Support;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Running;

/// <summary>What to compute: one patient's circulation and body, and how the pump returns.</summary>
public sealed record ArterialSupportRequest
{
    /// <summary>A request.</summary>
    /// <param name="circulation">Numbers of the circulation, from a preset or fitted; its pump is set by the other arguments, its balloon volume is kept.</param>
    /// <param name="body">Age, sex and size.</param>
    /// <param name="entry">How the pump returns; null for no support.</param>
    /// <param name="pumpFlowLPerMin">Flow into the artery, 0 to 10 L/min; not used without support.</param>
    /// <exception cref="InputFaultException">The flow is out of range.</exception>
    public ArterialSupportRequest(CirculationParameters circulation, BodyHabitus body, ArterialReturn? entry, double pumpFlowLPerMin)
    {
        ArgumentNullException.ThrowIfNull(circulation);
        ArgumentNullException.ThrowIfNull(body);
        Circulation = circulation;
        Body = body;
        Return = entry;
        PumpFlowLPerMin = entry is null ? 0 : Require.InRange(pumpFlowLPerMin, 0.2, 10, "pumpFlowLPerMin", "Give the flow that the pump returns into the artery.");
    }

    /// <summary>Numbers of the circulation.</summary>
    public CirculationParameters Circulation { get; }

    /// <summary>Age, sex and size.</summary>
    public BodyHabitus Body { get; }

    /// <summary>How the pump returns; null for no support.</summary>
    public ArterialReturn? Return { get; }

    /// <summary>Pump flow, L/min.</summary>
    public double PumpFlowLPerMin { get; init; }

    /// <summary>Measured diameters of access arteries; populations stand in for the others.</summary>
    public ImmutableArray<MeasuredDiameter> Measured { get; init; } = [];

    /// <summary>Factor on the end-systolic elastance of the left ventricle, 0.05 to 10.</summary>
    public double ContractilityFactor { get; init; } = 1;

    /// <summary>False to leave the two varied trees out: no intervals of mixing zone and saturations, a third of the time.</summary>
    public bool WithIntervals { get; init; } = true;

    /// <summary>True where the compliance of the circulation belongs to this patient, so that age must not change it again.</summary>
    public bool ComplianceIsPatients { get; init; }
}
