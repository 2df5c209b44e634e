/** One step from a layout to the next, in both dialects. */
export interface SchemaStep {
  readonly sqlite: string;
  readonly postgres: string;
}

/**
 * Steps in order; the position is the version that the step leads to. A published step is never edited, a new one is
 * added at the end.
 */
export const schemaSteps: readonly SchemaStep[] = [
  {
    sqlite: `
  CREATE TABLE exam (
    n  INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE
  ) STRICT;

  CREATE TABLE exam_version (
    exam          INTEGER NOT NULL REFERENCES exam (n),
    version       INTEGER NOT NULL CHECK (version >= 1),
    received_at   TEXT NOT NULL,
    model_version TEXT NOT NULL,
    content_hash  TEXT NOT NULL CHECK (length(content_hash) = 64),
    raw           BLOB NOT NULL,
    bundle        BLOB NOT NULL,
    PRIMARY KEY (exam, version)
  ) STRICT;

  CREATE TRIGGER exam_version_is_kept BEFORE UPDATE ON exam_version
    BEGIN SELECT RAISE (ABORT, 'a stored version never changes'); END;
  CREATE TRIGGER exam_version_stays BEFORE DELETE ON exam_version
    BEGIN SELECT RAISE (ABORT, 'a stored version is never removed'); END;
  `,
    postgres: `
  CREATE TABLE exam (
    n  bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
    id text NOT NULL UNIQUE
  );

  CREATE TABLE exam_version (
    exam          bigint NOT NULL REFERENCES exam (n),
    version       integer NOT NULL CHECK (version >= 1),
    received_at   text NOT NULL,
    model_version text NOT NULL,
    content_hash  text NOT NULL CHECK (length(content_hash) = 64),
    raw           bytea NOT NULL,
    bundle        bytea NOT NULL,
    PRIMARY KEY (exam, version)
  );
  -- Both are compressed already, or small.
  ALTER TABLE exam_version ALTER COLUMN bundle SET STORAGE EXTERNAL;

  CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS
    $$ BEGIN RAISE EXCEPTION 'a stored version never changes and is never removed'; END $$;
  CREATE TRIGGER exam_version_is_kept BEFORE UPDATE OR DELETE ON exam_version
    FOR EACH ROW EXECUTE FUNCTION refuse_change();
  `,
  },
  {
    sqlite: `
  CREATE TABLE setting (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;

  -- A number is never given twice: whoever has read a chunk of a batch may go on using it.
  CREATE TABLE batch (
    n          INTEGER PRIMARY KEY AUTOINCREMENT,
    exam       INTEGER REFERENCES exam (n),
    version    INTEGER,
    written_at INTEGER NOT NULL,
    layout     BLOB
  ) STRICT;
  CREATE INDEX batch_of_exam ON batch (exam, version);

  CREATE TABLE chunk (n INTEGER PRIMARY KEY, data BLOB NOT NULL) STRICT;

  CREATE TABLE resource (
    key     INTEGER PRIMARY KEY,
    type    INTEGER NOT NULL,
    id      TEXT NOT NULL,
    version INTEGER NOT NULL,
    updated INTEGER NOT NULL,
    chunk   INTEGER NOT NULL,
    slot    INTEGER NOT NULL,
    UNIQUE (type, id)
  ) STRICT;
  CREATE INDEX resource_by_update ON resource (type, updated, key);

  CREATE TABLE past_resource (
    type    INTEGER NOT NULL,
    id      TEXT NOT NULL,
    version INTEGER NOT NULL,
    updated INTEGER NOT NULL,
    chunk   INTEGER NOT NULL,
    slot    INTEGER NOT NULL,
    PRIMARY KEY (type, id, version)
  ) STRICT, WITHOUT ROWID;
  CREATE INDEX past_resource_by_update ON past_resource (type, updated);

  CREATE TABLE parameter (n INTEGER PRIMARY KEY, type TEXT NOT NULL, name TEXT NOT NULL, UNIQUE (type, name)) STRICT;

  CREATE TABLE token (
    n      INTEGER PRIMARY KEY,
    kind   INTEGER NOT NULL,
    system TEXT NOT NULL,
    code   TEXT NOT NULL,
    body   TEXT,
    UNIQUE (kind, system, code)
  ) STRICT;
  CREATE INDEX token_by_code ON token (kind, code);

  CREATE TABLE posting (
    param  INTEGER NOT NULL,
    token  INTEGER NOT NULL,
    moment INTEGER NOT NULL,
    part   INTEGER NOT NULL,
    mask   INTEGER NOT NULL,
    PRIMARY KEY (param, token, moment, part)
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE range_posting (
    param  INTEGER NOT NULL,
    moment INTEGER NOT NULL,
    part   INTEGER NOT NULL,
    about  INTEGER NOT NULL,
    unit   INTEGER NOT NULL,
    low    REAL NOT NULL,
    high   REAL NOT NULL,
    mask   INTEGER NOT NULL,
    PRIMARY KEY (param, moment, part, about, unit, low, high)
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE export_job (
    id         TEXT PRIMARY KEY,
    request    TEXT NOT NULL,
    snapshot   TEXT NOT NULL,
    started_at INTEGER NOT NULL,
    counts     TEXT NOT NULL
  ) STRICT, WITHOUT ROWID;
  `,
    postgres: `
  CREATE TABLE setting (name text PRIMARY KEY, value text NOT NULL);

  CREATE TABLE batch (
    n          bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
    exam       bigint REFERENCES exam (n),
    version    integer,
    written_at bigint NOT NULL,
    layout     bytea,
    written_by xid8 NOT NULL DEFAULT pg_current_xact_id()
  );
  ALTER TABLE batch ALTER COLUMN layout SET STORAGE EXTERNAL;
  CREATE INDEX batch_of_exam ON batch (exam, version);
  CREATE INDEX batch_by_transaction ON batch (written_by);

  CREATE TABLE chunk (n bigint PRIMARY KEY, data bytea NOT NULL);
  ALTER TABLE chunk ALTER COLUMN data SET STORAGE EXTERNAL;

  CREATE TABLE resource (
    key     bigint PRIMARY KEY,
    type    smallint NOT NULL,
    id      text COLLATE "C" NOT NULL,
    version integer NOT NULL,
    updated bigint NOT NULL,
    chunk   bigint NOT NULL,
    slot    smallint NOT NULL,
    UNIQUE (type, id)
  );
  CREATE INDEX resource_by_update ON resource (type, updated, key);

  CREATE TABLE past_resource (
    type    smallint NOT NULL,
    id      text COLLATE "C" NOT NULL,
    version integer NOT NULL,
    updated bigint NOT NULL,
    chunk   bigint NOT NULL,
    slot    smallint NOT NULL,
    PRIMARY KEY (type, id, version)
  );
  CREATE INDEX past_resource_by_update ON past_resource (type, updated);

  CREATE TABLE parameter (
    n    integer GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
    type text NOT NULL,
    name text NOT NULL,
    UNIQUE (type, name)
  );

  CREATE TABLE token (
    n      integer GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
    kind   smallint NOT NULL,
    system text COLLATE "C" NOT NULL,
    code   text COLLATE "C" NOT NULL,
    body   text COLLATE "C",
    UNIQUE (kind, system, code)
  );
  CREATE INDEX token_by_code ON token (kind, code);

  CREATE TABLE posting (
    param  integer NOT NULL,
    token  integer NOT NULL,
    moment bigint NOT NULL,
    part   bigint NOT NULL,
    mask   bigint NOT NULL,
    PRIMARY KEY (param, token, moment, part) INCLUDE (mask)
  );

  CREATE TABLE range_posting (
    param  integer NOT NULL,
    moment bigint NOT NULL,
    part   bigint NOT NULL,
    about  integer NOT NULL,
    unit   integer NOT NULL,
    low    double precision NOT NULL,
    high   double precision NOT NULL,
    mask   bigint NOT NULL,
    PRIMARY KEY (param, moment, part, about, unit, low, high)
  );

  CREATE TABLE export_job (
    id         text PRIMARY KEY,
    request    text NOT NULL,
    snapshot   text NOT NULL,
    started_at bigint NOT NULL,
    counts     text NOT NULL
  );

  CREATE FUNCTION popcount(mask bigint) RETURNS bigint LANGUAGE sql IMMUTABLE PARALLEL SAFE
    RETURN bit_count(mask::bit(32));
  `,
  },
  {
    sqlite: `
  CREATE TABLE view_table (
    name            TEXT PRIMARY KEY,
    definition_hash TEXT NOT NULL,
    snapshot        TEXT,
    target          TEXT,
    reached         INTEGER NOT NULL
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE view_refresh (
    one     INTEGER PRIMARY KEY CHECK (one = 1),
    holder  TEXT,
    seen_at INTEGER NOT NULL
  ) STRICT;
  INSERT INTO view_refresh VALUES (1, NULL, 0);
  `,
    postgres: `
  CREATE TABLE view_table (
    name            text PRIMARY KEY,
    definition_hash text NOT NULL,
    snapshot        text,
    target          text,
    reached         bigint NOT NULL
  );

  CREATE TABLE view_refresh (
    one     integer PRIMARY KEY CHECK (one = 1),
    holder  text,
    seen_at bigint NOT NULL
  );
  INSERT INTO view_refresh VALUES (1, NULL, 0);

  CREATE SCHEMA IF NOT EXISTS views;
  `,
  },
  // Removal of a whole exam. The row that records it opens the way for that exam, and the reference to a table that stays
  // empty keeps a transaction from being committed before the way is closed again.
  {
    sqlite: `
  CREATE TABLE never (n INTEGER PRIMARY KEY CHECK (0)) STRICT;
  CREATE TABLE erasure (
    n              INTEGER PRIMARY KEY AUTOINCREMENT,
    exam_id        TEXT NOT NULL,
    erased_at      TEXT NOT NULL,
    reason         TEXT NOT NULL CHECK (reason <> ''),
    erased_by      TEXT NOT NULL,
    versions       INTEGER NOT NULL,
    resources      INTEGER NOT NULL,
    content_hashes TEXT NOT NULL,
    open_for       INTEGER REFERENCES never (n) DEFERRABLE INITIALLY DEFERRED
  ) STRICT;
  CREATE INDEX erasure_of_exam ON erasure (exam_id);
  CREATE TRIGGER erasure_is_kept BEFORE UPDATE ON erasure
    WHEN OLD.open_for IS NULL OR NEW.open_for IS NOT NULL
      OR (OLD.n, OLD.exam_id, OLD.erased_at, OLD.reason, OLD.erased_by, OLD.versions, OLD.resources, OLD.content_hashes)
        IS NOT (NEW.n, NEW.exam_id, NEW.erased_at, NEW.reason, NEW.erased_by, NEW.versions, NEW.resources, NEW.content_hashes)
    BEGIN SELECT RAISE (ABORT, 'the record of an erasure never changes'); END;
  CREATE TRIGGER erasure_stays BEFORE DELETE ON erasure
    BEGIN SELECT RAISE (ABORT, 'the record of an erasure is never removed'); END;

  DROP TRIGGER exam_version_stays;
  CREATE TRIGGER exam_version_stays BEFORE DELETE ON exam_version
    WHEN NOT EXISTS (SELECT 1 FROM erasure WHERE open_for = OLD.exam)
    BEGIN SELECT RAISE (ABORT, 'a stored version is never removed'); END;

  CREATE TRIGGER past_resource_is_kept BEFORE UPDATE ON past_resource
    BEGIN SELECT RAISE (ABORT, 'a stored version never changes'); END;
  CREATE TRIGGER past_resource_stays BEFORE DELETE ON past_resource
    WHEN NOT EXISTS (SELECT 1 FROM erasure JOIN batch ON batch.exam = open_for WHERE batch.n = OLD.chunk / 1024)
    BEGIN SELECT RAISE (ABORT, 'a stored version is never removed'); END;
  CREATE TRIGGER chunk_is_kept BEFORE UPDATE ON chunk
    BEGIN SELECT RAISE (ABORT, 'a stored version never changes'); END;
  CREATE TRIGGER chunk_stays BEFORE DELETE ON chunk
    WHEN NOT EXISTS (SELECT 1 FROM erasure JOIN batch ON batch.exam = open_for WHERE batch.n = OLD.n / 1024)
    BEGIN SELECT RAISE (ABORT, 'a stored version is never removed'); END;
  `,
    postgres: `
  CREATE TABLE never (n bigint PRIMARY KEY CHECK (false));
  CREATE TABLE erasure (
    n              bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
    exam_id        text NOT NULL,
    erased_at      text NOT NULL,
    reason         text NOT NULL CHECK (reason <> ''),
    erased_by      text NOT NULL,
    versions       integer NOT NULL,
    resources      integer NOT NULL,
    content_hashes text NOT NULL,
    open_for       bigint REFERENCES never (n) DEFERRABLE INITIALLY DEFERRED
  );
  CREATE INDEX erasure_of_exam ON erasure (exam_id);

  CREATE FUNCTION keep_erasure() RETURNS trigger LANGUAGE plpgsql AS $$
    BEGIN
      IF TG_OP = 'UPDATE' THEN
        IF OLD.open_for IS NOT NULL AND NEW.open_for IS NULL
          AND to_jsonb(OLD) - 'open_for' = to_jsonb(NEW) - 'open_for' THEN RETURN NEW; END IF;
      END IF;
      RAISE EXCEPTION 'the record of an erasure never changes and is never removed';
    END $$;
  CREATE TRIGGER erasure_is_kept BEFORE UPDATE OR DELETE ON erasure FOR EACH ROW EXECUTE FUNCTION keep_erasure();

  CREATE OR REPLACE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql SET search_path FROM CURRENT AS $$
    DECLARE owner bigint;
    BEGIN
      IF TG_OP = 'DELETE' THEN
        owner := CASE TG_TABLE_NAME
          WHEN 'exam_version' THEN (to_jsonb(OLD) ->> 'exam')::bigint
          WHEN 'chunk' THEN (SELECT exam FROM batch WHERE n = (to_jsonb(OLD) ->> 'n')::bigint / 1024)
          ELSE (SELECT exam FROM batch WHERE n = (to_jsonb(OLD) ->> 'chunk')::bigint / 1024)
        END;
        IF EXISTS (SELECT 1 FROM erasure WHERE open_for = owner) THEN RETURN OLD; END IF;
      END IF;
      RAISE EXCEPTION 'a stored version never changes and is never removed';
    END $$;
  CREATE TRIGGER past_resource_is_kept BEFORE UPDATE OR DELETE ON past_resource
    FOR EACH ROW EXECUTE FUNCTION refuse_change();
  CREATE TRIGGER chunk_is_kept BEFORE UPDATE OR DELETE ON chunk FOR EACH ROW EXECUTE FUNCTION refuse_change();

  CREATE TRIGGER exam_version_is_not_emptied BEFORE TRUNCATE ON exam_version
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
  CREATE TRIGGER past_resource_is_not_emptied BEFORE TRUNCATE ON past_resource
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
  CREATE TRIGGER chunk_is_not_emptied BEFORE TRUNCATE ON chunk FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
  CREATE TRIGGER erasure_is_not_emptied BEFORE TRUNCATE ON erasure FOR EACH STATEMENT EXECUTE FUNCTION keep_erasure();
  `,
  },
  {
    sqlite: `
  CREATE TABLE service_key (
    purpose TEXT PRIMARY KEY,
    key     TEXT NOT NULL
  ) STRICT;
  `,
    postgres: `
  CREATE TABLE service_key (
    purpose text PRIMARY KEY,
    key     text NOT NULL
  );
  `,
  },
  // The audit trail: a chain of hashes that is only added to, its newest entry in `audit_head`, and what it is found by.
  {
    sqlite: `
  CREATE TABLE audit_event (
    n             INTEGER PRIMARY KEY CHECK (n >= 1),
    recorded      INTEGER NOT NULL,
    interaction   TEXT NOT NULL,
    action        TEXT NOT NULL,
    outcome       TEXT NOT NULL,
    record        TEXT NOT NULL,
    previous_hash BLOB NOT NULL CHECK (length(previous_hash) = 32),
    hash          BLOB NOT NULL CHECK (length(hash) = 32)
  ) STRICT;
  CREATE INDEX audit_event_by_time ON audit_event (recorded, n);

  CREATE TABLE audit_entry (
    n     INTEGER NOT NULL,
    kind  INTEGER NOT NULL,
    value TEXT NOT NULL,
    PRIMARY KEY (n, kind, value)
  ) STRICT, WITHOUT ROWID;
  CREATE INDEX audit_entry_by_value ON audit_entry (kind, value, n);

  CREATE TABLE audit_head (
    one  INTEGER PRIMARY KEY CHECK (one = 1),
    n    INTEGER NOT NULL,
    hash BLOB NOT NULL CHECK (length(hash) = 32)
  ) STRICT;
  INSERT INTO audit_head VALUES (1, 0, zeroblob(32));

  CREATE TRIGGER audit_event_is_kept BEFORE UPDATE ON audit_event
    BEGIN SELECT RAISE (ABORT, 'the audit trail never changes'); END;
  CREATE TRIGGER audit_event_stays BEFORE DELETE ON audit_event
    BEGIN SELECT RAISE (ABORT, 'the audit trail is only added to'); END;
  CREATE TRIGGER audit_entry_is_kept BEFORE UPDATE ON audit_entry
    BEGIN SELECT RAISE (ABORT, 'the audit trail never changes'); END;
  CREATE TRIGGER audit_entry_stays BEFORE DELETE ON audit_entry
    BEGIN SELECT RAISE (ABORT, 'the audit trail is only added to'); END;
  CREATE TRIGGER audit_head_goes_on BEFORE UPDATE ON audit_head WHEN NEW.n <= OLD.n
    BEGIN SELECT RAISE (ABORT, 'the audit trail is only added to'); END;
  CREATE TRIGGER audit_head_stays BEFORE DELETE ON audit_head
    BEGIN SELECT RAISE (ABORT, 'the audit trail is only added to'); END;
  `,
    postgres: `
  CREATE TABLE audit_event (
    n             bigint PRIMARY KEY CHECK (n >= 1),
    recorded      bigint NOT NULL,
    interaction   text NOT NULL,
    action        text NOT NULL,
    outcome       text NOT NULL,
    record        text NOT NULL,
    previous_hash bytea NOT NULL CHECK (length(previous_hash) = 32),
    hash          bytea NOT NULL CHECK (length(hash) = 32)
  );
  CREATE INDEX audit_event_by_time ON audit_event (recorded, n);

  CREATE TABLE audit_entry (
    n     bigint NOT NULL,
    kind  smallint NOT NULL,
    value text COLLATE "C" NOT NULL,
    PRIMARY KEY (n, kind, value)
  );
  CREATE INDEX audit_entry_by_value ON audit_entry (kind, value, n);

  CREATE TABLE audit_head (
    one  integer PRIMARY KEY CHECK (one = 1),
    n    bigint NOT NULL,
    hash bytea NOT NULL CHECK (length(hash) = 32)
  );
  INSERT INTO audit_head VALUES (1, 0, decode(repeat('00', 32), 'hex'));

  CREATE FUNCTION keep_audit() RETURNS trigger LANGUAGE plpgsql AS $$
    BEGIN
      IF TG_TABLE_NAME = 'audit_head' AND TG_OP = 'UPDATE' THEN
        IF NEW.n > OLD.n THEN RETURN NEW; END IF;
      END IF;
      RAISE EXCEPTION 'the audit trail is only added to';
    END $$;
  CREATE TRIGGER audit_event_is_kept BEFORE UPDATE OR DELETE ON audit_event FOR EACH ROW EXECUTE FUNCTION keep_audit();
  CREATE TRIGGER audit_entry_is_kept BEFORE UPDATE OR DELETE ON audit_entry FOR EACH ROW EXECUTE FUNCTION keep_audit();
  CREATE TRIGGER audit_head_goes_on BEFORE UPDATE OR DELETE ON audit_head FOR EACH ROW EXECUTE FUNCTION keep_audit();
  CREATE TRIGGER audit_event_is_not_emptied BEFORE TRUNCATE ON audit_event
    FOR EACH STATEMENT EXECUTE FUNCTION keep_audit();
  CREATE TRIGGER audit_entry_is_not_emptied BEFORE TRUNCATE ON audit_entry
    FOR EACH STATEMENT EXECUTE FUNCTION keep_audit();
  CREATE TRIGGER audit_head_is_not_emptied BEFORE TRUNCATE ON audit_head
    FOR EACH STATEMENT EXECUTE FUNCTION keep_audit();
  `,
  },
  // What is to be sent to other servers. `held_until` is a lease: whoever holds a row and falls silent loses it then.
  {
    sqlite: `
  CREATE TABLE delivery (
    n          INTEGER PRIMARY KEY AUTOINCREMENT,
    target     TEXT NOT NULL,
    exam       INTEGER NOT NULL REFERENCES exam (n),
    version    INTEGER NOT NULL,
    state      INTEGER NOT NULL DEFAULT 0,
    attempts   INTEGER NOT NULL DEFAULT 0,
    created_at INTEGER NOT NULL,
    next_at    INTEGER NOT NULL,
    settled_at INTEGER,
    holder     TEXT,
    held_until INTEGER NOT NULL DEFAULT 0,
    answer     INTEGER,
    reason     TEXT,
    issues     TEXT,
    software   TEXT,
    resources  TEXT,
    UNIQUE (target, exam, version)
  ) STRICT;
  CREATE INDEX delivery_of_exam ON delivery (exam, version);
  CREATE INDEX delivery_waiting ON delivery (target, next_at) WHERE state = 0;
  CREATE INDEX delivery_dead ON delivery (n) WHERE state = 2;
  CREATE INDEX delivery_proven ON delivery (target, software, settled_at) WHERE state = 1;

  CREATE TABLE subscription (
    id       TEXT PRIMARY KEY,
    state    TEXT NOT NULL,
    criteria TEXT NOT NULL,
    endpoint TEXT NOT NULL,
    payload  TEXT,
    headers  TEXT NOT NULL,
    ends_at  INTEGER,
    failures INTEGER NOT NULL DEFAULT 0
  ) STRICT, WITHOUT ROWID;
  `,
    postgres: `
  CREATE TABLE delivery (
    n          bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
    target     text COLLATE "C" NOT NULL,
    exam       bigint NOT NULL REFERENCES exam (n),
    version    integer NOT NULL,
    state      smallint NOT NULL DEFAULT 0,
    attempts   integer NOT NULL DEFAULT 0,
    created_at bigint NOT NULL,
    next_at    bigint NOT NULL,
    settled_at bigint,
    holder     text,
    held_until bigint NOT NULL DEFAULT 0,
    answer     integer,
    reason     text,
    issues     text,
    software   text,
    resources  text,
    UNIQUE (target, exam, version)
  );
  CREATE INDEX delivery_of_exam ON delivery (exam, version);
  CREATE INDEX delivery_waiting ON delivery (target, next_at) WHERE state = 0;
  CREATE INDEX delivery_dead ON delivery (n) WHERE state = 2;
  CREATE INDEX delivery_proven ON delivery (target, software, settled_at) WHERE state = 1;

  CREATE TABLE subscription (
    id       text PRIMARY KEY,
    state    text NOT NULL,
    criteria text NOT NULL,
    endpoint text NOT NULL,
    payload  text,
    headers  text NOT NULL,
    ends_at  bigint,
    failures integer NOT NULL DEFAULT 0
  );
  `,
  },
];
