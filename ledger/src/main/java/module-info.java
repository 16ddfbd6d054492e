/** The company's own record and its rules. */
module org.hosewright.ledger {
    requires static transitive org.jspecify;
    requires transitive org.hosewright.hydraulics;
    requires transitive org.hosewright.evidence;
    requires transitive org.hosewright.ground;

    exports org.hosewright.ledger.bed;
    exports org.hosewright.ledger.canonical;
    exports org.hosewright.ledger.card;
    exports org.hosewright.ledger.drill;
    exports org.hosewright.ledger.exchange;
    exports org.hosewright.ledger.history;
    exports org.hosewright.ledger.kit;
    exports org.hosewright.ledger.lay;
    exports org.hosewright.ledger.leaf;
    exports org.hosewright.ledger.line;
    exports org.hosewright.ledger.order;
    exports org.hosewright.ledger.person;
    exports org.hosewright.ledger.picture;
    exports org.hosewright.ledger.plan;
    exports org.hosewright.ledger.practice;
    exports org.hosewright.ledger.reach;
    exports org.hosewright.ledger.ready;
    exports org.hosewright.ledger.storage;
    exports org.hosewright.ledger.stretch;
    exports org.hosewright.ledger.trial;
    exports org.hosewright.ledger.walk;
    exports org.hosewright.ledger.years;
}
