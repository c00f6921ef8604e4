using Cavaxis.Course.Criteria;
using Cavaxis.Quantities;

namespace Cavaxis.Course.GasExchange;

/// <summary>Published signs that a membrane lung fails. Each alone has other causes; the source says so itself.</summary>
public static class MembraneFailureSigns
{
    /// <summary>Oxygen fraction of the sweep gas from which the sign of the oxygen tension may be read: it was published for pure oxygen.</summary>
    public const double LowestOxygenFraction = 0.95;

    /// <summary>Sweep, L/min, from which the sign of the carbon dioxide tension may be read.</summary>
    public const double LowestSweepLPerMin = 10;

    private const string Alone = "Not proof by itself; other causes have to be ruled out.";

    private static Source Table { get; } = new("Lubnow et al. 2014, PLoS One 9:e112316, table 6", Certainty.Seen);

    /// <summary>Oxygen tension after the lung.</summary>
    public static Criterion PostPo2 { get; } = new(
        "postMembranePo2MmHg", "oxygen tension after the membrane lung on pure oxygen", CriterionComparison.Below, 200, "mmHg", Table,
        "Above 400 mmHg is acceptable in the same table. " + Alone);

    /// <summary>Carbon dioxide tension after the lung.</summary>
    public static Criterion PostPco2 { get; } = new(
        "postMembranePco2MmHg", "carbon dioxide tension after the membrane lung at 10 L/min of sweep or more", CriterionComparison.Above, 40, "mmHg", Table,
        "The table says above 40 to 45. " + Alone, new OtherThreshold(45, Table));

    /// <summary>Fall of carbon dioxide tension across the lung.</summary>
    public static Criterion Pco2Fall { get; } = new(
        "membranePco2FallMmHg", "fall of the carbon dioxide tension across the membrane lung at 10 L/min of sweep or more", CriterionComparison.Below, 5, "mmHg", Table, Alone);

    /// <summary>Rise of pressure drop over flow.</summary>
    public static Criterion DropRise { get; } = new(
        "membraneDropRisePercent", "rise of pressure drop over flow since the reference", CriterionComparison.AtLeast, 30, "%", Table,
        "The table says 30 to 50 %. " + Alone, new OtherThreshold(50, Table));

    /// <summary>D-dimer.</summary>
    public static Criterion DDimer { get; } = new(
        "dDimerMgPerL", "D-dimer", CriterionComparison.Above, 25, "mg/L", Table, "The table says above 25 to 30. " + Alone, new OtherThreshold(30, Table));

    /// <summary>Fibrinogen.</summary>
    public static Criterion Fibrinogen { get; } = new("fibrinogenGPerL", "fibrinogen", CriterionComparison.Below, 2, "g/L", Table, Alone);

    /// <summary>Platelets.</summary>
    public static Criterion Platelets { get; } = new(
        "plateletsGPerL", "platelets", CriterionComparison.AtMost, 50, "10⁹/L", Table, "The table calls above 50 acceptable and a continuous or rapid fall a sign. " + Alone);

    /// <summary>Free haemoglobin.</summary>
    public static Criterion FreeHaemoglobin { get; } = new(
        "freeHaemoglobinMgPerL", "free haemoglobin of plasma", CriterionComparison.Above, 300, "mg/L", Table, "Clot in the pump head. " + Alone);

    /// <summary>Lactate dehydrogenase.</summary>
    public static Criterion LactateDehydrogenase { get; } = new(
        "lactateDehydrogenaseUPerL", "lactate dehydrogenase", CriterionComparison.Above, 1000, "U/L", Table, "Clot in the pump head. " + Alone);

    /// <summary>Bound oxygen against the catalogue.</summary>
    public static Criterion BoundOverExpected { get; } = new(
        "membraneBoundOverExpected", "oxygen bound over what the catalogue's lung would bind", CriterionComparison.Below, 0.8, "1",
        new Source("a fifth below the model of a new lung, whose own error is of that size (docs/models/devices.md)", Certainty.Assumption), Alone);

    /// <summary>All.</summary>
    public static IReadOnlyList<Criterion> All { get; } =
        [PostPo2, PostPco2, Pco2Fall, DropRise, BoundOverExpected, DDimer, Fibrinogen, Platelets, FreeHaemoglobin, LactateDehydrogenase];
}
