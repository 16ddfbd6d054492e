package org.hosewright.evidence.calibration;

/** What may be wrong with a reading. */
public enum FindingKind {
    NONE("none"),
    EXTRA_LOSS("extra-loss"),
    NOZZLE("nozzle"),
    FLOW_METER("flow-meter"),
    PUMP_GAUGE("pump-gauge"),
    TIP_GAUGE("tip-gauge"),
    LENGTH("length"),
    RISE("rise"),
    CANNOT_TELL("cannot-tell");

    private final String word;

    FindingKind(String word) {
        this.word = word;
    }

    /** The word in results. */
    public String word() {
        return word;
    }
}
