using System.Data.Common;
using System.Globalization;
using Cavaxis.Records.Chain;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Faults;
using Microsoft.EntityFrameworkCore.Storage;

namespace Cavaxis.Records.Keeping;

/// <summary>Copies events with their hashes from one database to another, all or none. The databases may be of different kinds.</summary>
internal static class StoreCopy
{
    /// <summary>Copies.</summary>
    /// <param name="rows">Events in order, from the first.</param>
    /// <param name="target">A database without events.</param>
    /// <param name="credentials">Password hashes that go along.</param>
    /// <returns>The end of the chain.</returns>
    /// <exception cref="StoreFaultException">The chain is broken, the target holds events or refuses.</exception>
    public static Task<ChainHead> CopyAsync(IAsyncEnumerable<EventRow?> rows, StoreDatabase target, IReadOnlyList<CredentialRow> credentials) => target.DoAsync(async context =>
    {
        await using IDbContextTransaction begun = await context.Database.BeginTransactionAsync();
        await target.Engine.LockForAppendAsync(context);
        DbTransaction transaction = begun.GetDbTransaction();
        DbConnection connection = transaction.Connection!;
        if (await StoreTables.LastAsync(connection, transaction) > 0)
        {
            throw new StoreFaultException(new StoreFault(
                StoreFaultCode.AlreadyThere, "the store holds events", "an empty store", "Name another file or database: nothing is overwritten."));
        }

        ChainWalk walk = new();
        await using DbCommand insert = StoreTables.Insert(connection, transaction);
        await foreach (EventRow? row in rows)
        {
            if (row is null)
            {
                walk.CannotRead();
            }

            if (row is null || !walk.Take(row))
            {
                throw Broken(walk.Break!);
            }

            await StoreTables.PutAsync(insert, row);
        }

        context.Credentials.AddRange(credentials);
        await context.SaveChangesAsync();
        await begun.CommitAsync();
        return walk.Head;
    });

    /// <summary>The fault for a broken chain.</summary>
    /// <param name="at">Where.</param>
    /// <returns>The exception to throw.</returns>
    public static StoreFaultException Broken(ChainBreak at) => new(new StoreFault(
        StoreFaultCode.BrokenChain,
        string.Create(CultureInfo.InvariantCulture, $"the chain is broken at event {at.Position}: {at.Words}"),
        "a chain that holds",
        "Recover the intact part of the file, or use another backup."));
}
