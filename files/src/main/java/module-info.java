/** The open formats: kit, readings, lays, and the one JSON writer. */
module org.hosewright.files {
    requires static org.jspecify;
    requires transitive org.hosewright.ledger;
    requires io.jenetics.jpx;
    requires java.xml;
    requires com.fasterxml.jackson.core;
    requires com.fasterxml.jackson.databind;
    requires org.apache.commons.csv;
    requires org.snakeyaml.engine;

    exports org.hosewright.files.bed;
    exports org.hosewright.files.exchange;
    exports org.hosewright.files.json;
    exports org.hosewright.files.kit;
    exports org.hosewright.files.lay;
    exports org.hosewright.files.order;
    exports org.hosewright.files.plain;
    exports org.hosewright.files.plan;
    exports org.hosewright.files.practice;
    exports org.hosewright.files.readings;
    exports org.hosewright.files.relays;
    exports org.hosewright.files.result;
    exports org.hosewright.files.track;
    exports org.hosewright.files.trial;
    exports org.hosewright.files.walk;
}
