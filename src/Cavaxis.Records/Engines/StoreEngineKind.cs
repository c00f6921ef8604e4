namespace Cavaxis.Records.Engines;

/// <summary>The database behind a store.</summary>
public enum StoreEngineKind
{
    /// <summary>One file beside the program.</summary>
    Sqlite,

    /// <summary>A PostgreSQL server.</summary>
    PostgreSql,
}
