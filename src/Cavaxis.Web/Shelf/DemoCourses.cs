using System.Text;
using System.Text.Json.Nodes;
using Cavaxis.Course.Events;

namespace Cavaxis.Web.Shelf;

/// <summary>The invented courses that belong to invented cases. Their times are told backwards from the moment at which they are loaded, so that support runs now.</summary>
public static class DemoCourses
{
    private const string Folder = "demo-course/";

    /// <summary>What happened to the patient of a case.</summary>
    /// <param name="caseFile">File name of the case.</param>
    /// <param name="now">The moment.</param>
    /// <returns>Moment, kind and particulars of each event, oldest first; empty where the case has no course.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">An event is not one that the record takes.</exception>
    public static IReadOnlyList<(DateTimeOffset At, CourseEventKind Kind, string Json)> Of(string caseFile, DateTimeOffset now)
    {
        using Stream? file = typeof(DemoCourses).Assembly.GetManifestResourceStream(Folder + caseFile);
        if (file is null)
        {
            return [];
        }

        JsonNode root = JsonNode.Parse(file)!;
        return [.. root["events"]!.AsArray().Select(one =>
        {
            CourseEventKind kind = CourseEventTable.Get(one!["kind"]!.GetValue<string>());
            CourseEvent read = CourseEventJson.Read(kind.Text, Encoding.UTF8.GetBytes(one["data"]!.ToJsonString()));
            return (now.AddHours(-one["hoursAgo"]!.GetValue<double>()), kind, Encoding.UTF8.GetString(CourseEventJson.Write(read).Span));
        })];
    }
}
