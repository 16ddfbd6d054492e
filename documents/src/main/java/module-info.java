/** Cards, tags and reports as tagged PDF. */
module org.hosewright.documents {
    requires static org.jspecify;
    requires transitive org.hosewright.ledger;
    requires com.google.zxing;
    requires java.desktop;
    requires openhtmltopdf.core;
    requires openhtmltopdf.pdfbox;
    requires openhtmltopdf.svg.support;
    requires org.apache.fontbox;
    requires org.apache.pdfbox;
    requires org.apache.pdfbox.io;

    exports org.hosewright.documents;
    exports org.hosewright.documents.matter;
    exports org.hosewright.documents.picture;
    exports org.hosewright.documents.stamp;
}
