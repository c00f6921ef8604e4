using System.Globalization;
using Cavaxis.Cli.Output;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Events;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>Prints events.</summary>
internal static class EventText
{
    private const string TimeForm = "yyyy-MM-dd HH:mm:ss'Z'";

    /// <summary>Prints them.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="json">Whether as JSON.</param>
    /// <param name="events">The events.</param>
    /// <param name="spoiled">Places of events that do not hold and are not given.</param>
    public static void Write(CommandOutput output, bool json, IReadOnlyList<RecordedEvent> events, IReadOnlyList<long> spoiled)
    {
        if (json)
        {
            output.Json(new EventList([.. events.Select(EventSheet.Of)], spoiled));
            return;
        }

        foreach (RecordedEvent one in events)
        {
            string corrects = one.Corrects is long sequence ? string.Create(CultureInfo.InvariantCulture, $" corrects {sequence}") : string.Empty;
            output.Line(string.Create(CultureInfo.InvariantCulture, $"{one.Sequence,5}  {one.OccurredAt.UtcDateTime.ToString(TimeForm, CultureInfo.InvariantCulture)}  {one.Who}  {one.Kind}{corrects}"));
            output.Wrapped("       ", Printable(one.Payload.Text));
        }

        if (spoiled.Count > 0)
        {
            output.Wrapped(string.Empty, $"NOT GIVEN, since they do not hold: events at {string.Join(", ", spoiled)} of the store. Run `record verify`.");
        }
    }

    /// <summary>What someone wrote must not steer a terminal.</summary>
    private static string Printable(string text) => string.Concat(text.Chunk(InputFault.LongestShownValue).Select(static part => InputFault.Shown(new string(part))));
}
