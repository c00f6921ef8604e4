using System.Globalization;
using Cavaxis.Anatomy.Body;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Course.Patients;

/// <summary>An event in one line of plain words, with units.</summary>
public static class TimelineWords
{
    private const int MostReadings = 6;

    /// <summary>The line.</summary>
    /// <param name="happened">The event.</param>
    /// <returns>One line without line breaks.</returns>
    public static string Of(CourseEvent happened) => string.Join(' ', Words(happened).Split(['\r', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));

    /// <summary>A reading in words.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>Such as "pump flow 4.2 L/min".</returns>
    public static string Of(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        QuantityDefinition of = QuantityTable.Of(reading.Quantity);
        string spread = reading.Sd is double sd ? $" ± {Number(sd)}" : string.Empty;
        return $"{of.Words} {Number(reading.Value)}{spread}{(of.Unit == "1" ? string.Empty : " " + of.Unit)}";
    }

    private static string Words(CourseEvent happened) => happened switch
    {
        CaseSaved e => $"Case saved{After(e.Change)}",
        PlanChosen e => $"Plan chosen: {e.Name}{After(e.Reason)}",
        StepDone e => StepWords(e),
        StepSkipped e => $"Step {Number(e.Step)} passed over: {e.Action}{After(e.Reason)}",
        CannulaPlaced e => $"Cannula \"{e.Cannula}\" placed ({PlainWords.Role(e.Role)}{Joined(", ", e.OuterDiameterFrench is double f ? $"{Number(f)} Fr" : null, Side(e.Side), e.Route is { } route ? PlainWords.Route(route) : null)}){Depth(e.DepthCm)}{Turn(e.TurnDeg)}{After(e.Remark)}",
        PositionRead e => $"Position of \"{e.Cannula}\" by {Name(e.SeenBy)}{Depth(e.DepthCm)}{Turn(e.TurnDeg)}{Place("tip", e.Tip)}{Place("return port", e.ReturnPort)}{Place("first hole", e.FirstHole)}{After(e.Remark)}",
        CannulaMoved e => $"Cannula \"{e.Cannula}\" moved{(e.FromDepthCm is double from ? $" from {Number(from)} cm" : string.Empty)}{Depth(e.DepthCm)}{Turn(e.TurnDeg)}, {(e.SeenBy is { } sight ? $"watched by {Name(sight)}" : "not watched")}{After(e.Reason)}",
        CannulaRemoved e => $"Cannula \"{e.Cannula}\" removed, {Name(e.Method)}{(e.ClotOnCannula is bool clot ? clot ? ", clot on it" : ", no clot on it" : string.Empty)}{After(e.Remark)}",
        SupportStarted e => $"Support started, {Configuration(e.Configuration)}{Readings(e.Readings, ": ")}{After(e.Remark)}",
        SupportChanged e => $"Support changed, {Configuration(e.Configuration)}{After(e.Reason)}",
        SupportEnded e => $"Support ended, {Name(e.Reason)}{After(e.Remark)}",
        Observed e => $"{Upper(Readings(e.Readings, string.Empty))}{(e.Import is null ? string.Empty : " (from a file)")}{After(e.Remark)}",
        AnticoagulationSet e => $"Anticoagulation: {Name(e.Agent)}{(e.Dose is double dose ? $" {Number(dose)} {e.DoseUnit}" : string.Empty)}{string.Concat(e.Targets.Select(Target))}{After(e.Reason)}",
        AnticoagulationChecked e => $"Anticoagulation checked: {Readings(e.Readings, string.Empty)}{After(e.Action)}",
        ImagingDone e => $"{Upper(Name(e.Modality))}: {e.Finding}",
        ComplicationSeen e => $"Complication: {Name(e.Complication)}{(e.Side is { } at ? $", {Side(at)}" : string.Empty)}, {Name(e.Gravity)}{After(e.Description)}",
        ComplicationEnded e => $"Complication of entry {Number(e.ComplicationEntry)} over{(e.Gravity is { } gravity ? $", {Name(gravity)}" : string.Empty)}{After(e.Result)}",
        WeaningStarted e => $"Weaning trial started, {Name(e.Method)}{Readings(e.Readings, ": ")}{After(e.Remark)}",
        WeaningStepped e => $"Weaning step{Joined(", ", e.FlowLPerMin is double flow ? $"flow {Number(flow)} L/min" : null, e.SweepLPerMin is double sweep ? $"sweep gas {Number(sweep)} L/min" : null, e.SweepOxygenFraction is double oxygen ? $"oxygen fraction of the sweep gas {Number(oxygen)}" : null, e.MinutesHeld is double held ? $"held {Number(held)} min" : null)}{Readings(e.Readings, ": ")}{After(e.Remark)}",
        WeaningEnded e => $"Weaning trial ended, {Name(e.End)}{After(e.Reason)}",
        FollowUpPlanned e => $"Follow-up planned: {e.What}, from {e.DueFrom} to {e.DueBy}",
        FollowUpFound e => $"Follow-up: {string.Join("; ", e.Veins.Select(Vein).Append(e.Finding).Append(e.Treatment is null ? null : $"treatment: {e.Treatment}").Where(static t => t is not null))}",
        OpinionAsked e => $"Second opinion asked (pack {e.Pack}): {e.Question}",
        OpinionAnswered e => $"Second opinion answered (pack {e.Pack}{(e.AnsweredBy is null ? string.Empty : $", {e.AnsweredBy}")}): {e.Answer}",
        OutcomeNoted e => $"Outcome: {Name(e.Outcome)}{After(e.Remark)}",
        NoteWritten e => e.Text,
        EntryWithdrawn e => $"Withdrawn{After(e.Reason)}",
        _ => throw new ArgumentOutOfRangeException(nameof(happened), happened, "Not a kind of event."),
    };

    private static string StepWords(StepDone e)
    {
        string seen = e.Seen is null && e.View is null ? string.Empty : $". Seen: {string.Join(", ", new[] { e.Seen, e.View }.Where(static t => t is not null))}";
        string second = e.ConfirmedBy is null ? string.Empty : $". Confirmed by {e.ConfirmedBy.Name}";
        string deviation = e.Deviation is null ? string.Empty : $". Otherwise than planned: {e.Deviation.What}, because {e.Deviation.Reason}";
        return $"Step {Number(e.Step)} done: {e.Action}{seen}{second}{deviation}{After(e.Remark)}";
    }

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture).Replace('-', '−');

