/** From readings to numbers: instruments, drill readings, the joint fit and what it cannot tell. */
module org.hosewright.evidence {
    requires static org.jspecify;
    requires transitive org.hosewright.hydraulics;

    exports org.hosewright.evidence.calibration;
    exports org.hosewright.evidence.instrument;
    exports org.hosewright.evidence.night;
    exports org.hosewright.evidence.plan;
    exports org.hosewright.evidence.pool;
    exports org.hosewright.evidence.trial;
}
