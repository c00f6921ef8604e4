using System.Collections.Concurrent;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Circuit;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Search;

/// <summary>Everything that does not depend on a configuration, computed once for a case.</summary>
internal sealed class PlanningContext
{
    private readonly ConcurrentDictionary<(string, LumenPurpose), PressureTable> tables = [];

    /// <summary>Prepares a case.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="catalogue">Devices.</param>
    /// <param name="rules">Rules.</param>
    /// <param name="options">Options.</param>
    public PlanningContext(CaseFile caseFile, DeviceCatalogue catalogue, RuleBook rules, PlanningOptions options)
    {
        (Case, Catalogue, Rules, Options) = (caseFile, catalogue, rules, options);
        Reading = new PatientReading(caseFile);
        Blood = new Fluid(Reading.DensityKgPerM3, Reading.Picture.BloodViscosityMPaS.Value * 1e-3);
        Axis = AxisFromCase.Distribution(caseFile, Reading.Habitus);
        Samples = AxisSampler.Draw(Axis, options.Anatomies, options.Seed);
        Landmarks = new AxisLandmarks(Samples);
        Rows = new AnatomyRows(Samples.Count);
        Zones = new ZoneBounds(rules.Zones, Landmarks, caseFile.Patient.HeightCm);
        Vessels = new AccessVessels(Samples, caseFile.Vessels);
        Facts = new CaseFacts(caseFile);
        LengthOutsideMm = caseFile.Access.LengthOutsideMm?.Value ?? rules[LimitName.LengthOutsideMm];
        Gas = new GasExchangeModel(Reading, caseFile, rules);
        Flows = new FlowPlanner(Reading, caseFile.Support, rules);
    }

    /// <summary>The case.</summary>
    public CaseFile Case { get; }

    /// <summary>Devices.</summary>
    public DeviceCatalogue Catalogue { get; }

    /// <summary>Rules.</summary>
    public RuleBook Rules { get; }

    /// <summary>Options.</summary>
    public PlanningOptions Options { get; }

    /// <summary>The patient's numbers.</summary>
    public PatientReading Reading { get; }

    /// <summary>This patient's blood as a liquid.</summary>
    public Fluid Blood { get; }

    /// <summary>This patient's axis as a distribution.</summary>
    public AxisDistribution Axis { get; }

    /// <summary>Sampled anatomies.</summary>
    public AxisSamples Samples { get; }

    /// <summary>Their landmarks.</summary>
    public AxisLandmarks Landmarks { get; }

    /// <summary>Rows for depth windows, used again by each configuration.</summary>
    public AnatomyRows Rows { get; }

    /// <summary>Zones of the ports.</summary>
    public ZoneBounds Zones { get; }

    /// <summary>Access vessels.</summary>
    public AccessVessels Vessels { get; }

    /// <summary>Facts of the case that finding rules ask for.</summary>
    public CaseFacts Facts { get; }

    /// <summary>Length left outside the skin, mm.</summary>
    public double LengthOutsideMm { get; }

    /// <summary>Least distance between drainage and return ports, mm. In a small body it shrinks with height as the zones do.</summary>
    public double SeparationMm => Rules[LimitName.PortSeparationMm] * Math.Min(1, Case.Patient.HeightCm / BodyHabitus.ReferenceHeightCm);

    /// <summary>Oxygen.</summary>
    public GasExchangeModel Gas { get; }

    /// <summary>Flows.</summary>
    public FlowPlanner Flows { get; }

    /// <summary>The tabulated pressure of a lumen with this patient's blood.</summary>
    /// <param name="cannula">The cannula.</param>
    /// <param name="purpose">Drainage or return.</param>
    /// <returns>The table.</returns>
    public PressureTable Pressure(Cannula cannula, LumenPurpose purpose) =>
        tables.GetOrAdd((cannula.Id, purpose), _ => new PressureTable(cannula, purpose, Blood));
}
