using System.Globalization;
using Cavaxis.Quantities.Faults;
using Microsoft.Data.Sqlite;

namespace Cavaxis.Web.Shelf;

/// <summary>
/// The shelf in one SQLite file: write-ahead log, each commit flushed to the disk before it is acknowledged, one row for each
/// version of a case, nothing ever overwritten.
/// </summary>
public sealed class SqliteCaseShelf : ICaseShelf, IDisposable
{
    private const string Schema = """
        CREATE TABLE IF NOT EXISTS version (
            patient TEXT NOT NULL,
            number INTEGER NOT NULL,
            saved_at TEXT NOT NULL,
            change TEXT NOT NULL,
            title TEXT NOT NULL,
            invented INTEGER NOT NULL,
            json TEXT NOT NULL,
            PRIMARY KEY (patient, number)
        ) WITHOUT ROWID;
        """;

    private const string Newest =
        "SELECT patient, number, saved_at, change, json FROM version WHERE patient = $id ORDER BY number DESC LIMIT 1";

    private readonly SqliteConnection connection;
    private readonly SemaphoreSlim turn = new(1, 1);
    private readonly TimeProvider clock;

    /// <summary>Opens or creates the store.</summary>
    /// <param name="path">Path of the file; its folder is made where it is missing.</param>
    /// <param name="clock">The clock that dates versions.</param>
    /// <exception cref="InputFaultException">The file cannot be opened.</exception>
    public SqliteCaseShelf(string path, TimeProvider clock)
    {
        this.clock = clock;
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.UnreadableFile, "--data", InputFault.Shown(path), "a folder you may write to", "Choose another folder with --data."));
        }

        connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false, DefaultTimeout = 5 }.ToString());
        try
        {
            connection.Open();
            Execute("PRAGMA journal_mode = WAL");
            Execute("PRAGMA synchronous = FULL");
            Execute(Schema);
        }
        catch (SqliteException refusal)
        {
            connection.Dispose();
            throw ShelfFault.Of(refusal);
        }
    }

    /// <inheritdoc/>
    public event Action<string, long>? Changed;

    /// <inheritdoc/>
    public Task<IReadOnlyList<ShelvedCase>> ListAsync() => InTurn<IReadOnlyList<ShelvedCase>>(() =>
    {
        using SqliteCommand command = Command("""
            SELECT v.patient, v.title, v.invented, v.number, v.saved_at FROM version v
            JOIN (SELECT patient, MAX(number) AS number FROM version GROUP BY patient) n ON n.patient = v.patient AND n.number = v.number
            ORDER BY v.saved_at DESC, v.title
            """);
        using SqliteDataReader reader = command.ExecuteReader();
        List<ShelvedCase> all = [];
        while (reader.Read())
        {
            all.Add(new ShelvedCase(reader.GetString(0), reader.GetString(1), reader.GetInt64(2) != 0, reader.GetInt64(3), Time(reader.GetString(4))));
        }

        return all;
    });

    /// <inheritdoc/>
    public Task<CaseVersion?> OpenAsync(string id) => InTurn(() => NewestOf(id, null));

    /// <inheritdoc/>
    public Task<CaseVersion?> ReadAsync(string id, long number) => InTurn(() =>
    {
        using SqliteCommand command = Command("SELECT patient, number, saved_at, change, json FROM version WHERE patient = $id AND number = $number");
        command.Parameters.AddWithValue("$id", id);
        command.Parameters.AddWithValue("$number", number);
        return One(command);
    });

    /// <inheritdoc/>
    public async Task<CaseVersion> AddAsync(string json, string change)
    {
        CaseSummary summary = CaseSummary.Of(json);
        string id = Guid.CreateVersion7().ToString("N", CultureInfo.InvariantCulture);
        CaseVersion first = new(id, 1, clock.GetUtcNow(), change, json);
        await InTurn(() => Insert(first, summary, null));
        Changed?.Invoke(id, first.Number);
        return first;
    }

    /// <inheritdoc/>
    public async Task<SaveOutcome> SaveAsync(string id, string json, long expected, string change)
    {
        CaseSummary summary = CaseSummary.Of(json);
        SaveOutcome outcome = await InTurn(() =>
        {
            using SqliteTransaction transaction = connection.BeginTransaction(deferred: false);
            CaseVersion newest = NewestOf(id, transaction) ?? throw ShelfFault.NoPatient(id);
            if (newest.Number != expected)
            {
                return new SaveOutcome(false, newest);
            }

            CaseVersion next = new(id, expected + 1, clock.GetUtcNow(), change, json);
            Insert(next, summary, transaction);
            transaction.Commit();
            return new SaveOutcome(true, next);
        });
        if (outcome.Saved)
        {
            Changed?.Invoke(id, outcome.Newest.Number);
        }

        return outcome;
    }

    /// <inheritdoc/>
    public Task<IReadOnlyList<VersionNote>> HistoryAsync(string id) => InTurn<IReadOnlyList<VersionNote>>(() =>
    {
        using SqliteCommand command = Command("SELECT number, saved_at, change FROM version WHERE patient = $id ORDER BY number DESC");
        command.Parameters.AddWithValue("$id", id);
        using SqliteDataReader reader = command.ExecuteReader();
        List<VersionNote> all = [];
        while (reader.Read())
        {
            all.Add(new VersionNote(reader.GetInt64(0), Time(reader.GetString(1)), reader.GetString(2)));
        }

        return all;
    });

    /// <summary>Closes the file.</summary>
    public void Dispose()
    {
        connection.Dispose();
        turn.Dispose();
    }

    /// <summary>Lets the file grow by so many pages and no more: what a full disk does.</summary>
    internal void LimitPages(int extra)
    {
        using SqliteCommand count = Command("PRAGMA page_count");
        long pages = (long)count.ExecuteScalar()!;
        using SqliteCommand limit = Command(string.Create(CultureInfo.InvariantCulture, $"PRAGMA max_page_count = {pages + extra}"));
        limit.ExecuteNonQuery();
    }

    private CaseVersion? NewestOf(string id, SqliteTransaction? transaction)
    {
        using SqliteCommand command = Command(Newest, transaction);
        command.Parameters.AddWithValue("$id", id);
        return One(command);
    }

    private static CaseVersion? One(SqliteCommand command)
    {
        using SqliteDataReader reader = command.ExecuteReader();
        return reader.Read() ? new CaseVersion(reader.GetString(0), reader.GetInt64(1), Time(reader.GetString(2)), reader.GetString(3), reader.GetString(4)) : null;
    }

    private int Insert(CaseVersion version, CaseSummary summary, SqliteTransaction? transaction)
    {
        using SqliteCommand command = Command(
            "INSERT INTO version (patient, number, saved_at, change, title, invented, json) VALUES ($id, $number, $at, $change, $title, $invented, $json)", transaction);
        command.Parameters.AddWithValue("$id", version.Id);
        command.Parameters.AddWithValue("$number", version.Number);
        command.Parameters.AddWithValue("$at", version.SavedAt.ToString("O", CultureInfo.InvariantCulture));
        command.Parameters.AddWithValue("$change", version.Change);
        command.Parameters.AddWithValue("$title", summary.Title);
        command.Parameters.AddWithValue("$invented", summary.Invented ? 1 : 0);
        command.Parameters.AddWithValue("$json", version.Json);
        return command.ExecuteNonQuery();
    }

#pragma warning disable CA2100 // Every text handed in is a constant of this file; values go in as parameters.
    private SqliteCommand Command(string text, SqliteTransaction? transaction = null) => new(text, connection, transaction);
#pragma warning restore CA2100

    private void Execute(string text)
    {
        using SqliteCommand command = Command(text);
        command.ExecuteNonQuery();
    }

    /// <summary>One connection, one user at a time: a commit waits for the disk, and that must not hold a thread of the screen.</summary>
    private async Task<T> InTurn<T>(Func<T> work)
    {
        await turn.WaitAsync();
        try
        {
            return await Task.Run(work);
        }
        catch (SqliteException refusal)
        {
            throw ShelfFault.Of(refusal);
        }
        finally
        {
            turn.Release();
        }
    }

    private static DateTimeOffset Time(string text) => DateTimeOffset.Parse(text, CultureInfo.InvariantCulture);
}
