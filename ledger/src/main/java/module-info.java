/** The company's own record and its rules. */
module org.hosewright.ledger {
    requires static org.jspecify;
    requires transitive org.hosewright.hydraulics;
    requires transitive org.hosewright.evidence;

    exports org.hosewright.ledger.kit;
}
