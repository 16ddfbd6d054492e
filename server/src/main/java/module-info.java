/** HTTP routes and sessions over the ledger; serves the pages. */
@SuppressWarnings("module") // The command line is built after this room.
module org.hosewright.server {
    requires static org.jspecify;
    requires transitive org.hosewright.ledger;
    requires transitive org.hosewright.documents;
    requires transitive org.hosewright.files;
    requires transitive org.hosewright.web;
    requires com.github.benmanes.caffeine;
    requires io.javalin;
    requires kotlin.stdlib;
    requires org.eclipse.jetty.server;
    requires org.eclipse.jetty.util;
    requires org.bouncycastle.pkix;
    requires org.bouncycastle.provider;
    requires password4j;
    requires com.nulabinc.zxcvbn;
    requires com.fasterxml.jackson.databind;
    requires org.slf4j;

    exports org.hosewright.server;
    exports org.hosewright.server.api to
            org.hosewright.cli;
    exports org.hosewright.server.password;
    exports org.hosewright.server.setup;
}
