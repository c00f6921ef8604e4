using System.Data.Common;
using Cavaxis.Records.Faults;
using Microsoft.EntityFrameworkCore;

namespace Cavaxis.Records.Engines;

/// <summary>An opened database: makes a context for each piece of work and turns refusals into faults.</summary>
internal sealed class StoreDatabase : IDisposable
{
    private readonly DbContextOptions<RecordContext> options;

    private StoreDatabase(IStoreEngine engine)
    {
        Engine = engine;
        DbContextOptionsBuilder<RecordContext> builder = new();
        engine.Configure(builder);
        options = builder.Options;
    }

    /// <summary>What is special to the database.</summary>
    public IStoreEngine Engine { get; }

    /// <summary>Opens a database and makes its tables where they are missing.</summary>
    /// <param name="address">Where it is.</param>
    /// <returns>The database.</returns>
    /// <exception cref="StoreFaultException">It cannot be opened.</exception>
    public static async Task<StoreDatabase> OpenAsync(StoreAddress address)
    {
        MakeFolder(address);
        StoreDatabase database = new(EngineOf(address));
        try
        {
            await database.DoAsync(async context =>
            {
                await database.Engine.PrepareAsync(context);
                return true;
            });
            return database;
        }
        catch
        {
            database.Dispose();
            throw;
        }
    }

    /// <summary>Takes a database as it is, to inspect it: makes and mends nothing.</summary>
    /// <param name="address">Where it is.</param>
    /// <returns>The database.</returns>
    public static StoreDatabase ToInspect(StoreAddress address) => new(EngineOf(address));

    /// <summary>Reads one state of the database, damaged or not, without hindering anyone.</summary>
    /// <param name="work">The work.</param>
    /// <returns>What it gives.</returns>
    /// <exception cref="StoreFaultException">The database refused.</exception>
    public async Task<T> InspectAsync<T>(Func<DbConnection, DbTransaction, Task<T>> work)
    {
        try
        {
            await using DbConnection connection = await Engine.OpenToInspectAsync();
            await using DbTransaction snapshot = await Engine.BeginSnapshotAsync(connection);
            return await work(connection, snapshot);
        }
        catch (Exception refusal) when (Engine.FaultOf(refusal) is StoreFaultException fault)
        {
            throw fault;
        }
    }

    /// <summary>Does a piece of work with a context of its own.</summary>
    /// <param name="work">The work.</param>
    /// <returns>What it gives.</returns>
    /// <exception cref="StoreFaultException">The database refused.</exception>
    public async Task<T> DoAsync<T>(Func<RecordContext, Task<T>> work)
    {
        await using RecordContext context = new(options);
        try
        {
            return await work(context);
        }
        catch (Exception refusal) when (Engine.FaultOf(refusal) is StoreFaultException fault)
        {
            throw fault;
        }
    }

    /// <summary>Lets go of the database.</summary>
    public void Dispose() => Engine.Dispose();

    private static IStoreEngine EngineOf(StoreAddress address) =>
        address.Engine == StoreEngineKind.Sqlite ? new SqliteEngine(address.Connection) : new PostgresEngine(address.Connection);

    /// <summary>A new file is for its owner alone, and SQLite gives the files beside it the same rights.</summary>
    private static void OwnerOnly(string path)
    {
        if (!OperatingSystem.IsWindows() && !File.Exists(path))
        {
            using FileStream made = new(path, new FileStreamOptions
            {
                Mode = FileMode.OpenOrCreate,
                Access = FileAccess.ReadWrite,
                Share = FileShare.ReadWrite,
                UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite,
            });
        }
    }

    private static void MakeFolder(StoreAddress address)
    {
        try
        {
            if (address.Engine == StoreEngineKind.Sqlite)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(address.Connection))!);
                OwnerOnly(address.Connection);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new StoreFaultException(new StoreFault(StoreFaultCode.CannotOpen, "the folder cannot be made", "a folder you may write to", "Check the path."), e);
        }
    }
}