    private static string Name<T>(T value)
        where T : struct, Enum => PlainWords.FromName(value.ToString());

    private static string Configuration(RunningConfiguration configuration) => configuration switch
    {
        RunningConfiguration.VvTwoSite => "veno-venous through two sites",
        RunningConfiguration.VvDualLumen => "veno-venous through one dual-lumen cannula",
        RunningConfiguration.VaFemoral => "veno-arterial, return to a femoral artery",
        RunningConfiguration.VaAxillary => "veno-arterial, return to an axillary artery",
        RunningConfiguration.VavFemoral => "veno-arterio-venous",
        _ => throw new ArgumentOutOfRangeException(nameof(configuration), configuration, "Not a configuration."),
    };

    private static string After(string? text) => string.IsNullOrWhiteSpace(text) ? string.Empty : $": {text}";

    private static string? Side(BodySide? side) => side is BodySide known ? PlainWords.Side(known) : null;

    private static string Joined(string separator, params IEnumerable<string?> parts) => string.Concat(parts.Where(static p => p is not null).Select(p => separator + p));

    private static string Depth(double? cm) => cm is double depth ? $", {Number(depth)} cm at the skin" : string.Empty;

    private static string Turn(double? deg) => deg is double turn ? $", turned {Number(turn)}°" : string.Empty;

    private static string Place(string what, PortPlace? place) => place is null
        ? string.Empty
        : $", {what} {Number(Math.Abs(place.OffsetCm))} cm {(place.OffsetCm < 0 ? "above" : "below")} {PlainWords.FromName(place.Landmark.ToString())}{(place.IsInferred ? " (inferred)" : string.Empty)}";

    private static string Target(TargetRange target)
    {
        QuantityDefinition of = QuantityTable.Of(target.Quantity);
        return $", {of.Words} to be {Number(target.Low)} to {Number(target.High)} {of.Unit}";
    }

    private static string Vein(VeinFinding finding) =>
        $"{(finding.Side is { } side ? PlainWords.Side(side) + " " : string.Empty)}{Name(finding.Vein)} vein: {(finding.Clot == ClotFinding.NotSeen ? "not seen" : $"{Name(finding.Clot)} thrombus")}".Replace("none thrombus", "no thrombus", StringComparison.Ordinal);

    private static string Readings(IReadOnlyList<Reading> readings, string before)
    {
        if (readings.Count == 0)
        {
            return string.Empty;
        }

        string more = readings.Count > MostReadings ? $" and {Number(readings.Count - MostReadings)} more" : string.Empty;
        return $"{before}{string.Join(", ", readings.Take(MostReadings).Select(Of))}{more}";
    }

    private static string Upper(string text) => text.Length == 0 ? text : $"{char.ToUpperInvariant(text[0])}{text[1..]}";
}
