namespace Cavaxis.Course.Outcomes;

/// <summary>All outcomes that are counted. The definitions are conventions of this project; a registry has its own.</summary>
public static class OutcomeDefinitions
{
    private static readonly SupportKind[] Everyone = Enum.GetValues<SupportKind>();

    /// <summary>All, in the order of <see cref="CountedOutcome"/>.</summary>
    public static IReadOnlyList<OutcomeDefinition> All { get; } =
    [
        new(CountedOutcome.SurvivedToDischarge, "left hospital alive", Everyone, true, string.Empty),
        new(CountedOutcome.Weaned, "weaned from support", Everyone, true, "Weaning is not survival."),
        new(CountedOutcome.Malposition, "malposition of a cannula", Everyone, false, "Found only where it was looked for."),
        new(CountedOutcome.LimbIschaemia, "limb ischaemia", [SupportKind.VenoArterial, SupportKind.Resuscitation, SupportKind.VenoArterialVenous], false, "Counted of those with a cannula in an artery."),
        new(CountedOutcome.VenousThrombosis, "thrombosis of a cannulated vein", Everyone, false, "Counted only of those who were imaged; series that look at everyone find far more than series that do not."),
        new(CountedOutcome.Bleeding, "bleeding", Everyone, false, string.Empty),
        new(CountedOutcome.Haemolysis, "haemolysis", Everyone, false, string.Empty),
        new(CountedOutcome.Stroke, "stroke or bleeding within the skull", Everyone, false, string.Empty),
        new(CountedOutcome.CircuitExchange, "exchange of membrane lung or circuit", Everyone, false, "Longer runs have more."),
        new(CountedOutcome.Infection, "infection", Everyone, false, "Longer runs have more."),
    ];

    /// <summary>The definition of an outcome.</summary>
    /// <param name="kind">Which.</param>
    /// <returns>Its definition.</returns>
    public static OutcomeDefinition Of(CountedOutcome kind) => All[(int)kind];
}
