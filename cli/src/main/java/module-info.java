/** Commands and wiring; the one executable. */
module org.hosewright.cli {
    requires static org.jspecify;
    requires info.picocli;
    requires transitive org.hosewright.server;
    requires transitive org.hosewright.store;

    exports org.hosewright.cli;

    opens org.hosewright.cli to
            info.picocli;
}
