using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Passwords;
using Cavaxis.Records.Store;
using Microsoft.EntityFrameworkCore;

namespace Cavaxis.Records.People;

/// <summary>People and their roles, kept as events; and their password hashes, kept beside the events and replaced.</summary>
/// <param name="store">Where all is kept.</param>
/// <param name="hasher">Makes password hashes.</param>
public sealed class PeopleRegister(EventStore store, IPasswordHasher hasher)
{
    private static readonly EventKind Founded = EventKind.Of("store.founded");

    /// <summary>Makes the first administrator of an empty store. Works once.</summary>
    /// <param name="id">Name to sign in with.</param>
    /// <param name="name">Name for other people.</param>
    /// <param name="password">Their password.</param>
    /// <param name="programme">The first programme.</param>
    /// <returns>Done, or not allowed where the store was founded before.</returns>
    /// <exception cref="InputFaultException">The password is not one that is taken.</exception>
    /// <exception cref="StoreFaultException">The store cannot be written.</exception>
    public async Task<PeopleOutcome> FoundAsync(Identifier id, string name, string password, Identifier programme)
    {
        ArgumentNullException.ThrowIfNull(programme);
        id = SignInName(id);
        PasswordRule.Require(password, id.Text);
        AppendOutcome founding = await FoundAsync(0, id, programme);
        if (founding is AppendConflict before && (await ListAsync()).Count == 0)
        {
            // The process ended between the two steps of an earlier attempt.
            founding = await FoundAsync(before.Version, id, programme);
        }

        return founding is AppendConflict
            ? PeopleOutcome.NotAllowed
            : await KeepAsync(id, id, 0, password, new(Person.Registered, Payload(("name", Shown(name)))), RoleDraft(programme, Role.Administrator));
    }

