/** The open formats: kit, readings, lays, and the one JSON writer. */
module org.hosewright.files {
    requires static org.jspecify;
    requires transitive org.hosewright.ledger;
}
