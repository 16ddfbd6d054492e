/** The pages and the libraries they load. */
module org.hosewright.web {
    requires static org.jspecify;
    requires static org.apache.fontbox;
    requires static org.apache.pdfbox.io;

    exports org.hosewright.web;
}
