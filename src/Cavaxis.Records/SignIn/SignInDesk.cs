using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Passwords;
using Cavaxis.Records.People;
using Cavaxis.Records.Store;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Cavaxis.Records.SignIn;

/// <summary>
/// Signs people in and out. A name that no one has takes the same steps as one that someone has: the same questions to the store, one
/// password check at the same cost, the same count of failures, the same lock.
/// </summary>
public sealed class SignInDesk : IDisposable
{
    private static readonly EventKind In = EventKind.Of("sign-in.done");
    private static readonly EventKind Out = EventKind.Of("sign-in.ended");
    private static readonly EventKind Locked = EventKind.Of("sign-in.locked");
    private static readonly TimeSpan SeenEvery = TimeSpan.FromMinutes(1);

    private readonly EventStore store;
    private readonly IPasswordHasher hasher;
    private readonly TimeProvider clock;
    private readonly LockOut lockOut;
    private readonly SessionRule rule;

    /// <summary>Each check takes its memory; no more at once than there are cores.</summary>
    private readonly SemaphoreSlim checks = new(Environment.ProcessorCount, Environment.ProcessorCount);

    /// <summary>A desk on a store.</summary>
    /// <param name="store">Where all is kept.</param>
    /// <param name="hasher">Checks password hashes.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="lockOut">When a name is locked; null for the usual rule.</param>
    /// <param name="rule">How long someone stays signed in; null for the usual rule.</param>
    public SignInDesk(EventStore store, IPasswordHasher hasher, TimeProvider clock, LockOut? lockOut = null, SessionRule? rule = null) =>
        (this.store, this.hasher, this.clock, this.lockOut, this.rule) = (store, hasher, clock, lockOut ?? LockOut.Usual, rule ?? SessionRule.Usual);

    /// <summary>Signs in.</summary>
    /// <param name="name">The name given; upper and lower case are the same.</param>
    /// <param name="password">The password given.</param>
    /// <returns>Signed in with a token, or refused.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read or written.</exception>
    public async Task<SignInOutcome> SignInAsync(string name, string password)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(password);
        string given = name.Trim().ToLowerInvariant();
        Identifier id = Identifier.IsOne(given) ? Identifier.Of(given) : Audit.Program;
        string nameHash = HashOf(given);

        // Counted before the check, so that guesses made at the same time count too.
        (bool wasLocked, FailureCount after) = await CountAsync(nameHash);
        Person? person = Person.Of((await store.ReadAsync(new StreamQuery(Person.StreamOf(id)))).Events);
        string? kept = await store.Database.DoAsync(context => PeopleRegister.HashOfAsync(context, person, id.Text));
        kept = Identifier.IsOne(given) ? kept : null;
        bool matches = await CheckAsync(password.Length <= PasswordRule.Most ? password : string.Empty, kept ?? hasher.NoOnes);
        if (person is null || kept is null || !matches || wasLocked)
        {
            if (!wasLocked && after.LockedUntil is DateTimeOffset until)
            {
                await store.AppendAsync(new AppendRequest(Audit.StreamOf(Audit.Program), null, Audit.Program, Audit.Draft(Locked, ("nameHash", nameHash), ("until", Audit.Text(until)))));
            }

            return new SignInRefused(after.LockedUntil);
        }

        if (hasher.IsOutdated(kept))
        {
            await PeopleRegister.RenewAsync(store, hasher, person, password);
        }

