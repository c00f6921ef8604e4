using System.Data.Common;
using Cavaxis.Records.Faults;
using Microsoft.EntityFrameworkCore;

namespace Cavaxis.Records.Engines;

/// <summary>What differs between the two databases.</summary>
internal interface IStoreEngine : IDisposable
{
    /// <summary>Sets up Entity Framework for the database.</summary>
    /// <param name="options">The options to fill.</param>
    void Configure(DbContextOptionsBuilder options);

    /// <summary>Makes tables, indexes and triggers where they are missing; refuses what is not a store.</summary>
    /// <param name="context">An unused context.</param>
    Task PrepareAsync(RecordContext context);

    /// <summary>Keeps all others from appending until the transaction ends. Called first in a transaction.</summary>
    /// <param name="context">The context with its transaction.</param>
    Task LockForAppendAsync(RecordContext context);

    /// <summary>SQL of all events whose payload holds the bytes of its one parameter, {0}.</summary>
    string HoldingBytes { get; }

    /// <summary>Opens a connection that only reads, and gives what can be read of a damaged file too.</summary>
    /// <returns>The open connection.</returns>
    Task<DbConnection> OpenToInspectAsync();

    /// <summary>Begins a transaction that sees one state of the store and hinders no one.</summary>
    /// <param name="connection">An open connection.</param>
    /// <returns>The transaction.</returns>
    Task<DbTransaction> BeginSnapshotAsync(DbConnection connection);

    /// <summary>What the database finds wrong with its own file.</summary>
    /// <param name="connection">An open connection.</param>
    /// <returns>Its words; empty where it finds nothing or has no such check.</returns>
    Task<IReadOnlyList<string>> DamageAsync(DbConnection connection);

    /// <summary>The fault for a refusal of the database.</summary>
    /// <param name="refusal">What was thrown.</param>
    /// <returns>The fault; null where the exception is none of the database's.</returns>
    StoreFaultException? FaultOf(Exception refusal);
}
