using System.Data.Common;
using Cavaxis.Records.Chain;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Faults;

namespace Cavaxis.Records.Keeping;

/// <summary>Checks a whole store: every hash, every link, every number in every stream. Reads only; writers need not stop.</summary>
public static class StoreVerifier
{
    /// <summary>Checks a store.</summary>
    /// <param name="address">Where it is.</param>
    /// <param name="anchor">A line kept elsewhere that the chain must pass; null for none.</param>
    /// <returns>Where it is first broken, or that it is whole.</returns>
    /// <exception cref="StoreFaultException">It cannot be opened at all, or is no store.</exception>
    public static async Task<ChainReport> VerifyAsync(StoreAddress address, ChainAnchor? anchor = null)
    {
        ArgumentNullException.ThrowIfNull(address);
        using StoreDatabase database = StoreDatabase.ToInspect(address);
        return await database.InspectAsync((connection, snapshot) => VerifyAsync(database.Engine, connection, snapshot, anchor));
    }

    /// <summary>Checks a store through a connection.</summary>
    internal static async Task<ChainReport> VerifyAsync(IStoreEngine engine, DbConnection connection, DbTransaction snapshot, ChainAnchor? anchor)
    {
        ChainWalk walk = new(anchor);
        try
        {
            await foreach (EventRow? row in StoreTables.ReadAsync(connection, snapshot))
            {
                if (row is null)
                {
                    walk.CannotRead();
                }

                if (row is null || !walk.Take(row))
                {
                    break;
                }
            }

            walk.End();
        }
        catch (DbException refusal) when (engine.FaultOf(refusal)?.Fault.Code is StoreFaultCode.Damaged or StoreFaultCode.DiskFailed)
        {
            walk.CannotRead();
        }

        return new ChainReport(walk.Head, walk.Break, await engine.DamageAsync(connection));
    }
}
