/** The ledger's ports on SQLite and PostgreSQL. */
module org.hosewright.store {
    requires static org.jspecify;
    requires transitive org.hosewright.ledger;
    requires transitive org.hosewright.files;
}
