/** Version of the tables below; another one is refused. */
export const LAYOUT = 1;

/**
 * Tables of runs, in a schema of their own beside that of the queue. A recording of a run names its result by `id`, which hashes
 * all that the result hangs on; a result is written once under it, whoever is first. JSON is kept as text, so that it is read as
 * it was written. What is compressed already is not compressed again.
 */
export const CREATE_LAYOUT = `
  create schema if not exists surae;
  create table if not exists surae.layout (version integer primary key);
  insert into surae.layout select ${LAYOUT} where not exists (select from surae.layout);
  create table if not exists surae.run (
    name text primary key,
    software text not null,
    rules text not null,
    list text not null,
    plan text not null,
    tests text not null,
    compares boolean not null,
    holds_bytes boolean not null,
    recordings integer not null,
    made_at timestamptz not null default now()
  );
  create table if not exists surae.recording (
    run text not null references surae.run on delete cascade,
    place integer not null,
    id text not null,
    sha256 text,
    item text not null,
    primary key (run, place)
  );
  create index if not exists recording_id on surae.recording (id);
  create table if not exists surae.result (
    id text primary key,
    sha256 text,
    body bytea not null,
    made_at timestamptz not null default now()
  );
  alter table surae.result alter column body set storage external;
  create table if not exists surae.bytes (sha256 text primary key, bytes bytea not null);
  alter table surae.bytes alter column bytes set storage external;
`;
