using System.Collections.Frozen;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Outcomes;

/// <summary>A finished course as outcomes count it. It holds nothing that names a person.</summary>
public sealed record ProgrammeCase
{
    /// <summary>A finished course.</summary>
    /// <param name="key">Key within the programme, unique in one review; not a name and not a number of a register.</param>
    /// <param name="beganOn">Day on which support began; it orders the charts.</param>
    /// <param name="support">Kind of support at the start.</param>
    /// <param name="ageYears">Age, 0 to 120 years.</param>
    /// <param name="outcomes">What is known: true for happened, false for looked for and not found. What nobody recorded is left out.</param>
    /// <exception cref="InputFaultException">The key is empty, the age out of range, or an outcome does not exist.</exception>
    public ProgrammeCase(string key, DateOnly beganOn, SupportKind support, double ageYears, IReadOnlyDictionary<CountedOutcome, bool> outcomes)
    {
        ArgumentNullException.ThrowIfNull(outcomes);
        if (string.IsNullOrWhiteSpace(key))
        {
            throw new InputFaultException(new InputFault(FaultCode.MissingField, nameof(key), "(nothing)", "a key", "Give every case a key of its own."));
        }

        foreach (CountedOutcome kind in outcomes.Keys.Where(static k => !Enum.IsDefined(k)))
        {
            throw new InputFaultException(new InputFault(FaultCode.NotAChoice, nameof(outcomes), kind.ToString(), "an outcome that is counted", "Leave out what is not counted."));
        }

        (Key, BeganOn, Support) = (key, beganOn, support);
        AgeYears = Require.InRange(ageYears, 0, 120, nameof(ageYears), "Give the age in years.");
        Outcomes = outcomes.ToFrozenDictionary();
    }

    /// <summary>Key within the programme.</summary>
    public string Key { get; }

    /// <summary>Day on which support began.</summary>
    public DateOnly BeganOn { get; }

    /// <summary>Kind of support at the start.</summary>
    public SupportKind Support { get; }

    /// <summary>Age, years.</summary>
    public double AgeYears { get; }

    /// <summary>What is known of its outcomes.</summary>
    public IReadOnlyDictionary<CountedOutcome, bool> Outcomes { get; }

    /// <summary>Risk of death before discharge that a published score gave before support, 0.001 to 0.999; null when none was computed.</summary>
    /// <exception cref="InputFaultException">Out of range.</exception>
    public double? ExpectedDeath
    {
        get;
        init => field = value is double risk ? Require.InRange(risk, 0.001, 0.999, "expectedDeath", "Give the risk as a fraction, 0.4 for 40 %.") : null;
    }

    /// <summary>An outcome.</summary>
    /// <param name="kind">Which.</param>
    /// <returns>True, false, or null when nobody recorded it.</returns>
    public bool? Of(CountedOutcome kind) => Outcomes.TryGetValue(kind, out bool happened) ? happened : null;
}
