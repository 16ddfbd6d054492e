-- The same statements on SQLite and PostgreSQL: TEXT, BIGINT and DOUBLE PRECISION only.
-- Rows are added, never deleted; only the counters (last, version, head_version) are updated.
-- Instants are ISO 8601 in UTC with milliseconds, ids are UUIDv7, 1 and 0 stand for yes and no.

-- What was done, in order, numbered from 1 without a gap.
create table history (
  entry bigint not null primary key,
  at text not null,
  who text not null,
  why text not null,
  what text not null,
  subject text not null,
  subject_id text not null,
  version bigint not null
);
create index history_of_subject on history (subject, subject_id, entry);

-- One row. Every act updates it first, so that acts stand in a line even with several servers.
create table history_head (
  id bigint not null primary key,
  last bigint not null
);
insert into history_head (id, last) values (1, 0);

-- The kit in the open format, whole, after each change.
create table kit_revision (
  version bigint not null primary key,
  kit_text text not null,
  entry bigint not null references history (entry) deferrable initially deferred
);

create table drill (
  id text not null primary key,
  version bigint not null,
  head_version bigint not null
);

create table drill_head (
  drill_id text not null references drill (id),
  version bigint not null,
  name text not null,
  night text not null,
  column_names text not null,
  entry bigint not null references history (entry) deferrable initially deferred,
  primary key (drill_id, version)
);

-- A row of a drill's table; what it says stands in its revisions.
create table drill_row (
  id text not null primary key,
  drill_id text not null references drill (id),
  place bigint not null,
  version bigint not null
);
create index drill_row_of_drill on drill_row (drill_id, place);

-- The cells as a JSON object, column to text as typed.
create table drill_row_revision (
  row_id text not null references drill_row (id),
  version bigint not null,
  cells text not null,
  removed bigint not null,
  entry bigint not null references history (entry) deferrable initially deferred,
  primary key (row_id, version)
);

create table ruling (
  id text not null primary key,
  drill_id text not null references drill (id),
  row_id text not null references drill_row (id),
  row_version bigint not null,
  place bigint not null,
  verdict text not null,
  reason text not null,
  entry bigint not null references history (entry) deferrable initially deferred
);
create index ruling_of_drill on ruling (drill_id, place);

create table acceptance (
  drill_id text not null references drill (id),
  drill_version bigint not null,
  kit_version bigint not null references kit_revision (version),
  entry bigint not null references history (entry) deferrable initially deferred,
  primary key (drill_id, drill_version)
);
