using System.Globalization;
using Cavaxis.Anatomy.Body;
using Cavaxis.Cli.Commands;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Rapid;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.RapidVerbs;

/// <summary>Turns the options of <c>rapid</c> as typed into what the engine takes, with every fault at once.</summary>
internal sealed class RapidOptionsReader
{
    private const ulong LargestSeed = long.MaxValue;
    private readonly List<InputFault> faults = [];
    private readonly RapidSettings settings;

    private RapidOptionsReader(RapidSettings settings) => this.settings = settings;

    /// <summary>Reads the options.</summary>
    /// <param name="settings">Settings as typed.</param>
    /// <param name="criteria">The questions that can be answered.</param>
    /// <returns>What is known.</returns>
    /// <exception cref="InputFaultException">Every option that cannot be used.</exception>
    public static RapidInput Read(RapidSettings settings, RapidCriteria criteria) => new RapidOptionsReader(settings).Input(criteria);

    private RapidInput Input(RapidCriteria criteria)
    {
        double? age = Number("--age", settings.Age, 0, 110, "years", true);
        double? weight = Number("--weight", settings.Weight, 2, 350, "kg", true);
        double? height = Number("--height", settings.Height, 40, 230, "cm", false);
        Sex? sex = Word<Sex>("--sex", settings.Sex ?? string.Empty);
        RapidSituation[] situations = [.. settings.Situations.Select(name => Word<RapidSituation>("--situation", name)).OfType<RapidSituation>().Distinct()];
        VesselEntry[] vessels = [.. settings.Vessels.Select(Vessel).OfType<VesselEntry>()];
        foreach (IGrouping<(VesselName, BodySide), VesselEntry> twice in vessels.GroupBy(static v => (v.Vessel, v.Side)).Where(static g => g.Count() > 1))
        {
            faults.Add(new InputFault(FaultCode.DuplicateField, "--vessel", JsonName.Of(twice.Key.Item1.ToString()), "each vessel of a side once", "Drop one of the two."));
        }

        ulong seed = PlanOptionsReader.Whole("--seed", settings.Seed, 0, LargestSeed, faults);
        ArrestClock clock = Caught(Clock) ?? ArrestClock.Unknown;
        IReadOnlyList<RapidAnswer> answers = Caught(() => AnswerReader.Read(criteria, settings.Answers)) ?? [];
        return faults.Count > 0 || age is null || sex is null || weight is null
            ? throw new InputFaultException(faults)
            : new RapidInput(age.Value, sex.Value, weight.Value)
            {
                HeightCm = height,
                Situations = situations,
                Clock = clock,
                Answers = answers,
                Vessels = vessels,
                Seed = seed,
            };
    }

    private ArrestClock Clock()
    {
        double? noFlow = Number("--no-flow", settings.NoFlow, 0, 240, "min", false);
        double? lowFlow = Number("--low-flow", settings.LowFlow, 0, 720, "min", false);
        double? toFlow = Number("--to-flow", settings.ToFlow, 0, 240, "min", false);
        TimeOnly? collapse = Time("--collapse", settings.Collapse);
        TimeOnly? compressions = Time("--compressions", settings.Compressions);
        TimeOnly? now = Time("--now", settings.Now);
        bool times = settings.Collapse is not null || settings.Compressions is not null || settings.Now is not null;
        if (times && (settings.NoFlow is not null || settings.LowFlow is not null))
        {
            faults.Add(new InputFault(FaultCode.Contradiction, "--no-flow, --low-flow", "minutes and times", "minutes, or times with --now", "Give the clock in one of the two ways."));
        }
        else if (times && settings.Now is null)
        {
            faults.Add(new InputFault(FaultCode.MissingField, "--now", "(nothing)", "a time such as 14:05", "Give the time now; the clock of the machine is not read."));
        }

        return times && now is TimeOnly at ? ArrestClock.FromTimes(collapse, compressions, at, toFlow) : ArrestClock.FromMinutes(noFlow, lowFlow, toFlow);
    }

    private VesselEntry? Vessel(string text)
    {
        string[] pair = text.Split('=', 2, StringSplitOptions.TrimEntries);
        string[] place = pair[0].Split('.', 2);
        if (pair.Length < 2 || place.Length < 2)
        {
            faults.Add(new InputFault(FaultCode.BadOption, "--vessel", text.Length == 0 ? "(nothing)" : InputFault.Shown(text), "NAME.SIDE=SEEN", "Give a vessel such as commonFemoralArtery.right=7.5."));
            return null;
        }

        VesselName? vessel = Word<VesselName>("--vessel", place[0]);
        BodySide? side = Word<BodySide>("--vessel", place[1]);
        if (vessel is null || side is null)
        {
            return null;
        }

        VesselEntry entry = new() { Vessel = vessel.Value, Side = side.Value };
        switch (pair[1])
        {
            case "open":
                return entry with { Patency = Patency.Patent };
            case "narrowed":
                return entry with { Patency = Patency.Narrowed };
            case "occluded":
                return entry with { Patency = Patency.Occluded };
            case "clot":
                return entry with { Thrombus = Finding.Present };
            default:
                const double UsualSdMm = 0.7;
                return Number("--vessel", pair[1], 0.5, 45, "mm, or open, narrowed, occluded, clot", true) is double mm
                    ? entry with { DiameterMm = new Measurement(mm, UsualSdMm, false), Patency = Patency.Patent }
                    : null;
        }
    }

    private double? Number(string option, string? text, double low, double high, string unit, bool needed)
    {
        if (text is null && !needed)
        {
            return null;
        }

        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) && value >= low && value <= high)
        {
            return value;
        }

        faults.Add(new InputFault(
            text is null ? FaultCode.MissingField : FaultCode.BadOption, option, string.IsNullOrEmpty(text) ? "(nothing)" : InputFault.Shown(text),
            string.Create(CultureInfo.InvariantCulture, $"a number from {low:0.##} to {high:0.##} {unit}"), needed ? "Give such a number; a guess is better than none." : "Give such a number or leave the option out."));
        return null;
    }

    private TimeOnly? Time(string option, string? text)
    {
        if (text is null)
        {
            return null;
        }

        if (TimeOnly.TryParseExact(text, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly time))
        {
            return time;
        }

        faults.Add(new InputFault(FaultCode.BadOption, option, text.Length == 0 ? "(nothing)" : InputFault.Shown(text), "a time from 00:00 to 23:59", "Give hours and minutes such as 14:05."));
        return null;
    }

    private T? Word<T>(string option, string text)
        where T : struct, Enum
    {
        IReadOnlyList<string> words = JsonName.WordsOf(typeof(T));
        int index = words.ToList().IndexOf(text);
        if (index >= 0)
        {
            return Enum.GetValues<T>()[index];
        }

        faults.Add(new InputFault(
            text.Length == 0 ? FaultCode.MissingField : FaultCode.NotAChoice, option, text.Length == 0 ? "(nothing)" : InputFault.Shown(text), string.Join(", ", words), "Give one of these words."));
        return null;
    }

    private T? Caught<T>(Func<T> read)
        where T : class
    {
        try
        {
            return read();
        }
        catch (InputFaultException fault)
        {
            faults.AddRange(fault.Faults);
            return null;
        }
    }
}
