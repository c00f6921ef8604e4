using System.Data.Common;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Records.Engines;

/// <summary>Where the records are kept: the one setting. A path means a SQLite file; a text with <c>Host=</c> means PostgreSQL.</summary>
public sealed record StoreAddress
{
    private StoreAddress(StoreEngineKind engine, string connection, string shown) => (Engine, Connection, Shown) = (engine, connection, shown);

    /// <summary>Which database.</summary>
    public StoreEngineKind Engine { get; }

    /// <summary>The address for a person: the file, or server and database; never a password.</summary>
    public string Shown { get; }

    /// <summary>Path of the file, or the connection string with its password.</summary>
    internal string Connection { get; }

    /// <summary>Takes the setting.</summary>
    /// <param name="setting">Path of a file, or <c>Host=…;Database=…;Username=…;Password=…</c>.</param>
    /// <returns>The address.</returns>
    /// <exception cref="InputFaultException">Empty or not of either form.</exception>
    public static StoreAddress Of(string setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        if (string.IsNullOrWhiteSpace(setting) || setting.Contains('\0', StringComparison.Ordinal))
        {
            throw Refused("(nothing)");
        }

        if (!setting.Contains("Host=", StringComparison.OrdinalIgnoreCase))
        {
            return setting.Contains("://", StringComparison.Ordinal) ? throw Refused("an address with ://") : new StoreAddress(StoreEngineKind.Sqlite, setting, setting);
        }

        try
        {
            DbConnectionStringBuilder parts = new() { ConnectionString = setting };
            string database = parts.TryGetValue("Database", out object? name) ? $"{name}" : string.Empty;
            return new StoreAddress(StoreEngineKind.PostgreSql, setting, $"{parts["Host"]}/{database}");
        }
        catch (ArgumentException)
        {
            throw Refused("a connection string that cannot be read");
        }
    }

    /// <inheritdoc/>
    public override string ToString() => Shown;

    private static InputFaultException Refused(string value) => new(new InputFault(
        FaultCode.WrongKind, "store", value, "the path of a file, or Host=…;Database=…;Username=…;Password=… for PostgreSQL", "Give one of the two."));
}
