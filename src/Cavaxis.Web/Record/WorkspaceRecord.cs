using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Programmes;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Passwords;
using Cavaxis.Records.Patients;
using Cavaxis.Records.People;
using Cavaxis.Records.SignIn;
using Cavaxis.Records.Store;

namespace Cavaxis.Web.Record;

/// <summary>The record that this workspace keeps: events, patients, people. One for the whole process.</summary>
public sealed class WorkspaceRecord : IDisposable
{
    private volatile bool founded;

    private WorkspaceRecord(EventStore store, IPasswordHasher hasher, TimeProvider clock)
    {
        Store = store;
        Patients = new PatientRecords(store);
        People = new PeopleRegister(store, hasher);
        SignIn = new SignInDesk(store, hasher, clock);
        Cases = new CaseVersions(store);
        Courses = new CourseRecords(Patients, clock);
        Programmes = new ProgrammeCourses(Patients, Courses, clock);
        Clock = clock;
    }

    /// <summary>Programme of the patients that were admitted before anyone signed in here.</summary>
    public static Identifier OwnProgramme { get; } = Identifier.Of("own");

    /// <summary>
    /// Whoever sits at this machine while nobody has been registered. What they write stands in the record under this name, which no one can sign in with
    /// because its sign-in name would have to be registered first.
    /// </summary>
    public static Person AtThisMachine { get; } = new(
        Identifier.Of("this-machine"), "this machine", System.Collections.Immutable.ImmutableSortedDictionary<string, Role>.Empty.Add(OwnProgramme.Text, Role.Lead), true, null, 0);

    /// <summary>Where all is kept.</summary>
    public EventStore Store { get; }

    /// <summary>Records of patients, as a person may see them.</summary>
    public PatientRecords Patients { get; }

    /// <summary>People and roles.</summary>
    public PeopleRegister People { get; }

    /// <summary>Signs people in and out.</summary>
    public SignInDesk SignIn { get; }

    /// <summary>Versions of the cases, read once and kept.</summary>
    public CaseVersions Cases { get; }

    /// <summary>What happened to each patient.</summary>
    public CourseRecords Courses { get; }

    /// <summary>What happened to all patients of a programme.</summary>
    public ProgrammeCourses Programmes { get; }

    /// <summary>The clock that dates what is written.</summary>
    public TimeProvider Clock { get; }

    /// <summary>Opens or creates the record.</summary>
    /// <param name="address">Where.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="hasher">Makes password hashes; null for the usual cost.</param>
    /// <returns>The record.</returns>
    /// <exception cref="StoreFaultException">It cannot be opened.</exception>
    public static async Task<WorkspaceRecord> OpenAsync(StoreAddress address, TimeProvider clock, IPasswordHasher? hasher = null) =>
        new(await EventStore.OpenAsync(address, clock), hasher ?? new Argon2PasswordHasher(), clock);

    /// <summary>Whether people have been registered, so that each signs in.</summary>
    /// <returns>True from the first administrator on, for good.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public async Task<bool> AsksWhoAsync()
    {
        if (!founded && (await Store.StreamsAsync(Person.Area)).Count > 0)
        {
            founded = true;
        }

        return founded;
    }

    /// <summary>Closes the store.</summary>
    public void Dispose()
    {
        SignIn.Dispose();
        Store.Dispose();
    }
}
