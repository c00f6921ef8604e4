using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.GasExchange;

/// <summary>What was read at a membrane lung at one time. Whatever was not read stays null, and what hangs on it has no answer.</summary>
public sealed record MembraneLungReadings
{
    /// <summary>Readings.</summary>
    /// <param name="flowLPerMin">Blood flow, above 0 to 15 L/min.</param>
    /// <exception cref="InputFaultException">The flow is out of range.</exception>
    public MembraneLungReadings(Estimate flowLPerMin)
    {
        ArgumentNullException.ThrowIfNull(flowLPerMin);
        Require.InRange(flowLPerMin.Value, 0.05, 15, nameof(flowLPerMin), "Give the blood flow in L/min.");
        FlowLPerMin = flowLPerMin;
    }

    /// <summary>Blood flow, L/min.</summary>
    public Estimate FlowLPerMin { get; }

    /// <summary>Haemoglobin, g/dL.</summary>
    public Estimate? HaemoglobinGPerDl { get; init => field = Checked(value, 3, 25, "haemoglobinGPerDl", "Give haemoglobin in g/dL."); }

    /// <summary>Oxygen of the blood before.</summary>
    public OxygenSample? Pre { get; init; }

    /// <summary>Oxygen of the blood after.</summary>
    public OxygenSample? Post { get; init; }

    /// <summary>Carbon dioxide tension before, mmHg.</summary>
    public Estimate? PrePco2MmHg { get; init => field = Checked(value, 5, 200, "prePco2MmHg", "Give the tension in mmHg."); }

    /// <summary>Carbon dioxide tension after, mmHg.</summary>
    public Estimate? PostPco2MmHg { get; init => field = Checked(value, 3, 200, "postPco2MmHg", "Give the tension in mmHg."); }

    /// <summary>Base excess of the blood, mmol/L; the same on both sides, because only carbon dioxide and oxygen pass.</summary>
    public Estimate? BaseExcessMmolPerL { get; init => field = Checked(value, -25, 25, "baseExcessMmolPerL", "Give the base excess in mmol/L."); }

    /// <summary>Pressure before, mmHg.</summary>
    public Estimate? PrePressureMmHg { get; init => field = Checked(value, -100, 900, "prePressureMmHg", "Give the pressure in mmHg."); }

    /// <summary>Pressure after, mmHg.</summary>
    public Estimate? PostPressureMmHg { get; init => field = Checked(value, -100, 900, "postPressureMmHg", "Give the pressure in mmHg."); }

    /// <summary>Sweep gas, L/min.</summary>
    public Estimate? SweepLPerMin { get; init => field = Checked(value, 0, 20, "sweepLPerMin", "Give the sweep gas flow in L/min."); }

    /// <summary>Oxygen fraction of the sweep gas.</summary>
    public Estimate? SweepOxygenFraction { get; init => field = Checked(value, 0.21, 1, "sweepOxygenFraction", "Give a fraction, 0.6 for 60 %."); }

    /// <summary>Carbon dioxide tension of the gas that leaves, mmHg.</summary>
    public Estimate? ExhaustPco2MmHg { get; init => field = Checked(value, 0, 150, "exhaustPco2MmHg", "Give the tension in mmHg."); }

    /// <summary>D-dimer, mg/L.</summary>
    public Estimate? DDimerMgPerL { get; init; }

    /// <summary>Fibrinogen, g/L.</summary>
    public Estimate? FibrinogenGPerL { get; init; }

    /// <summary>Platelets, 10⁹/L.</summary>
    public Estimate? PlateletsGPerL { get; init; }

    /// <summary>Free haemoglobin of plasma, mg/L.</summary>
    public Estimate? FreeHaemoglobinMgPerL { get; init; }

    /// <summary>Lactate dehydrogenase, U/L.</summary>
    public Estimate? LactateDehydrogenaseUPerL { get; init; }

    private static Estimate? Checked(Estimate? value, double low, double high, string field, string remedy)
    {
        if (value is not null)
        {
            Require.InRange(value.Value, low, high, field, remedy);
        }

        return value;
    }
}
