using Cavaxis.Records.Faults;
using Npgsql;

namespace Cavaxis.Records.Engines;

/// <summary>Turns what PostgreSQL refuses into a fault that a person can act on. Codes: PostgreSQL documentation, appendix A.</summary>
internal static class PostgresFault
{
    /// <summary>The fault for a refusal.</summary>
    /// <param name="refusal">What the server or its client said; null for none.</param>
    /// <returns>The exception to throw in its place; null for null and for what only a mistake in this program can raise.</returns>
    public static StoreFaultException? Of(NpgsqlException? refusal)
    {
        StoreFault? fault = refusal switch
        {
            null => null,
            PostgresException said => OfCode(said.SqlState),
            _ => new(StoreFaultCode.Unreachable, "the database server does not answer", "a server that runs at the address of the setting", "Start the server or correct the setting; all that was acknowledged is kept."),
        };
        return fault is null ? null : new StoreFaultException(fault, refusal);
    }

    private static StoreFault? OfCode(string state) => state switch
    {
        "53100" => new(StoreFaultCode.DiskFull, "no room is left on the server's disk", "room on the disk", "Make room and enter the last value again; all that was acknowledged is kept."),
        "25006" or "42501" => new(StoreFaultCode.ReadOnly, "the database may not be written", "a user who may write", "Ask whoever keeps the server."),
        "P0001" or "23505" or "23514" => new(StoreFaultCode.AppendOnly, "an event would be changed, deleted or put out of order", "new events at the end", "Enter a correction as a new event."),
        "XX001" or "XX002" => new(StoreFaultCode.Damaged, "the server finds its files damaged", "files as the server wrote them", "Restore a backup."),
        "42P01" or "42703" => new(StoreFaultCode.NotAStore, "the database has not the tables of a store", "a database that this program set up", "Name another database, or open this one to set it up."),
        "3D000" or "28000" or "28P01" => new(StoreFaultCode.NotAdmitted, "the server knows no such database, user or password", "a database and user that the server knows", "Correct the setting."),
        "55P03" or "57014" or "40P01" => new(StoreFaultCode.Busy, "others hold the store", "a store that no one has locked for long", "Try again."),
        ['0', '8', ..] or ['5', '3', ..] or ['5', '7', ..] => new(StoreFaultCode.Unreachable, "the database server ends or refuses the connection", "a server that runs and has connections left", "Try again; all that was acknowledged is kept."),
        ['5', '8', ..] => new(StoreFaultCode.DiskFailed, "the server's disk did not take or give the data", "a disk that can be read and written", "Check the server's disk."),
        _ => null,
    };
}
