/** HTTP routes and sessions over the ledger; serves the pages. */
module org.hosewright.server {
    requires static org.jspecify;
    requires transitive org.hosewright.ledger;
    requires transitive org.hosewright.documents;
    requires transitive org.hosewright.files;
    requires transitive org.hosewright.web;
}
