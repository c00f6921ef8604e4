using System.Diagnostics;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Keeping;
using Cavaxis.Records.Passwords;
using Cavaxis.Records.People;
using Cavaxis.Records.SignIn;
using Cavaxis.Records.Store;
using Cavaxis.Records.Tests.Engines;

namespace Cavaxis.Records.Tests.SignIn;

/// <summary>Signing in and keeping people, on either database.</summary>
public abstract class SignInTests : IAsyncLifetime, IDisposable
{
    private const string Password = "plum lantern river seven";
    private static readonly Identifier North = Identifier.Of("north");
    private static readonly Identifier South = Identifier.Of("south");

    private readonly TickingClock clock = new(new DateTimeOffset(2031, 2, 3, 4, 5, 6, TimeSpan.Zero), TimeSpan.Zero);
    private readonly CountingHasher hasher = new(new Argon2PasswordHasher(8, 1));
    private StoreAddress address = null!;
    private EventStore store = null!;
    private PeopleRegister people = null!;
    private SignInDesk desk = null!;
    private Person admin = null!;

    public async Task InitializeAsync()
    {
        address = NewAddress();
        store = await EventStore.OpenAsync(address, clock);
        people = new PeopleRegister(store, hasher);
        desk = new SignInDesk(store, hasher, clock);
        Assert.Equal(PeopleOutcome.Done, await people.FoundAsync(Identifier.Of("Root.Admin"), "Ada (invented)", Password, North));
        admin = (await people.FindAsync(Identifier.Of("root.admin")))!;
        Assert.Equal(PeopleOutcome.Done, await people.RegisterAsync(admin, Identifier.Of("cleo"), "Cleo (invented)", Password, North, Role.Clinician));
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    protected virtual void Dispose(bool disposing)
    {
        desk.Dispose();
        store.Dispose();
    }

    /// <summary>A new and empty store.</summary>
    protected abstract StoreAddress NewAddress();

    [Fact]
    public async Task A_person_signs_in_is_known_by_the_token_and_signs_out()
    {
        SignedIn signed = Assert.IsType<SignedIn>(await desk.SignInAsync(" Cleo ", Password));
        Assert.Equal(("cleo", Role.Clinician), (signed.Person.Id.Text, signed.Person.RoleIn(North)));
        Assert.Equal(43, signed.Token.Length);
        Assert.DoesNotContain(signed.Token, signed.ToString(), StringComparison.Ordinal);
        Assert.Equal("cleo", (await desk.WhoAsync(signed.Token))!.Id.Text);
        Assert.Null(await desk.WhoAsync((signed.Token[0] == 'A' ? "B" : "A") + signed.Token[1..]));
        await desk.SignOutAsync(signed.Token);
        Assert.Null(await desk.WhoAsync(signed.Token));
        Assert.Equal(
            ["sign-in.done", "sign-in.ended"],
            (await store.ReadAsync(new StreamQuery(Audit.StreamOf(Identifier.Of("cleo"))))).Events.Select(static e => e.Kind.Text));
    }

    [Fact]
    public async Task Neither_token_nor_password_nor_its_hash_is_in_any_event()
    {
        SignedIn signed = (SignedIn)await desk.SignInAsync("cleo", Password);
        await desk.SignInAsync(Password, "typed into the wrong field");
        string all = string.Concat((await store.ReadAllAsync(0, 1000)).Events.Select(static e => e.Payload.Text));
        Assert.All(new[] { signed.Token, Password, "argon2" }, secret => Assert.DoesNotContain(secret, all, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_session_ends_unseen_and_after_the_longest_time()
    {
        SignedIn idle = (SignedIn)await desk.SignInAsync("cleo", Password);
        clock.Advance(TimeSpan.FromMinutes(29));
        Assert.NotNull(await desk.WhoAsync(idle.Token));
        clock.Advance(TimeSpan.FromMinutes(29));
        Assert.NotNull(await desk.WhoAsync(idle.Token));
        clock.Advance(TimeSpan.FromMinutes(30));
        Assert.Null(await desk.WhoAsync(idle.Token));

        SignedIn busy = (SignedIn)await desk.SignInAsync("cleo", Password);
        while (clock.GetUtcNow() + TimeSpan.FromMinutes(20) < busy.EndsAt)
        {
            clock.Advance(TimeSpan.FromMinutes(20));
            Assert.NotNull(await desk.WhoAsync(busy.Token));
        }

        clock.Advance(TimeSpan.FromMinutes(20));
        Assert.Null(await desk.WhoAsync(busy.Token));
    }

    [Theory]
    [InlineData("cleo")]
    [InlineData("no-one-has-this-name")]
    [InlineData("no name at all '; --")]
    public async Task Five_failures_lock_a_name_whether_or_not_someone_has_it(string name)
    {
        for (int i = 0; i < 4; i++)
        {
            Assert.Equal(new SignInRefused(null), await desk.SignInAsync(name, "wrong wrong wrong"));
        }

        SignInRefused locked = new(clock.GetUtcNow() + TimeSpan.FromMinutes(15));
        Assert.Equal(locked, await desk.SignInAsync(name, "wrong wrong wrong"));
        Assert.Equal(locked, await desk.SignInAsync(name, Password));
        Assert.Equal(6, hasher.Checks);
        RecordedEvent told = Assert.Single((await store.ReadKindAsync(EventKind.Of("sign-in.locked"))).Events);
        Assert.DoesNotContain(name, told.Payload.Text, StringComparison.Ordinal);

        clock.Advance(TimeSpan.FromMinutes(15));
        Assert.Equal(name == "cleo", await desk.SignInAsync(name, Password) is SignedIn);
    }

    [Fact]
    public async Task Guesses_made_at_the_same_time_count_each()
    {
        SignInOutcome[] outcomes = await Task.WhenAll(Enumerable.Range(0, 20).Select(i => Task.Run(() => desk.SignInAsync("cleo", $"guess guess {i}"))));
        Assert.Equal(4, outcomes.Count(static o => o is SignInRefused { LockedUntil: null }));
        Assert.IsType<SignInRefused>(await desk.SignInAsync("cleo", Password));
    }

    [Fact]
    public async Task A_success_forgets_the_failures_before_it()
    {
        for (int i = 0; i < 12; i++)
        {
            Assert.Equal(i % 4 == 3, await desk.SignInAsync("cleo", i % 4 == 3 ? Password : "wrong wrong wrong") is SignedIn);
        }
    }

    /// <summary>At the real cost of a check: medians of interleaved attempts under names that are known and not.</summary>
    [Fact]
    public async Task An_unknown_name_takes_as_long_as_a_wrong_password()
    {
        using SignInDesk real = new(store, new Argon2PasswordHasher(), clock, new LockOut(1000, TimeSpan.FromMinutes(1), TimeSpan.FromMinutes(1)));
        Assert.Equal(PeopleOutcome.Done, await new PeopleRegister(store, new Argon2PasswordHasher()).SetPasswordAsync(admin, Identifier.Of("cleo"), Password));
        List<double> known = [];
        List<double> unknown = [];
        for (int i = 0; i < 11; i++)
        {
            known.Add(await MillisecondsAsync("cleo"));
            unknown.Add(await MillisecondsAsync("clea"));
        }

        double ratio = Median(unknown) / Median(known);
        Assert.InRange(ratio, 0.5, 2); // Without the check of a hash it is below 0.2 on an idle machine.

        async Task<double> MillisecondsAsync(string name)
        {
            Stopwatch watch = Stopwatch.StartNew();
            Assert.IsType<SignInRefused>(await real.SignInAsync(name, "wrong wrong wrong"));
            return watch.Elapsed.TotalMilliseconds;
        }

        static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);
    }

    [Fact]
    public async Task A_password_hash_put_in_past_this_program_signs_no_one_in()
    {
        string forged = new Argon2PasswordHasher(8, 1).Hash("forged forged words");
        await TestStore.RunAsync(address, $"UPDATE credential SET hash = '{forged}' WHERE person = 'cleo'");
        Assert.IsType<SignInRefused>(await desk.SignInAsync("cleo", "forged forged words"));
        Assert.IsType<SignInRefused>(await desk.SignInAsync("cleo", Password));
    }

    [Fact]
    public async Task A_hash_of_an_earlier_cost_is_made_anew_at_the_next_sign_in()
    {
        using SignInDesk dearer = new(store, new Argon2PasswordHasher(16, 1), clock);
        SignedIn signed = Assert.IsType<SignedIn>(await dearer.SignInAsync("cleo", Password));
        Assert.NotNull(await dearer.WhoAsync(signed.Token));
        string hash = await store.Database.DoAsync(static async context => (await context.Credentials.FindAsync("cleo"))!.Hash);
        Assert.Contains("m=16,t=1", hash, StringComparison.Ordinal);
        Assert.IsType<SignedIn>(await dearer.SignInAsync("cleo", Password));
    }

    [Fact]
    public async Task No_one_is_called_what_the_program_calls_itself() =>
        Assert.Equal(FaultCode.NotAChoice, (await Assert.ThrowsAsync<InputFaultException>(
            () => people.RegisterAsync(admin, Identifier.Of("System"), "Someone (invented)", Password, North, Role.Reader))).Faults[0].Code);

    [Fact]
    public async Task A_new_password_or_closing_out_ends_every_session()
    {
        SignedIn one = (SignedIn)await desk.SignInAsync("cleo", Password);
        Assert.Equal(PeopleOutcome.Done, await people.SetPasswordAsync(one.Person, one.Person.Id, "another four words here"));
        Assert.Null(await desk.WhoAsync(one.Token));
        Assert.IsType<SignInRefused>(await desk.SignInAsync("cleo", Password));
        SignedIn two = (SignedIn)await desk.SignInAsync("cleo", "another four words here");
        Assert.Equal(PeopleOutcome.Done, await people.CloseOutAsync(admin, two.Person.Id));
        Assert.Null(await desk.WhoAsync(two.Token));
        Assert.IsType<SignInRefused>(await desk.SignInAsync("cleo", "another four words here"));
    }

    [Fact]
    public async Task Only_an_administrator_of_the_programme_keeps_its_people()
    {
        Person cleo = (await people.FindAsync(Identifier.Of("cleo")))!;
        Identifier dora = Identifier.Of("dora");
        Assert.Equal(PeopleOutcome.NotAllowed, await people.RegisterAsync(cleo, dora, "Dora (invented)", Password, North, Role.Reader));
        Assert.Equal(PeopleOutcome.NotThere, await people.RegisterAsync(cleo, dora, "Dora (invented)", Password, South, Role.Reader));
        Assert.Equal(PeopleOutcome.NotAllowed, await people.GiveRoleAsync(cleo, cleo.Id, North, Role.Administrator));
        Assert.Equal(PeopleOutcome.NotAllowed, await people.SetPasswordAsync(cleo, admin.Id, "another four words here"));

        Assert.Equal(PeopleOutcome.Done, await people.RegisterAsync(admin, dora, "Dora (invented)", Password, South, Role.Administrator));
        Person keeper = (await people.FindAsync(dora))!;
        Assert.Equal(PeopleOutcome.NotThere, await people.SetPasswordAsync(keeper, cleo.Id, "another four words here"));
        Assert.Equal(PeopleOutcome.NotThere, await people.CloseOutAsync(keeper, cleo.Id));
        Assert.Equal(PeopleOutcome.NotThere, await people.GiveRoleAsync(admin, cleo.Id, South, Role.Reader));
        Assert.Equal(PeopleOutcome.Done, await people.GiveRoleAsync(keeper, cleo.Id, South, Role.Reader));
        Assert.Equal(["cleo", "dora", "root.admin"], (await people.ListAsync()).Select(static p => p.Id.Text));
    }

    [Fact]
    public async Task A_programme_keeps_its_last_administrator_and_a_name_its_person()
    {
        Assert.Equal(PeopleOutcome.LastAdministrator, await people.EndRoleAsync(admin, admin.Id, North));
        Assert.Equal(PeopleOutcome.LastAdministrator, await people.GiveRoleAsync(admin, admin.Id, North, Role.Reader));
        Assert.Equal(PeopleOutcome.LastAdministrator, await people.CloseOutAsync(admin, admin.Id));
        Assert.Equal(PeopleOutcome.NameTaken, await people.RegisterAsync(admin, Identifier.Of("CLEO"), "Another (invented)", Password, North, Role.Reader));
        Assert.Equal(PeopleOutcome.NotAllowed, await people.FoundAsync(Identifier.Of("eve"), "Eve (invented)", Password, North));
        Assert.Equal(PeopleOutcome.Done, await people.EndRoleAsync(admin, Identifier.Of("cleo"), North));
        Assert.Null((await people.FindAsync(Identifier.Of("cleo")))!.RoleIn(North));
        await Assert.ThrowsAsync<InputFaultException>(() => people.SetPasswordAsync(admin, admin.Id, "short"));
    }

    [Fact]
    public async Task People_sign_in_on_a_restored_backup_with_their_passwords_and_no_one_is_signed_in_there()
    {
        SignedIn signed = (SignedIn)await desk.SignInAsync("cleo", Password);
        using TemporaryFolder folder = new();
        await StoreBackup.BackUpAsync(address, folder.File("backup.db"), clock);
        StoreAddress target = NewAddress();
        await StoreBackup.RestoreAsync(folder.File("backup.db"), target);
        using EventStore restored = await EventStore.OpenAsync(target, clock);
        using SignInDesk other = new(restored, hasher, clock);
        Assert.Null(await other.WhoAsync(signed.Token));
        Assert.IsType<SignedIn>(await other.SignInAsync("cleo", Password));
    }
}
