/** The hydraulics and the evidence as a JavaScript module for the browser. */
module org.hosewright.field {
    requires static org.jspecify;
    requires static org.teavm.jso;
    requires org.hosewright.evidence;

    exports org.hosewright.field;
}
