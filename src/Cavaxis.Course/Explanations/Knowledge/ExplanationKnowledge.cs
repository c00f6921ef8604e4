using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Cavaxis.Course.Observations;

namespace Cavaxis.Course.Explanations.Knowledge;

/// <summary>
/// What the explanations know: causes, signs and trade knowledge (<c>catalogue/explanations.json</c>), and what causes do to patients of the
/// library as the circulation model has it (<c>catalogue/explanation-patterns.json</c>). Both built in.
/// </summary>
public sealed class ExplanationKnowledge
{
    private static readonly JsonSerializerOptions Reading = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false) },
    };

    private static readonly KnowledgeFile Written = Read<KnowledgeFile>("explanations.json");

    private readonly Dictionary<ObservedQuantity, int> places;
    private readonly Dictionary<string, double> correlations;

    private ExplanationKnowledge(
        string version, ImmutableArray<CauseDefinition> causes, ImmutableArray<SignDefinition> signs, ImmutableArray<TradeSign> trade, ImmutableArray<PatternPatient> patients)
    {
        (Version, Causes, Signs, TradeSigns, Patients) = (version, causes, signs, trade, patients);
        places = signs.Select(static (s, i) => (s.Quantity, i)).ToDictionary(static x => x.Quantity, static x => x.i);
        correlations = Written.Groups.ToDictionary(static g => g.Name, static g => g.Correlation, StringComparer.Ordinal);
    }

    /// <summary>The built-in knowledge.</summary>
    public static ExplanationKnowledge BuiltIn { get; } = Load();

    /// <summary>Versions and dates of the two files, as shown beside every result.</summary>
    public string Version { get; }

    /// <summary>Causes, in the order of <see cref="CauseOfChange"/>.</summary>
    public ImmutableArray<CauseDefinition> Causes { get; }

    /// <summary>Signs.</summary>
    public ImmutableArray<SignDefinition> Signs { get; }

    /// <summary>Trade knowledge.</summary>
    public ImmutableArray<TradeSign> TradeSigns { get; }

    /// <summary>Patients of the library with their patterns.</summary>
    public ImmutableArray<PatternPatient> Patients { get; }

    /// <summary>Whether a cause can be on a kind of support.</summary>
    /// <param name="cause">Cause.</param>
    /// <param name="support">Kind.</param>
    /// <returns>True where it can.</returns>
    public static bool CanBe(CauseOfChange cause, SupportKind support) => Written.Causes[(int)cause].PriorOdds.ContainsKey(support);

    /// <summary>Place of a quantity among the signs.</summary>
    /// <param name="quantity">Which.</param>
    /// <returns>Its place; −1 where it is no sign.</returns>
    public int PlaceOf(ObservedQuantity quantity) => places.GetValueOrDefault(quantity, -1);

    /// <summary>Correlation of the errors within a group of signs; zero for a sign alone.</summary>
    /// <param name="group">Name of the group.</param>
    /// <returns>0 to below 1.</returns>
    public double CorrelationOf(string group) => correlations.GetValueOrDefault(group);

    /// <summary>The same with patterns of other patients, such as those of a fitted one.</summary>
    /// <param name="patients">Patterns, built for these signs.</param>
    /// <returns>The new knowledge.</returns>
    public ExplanationKnowledge WithPatients(IEnumerable<PatternPatient> patients) => new(Version, Causes, Signs, TradeSigns, [.. patients]);

    /// <summary>The same with other relative frequencies, such as those of a programme.</summary>
    /// <param name="odds">Relative frequency of each cause; those not named keep theirs.</param>
    /// <returns>The new knowledge.</returns>
    public ExplanationKnowledge WithPriorOdds(Func<CauseOfChange, double> odds)
    {
        ArgumentNullException.ThrowIfNull(odds);
        CauseDefinition Changed(CauseDefinition c) => c with { PriorOdds = c.PriorOdds.ToImmutableDictionary(static p => p.Key, _ => Math.Max(0, odds(c.Cause))) };
        return new ExplanationKnowledge(Version, [.. Causes.Select(Changed)], Signs, TradeSigns, Patients);
    }

    private static ExplanationKnowledge Load()
    {
        PatternFile patterns = Read<PatternFile>("explanation-patterns.json");
        if (!Written.Causes.Select(static c => c.Cause).SequenceEqual(Enum.GetValues<CauseOfChange>()))
        {
            throw new InvalidOperationException("The table of causes and the list of causes differ.");
        }

        ImmutableArray<PatternPatient> patients = patterns.Signs.SequenceEqual(Written.Signs.Select(static s => s.Quantity)) ? patterns.Patients : [];
        string version = FormattableString.Invariant($"knowledge {Written.Version} of {Written.Date}, patterns {patterns.Version} of {patterns.Date}");
        return new ExplanationKnowledge(version, Written.Causes, Written.Signs, Written.TradeSigns, patients);
    }

    private static T Read<T>(string name)
    {
        using Stream stream = typeof(ExplanationKnowledge).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException("A table of the explanations is missing from the assembly.");
        return JsonSerializer.Deserialize<T>(stream, Reading) ?? throw new InvalidOperationException("A table of the explanations is empty.");
    }

    private sealed record KnowledgeFile(
        string Version, string Date, ImmutableArray<GroupRow> Groups, ImmutableArray<CauseDefinition> Causes, ImmutableArray<SignDefinition> Signs, ImmutableArray<TradeSign> TradeSigns);

    private sealed record GroupRow(string Name, double Correlation);

    private sealed record PatternFile(string Version, string Date, ImmutableArray<ObservedQuantity> Signs, ImmutableArray<PatternPatient> Patients);
}
