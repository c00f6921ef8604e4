using System.Data.Common;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Store;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Cavaxis.Records.Tests.Engines;

/// <summary>What someone with the database's own tools can do to a store.</summary>
public static class TestStore
{
    public static async Task<EventStore> FilledAsync(StoreAddress address, int events)
    {
        EventStore store = await EventStore.OpenAsync(address, new TickingClock());
        await store.FillAsync(events);
        return store;
    }

    /// <summary>Runs a statement past this program.</summary>
    public static async Task RunAsync(StoreAddress address, string statement)
    {
        await using DbConnection open = address.Engine == StoreEngineKind.Sqlite
            ? new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = address.Connection, Pooling = false }.ToString())
            : new NpgsqlConnection(address.Connection + ";Pooling=false");
        await open.OpenAsync();
        await using DbCommand command = open.CreateCommand();
        command.CommandText = statement;
        await command.ExecuteNonQueryAsync();
    }

    /// <summary>Takes away what keeps events from being changed.</summary>
    public static Task UnlockAsync(StoreAddress address)
    {
        string of = address.Engine == StoreEngineKind.Sqlite ? string.Empty : " ON event";
        string[] triggers = ["event_is_never_changed", "event_follows_the_last", address.Engine == StoreEngineKind.Sqlite ? "event_is_never_deleted" : "event_is_never_emptied"];
        return RunAsync(address, string.Concat(triggers.Select(t => $"DROP TRIGGER {t}{of};")));
    }
}
