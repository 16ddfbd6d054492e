/** Commands and wiring; the one executable. */
module org.hosewright.cli {
    requires static org.jspecify;
    requires transitive info.picocli;
    requires org.hosewright.server;
    requires org.hosewright.store;

    exports org.hosewright.cli;

    opens org.hosewright.cli to
            info.picocli;
    opens org.hosewright.cli.command to
            info.picocli;
}
