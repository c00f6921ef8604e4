namespace Cavaxis.Planning.Case;

/// <summary>One patient and the question, as the case file gives them. Everything but age, sex, height and weight may be missing.</summary>
[Meaning("A case for planning extracorporeal support. Everything but age, sex, height and weight may be left out or be \"unknown\".")]
public sealed record CaseFile
{
    /// <summary>Version of the format this program writes and reads.</summary>
    public const int CurrentVersion = 1;

    /// <summary>Version of the format.</summary>
    [Meaning("Version of the case format.")]
    [Number(1, 1, "1")]
    public required int CavaxisCase { get; init; }

    /// <summary>Title for people.</summary>
    [Meaning("A title for people; no names of real persons or places.")]
    [Text(200)]
    public string? Title { get; init; }

    /// <summary>True when the case is invented for demonstration or teaching.</summary>
    [Meaning("True when the case is invented for demonstration or teaching.")]
    public bool Invented { get; init; }

    /// <summary>Free notes.</summary>
    [Meaning("Free notes; not used in any calculation.")]
    [Text(4000)]
    public string? Notes { get; init; }

    /// <summary>Age, sex and size.</summary>
    [Meaning("Age, sex and size.")]
    public required PatientSection Patient { get; init; }

    /// <summary>What the support is for.</summary>
    [Meaning("What the support is for and what it should reach.")]
    public SupportSection Support { get; init; } = new();

    /// <summary>Blood.</summary>
    [Meaning("Blood gas, haemoglobin, temperature.")]
    public BloodSection Blood { get; init; } = new();

    /// <summary>Heart.</summary>
    [Meaning("Cardiac findings.")]
    public HeartSection Heart { get; init; } = new();

    /// <summary>Vessel survey.</summary>
    [Meaning("Ultrasound survey of the access vessels, one entry for each vessel and side.")]
    [Text(40)]
    public IReadOnlyList<VesselEntry> Vessels { get; init; } = [];

    /// <summary>Axis measurements.</summary>
    [Meaning("Measurements of the cavo-atrial axis, each with its error and the edges it was taken between.")]
    [Text(60)]
    public IReadOnlyList<AxisEntry> Axis { get; init; } = [];

    /// <summary>How the vessels are to be entered.</summary>
    [Meaning("How the vessels are to be entered, where that is decided.")]
    public AccessSection Access { get; init; } = new();

    /// <summary>Obstacles.</summary>
    [Meaning("Things in the way of a wire or a cannula.")]
    public ObstacleSection Obstacles { get; init; } = new();

    /// <summary>What is on hand.</summary>
    [Meaning("Imaging and tools on hand.")]
    public ResourceSection Resources { get; init; } = new();

    /// <summary>Ventilation.</summary>
    [Meaning("How the patient breathes or is ventilated at the time of the observations.")]
    public VentilationSection Ventilation { get; init; } = new();

    /// <summary>Support as it runs.</summary>
    [Meaning("Support as it runs, for the circulation; planning does not use it.")]
    public RunningSection Running { get; init; } = new();

    /// <summary>Bedside observations.</summary>
    [Meaning("What was read at the bedside at one time, with the support that ran then; for calibration.")]
    public ObservationSection Observations { get; init; } = new();

    /// <summary>Devices on hand.</summary>
    [Meaning("Identifiers of the devices on hand; leave out to consider the whole catalogue.")]
    [Text(200)]
    public IReadOnlyList<string> DevicesOnHand { get; init; } = [];
}