        string token = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(32));
        DateTimeOffset now = clock.GetUtcNow();
        await store.AppendAsync(new AppendRequest(Audit.StreamOf(id), null, id, Audit.Draft(In)), async context =>
        {
            long us = Moment.ToMicroseconds(now);
            context.Sessions.Add(new SessionRow { TokenHash = HashOf(token), Person = id.Text, BegunUs = us, SeenUs = us });
            await context.SaveChangesAsync();
            await context.Attempts.Where(a => a.NameHash == nameHash).ExecuteDeleteAsync();
        }, CancellationToken.None);
        return new SignedIn(person, token, now + rule.Longest);
    }

    /// <summary>Who holds a token.</summary>
    /// <param name="token">The token.</param>
    /// <returns>The person as they are now; null where the token proves nothing (any more).</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public async Task<Person?> WhoAsync(string token)
    {
        ArgumentNullException.ThrowIfNull(token);
        string hash = HashOf(token);
        SessionRow? session = await store.Database.DoAsync(context => context.Sessions.AsNoTracking().FirstOrDefaultAsync(s => s.TokenHash == hash));
        if (session is null)
        {
            return null;
        }

        DateTimeOffset now = clock.GetUtcNow();
        DateTimeOffset seen = Moment.OfMicroseconds(session.SeenUs);
        Person? person = Person.Of((await store.ReadAsync(new StreamQuery(Person.StreamOf(Identifier.Of(session.Person))))).Events);
        if (person is not { IsActive: true } || !rule.Holds(Moment.OfMicroseconds(session.BegunUs), seen, now))
        {
            await EndAsync(hash);
            return null;
        }

        if (now - seen >= SeenEvery)
        {
            long us = Moment.ToMicroseconds(now);
            await store.Database.DoAsync(context => context.Sessions.Where(s => s.TokenHash == hash).ExecuteUpdateAsync(s => s.SetProperty(static r => r.SeenUs, us)));
        }

        return person;
    }

    /// <summary>Signs out. A token that proves nothing does no harm.</summary>
    /// <param name="token">The token.</param>
    /// <exception cref="StoreFaultException">The store cannot be written.</exception>
    public async Task SignOutAsync(string token)
    {
        if (await WhoAsync(token) is Person person)
        {
            await EndAsync(HashOf(token));
            await store.AppendAsync(new AppendRequest(Audit.StreamOf(person.Id), null, person.Id, Audit.Draft(Out)));
        }
    }

    /// <summary>Lets go of what waits.</summary>
    public void Dispose() => checks.Dispose();

    private static string HashOf(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private async Task<bool> CheckAsync(string password, string hash)
    {
        await checks.WaitAsync();
        try
        {
            return await Task.Run(() => hasher.Matches(password, hash));
        }
        finally
        {
            checks.Release();
        }
    }

    private Task<int> EndAsync(string hash) => store.Database.DoAsync(context => context.Sessions.Where(s => s.TokenHash == hash).ExecuteDeleteAsync());

    private Task<(bool WasLocked, FailureCount After)> CountAsync(string nameHash) => store.Database.DoAsync(async context =>
    {
        DateTimeOffset now = Moment.Cut(clock.GetUtcNow());
        long nowUs = Moment.ToMicroseconds(now);
        long old = Moment.ToMicroseconds(now - lockOut.Window - lockOut.Duration);
        await using IDbContextTransaction transaction = await context.Database.BeginTransactionAsync();
        await store.Database.Engine.LockForAppendAsync(context);
        AttemptRow? row = await context.Attempts.AsNoTracking().FirstOrDefaultAsync(a => a.NameHash == nameHash);
        FailureCount before = row is null ? FailureCount.None
            : new(row.Failures, Moment.OfMicroseconds(row.FirstUs), row.LockedUntilUs is long until ? Moment.OfMicroseconds(until) : null);
        FailureCount after = lockOut.AfterFailure(before, now);
        await context.Attempts.Where(a => a.NameHash == nameHash || (a.FirstUs < old && (a.LockedUntilUs == null || a.LockedUntilUs < nowUs))).ExecuteDeleteAsync();
        context.Attempts.Add(new AttemptRow
        {
            NameHash = nameHash,
            Failures = after.Count,
            FirstUs = Moment.ToMicroseconds(after.First),
            LockedUntilUs = after.LockedUntil is DateTimeOffset end ? Moment.ToMicroseconds(end) : null,
        });
        await context.SaveChangesAsync();
        await transaction.CommitAsync();
        return (LockOut.IsLocked(before, now), after);
    });
}
