namespace Cavaxis.Records.Engines;

/// <summary>Tables, indexes and triggers in SQLite.</summary>
internal static class SqliteSchema
{
    /// <summary>Marks the file as a store of this program: "CAVX".</summary>
    public const long ApplicationId = 0x43415658;

    /// <summary>Version of the tables that this program reads and writes.</summary>
    public const long Version = 1;

    /// <summary>Everything that an empty file needs.</summary>
    public const string Text = """
        CREATE TABLE event (
            position INTEGER PRIMARY KEY CHECK (position > 0),
            stream TEXT NOT NULL,
            sequence INTEGER NOT NULL,
            kind TEXT NOT NULL,
            payload BLOB NOT NULL,
            who TEXT NOT NULL,
            occurred_us INTEGER NOT NULL,
            recorded_us INTEGER NOT NULL,
            corrects INTEGER,
            previous_hash BLOB NOT NULL,
            hash BLOB NOT NULL
        ) STRICT;
        CREATE UNIQUE INDEX event_of_stream ON event (stream, sequence);
        CREATE INDEX event_of_kind ON event (stream, kind, occurred_us);
        CREATE INDEX event_of_kind_in_all ON event (kind);
        CREATE TABLE credential (person TEXT PRIMARY KEY, hash TEXT NOT NULL) STRICT;
        CREATE TABLE session (token_hash TEXT PRIMARY KEY, person TEXT NOT NULL, begun_us INTEGER NOT NULL, seen_us INTEGER NOT NULL) STRICT;
        CREATE INDEX session_of_person ON session (person);
        CREATE TABLE attempt (name_hash TEXT PRIMARY KEY, failures INTEGER NOT NULL, first_us INTEGER NOT NULL, locked_until_us INTEGER) STRICT;
        CREATE TRIGGER event_is_never_changed BEFORE UPDATE ON event BEGIN
            SELECT RAISE(ABORT, 'append only: an event is never changed');
        END;
        CREATE TRIGGER event_is_never_deleted BEFORE DELETE ON event BEGIN
            SELECT RAISE(ABORT, 'append only: an event is never deleted');
        END;
        CREATE TRIGGER event_follows_the_last BEFORE INSERT ON event
        WHEN NEW.position <> (SELECT COALESCE(MAX(position), 0) + 1 FROM event)
            OR NEW.sequence <> (SELECT COALESCE(MAX(sequence), 0) + 1 FROM event WHERE stream = NEW.stream)
            OR NEW.previous_hash <> COALESCE((SELECT hash FROM event WHERE position = NEW.position - 1), zeroblob(32))
        BEGIN
            SELECT RAISE(ABORT, 'append only: an event follows the last one');
        END;
        PRAGMA application_id = 1128355416;
        PRAGMA user_version = 1;
        """;
}
