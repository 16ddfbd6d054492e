-- Walks, plans, beds, pictures and whatever else the company keeps whole; the content is text in an open format.
create table leaf (
  kind text not null,
  id text not null,
  version bigint not null,
  gone bigint not null,
  primary key (kind, id)
);

create table leaf_version (
  kind text not null,
  id text not null,
  version bigint not null,
  title text not null,
  leaf_text text not null,
  gone bigint not null,
  entry bigint not null references history (entry) deferrable initially deferred,
  primary key (kind, id, version),
  foreign key (kind, id) references leaf (kind, id)
);
create index leaf_version_of_entry on leaf_version (entry);
