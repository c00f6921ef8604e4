using System.Globalization;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.Commands;

/// <summary>Reads the options of <c>plan</c>; every fault names option, value and range.</summary>
internal static class PlanOptionsReader
{
    /// <summary>Largest seed: whole numbers above it lose digits in other programs that read the JSON.</summary>
    public const ulong LargestSeed = 1UL << 53;

    /// <summary>In more anatomies than these one tries one plan, by <c>insertion</c>.</summary>
    private const ulong MostInsertions = 1000;

    /// <summary>Reads the options.</summary>
    /// <param name="settings">Settings as typed.</param>
    /// <returns>The options.</returns>
    /// <exception cref="InputFaultException">Every option that cannot be used.</exception>
    public static PlanningOptions Read(PlanSettings settings)
    {
        List<InputFault> faults = [];
        ulong anatomies = Whole(
            "--anatomies", settings.Anatomies, PlanningOptions.FewestAnatomies, PlanningOptions.MostAnatomies, faults);
        ulong seed = Whole("--seed", settings.Seed, 0, LargestSeed, faults);
        ulong plan = Whole("--plan", settings.Plan, 1, 100, faults);
        Dictionary<CriterionName, double> weights = Weights(settings.Weights, faults);
        return faults.Count > 0
            ? throw new InputFaultException(faults)
            : new PlanningOptions { Anatomies = (int)anatomies, Seed = seed, ChosenRank = (int)plan, Weights = weights, Circulation = !settings.Quick };
    }

    /// <summary>Reads what is asked of the insertion.</summary>
    /// <param name="settings">Settings as typed.</param>
    /// <returns>The options; null where none is asked.</returns>
    /// <exception cref="InputFaultException">The number cannot be used.</exception>
    public static InsertionOptions? Insertion(PlanSettings settings)
    {
        if (settings.Insertion is null)
        {
            return null;
        }

        List<InputFault> faults = [];
        ulong anatomies = Whole("--insertion", settings.Insertion, InsertionOptions.FewestAnatomies, MostInsertions, faults);
        return faults.Count > 0 ? throw new InputFaultException(faults) : new InsertionOptions { Anatomies = (int)anatomies };
    }

    /// <summary>A whole number in a range; a fault is added where it is none.</summary>
    internal static ulong Whole(string option, string text, ulong low, ulong high, List<InputFault> faults)
    {
        if (ulong.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out ulong value) && value >= low && value <= high)
        {
            return value;
        }

        faults.Add(new InputFault(
            FaultCode.BadOption, option, text.Length == 0 ? "(nothing)" : InputFault.Shown(text), FormattableString.Invariant($"a whole number from {low} to {high}"), "Give such a number or leave the option out."));
        return low;
    }

    private static Dictionary<CriterionName, double> Weights(string? text, List<InputFault> faults)
    {
        Dictionary<CriterionName, double> weights = [];
        string known = string.Join(", ", Enum.GetNames<CriterionName>().Select(JsonName.Of));
        foreach (string part in (text ?? string.Empty).Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            string[] pair = part.Split('=', 2, StringSplitOptions.TrimEntries);
            bool named = Enum.GetNames<CriterionName>().Any(name => JsonName.Of(name) == pair[0]);
            if (!named)
            {
                faults.Add(new InputFault(FaultCode.NotAChoice, "--weights", pair[0].Length == 0 ? "(nothing)" : InputFault.Shown(pair[0]), known, "Give criteria by these names."));
            }
            else if (pair.Length < 2
                || !double.TryParse(pair[1], NumberStyles.Float, CultureInfo.InvariantCulture, out double weight)
                || !(weight >= 0 && weight <= 100))
            {
                faults.Add(new InputFault(
                    FaultCode.OutOfRange, $"--weights {pair[0]}", InputFault.Shown(part), "a number from 0 to 100", "Give a weight such as fit=6; 0 leaves the criterion out."));
            }
            else if (!weights.TryAdd(Enum.Parse<CriterionName>(pair[0], ignoreCase: true), weight))
            {
                faults.Add(new InputFault(FaultCode.DuplicateField, "--weights", InputFault.Shown(pair[0]), "each criterion once", "Drop one of the two."));
            }
        }

        return weights;
    }
}
