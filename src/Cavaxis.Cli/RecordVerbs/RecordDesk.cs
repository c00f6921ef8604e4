using Cavaxis.Bedside.Stores;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Passwords;
using Cavaxis.Records.Patients;
using Cavaxis.Records.People;
using Cavaxis.Records.SignIn;
using Cavaxis.Records.Store;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>An open record with someone signed in, for one verb; signs out at its end.</summary>
internal sealed class RecordDesk : IAsyncDisposable
{
    private readonly SignInDesk desk;
    private readonly string token;

    private RecordDesk(EventStore store, SignInDesk desk, SignedIn signedIn)
    {
        (Store, this.desk, token, Person) = (store, desk, signedIn.Token, signedIn.Person);
        People = new PeopleRegister(store, new Argon2PasswordHasher());
        Patients = new PatientRecords(store);
    }

    /// <summary>The record.</summary>
    public EventStore Store { get; }

    /// <summary>Who acts.</summary>
    public Person Person { get; }

    /// <summary>People and roles.</summary>
    public PeopleRegister People { get; }

    /// <summary>Patients as this person may see them.</summary>
    public PatientRecords Patients { get; }

    /// <summary>The name given with <c>--as</c>.</summary>
    /// <param name="settings">The options.</param>
    /// <returns>The name.</returns>
    /// <exception cref="InputFaultException">None was given.</exception>
    public static string NameOf(PersonSettings settings) => settings.As is { Length: > 0 } name ? name : throw new InputFaultException(new InputFault(
        FaultCode.MissingField, "--as", "(nothing)", "the name you sign in with", "Say who you are: --as NAME."));

    /// <summary>Opens the record that the options name and signs in.</summary>
    /// <param name="settings">The options.</param>
    /// <param name="secrets">Gives the password.</param>
    /// <returns>The desk.</returns>
    /// <exception cref="CommandFaultException">Refused.</exception>
    /// <exception cref="StoreFaultException">The record cannot be read or written.</exception>
    public static Task<RecordDesk> SignInAsync(PersonSettings settings, SecretReader secrets)
    {
        string name = NameOf(settings);
        return SignInAsync(StoreOption.Existing(settings.Store), name, PasswordOf(settings, secrets));
    }

    /// <summary>Opens a record and signs in.</summary>
    /// <param name="address">Where it is.</param>
    /// <param name="name">Name.</param>
    /// <param name="password">Password.</param>
    /// <returns>The desk.</returns>
    /// <exception cref="CommandFaultException">Refused.</exception>
    /// <exception cref="StoreFaultException">The record cannot be read or written.</exception>
    public static async Task<RecordDesk> SignInAsync(StoreAddress address, string name, string password)
    {
        EventStore store = await EventStore.OpenAsync(address, TimeProvider.System);
        SignInDesk desk = new(store, new Argon2PasswordHasher(), TimeProvider.System);
        try
        {
            return await desk.SignInAsync(name, password) is SignedIn signedIn ? new RecordDesk(store, desk, signedIn) : throw Refusal.NotSignedIn();
        }
        catch
        {
            desk.Dispose();
            store.Dispose();
            throw;
        }
    }

    /// <summary>The password of whoever acts.</summary>
    /// <param name="settings">The options.</param>
    /// <param name="secrets">Gives it.</param>
    /// <returns>The password.</returns>
    public static string PasswordOf(PersonSettings settings, SecretReader secrets) =>
        secrets.Existing(settings.PasswordFile, $"Password of {InputFault.Shown(NameOf(settings))}", PersonSettings.PasswordFileOption);

    /// <summary>Refuses whoever may not keep the store as a whole.</summary>
    /// <returns>When it is decided.</returns>
    /// <exception cref="CommandFaultException">They may not; it is not told whether they have a role elsewhere.</exception>
    public async Task RequireKeeperAsync()
    {
        if (await StoreKeeping.DecideAsync(Store, Person) != AccessDecision.Granted)
        {
            throw Refusal.NotAllowed("store");
        }
    }

    /// <summary>Refuses whoever has no role, in any programme, that allows a verb.</summary>
    /// <param name="verb">What is to be done.</param>
    /// <param name="what">What it is about.</param>
    /// <exception cref="CommandFaultException">They have none.</exception>
    public void RequireSomewhere(Verb verb, string what)
    {
        if (!ProgrammesWith(verb).Any())
        {
            throw Refusal.NotAllowed(what);
        }
    }

    /// <summary>Programmes in which the person may do something.</summary>
    /// <param name="verb">What.</param>
    /// <returns>Their names.</returns>
    public IEnumerable<string> ProgrammesWith(Verb verb) =>
        Person.Roles.Keys.Where(p => AccessRule.Decide(Person, verb, Identifier.Of(p)) == AccessDecision.Granted);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        try
        {
            await desk.SignOutAsync(token);
        }
        catch (StoreFaultException)
        {
            // What was asked for is done or was refused; a session that could not be ended ends by itself in half an hour.
        }

        desk.Dispose();
        Store.Dispose();
    }
}
