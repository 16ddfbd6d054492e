-- The history becomes a chain: each entry holds the digest of what its act wrote, the hash of the entry before, and
-- its own hash over all of it. Entries older than the chain get their links in the next migration, their hat stays ''.
alter table history add column hat text not null default '';
alter table history add column content text not null default '';
alter table history add column previous text not null default '';
alter table history add column hash text not null default '';

-- What an act wrote is found by its number.
create index kit_revision_of_entry on kit_revision (entry);
create index drill_head_of_entry on drill_head (entry);
create index drill_row_revision_of_entry on drill_row_revision (entry);
create index ruling_of_entry on ruling (entry);
create index acceptance_of_entry on acceptance (entry);

-- A set of ordered pressures, whole, in the open format; never changed.
create table order_revision (
  number bigint not null primary key,
  code text not null,
  kit_version bigint not null references kit_revision (version),
  order_text text not null,
  entry bigint not null references history (entry) deferrable initially deferred
);
create index order_revision_of_entry on order_revision (entry);

-- What people did with a set: signed, fitted, acknowledged, reported, answered, withdrawn.
create table order_step (
  number bigint not null references order_revision (number),
  place bigint not null,
  kind text not null,
  engine text not null,
  note text not null,
  entry bigint not null references history (entry) deferrable initially deferred,
  primary key (number, place)
);
create index order_step_of_entry on order_step (entry);
