using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Cli;
using Cavaxis.Course.Events;
using Cavaxis.EndToEnd.Tests.Programs;
using Cavaxis.Planning.Case;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Passwords;
using Cavaxis.Records.Patients;
using Cavaxis.Records.People;
using Cavaxis.Records.Store;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>An invented programme on the disk before its workspace starts: Ada keeps people, Lena leads, Rita reads, Sven leads another programme that has no patient.</summary>
internal static class MadeUpProgramme
{
    /// <summary>Registers the people.</summary>
    public static void Register(WorkFolder folder, string data)
    {
        RegisteredPeople.Register(folder, data);
        Add("rita", "Rita (invented)", "reader", "own");
        Add("sven", "Sven (invented)", "lead", "south");

        void Add(string id, string name, string role, string programme) => Assert.Equal((int)ExitCode.Done, CavaxisProcess.Run(
            "people", "add", id, "--name", name, "--role", role, "--programme", programme, "--new-password-file", folder["password"], "--store", Path.Combine(data, "record.db"), "--as", "ada", "--password-file", folder["password"]).ExitCode);
    }

    /// <summary>Admits patients as Lena would, each with what happened so many hours ago.</summary>
    /// <returns>Their identifiers.</returns>
    public static async Task<IReadOnlyList<string>> AdmitAsync(string data, params IReadOnlyList<(double HoursAgo, CourseEvent Event)[]> patients)
    {
        using EventStore store = await EventStore.OpenAsync(StoreAddress.Of(Path.Combine(data, "record.db")), TimeProvider.System);
        Person lena = (await new PeopleRegister(store, new Argon2PasswordHasher()).FindAsync(Identifier.Of("lena")))!;
        CourseRecords courses = new(new PatientRecords(store), TimeProvider.System);
        DateTimeOffset now = TimeProvider.System.GetUtcNow();
        List<string> ids = [];
        foreach ((double HoursAgo, CourseEvent Event)[] events in patients)
        {
            string text = string.Create(CultureInfo.InvariantCulture, $$"""{"cavaxisCase":1,"title":"Invented {{ids.Count + 1}}","invented":true,"patient":{"ageYears": {{30 + ids.Count}},"sex":"female","heightCm":165,"weightKg":60} }""");
            ids.Add(Assert.IsType<CourseWritten>((await courses.AdmitAsync(lena, Identifier.Of("own"), text)).Value).Patient);
            Assert.IsType<CourseWritten>((await courses.RecordAsync(lena, ids[^1], null, [.. events.Select(e => new CourseWriting(e.Event, now.AddHours(-e.HoursAgo)))])).Value);
        }

        return ids;
    }

    /// <summary>A course that has ended.</summary>
    public static (double HoursAgo, CourseEvent Event)[] Course(double beganHoursAgo, RunningConfiguration configuration, bool survived, params CourseEvent[] between) =>
    [
        (beganHoursAgo, new SupportStarted { Configuration = configuration }),
        .. between.Select(e => (beganHoursAgo - 5, e)),
        (beganHoursAgo - 100, new SupportEnded { Reason = survived ? SupportEndReason.Recovered : SupportEndReason.Died }),
        (beganHoursAgo - 200, new OutcomeNoted { Outcome = survived ? OutcomeKind.SurvivedToDischarge : OutcomeKind.DiedOnSupport }),
    ];
}
