/** Commands and wiring; the one executable. */
module org.hosewright.cli {
    requires static org.jspecify;
    requires transitive org.hosewright.store;
    requires transitive org.hosewright.server;
}
