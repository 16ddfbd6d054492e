-- People who have accounts. Of a password its Argon2id hash is kept, nothing else.
create table person (
  id text not null primary key,
  version bigint not null
);

create table person_version (
  id text not null references person (id),
  version bigint not null,
  name text not null,
  hats text not null,
  active bigint not null,
  secret text not null,
  given bigint not null,
  entry bigint not null references history (entry) deferrable initially deferred,
  primary key (id, version)
);
create index person_version_of_entry on person_version (entry);
