using System.Globalization;
using Cavaxis.Course.Events;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Events;
using Cavaxis.Records.Store;

namespace Cavaxis.Bedside.Courses;

/// <summary>What is wrong with writings in themselves, before any record is looked at.</summary>
internal static class WritingCheck
{
    /// <summary>The drafts, or every fault.</summary>
    /// <param name="writings">What is to be written.</param>
    /// <param name="latest">Beyond this nothing can have happened.</param>
    public static (IReadOnlyList<EventDraft> Drafts, IReadOnlyList<InputFault> Faults) Of(IReadOnlyList<CourseWriting> writings, DateTimeOffset latest)
    {
        List<InputFault> faults = [];
        if (writings.Count is 0 or > AppendRequest.MostEvents)
        {
            return ([], [Require.OutOfRange(writings.Count, 1, AppendRequest.MostEvents, "events", "Write them in parts.")]);
        }

        List<EventDraft> drafts = [];
        for (int i = 0; i < writings.Count; i++)
        {
            CourseWriting one = writings[i];
            string path = writings.Count == 1 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"events[{i}].");
            if (one.OccurredAt > latest)
            {
                faults.Add(new InputFault(
                    FaultCode.OutOfRange, $"{path}occurredAt", one.OccurredAt.Value.ToString("yyyy-MM-dd HH:mm:ss zzz", CultureInfo.InvariantCulture), "a time that has come", "Check date, time and offset from UTC."));
            }

            // The first event of every record admits the patient; it is about no course.
            if (one.Corrects == 1)
            {
                faults.Add(new InputFault(FaultCode.OutOfRange, $"{path}corrects", "1", "the number of an entry of the course", "The admission cannot be put right here."));
            }

            try
            {
                drafts.Add(EventTranslation.Draft(one));
            }
            catch (InputFaultException refused)
            {
                faults.AddRange(refused.Faults.Select(f => f with { Field = path + f.Field }));
            }
        }

        return faults.Count == 0 ? (drafts, []) : ([], faults);
    }
}
