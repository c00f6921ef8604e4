using System.Data;
using System.Data.Common;
using Cavaxis.Records.Faults;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Cavaxis.Records.Engines;

/// <summary>A PostgreSQL server. Appends wait for each other by an advisory lock; a commit waits for the server's disk.</summary>
internal sealed class PostgresEngine : IStoreEngine
{
    private readonly NpgsqlDataSource source;

    /// <summary>An engine for a server; connects to nothing yet.</summary>
    /// <param name="connection">Connection string.</param>
    /// <exception cref="StoreFaultException">The connection string cannot be used.</exception>
    public PostgresEngine(string connection)
    {
        try
        {
            source = new NpgsqlDataSourceBuilder(connection).Build();
        }
        catch (ArgumentException)
        {
            // The library's own message may repeat parts of the text, and the text holds a password.
            throw new StoreFaultException(new StoreFault(
                StoreFaultCode.CannotOpen, "the connection string has a word that PostgreSQL's client does not know", "Host, Port, Database, Username, Password", "Correct the setting."));
        }
    }

    /// <inheritdoc/>
    public void Configure(DbContextOptionsBuilder options) => options.UseNpgsql(source);

    /// <inheritdoc/>
    public async Task PrepareAsync(RecordContext context)
    {
        await using NpgsqlConnection open = await source.OpenConnectionAsync();
        await using NpgsqlTransaction transaction = await open.BeginTransactionAsync();
        await RunAsync(open, Lock);
        if (await ScalarAsync(open, "SELECT to_regclass('record_format')::text") is not string)
        {
            await RunAsync(open, PostgresSchema.Text);
        }
        else if (await ScalarAsync(open, "SELECT max(version) FROM record_format") is int and > PostgresSchema.Version)
        {
            throw new StoreFaultException(new StoreFault(
                StoreFaultCode.NewerFormat, "the database was made by a later version of this program", "tables of format 1", "Use the later version."));
        }

        await transaction.CommitAsync();
    }

    /// <inheritdoc/>
    public Task LockForAppendAsync(RecordContext context) => context.Database.ExecuteSqlRawAsync(Lock);

    /// <inheritdoc/>
    public string HoldingBytes => "SELECT * FROM event WHERE position({0} in payload) > 0";

    /// <inheritdoc/>
    public async Task<DbConnection> OpenToInspectAsync() => await source.OpenConnectionAsync();

    /// <inheritdoc/>
    public async Task<DbTransaction> BeginSnapshotAsync(DbConnection connection) => await connection.BeginTransactionAsync(IsolationLevel.RepeatableRead);

    /// <inheritdoc/>
    public Task<IReadOnlyList<string>> DamageAsync(DbConnection connection) => Task.FromResult<IReadOnlyList<string>>([]);

    /// <inheritdoc/>
    public StoreFaultException? FaultOf(Exception refusal) => PostgresFault.Of(refusal as NpgsqlException ?? refusal.InnerException as NpgsqlException);

    /// <summary>Closes the connections.</summary>
    public void Dispose() => source.Dispose();

    /// <summary>One lock for each schema, held until the transaction ends; and a commit that waits for the disk whatever the server's default.</summary>
    private const string Lock = "SET LOCAL synchronous_commit TO on; SELECT pg_advisory_xact_lock(1128355416, hashtext(current_schema()))";

#pragma warning disable CA2100 // Every text handed in is a constant of this room.
    private static async Task RunAsync(NpgsqlConnection open, string text)
    {
        await using NpgsqlCommand command = new(text, open);
        await command.ExecuteNonQueryAsync();
    }

    private static async Task<object?> ScalarAsync(NpgsqlConnection open, string text)
    {
        await using NpgsqlCommand command = new(text, open);
        return await command.ExecuteScalarAsync();
    }
#pragma warning restore CA2100
}
