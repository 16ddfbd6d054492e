/** Cards, tags and reports as tagged PDF. */
module org.hosewright.documents {
    requires static org.jspecify;
    requires transitive org.hosewright.ledger;
}
