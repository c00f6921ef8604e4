using System.Data.Common;
using Cavaxis.Records.Faults;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Cavaxis.Records.Engines;

/// <summary>One SQLite file: write-ahead log, each commit flushed to the disk before it is acknowledged.</summary>
internal sealed class SqliteEngine : DbConnectionInterceptor, IStoreEngine
{
    private readonly string connection;
    private readonly string path;

    /// <summary>An engine for a file; opens nothing yet.</summary>
    /// <param name="path">Path of the file.</param>
    public SqliteEngine(string path)
    {
        this.path = path;
        connection = new SqliteConnectionStringBuilder { DataSource = path, Pooling = true, DefaultTimeout = 30 }.ToString();
    }

    /// <inheritdoc/>
    public void Configure(DbContextOptionsBuilder options) => options.UseSqlite(connection).AddInterceptors(this);

    /// <inheritdoc/>
    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => SetUp(connection);

    /// <inheritdoc/>
    public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        SetUp(connection);
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public async Task PrepareAsync(RecordContext context)
    {
        await context.Database.OpenConnectionAsync();
        SqliteConnection open = (SqliteConnection)context.Database.GetDbConnection();
        Refuse(open);
        Run(open, "PRAGMA journal_mode = WAL");
        if (!IsEmpty(open))
        {
            return;
        }

        using SqliteTransaction transaction = open.BeginTransaction(deferred: false);
        if (IsEmpty(open))
        {
            Run(open, SqliteSchema.Text);
        }

        transaction.Commit();
    }

    /// <inheritdoc/>
    public Task LockForAppendAsync(RecordContext context) => Task.CompletedTask; // A write transaction of SQLite is begun as the only one (BEGIN IMMEDIATE).

    /// <inheritdoc/>
    public string HoldingBytes => "SELECT * FROM event WHERE instr(payload, {0}) > 0";

    /// <inheritdoc/>
    public async Task<DbConnection> OpenToInspectAsync()
    {
        if (!File.Exists(path))
        {
            throw new StoreFaultException(new StoreFault(StoreFaultCode.CannotOpen, "there is no such file", "a file that this program made", "Check the path."));
        }

        SqliteConnection open = new(new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadOnly, Pooling = false, DefaultTimeout = 30 }.ToString());
        await open.OpenAsync();

        // Without the first, SQLite gives nothing at all of a file that is shorter than its header says.
        Run(open, "PRAGMA writable_schema = ON; PRAGMA cell_size_check = ON; PRAGMA trusted_schema = OFF;");
        return open;
    }

    /// <inheritdoc/>
    public Task<DbTransaction> BeginSnapshotAsync(DbConnection connection) =>
        Task.FromResult<DbTransaction>(((SqliteConnection)connection).BeginTransaction(deferred: true));

    /// <inheritdoc/>
    public Task<IReadOnlyList<string>> DamageAsync(DbConnection connection)
    {
        List<string> found = [];
        try
        {
            using SqliteCommand command = ((SqliteConnection)connection).CreateCommand();
            command.CommandText = "PRAGMA integrity_check(20)";
            using SqliteDataReader reader = command.ExecuteReader();
            while (reader.Read())
            {
                found.Add(reader.GetString(0));
            }
        }
        catch (SqliteException refusal)
        {
            found.Add(refusal.Message);
        }

        return Task.FromResult<IReadOnlyList<string>>(found is ["ok"] ? [] : found);
    }

    /// <inheritdoc/>
    public StoreFaultException? FaultOf(Exception refusal) =>
        SqliteFault.Of(refusal as SqliteException ?? refusal.InnerException as SqliteException);

    /// <summary>Lets go of the file.</summary>
    public void Dispose()
    {
        using SqliteConnection pooled = new(connection);
        SqliteConnection.ClearPool(pooled);
    }

    private static void SetUp(DbConnection connection)
    {
        using DbCommand command = connection.CreateCommand();
        command.CommandText = "PRAGMA busy_timeout = 30000; PRAGMA synchronous = FULL; PRAGMA trusted_schema = OFF; PRAGMA secure_delete = ON;";
        command.ExecuteNonQuery();
    }

    private static void Refuse(SqliteConnection open)
    {
        if (!IsEmpty(open) && Number(open, "PRAGMA application_id") != SqliteSchema.ApplicationId)
        {
            throw new StoreFaultException(new StoreFault(
                StoreFaultCode.NotAStore, "the file is a database of another kind", "a file that this program made, or no file yet", "Name another file."));
        }

        if (Number(open, "PRAGMA user_version") > SqliteSchema.Version)
        {
            throw new StoreFaultException(new StoreFault(
                StoreFaultCode.NewerFormat, "the file was made by a later version of this program", "a file of format 1", "Use the later version."));
        }
    }

    private static bool IsEmpty(SqliteConnection open) => Number(open, "SELECT COUNT(*) FROM sqlite_schema") == 0;

#pragma warning disable CA2100 // Every text handed in is a constant of this room.
    private static long Number(SqliteConnection open, string text)
    {
        using SqliteCommand command = open.CreateCommand();
        command.CommandText = text;
        return (long)command.ExecuteScalar()!;
    }

    private static void Run(SqliteConnection open, string text)
    {
        using SqliteCommand command = open.CreateCommand();
        command.CommandText = text;
        command.ExecuteNonQuery();
    }
#pragma warning restore CA2100
}
