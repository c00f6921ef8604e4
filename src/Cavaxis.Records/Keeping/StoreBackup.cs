using System.Data.Common;
using Cavaxis.Records.Chain;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Faults;

namespace Cavaxis.Records.Keeping;

/// <summary>
/// Backup of a store of either kind as one SQLite file, and restoring it into a store of either kind: so a backup is also the way from
/// one database to the other. Positions and hashes stay as they are. Password hashes go along; who is signed in does not.
/// </summary>
public static class StoreBackup
{
    /// <summary>Writes a backup while the store is in use: the state at one moment, its chain checked event by event.</summary>
    /// <param name="source">The store.</param>
    /// <param name="path">Path of the backup; nothing may be there.</param>
    /// <param name="clock">The clock that dates the anchor.</param>
    /// <returns>The end of the chain in the backup, as a line to keep elsewhere.</returns>
    /// <exception cref="StoreFaultException">The chain is broken, something is at the path, or it cannot be written; no file is left.</exception>
    public static async Task<ChainAnchor> BackUpAsync(StoreAddress source, string path, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(clock);
        using StoreDatabase database = StoreDatabase.ToInspect(source);
        ChainHead head = await database.InspectAsync((connection, snapshot) => NewFile.MakeAsync(path, target => CopyAsync(connection, snapshot, target)));
        return new ChainAnchor(head, clock.GetUtcNow());
    }

    /// <summary>Makes a store from a backup.</summary>
    /// <param name="path">Path of the backup.</param>
    /// <param name="target">Where the store shall be: no file yet, or a database without events.</param>
    /// <param name="anchor">A line kept elsewhere that the backup must pass; null for none.</param>
    /// <returns>The end of the chain.</returns>
    /// <exception cref="StoreFaultException">The backup is broken or damaged, the target holds something, or cannot be written; nothing is left of the attempt.</exception>
    public static async Task<ChainHead> RestoreAsync(string path, StoreAddress target, ChainAnchor? anchor = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(target);
        using StoreDatabase backup = StoreDatabase.ToInspect(StoreAddress.Of(path));
        return await backup.InspectAsync(async (connection, snapshot) =>
        {
            ChainReport report = await StoreVerifier.VerifyAsync(backup.Engine, connection, snapshot, anchor);
            if (report.Break is ChainBreak at)
            {
                throw StoreCopy.Broken(at);
            }

            if (report.Damage.Count > 0)
            {
                throw new StoreFaultException(new StoreFault(
                    StoreFaultCode.Damaged, "the backup's file is damaged, though every event in it holds", "a file as it was written", "Recover it into a new store, or use another backup."));
            }

            if (target.Engine == StoreEngineKind.Sqlite)
            {
                return await NewFile.MakeAsync(target.Connection, store => CopyAsync(connection, snapshot, store));
            }

            using StoreDatabase server = await StoreDatabase.OpenAsync(target);
            return await CopyAsync(connection, snapshot, server);
        });
    }

    private static async Task<ChainHead> CopyAsync(DbConnection connection, DbTransaction snapshot, StoreDatabase target) =>
        await StoreCopy.CopyAsync(StoreTables.ReadAsync(connection, snapshot), target, await StoreTables.CredentialsAsync(connection, snapshot));
}
