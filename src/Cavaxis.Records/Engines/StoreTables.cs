using System.Data.Common;
using System.Globalization;
using Cavaxis.Records.Chain;

namespace Cavaxis.Records.Engines;

/// <summary>Events read and written row by row, for work on whole stores, where a row may be anything; and the password hashes beside them.</summary>
internal static class StoreTables
{
    private const string Columns = "position, stream, sequence, kind, payload, who, occurred_us, recorded_us, corrects, previous_hash, hash";
    private static readonly string[] Names = Columns.Split(", ");
    private static readonly string InsertText = $"INSERT INTO event ({Columns}) VALUES (@{string.Join(", @", Names)})";

    /// <summary>Reads rows in order.</summary>
    /// <param name="connection">An open connection.</param>
    /// <param name="transaction">Its transaction.</param>
    /// <returns>The rows; null for one whose values are of the wrong kind. Throws what the database throws.</returns>
    public static async IAsyncEnumerable<EventRow?> ReadAsync(DbConnection connection, DbTransaction transaction)
    {
        await using DbCommand command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = $"SELECT {Columns} FROM event ORDER BY position";
        await using DbDataReader reader = await command.ExecuteReaderAsync();
        while (await reader.ReadAsync())
        {
            yield return Row(reader);
        }
    }

    /// <summary>A command that gives the row of the position that its one parameter names.</summary>
    /// <param name="connection">An open connection.</param>
    /// <returns>The command.</returns>
    public static DbCommand One(DbConnection connection)
    {
        DbCommand command = connection.CreateCommand();
        command.CommandText = $"SELECT {Columns} FROM event WHERE position = @position";
        Add(command, "position");
        return command;
    }

    /// <summary>A command that puts in a row.</summary>
    /// <param name="connection">An open connection.</param>
    /// <param name="transaction">Its transaction.</param>
    /// <returns>The command, to be given to <see cref="PutAsync"/>.</returns>
    public static DbCommand Insert(DbConnection connection, DbTransaction transaction)
    {
        DbCommand command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = InsertText;
        foreach (string column in Names)
        {
            Add(command, column);
        }

        return command;
    }

    /// <summary>Puts in rows: where the database takes many at once, in one question to it for each thousand.</summary>
    /// <param name="transaction">The transaction.</param>
    /// <param name="rows">The rows, in order of position.</param>
    public static async Task PutAllAsync(DbTransaction transaction, IReadOnlyList<EventRow> rows)
    {
        DbConnection connection = transaction.Connection!;
        if (!connection.CanCreateBatch)
        {
            await using DbCommand insert = Insert(connection, transaction);
            foreach (EventRow row in rows)
            {
                await PutAsync(insert, row);
            }

            return;
        }

        foreach (EventRow[] some in rows.Chunk(1000))
        {
            await using DbBatch batch = connection.CreateBatch();
            batch.Transaction = transaction;
            foreach (EventRow row in some)
            {
                DbBatchCommand command = batch.CreateBatchCommand();
                command.CommandText = InsertText;
                foreach ((string name, object value) in Names.Zip(Values(row)))
                {
                    DbParameter parameter = command.CreateParameter();
                    (parameter.ParameterName, parameter.Value) = (name, value);
                    command.Parameters.Add(parameter);
                }

                batch.BatchCommands.Add(command);
            }

            await batch.ExecuteNonQueryAsync();
        }
    }

    /// <summary>Puts in a row.</summary>
    /// <param name="insert">The command.</param>
    /// <param name="row">The row.</param>
    public static Task PutAsync(DbCommand insert, EventRow row)
    {
        object[] values = Values(row);
        for (int i = 0; i < values.Length; i++)
        {
            insert.Parameters[i].Value = values[i];
        }

        return insert.ExecuteNonQueryAsync();
    }

    /// <summary>The row under a reader.</summary>
    /// <param name="reader">A reader that stands on a row.</param>
    /// <returns>The row; null where a value is of the wrong kind.</returns>
    public static EventRow? Row(DbDataReader reader)
    {
        object[] v = new object[11];
        reader.GetValues(v);
        return v is [long position, string stream, long sequence, string kind, byte[] payload, string who, long occurred, long recorded, long or DBNull, byte[] previous, byte[] hash]
            ? new EventRow
            {
                Position = position,
                Stream = stream,
                Sequence = sequence,
                Kind = kind,
                Payload = payload,
                Who = who,
                OccurredUs = occurred,
                RecordedUs = recorded,
                Corrects = v[8] as long?,
                PreviousHash = previous,
                Hash = hash,
            }
            : null;
    }

    /// <summary>The greatest position.</summary>
    /// <param name="connection">An open connection.</param>
    /// <param name="transaction">Its transaction.</param>
    /// <returns>The position; 0 where there is no event.</returns>
    public static async Task<long> LastAsync(DbConnection connection, DbTransaction transaction)
    {
        await using DbCommand command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = "SELECT COALESCE(MAX(position), 0) FROM event";
        return Convert.ToInt64(await command.ExecuteScalarAsync(), CultureInfo.InvariantCulture);
    }

    /// <summary>The password hashes.</summary>
    /// <param name="connection">An open connection.</param>
    /// <param name="transaction">Its transaction.</param>
    /// <returns>All of them.</returns>
    public static async Task<IReadOnlyList<CredentialRow>> CredentialsAsync(DbConnection connection, DbTransaction transaction)
    {
        await using DbCommand command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = "SELECT person, hash FROM credential";
        await using DbDataReader reader = await command.ExecuteReaderAsync();
        List<CredentialRow> all = [];
        while (await reader.ReadAsync())
        {
            all.Add(new CredentialRow { Person = reader.GetString(0), Hash = reader.GetString(1) });
        }

        return all;
    }

    private static object[] Values(EventRow row) =>
    [
        row.Position, row.Stream, row.Sequence, row.Kind, row.Payload, row.Who, row.OccurredUs, row.RecordedUs, row.Corrects is long one ? one : DBNull.Value, row.PreviousHash, row.Hash,
    ];

    private static void Add(DbCommand command, string name)
    {
        DbParameter parameter = command.CreateParameter();
        parameter.ParameterName = name;
        command.Parameters.Add(parameter);
    }
}
