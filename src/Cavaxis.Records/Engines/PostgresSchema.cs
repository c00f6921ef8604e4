namespace Cavaxis.Records.Engines;

/// <summary>Tables, indexes and triggers in PostgreSQL, in the schema that the connection names.</summary>
internal static class PostgresSchema
{
    /// <summary>Version of the tables that this program reads and writes.</summary>
    public const int Version = 1;

    /// <summary>Everything that an empty schema needs.</summary>
    public const string Text = """
        CREATE TABLE record_format (version integer NOT NULL);
        INSERT INTO record_format VALUES (1);
        CREATE TABLE event (
            position bigint PRIMARY KEY CHECK (position > 0),
            stream text COLLATE "C" NOT NULL,
            sequence bigint NOT NULL,
            kind text COLLATE "C" NOT NULL,
            payload bytea NOT NULL,
            who text COLLATE "C" NOT NULL,
            occurred_us bigint NOT NULL,
            recorded_us bigint NOT NULL,
            corrects bigint,
            previous_hash bytea NOT NULL,
            hash bytea NOT NULL
        );
        CREATE UNIQUE INDEX event_of_stream ON event (stream, sequence);
        CREATE INDEX event_of_kind ON event (stream, kind, occurred_us);
        CREATE INDEX event_of_kind_in_all ON event (kind, position);
        CREATE TABLE credential (person text COLLATE "C" PRIMARY KEY, hash text NOT NULL);
        CREATE TABLE session (token_hash text COLLATE "C" PRIMARY KEY, person text COLLATE "C" NOT NULL, begun_us bigint NOT NULL, seen_us bigint NOT NULL);
        CREATE INDEX session_of_person ON session (person);
        CREATE TABLE attempt (name_hash text COLLATE "C" PRIMARY KEY, failures integer NOT NULL, first_us bigint NOT NULL, locked_until_us bigint);
        CREATE FUNCTION event_is_never_changed() RETURNS trigger LANGUAGE plpgsql AS $$
        BEGIN
            RAISE EXCEPTION 'append only: an event is never changed or deleted';
        END $$;
        CREATE FUNCTION event_follows_the_last() RETURNS trigger LANGUAGE plpgsql AS $$
        BEGIN
            IF NEW.position <> (SELECT COALESCE(MAX(position), 0) + 1 FROM event)
                OR NEW.sequence <> (SELECT COALESCE(MAX(sequence), 0) + 1 FROM event WHERE stream = NEW.stream)
                OR NEW.previous_hash <> COALESCE((SELECT hash FROM event WHERE position = NEW.position - 1), decode(repeat('00', 32), 'hex'))
            THEN
                RAISE EXCEPTION 'append only: an event follows the last one';
            END IF;
            RETURN NEW;
        END $$;
        CREATE TRIGGER event_is_never_changed BEFORE UPDATE OR DELETE ON event FOR EACH ROW EXECUTE FUNCTION event_is_never_changed();
        CREATE TRIGGER event_is_never_emptied BEFORE TRUNCATE ON event FOR EACH STATEMENT EXECUTE FUNCTION event_is_never_changed();
        CREATE TRIGGER event_follows_the_last BEFORE INSERT ON event FOR EACH ROW EXECUTE FUNCTION event_follows_the_last();
        """;
}
