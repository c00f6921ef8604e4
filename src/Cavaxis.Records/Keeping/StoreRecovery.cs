using System.Data.Common;
using Cavaxis.Records.Chain;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Faults;
using Microsoft.Data.Sqlite;

namespace Cavaxis.Records.Keeping;

/// <summary>
/// Gets out of a damaged SQLite file what is intact, into a new store. The damaged file is not touched. Passwords do not come along: they
/// are not in the chain, so that no one can say whether they are intact; they are set anew.
/// </summary>
public static class StoreRecovery
{
    /// <summary>An event takes more room than this in the file: its two hashes alone have 64 bytes.</summary>
    private const long FewestBytes = 100;

    /// <summary>So many places that give nothing in a row mean that there are no more.</summary>
    private const long LongestGap = 100_000;

    /// <summary>Recovers.</summary>
    /// <param name="damaged">Path of the damaged file; its write-ahead log is used where it lies beside it.</param>
    /// <param name="path">Path of the new store; nothing may be there.</param>
    /// <param name="anchor">A line kept elsewhere, which tells how many events there were; null for none.</param>
    /// <returns>What was kept, found loose and lost.</returns>
    /// <exception cref="StoreFaultException">There is no such file, something is at the new path, or it cannot be written.</exception>
    public static async Task<RecoveryReport> RecoverAsync(string damaged, string path, ChainAnchor? anchor = null)
    {
        ArgumentNullException.ThrowIfNull(damaged);
        ArgumentNullException.ThrowIfNull(path);
        return await NewFile.MakeAsync(path, async store =>
        {
            string folder = $"{path}.work-{Guid.NewGuid():N}";
            if (OperatingSystem.IsWindows())
            {
                Directory.CreateDirectory(folder);
            }
            else
            {
                Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            }

            try
            {
                string copy = Path.Combine(folder, "damaged.db");
                CopyIn(damaged, copy);
                CopyIn(damaged + "-wal", copy + "-wal");
                List<EventRow> found = await ReadableAsync(copy);
                bool mended = found.Count == 0 && new FileInfo(copy).Length > 0 && await FirstPage.MendAsync(copy, folder);
                if (mended)
                {
                    found = await ReadableAsync(copy);
                }

                return await KeepAsync(found, store, anchor, mended && found.Count > 0);
            }
            finally
            {
                Directory.Delete(folder, true);
            }
        });
    }

    private static void CopyIn(string from, string to)
    {
        if (File.Exists(from))
        {
            File.Copy(from, to);
        }
        else if (!from.EndsWith("-wal", StringComparison.Ordinal))
        {
            throw new StoreFaultException(new StoreFault(StoreFaultCode.CannotOpen, "there is no such file", "the damaged file", "Check the path."));
        }
    }

    private static async Task<RecoveryReport> KeepAsync(List<EventRow> found, StoreDatabase store, ChainAnchor? anchor, bool mended)
    {
        ChainWalk walk = new(anchor);
        int kept = 0;
        while (kept < found.Count && walk.Take(found[kept]))
        {
            kept++;
        }

        walk.End();
        ChainHead head = await StoreCopy.CopyAsync(found.Take(kept).ToAsyncEnumerable<EventRow?>(), store, []);
        EventNames names = new();
        EventRow[] loose = [.. found.Skip(kept).Where(r => r.HoldsTogether && r.IsWellFormed(names))];
        long last = Math.Max(anchor?.Head.Position ?? 0, found.Count > 0 ? found[^1].Position : 0);
        return new RecoveryReport(
            head,
            walk.Break,
            [.. loose.Select(static r => r.ToEvent())],
            PositionRange.Missing(loose.Select(static r => r.Position), head.Position + 1, last),
            anchor is not null,
            mended);
    }

    /// <summary>All rows that the file still gives, in order of position: in one sweep as far as that goes, then place by place.</summary>
    private static async Task<List<EventRow>> ReadableAsync(string copy)
    {
        List<EventRow> found = [];
        using SqliteEngine engine = new(copy);
        try
        {
            await using DbConnection connection = await engine.OpenToInspectAsync();
            try
            {
                await using DbTransaction snapshot = await engine.BeginSnapshotAsync(connection);
                await foreach (EventRow? row in StoreTables.ReadAsync(connection, snapshot))
                {
                    if (row is not null && row.Position > (found.Count > 0 ? found[^1].Position : 0))
                    {
                        found.Add(row);
                    }
                }
            }
            catch (SqliteException)
            {
                await PlaceByPlaceAsync(connection, found, new FileInfo(copy).Length / FewestBytes);
            }
        }
        catch (SqliteException)
        {
            // Not even the list of tables can be read: nothing more is found.
        }

        return found;
    }

    private static async Task PlaceByPlaceAsync(DbConnection connection, List<EventRow> found, long most)
    {
        await using DbCommand one = StoreTables.One(connection);
        long next = found.Count > 0 ? found[^1].Position + 1 : 1;
        for (long gap = 0; next <= most && gap < LongestGap; next++, gap++)
        {
            try
            {
                one.Parameters[0].Value = next;
                await using DbDataReader reader = await one.ExecuteReaderAsync();
                if (await reader.ReadAsync() && StoreTables.Row(reader) is EventRow row && row.Position == next)
                {
                    found.Add(row);
                    gap = 0;
                }
            }
            catch (SqliteException)
            {
                // This place lies on a damaged page; others may not.
            }
        }
    }
}