    /// <summary>A person.</summary>
    /// <param name="id">Name to sign in with.</param>
    /// <returns>The person; null where there is none.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public async Task<Person?> FindAsync(Identifier id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return Person.Of((await store.ReadAsync(new StreamQuery(Person.StreamOf(SignInName(id))))).Events);
    }

    /// <summary>All people, closed out or not.</summary>
    /// <returns>In the order of their names.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public async Task<IReadOnlyList<Person>> ListAsync()
    {
        List<Person> all = [];
        foreach (StreamName stream in await store.StreamsAsync(Person.Area))
        {
            if (Person.Of((await store.ReadAsync(new StreamQuery(stream))).Events) is Person person)
            {
                all.Add(person);
            }
        }

        return all;
    }

    /// <summary>Registers a person with a first role.</summary>
    /// <param name="by">Who asks.</param>
    /// <param name="id">Name to sign in with.</param>
    /// <param name="name">Name for other people.</param>
    /// <param name="password">A first password.</param>
    /// <param name="programme">Programme of the role.</param>
    /// <param name="role">The role.</param>
    /// <returns>What became of it.</returns>
    /// <exception cref="InputFaultException">The password is not one that is taken.</exception>
    /// <exception cref="StoreFaultException">The store cannot be written.</exception>
    public async Task<PeopleOutcome> RegisterAsync(Person by, Identifier id, string name, string password, Identifier programme, Role role)
    {
        ArgumentNullException.ThrowIfNull(by);
        ArgumentNullException.ThrowIfNull(programme);
        id = SignInName(id);
        PasswordRule.Require(password, id.Text);
        return await RefusalAsync(by, programme)
            ?? (await FindAsync(id) is not null
                ? PeopleOutcome.NameTaken
                : await KeepAsync(by.Id, id, 0, password, new(Person.Registered, Payload(("name", Shown(name)))), RoleDraft(programme, role)));
    }

    /// <summary>Gives a person a role in a programme, in place of the one they have there.</summary>
    /// <param name="by">Who asks: an administrator of the programme, or of any where the programme has no people yet.</param>
    /// <param name="id">The person.</param>
    /// <param name="programme">The programme.</param>
    /// <param name="role">The role.</param>
    /// <returns>What became of it.</returns>
    /// <exception cref="StoreFaultException">The store cannot be written.</exception>
    public async Task<PeopleOutcome> GiveRoleAsync(Person by, Identifier id, Identifier programme, Role role)
    {
        ArgumentNullException.ThrowIfNull(by);
        ArgumentNullException.ThrowIfNull(programme);
        return await RefusalAsync(by, programme)
            ?? (await FindAsync(id) is not { IsActive: true } person ? PeopleOutcome.NotThere
                : role != Role.Administrator && await IsLastAsync(person, programme) ? PeopleOutcome.LastAdministrator
                : await KeepAsync(by.Id, person.Id, person.Version, null, RoleDraft(programme, role)));
    }

    /// <summary>Ends a person's role in a programme.</summary>
    /// <param name="by">Who asks.</param>
    /// <param name="id">The person.</param>
    /// <param name="programme">The programme.</param>
    /// <returns>What became of it.</returns>
    /// <exception cref="StoreFaultException">The store cannot be written.</exception>
    public async Task<PeopleOutcome> EndRoleAsync(Person by, Identifier id, Identifier programme)
    {
        ArgumentNullException.ThrowIfNull(by);
        ArgumentNullException.ThrowIfNull(programme);
        return await RefusalAsync(by, programme)
            ?? (await FindAsync(id) is not Person person || person.RoleIn(programme) is null ? PeopleOutcome.NotThere
                : await IsLastAsync(person, programme) ? PeopleOutcome.LastAdministrator
                : await KeepAsync(by.Id, person.Id, person.Version, null, new EventDraft(Person.RoleEnded, Payload(("programme", programme.Text)))));
    }

    /// <summary>Closes a person out: they are signed out everywhere and cannot sign in again.</summary>
    /// <param name="by">Who asks: an administrator of every programme in which the person has a role.</param>
    /// <param name="id">The person.</param>
    /// <returns>What became of it.</returns>
    /// <exception cref="StoreFaultException">The store cannot be written.</exception>
    public async Task<PeopleOutcome> CloseOutAsync(Person by, Identifier id)
    {
        ArgumentNullException.ThrowIfNull(by);
        if (await FindAsync(id) is not { IsActive: true } person || !person.Roles.Keys.Any(p => by.RoleIn(Identifier.Of(p)) is not null))
        {
            return PeopleOutcome.NotThere;
        }

        foreach (Identifier programme in person.Roles.Keys.Select(static p => Identifier.Of(p)))
        {
            if (AccessRule.Decide(by, Verb.KeepPeople, programme) != AccessDecision.Granted)
            {
                return PeopleOutcome.NotAllowed;
            }

            if (await IsLastAsync(person, programme))
            {
                return PeopleOutcome.LastAdministrator;
            }
        }

        return await KeepAsync(by.Id, person.Id, person.Version, null, new EventDraft(Person.ClosedOut, Payload()));
    }

    /// <summary>Sets a password and signs the person out everywhere.</summary>
    /// <param name="by">Who asks: the person, or an administrator of a programme in which they have a role.</param>
    /// <param name="id">The person.</param>
    /// <param name="password">The new password.</param>
    /// <returns>What became of it.</returns>
    /// <exception cref="InputFaultException">The password is not one that is taken.</exception>
    /// <exception cref="StoreFaultException">The store cannot be written.</exception>
    public async Task<PeopleOutcome> SetPasswordAsync(Person by, Identifier id, string password)
    {
        ArgumentNullException.ThrowIfNull(by);
        id = SignInName(id);
        PasswordRule.Require(password, id.Text);
        if (await FindAsync(id) is not { IsActive: true } person)
        {
            return PeopleOutcome.NotThere;
        }

        AccessDecision[] decisions = [.. person.Roles.Keys.Select(p => AccessRule.Decide(by, Verb.KeepPeople, Identifier.Of(p)))];
        return (by.Id == id && by.IsActive) || decisions.Contains(AccessDecision.Granted) ? await KeepAsync(by.Id, id, person.Version, password)
            : decisions.Contains(AccessDecision.NotAllowed) ? PeopleOutcome.NotAllowed
            : PeopleOutcome.NotThere;
    }

    /// <summary>Lets a name sign in again that was locked after failures.</summary>
    /// <param name="by">Who asks: an administrator of a programme in which the person has a role.</param>
    /// <param name="id">The person.</param>
    /// <returns>What became of it.</returns>
    /// <exception cref="StoreFaultException">The store cannot be written.</exception>
    public async Task<PeopleOutcome> UnlockAsync(Person by, Identifier id)
    {
        ArgumentNullException.ThrowIfNull(by);
        id = SignInName(id);
        AccessDecision[] decisions = await FindAsync(id) is { IsActive: true } person
            ? [.. person.Roles.Keys.Select(p => AccessRule.Decide(by, Verb.KeepPeople, Identifier.Of(p)))]
            : [];
        if (!decisions.Contains(AccessDecision.Granted))
        {
            return decisions.Contains(AccessDecision.NotAllowed) ? PeopleOutcome.NotAllowed : PeopleOutcome.NotThere;
        }

        string nameHash = FingerprintOf(id.Text);
        await store.AppendAsync(
            new AppendRequest(Person.StreamOf(id), null, by.Id, new EventDraft(Person.Unlocked, Payload())),
            context => context.Attempts.Where(a => a.NameHash == nameHash).ExecuteDeleteAsync(),
            CancellationToken.None);
        return PeopleOutcome.Done;
    }

    /// <summary>What binds a kept password hash to the chain of events.</summary>
    internal static string FingerprintOf(string hash) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(hash)));

    /// <summary>The hash that is kept for a person, where the chain knows it.</summary>
    internal static async Task<string?> HashOfAsync(RecordContext context, Person? person, string id)
    {
        CredentialRow? row = await context.Credentials.AsNoTracking().FirstOrDefaultAsync(c => c.Person == id);
        return row is not null && person is { IsActive: true } && FingerprintOf(row.Hash) == person.PasswordFingerprint ? row.Hash : null;
    }

    /// <summary>Makes a person's hash anew at today's cost, from the password that they just signed in with. Leaves it where someone else changes the person.</summary>
    internal static Task<PeopleOutcome> RenewAsync(EventStore store, IPasswordHasher hasher, Person person, string password) =>
        new PeopleRegister(store, hasher).KeepAsync(person.Id, person.Id, person.Version, password);

    private static Identifier SignInName(Identifier id)
    {
        ArgumentNullException.ThrowIfNull(id);
        string name = id.Text.ToLowerInvariant();
        return name != Audit.Program.Text ? Identifier.Of(name) : throw new InputFaultException(new InputFault(
            FaultCode.NotAChoice, "sign-in name", name, "a name that the program does not write under itself", "Take another name."));
    }

    private Task<AppendOutcome> FoundAsync(long expected, Identifier id, Identifier programme) => store.AppendAsync(
        new AppendRequest(StreamName.Of("store/founding"), expected, id, new EventDraft(Founded, Payload(("programme", programme.Text)))));

    private static EventDraft RoleDraft(Identifier programme, Role role) => new(Person.RoleGiven, Payload(("programme", programme.Text), ("role", role.ToString())));

    private static CanonicalJson Payload(params (string Name, string Value)[] members) =>
        CanonicalJson.Of(new JsonObject(members.Select(static m => KeyValuePair.Create(m.Name, (JsonNode?)m.Value))).ToJsonString());

    private static string Shown(string name) => string.IsNullOrWhiteSpace(name) || name.Length > 200
        ? throw new InputFaultException(new InputFault(FaultCode.WrongLength, "name", InputFault.Shown(name ?? string.Empty), "1 to 200 characters", "Give the name by which others know the person."))
        : name.Trim();

    /// <summary>Why someone may not keep the people of a programme; null where they may.</summary>
    private async Task<PeopleOutcome?> RefusalAsync(Person by, Identifier programme) => AccessRule.Decide(by, Verb.KeepPeople, programme) switch
    {
        AccessDecision.Granted => null,
        AccessDecision.NotAllowed => PeopleOutcome.NotAllowed,
        _ when by.IsActive && by.Roles.ContainsValue(Role.Administrator) && (await ListAsync()).All(p => p.RoleIn(programme) is null) => null,
        _ => PeopleOutcome.NotThere,
    };

    private async Task<bool> IsLastAsync(Person person, Identifier programme) =>
        person.RoleIn(programme) == Role.Administrator && (await ListAsync()).Count(p => p.RoleIn(programme) == Role.Administrator) == 1;

    private async Task<PeopleOutcome> KeepAsync(Identifier by, Identifier id, long expected, string? password, params EventDraft[] drafts)
    {
        string? hash = password is null ? null : await Task.Run(() => hasher.Hash(password));
        EventDraft[] all = hash is null ? drafts : [.. drafts, new EventDraft(Person.PasswordSet, Payload(("fingerprint", FingerprintOf(hash))))];
        bool ends = hash is not null || all.Any(static d => d.Kind == Person.ClosedOut);
        AppendOutcome outcome = await store.AppendAsync(new AppendRequest(Person.StreamOf(id), expected, by, all), async context =>
        {
            if (ends)
            {
                await context.Sessions.Where(s => s.Person == id.Text).ExecuteDeleteAsync();
                await context.Credentials.Where(c => c.Person == id.Text).ExecuteDeleteAsync();
            }

            if (hash is not null)
            {
                context.Credentials.Add(new CredentialRow { Person = id.Text, Hash = hash });
                await context.SaveChangesAsync();
            }
        }, CancellationToken.None);
        return outcome is Appended ? PeopleOutcome.Done : expected == 0 ? PeopleOutcome.NameTaken : PeopleOutcome.ChangedMeanwhile;
    }
}
