/** The ledger's ports on SQLite and PostgreSQL. */
module org.hosewright.store {
    requires static org.checkerframework.checker.qual;
    requires static org.jspecify;
    requires transitive org.hosewright.ledger;
    requires java.sql;
    requires com.fasterxml.jackson.core;
    requires com.github.f4b6a3.uuid;
    requires com.zaxxer.hikari;
    requires flyway.core;
    requires org.jdbi.v3.core;
    requires org.xerial.sqlitejdbc;

    exports org.hosewright.store;
}
